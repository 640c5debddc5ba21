import { type Cloth, boundsOf, canopyEdge, formatLength, riseOf, toMillimetre, clamp } from '../../../engine/index.ts';
import type { Canopy, Drop, DropSide, Feature, FeatureChanges, PlanPoint, Units } from '../../../engine/index.ts';
import { centreLine } from './outline.ts';
import { DRAWING_GRID } from './snap.ts';

/**
 * Grips for what a plan cannot show: how high a cloth hangs, how it tilts, and what hangs from its edges. A metre on
 * the paper is a metre up; a drop lies unfolded outwards from its edge.
 */
export type ClothGrip =
  | { readonly part: 'height'; readonly at: PlanPoint }
  | { readonly part: 'rise'; readonly at: PlanPoint }
  | { readonly part: 'drop'; readonly side: DropSide; readonly at: PlanPoint };

const SIDES: readonly DropSide[] = ['front', 'right', 'back', 'left'];
/** A cloth is not dragged lower than this, nor higher. [m] */
const HEIGHTS = { least: 0.3, most: 6 } as const;
/** A drop drawn shorter than this is taken down. [m] */
const SHORTEST_DROP = 0.1;

/** Beside the grip that turns, in one row with it. @param off how far a grip stands off the cloth [m] */
export function clothGrips(cloth: Cloth, off: number): readonly ClothGrip[] {
  const { minX, maxX, maxY } = boundsOf(centreLine(cloth));
  const middle = (minX + maxX) / 2;
  const aside = Math.max((maxX - minX) / 2, off);
  const height: ClothGrip = { part: 'height', at: [middle - aside, maxY + off] };
  if (cloth.kind === 'screen') return [height];
  return [
    height,
    { part: 'rise', at: [middle + aside, maxY + off] },
    ...SIDES.map((side): ClothGrip => ({ part: 'drop', side, at: hungAt(cloth, side, depthOf(cloth, side)) })),
  ];
}

/** What changes when a grip of a cloth is taken to a place. */
export function clothBy(cloth: Cloth, grip: ClothGrip, to: PlanPoint): FeatureChanges {
  const up = to[1] - grip.at[1];
  if (grip.part === 'height') return { height: clamp(onGrid(cloth.height + up), HEIGHTS.least, HEIGHTS.most) };
  if (cloth.kind === 'screen') return {};
  if (grip.part === 'rise')
    return {
      rise: clamp(onGrid(riseOf(cloth) + up), HEIGHTS.least - cloth.height, HEIGHTS.most - cloth.height),
    };
  const { middle, out } = edgeOf(cloth, grip.side);
  const ends = canopyEdge(cloth, grip.side);
  const depth = Math.min(
    onGrid((to[0] - middle[0]) * out[0] + (to[1] - middle[1]) * out[1]),
    Math.min(ends[0][2], ends[1][2]),
  );
  return { drops: withDrop(cloth, grip.side, depth) };
}

/** What a grip says beside itself; `null`: nothing. */
export function clothGripWords(
  feature: Feature,
  grip: { readonly part: string; readonly side?: DropSide },
  units: Units,
): string | null {
  if (grip.part === 'height' && 'height' in feature) return `↕ ${formatLength(feature.height, units)}`;
  if (feature.kind !== 'canopy') return null;
  if (grip.part === 'rise') return `tilt ${formatLength(riseOf(feature), units)}`;
  const depth = grip.part === 'drop' && grip.side ? depthOf(feature, grip.side) : 0;
  return depth > 0 ? formatLength(depth, units) : null;
}

/** Every drop of a roof laid out flat: from the middle of its edge to its lower end. */
export function unfolded(canopy: Canopy): readonly (readonly [PlanPoint, PlanPoint])[] {
  return (canopy.drops ?? []).map(({ side, depth }) => [hungAt(canopy, side, 0), hungAt(canopy, side, depth)]);
}

function withDrop(canopy: Canopy, side: DropSide, depth: number): readonly Drop[] | undefined {
  const before = canopy.drops?.find((drop) => drop.side === side);
  const others = (canopy.drops ?? []).filter((drop) => drop.side !== side);
  const drops =
    depth < SHORTEST_DROP ? others : [...others, { side, depth, density: before?.density ?? canopy.density }];
  return drops.length === 0 ? undefined : drops;
}

function depthOf({ drops = [] }: Canopy, side: DropSide): number {
  return drops.find((drop) => drop.side === side)?.depth ?? 0;
}

function hungAt(canopy: Canopy, side: DropSide, depth: number): PlanPoint {
  const { middle, out } = edgeOf(canopy, side);
  return [middle[0] + depth * out[0], middle[1] + depth * out[1]];
}

/** The middle of an edge, and the direction outwards from it. */
function edgeOf(canopy: Canopy, side: DropSide): { readonly middle: PlanPoint; readonly out: PlanPoint } {
  const [a, b] = canopyEdge(canopy, side);
  const middle: PlanPoint = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const [dx, dy] = [middle[0] - canopy.center[0], middle[1] - canopy.center[1]];
  const half = Math.hypot(dx, dy);
  return { middle, out: [dx / half, dy / half] };
}

function onGrid(metres: number): number {
  return toMillimetre(DRAWING_GRID * Math.round(metres / DRAWING_GRID));
}
