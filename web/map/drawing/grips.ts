import {
  boundsOf,
  changeFeature,
  distance,
  featureOf,
  insertCorner,
  moveCorner,
  moveFeature,
  toMillimetre,
  turned,
  turnFeature,
  turnOf,
  headingOf,
  isCloth,
} from '../../../engine/index.ts';
import type { Canopy, Feature, FeatureOf, Plan, PlanPoint } from '../../../engine/index.ts';
import { clothBy, clothGrips } from './cloth-grips.ts';
import type { ClothGrip } from './cloth-grips.ts';
import { centreLine, footprint } from './outline.ts';
import { DRAWING_GRID } from './snap.ts';

/** Stands for the yard's own edge where a feature's id is wanted. */
export const YARD_EDGE = ' yard';

/** Where a chosen thing can be taken hold of, and what taking it there does. */
export type Grip =
  | { readonly part: 'whole'; readonly at: PlanPoint }
  | { readonly part: 'corner' | 'new corner'; readonly index: number; readonly at: PlanPoint }
  | { readonly part: 'roof corner'; readonly index: number; readonly at: PlanPoint }
  | { readonly part: 'width'; readonly at: PlanPoint }
  | { readonly part: 'turn'; readonly at: PlanPoint }
  | ClothGrip;

/** How far a grip that is not on the thing's edge stands off it. [m] */
const GRIP_OFF = 0.5;

/**
 * Every grip of a feature but `whole`, which is its body. A round thing has one only while its size is changed.
 * @param reach of the pointer, so that grips keep apart [m]
 */
export function gripsOf(feature: Feature, reach: number, isSized: boolean): readonly Grip[] {
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
    case 'eye':
      return lineGrips(feature, reach);
    case 'screen':
      return [...lineGrips(feature, reach), ...clothGrips(feature, offOf(reach))];
    case 'building':
    case 'bed':
    case 'keepout':
    case 'ground':
      return [...cornerGrips(feature.outline, true, reach), turnGrip(feature, reach)];
    case 'canopy':
      return [
        ...footprint(feature)[0].map((at, index): Grip => ({ part: 'roof corner', index, at })),
        turnGrip(feature, reach),
        ...clothGrips(feature, offOf(reach)),
      ];
    case 'tree':
      return isSized ? [widthGrip(feature.at, feature.crownWidth, reach)] : [];
    case 'plant':
      return isSized ? [widthGrip(feature.at, feature.spread, reach)] : [];
    case 'reading':
      return [];
  }
}

/** Outside the mark, so that the mark itself is free for moving. */
function widthGrip([x, y]: PlanPoint, width: number, reach: number): Grip {
  return { part: 'width', at: [x + width / 2 + 2 * reach, y] };
}

/** Grips of the yard's edge. */
export function edgeGrips(boundary: readonly PlanPoint[], reach: number): readonly Grip[] {
  return cornerGrips(boundary, true, reach);
}

function cornerGrips(points: readonly PlanPoint[], closes: boolean, reach: number): readonly Grip[] {
  const corners = points.map((at, index): Grip => ({ part: 'corner', index, at }));
  const between = points.flatMap((a, i): Grip[] => {
    const b = points[i + 1] ?? (closes ? points[0] : undefined);
    if (!b || distance(a, b) < 4 * reach) return [];
    return [{ part: 'new corner', index: i + 1, at: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] }];
  });
  return [...corners, ...between];
}

function lineGrips(feature: FeatureOf<'wall' | 'hedge' | 'screen' | 'eye'>, reach: number): readonly Grip[] {
  return [...cornerGrips(feature.path, false, reach), ...(feature.path.length > 1 ? [turnGrip(feature, reach)] : [])];
}

function offOf(reach: number): number {
  return Math.max(GRIP_OFF, 2.5 * reach);
}

function turnGrip(feature: Feature, reach: number): Grip {
  const line = centreLine(feature);
  const { minX, maxX, maxY } = boundsOf(line);
  return { part: 'turn', at: [(minX + maxX) / 2, maxY + offOf(reach)] };
}

/** What a thing is turned about: the middle of the box around it. */
function pivotOf(feature: Feature): PlanPoint {
  if (feature.kind === 'canopy') return feature.center;
  const { minX, minY, maxX, maxY } = boundsOf(centreLine(feature));
  return [(minX + maxX) / 2, (minY + maxY) / 2];
}

/**
 * The plan with a grip of a feature taken to another place: what a drag shows, two taps do and nothing else decides.
 */
export function takeGrip(plan: Plan, id: string, grip: Grip, to: PlanPoint): Plan {
  const whose = id === YARD_EDGE ? 'boundary' : { feature: id };
  if (grip.part === 'corner') return moveCorner(plan, whose, grip.index, to);
  if (grip.part === 'new corner') return insertCorner(plan, whose, grip.index, to);
  const feature = featureOf(plan, id);
  if (!feature) return plan;
  switch (grip.part) {
    case 'whole':
      return moveFeature(plan, id, [to[0] - grip.at[0], to[1] - grip.at[1]]);
    case 'roof corner':
      return feature.kind === 'canopy' ? changeFeature(plan, id, roofTo(feature, grip.index, to)) : plan;
    case 'width': {
      if (feature.kind !== 'tree' && feature.kind !== 'plant') return plan;
      const was = feature.kind === 'tree' ? feature.crownWidth : feature.spread;
      const half = distance(to, feature.at) - (distance(grip.at, feature.at) - was / 2);
      const width = Math.max(0.1, toMillimetre(2 * Math.round(half / DRAWING_GRID) * DRAWING_GRID));
      return changeFeature(plan, id, feature.kind === 'tree' ? { crownWidth: width } : { spread: width });
    }
    case 'turn':
      return turnFeature(plan, id, turnBy(pivotOf(feature), grip.at, to), pivotOf(feature));
    case 'height':
    case 'rise':
    case 'drop':
      return isCloth(feature) ? changeFeature(plan, id, clothBy(feature, grip, to)) : plan;
  }
}

/** Degrees clockwise from one direction to another, whole, and drawn to every 15th. */
function turnBy(pivot: PlanPoint, from: PlanPoint, to: PlanPoint): number {
  const turn = headingOf(pivot, to) - headingOf(pivot, from);
  const wide = 15 * Math.round(turn / 15);
  return Math.abs(turn - wide) <= 3 ? wide : Math.round(turn);
}

/** A roof with one corner elsewhere and the opposite one where it was. */
function roofTo(roof: Canopy, index: number, to: PlanPoint): Partial<Canopy> {
  const turn = turnOf(roof);
  const fixed = footprint(roof)[0][(index + 2) % 4];
  const [right, forward] = turned([to[0] - fixed[0], to[1] - fixed[1]], [0, 0], -turn);
  const width = Math.max(0.3, toMillimetre(Math.abs(right)));
  const length = Math.max(0.3, toMillimetre(Math.abs(forward)));
  const middle = turned([Math.sign(right || 1) * (width / 2), Math.sign(forward || 1) * (length / 2)], [0, 0], turn);
  return { width, length, center: [toMillimetre(fixed[0] + middle[0]), toMillimetre(fixed[1] + middle[1])] };
}
