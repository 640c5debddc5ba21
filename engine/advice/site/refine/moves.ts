import { bottomOf, turnOf } from '../../../plan/defaults.ts';
import { headingOf, wrapBearing } from '../../../plan/geometry/angles.ts';
import { cleanPath, distance, turned } from '../../../plan/geometry/shapes.ts';
import { toCentimetre, withoutNoise } from '../../../plan/numbers/rounding.ts';
import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import type { Canopy, Cloth, PlanPoint, Screen } from '../../../plan/types.ts';
import type { Units } from '../../../plan/units/units.ts';
import { downToHand, HAND } from '../hand.ts';

/** What may change of a cloth besides its place and turn. */
export interface Freedom {
  /** Its height. */
  readonly height: boolean;
  /** Its proportions; it never gets more cloth. */
  readonly form: boolean;
  /** Whose lengths stay whole. */
  readonly units: Units;
}

/** One way in which a cloth may change, by steps that get smaller: metres, or degrees. */
export interface Move {
  readonly steps: readonly number[];
  /** @returns `null` where the cloth cannot change so */
  apply(cloth: Cloth, by: number): Canopy | Screen | null;
}

/** Steps end where a hand with a tape cannot tell them any more. [m], [°] */
const PLACE_STEPS = [0.12, 0.06, 0.03] as const;
const TURN_STEPS = [8, 3, 1] as const;
/** In hands: 5 cm, or 2 inches. */
const HEIGHT_STEPS = [2, 1, 1] as const;
const FORM_STEPS = [5, 2, 1] as const;
/** No side of a cloth gets shorter than this, no screen lower. [m] */
const LEAST_SIDE = 0.75;

/** What hangs from a wall stays on it: it slides along, hangs lower, or changes its proportions. */
export function movesOf(cloth: Cloth, { height, form, units }: Freedom): Move[] {
  const inHands = (steps: readonly number[]): number[] => steps.map((hands) => hands * HAND[units]);
  const heights = inHands(HEIGHT_STEPS);
  const forms = inHands(FORM_STEPS);
  if (cloth.kind === 'canopy' && cloth.onWall === true)
    return [
      { steps: PLACE_STEPS, apply: (one, by) => shifted(one, by, 0) },
      ...(height ? [{ steps: heights, apply: (one: Cloth, by: number) => raised(one, -Math.abs(by)) }] : []),
      ...(form ? [{ steps: forms, apply: (one: Cloth, by: number) => deeper(one, by, units) }] : []),
    ];
  return [
    { steps: PLACE_STEPS, apply: (cloth, by) => shifted(cloth, by, 0) },
    { steps: PLACE_STEPS, apply: (cloth, by) => shifted(cloth, 0, by) },
    { steps: TURN_STEPS, apply: turnedBy },
    ...(height ? [{ steps: heights, apply: raised }] : []),
    ...(form ? [{ steps: forms, apply: (one: Cloth, by: number) => longer(one, by, units) }] : []),
    { steps: forms, apply: bentFurther },
  ];
}

/** The cloth somewhere else, along its own right and front. */
function shifted(cloth: Cloth, right: number, front: number): Cloth {
  const [x, y] = turned([right, front], [0, 0], cloth.kind === 'canopy' ? turnOf(cloth) : bearingOf(cloth));
  // All ends go the same way, so that no length changes.
  const [dx, dy] = [toCentimetre(x), toCentimetre(y)];
  const there = (at: PlanPoint): PlanPoint => [withoutNoise(at[0] + dx), withoutNoise(at[1] + dy)];
  return cloth.kind === 'canopy'
    ? { ...cloth, center: there(cloth.center) }
    : { ...cloth, path: cloth.path.map(there) };
}

function turnedBy(cloth: Cloth, degrees: number): Cloth {
  if (cloth.kind === 'canopy') return { ...cloth, turn: wrapBearing(turnOf(cloth) + degrees) };
  const middle = betweenEnds(cloth.path);
  return {
    ...cloth,
    path: cloth.path.map((at) => roundedInward(turned(at, middle, degrees), middle)),
  };
}

/** Higher or lower with all that hangs from it; a screen's cloth keeps its width. */
function raised(cloth: Cloth, by: number): Canopy | Screen | null {
  const height = withoutNoise(cloth.height + by);
  if (cloth.kind === 'canopy') return { ...cloth, height };
  return by < 0 && height - bottomOf(cloth) >= LEAST_SIDE ? { ...cloth, height } : null;
}

/** Longer, and as much less wide or high that it takes no more cloth. */
function longer(cloth: Cloth, by: number, units: Units): Canopy | Screen | null {
  if (cloth.kind === 'canopy') {
    const length = withoutNoise(cloth.length + by);
    const width = downToHand((cloth.length * cloth.width) / length, units);
    return Math.min(length, width) < LEAST_SIDE || (cloth.drops ?? []).length > 0 ? null : { ...cloth, length, width };
  }
  const path = cleanPath(cloth.path);
  if (path.length > 2) return null;
  const long = distance(path[0], path[1]);
  const bottom = bottomOf(cloth);
  const high = downToHand(((cloth.height - bottom) * long) / (long + by), units);
  if (long + by < LEAST_SIDE || high < LEAST_SIDE) return null;
  const middle = betweenEnds(path);
  return {
    ...cloth,
    path: path.map((end) => roundedInward(stretched(end, middle, (long + by) / long), middle)),
    height: withoutNoise(bottom + high),
  };
}

/** Farther out from the wall, and as much less wide; its back stays where it is. */
function deeper(cloth: Cloth, by: number, units: Units): Canopy | Screen | null {
  const next = longer(cloth, by, units);
  if (cloth.kind !== 'canopy' || next === null || next.kind !== 'canopy') return null;
  const [x, y] = turned([0, (next.length - cloth.length) / 2], [0, 0], turnOf(cloth));
  return { ...next, center: [withoutNoise(cloth.center[0] + x), withoutNoise(cloth.center[1] + y)] };
}

/** Of a screen with a corner: one leg longer, the other as much shorter. */
function bentFurther(cloth: Cloth, by: number): Screen | null {
  if (cloth.kind !== 'screen') return null;
  const path = cleanPath(cloth.path);
  if (path.length !== 3) return null;
  const [a, corner, b] = path;
  const [one, other] = [distance(a, corner), distance(corner, b)];
  if (Math.min(one + by, other - by) < LEAST_SIDE / 1.5) return null;
  const leg = (end: PlanPoint, length: number, now: number): PlanPoint =>
    roundedInward(stretched(end, corner, length / now), corner);
  return { ...cloth, path: [leg(a, one + by, one), corner, leg(b, other - by, other)] };
}

function stretched([x, y]: PlanPoint, from: PlanPoint, by: number): PlanPoint {
  return [from[0] + (x - from[0]) * by, from[1] + (y - from[1]) * by];
}

/**
 * To a tenth of a millimetre, so that many moves add up to none, and never further from a point: rounding must not ask
 * for more cloth, tube or money.
 */
export function roundedInward([x, y]: PlanPoint, from: PlanPoint): PlanPoint {
  const inwards = (value: number, start: number): number =>
    (value > start ? Math.floor(value * 1e4 + ROUNDING) : Math.ceil(value * 1e4 - ROUNDING)) / 1e4;
  return [inwards(x, from[0]), inwards(y, from[1])];
}

function bearingOf({ path }: Screen): number {
  const [a, b] = [path[0], path[path.length - 1]];
  return headingOf(a, b);
}

function betweenEnds(path: readonly PlanPoint[]): PlanPoint {
  const [a, b] = [path[0], path[path.length - 1]];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}
