/** Where doubt judges each plant of a yard, and against which limit. */

import { cellCenter } from '../../load/light/grid-of.ts';
import { bedPlaces } from '../../load/verdict/bed-load.ts';
import { limitOf } from '../../load/verdict/limit.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Bed, Feature, Plan, PlantRow } from '../../plan/types.ts';
import type { OwnCrown } from '../../scene/solids.ts';
import type { Heats } from './heats.ts';

/** A bed is judged at no more than this many of its cells, evenly spread. */
const BED_POINTS = 9;

/** A plant, and where it is judged: a plant's top first. */
export interface Judge {
  readonly feature: PlantFeature;
  readonly row: PlantRow;
  /** [°C] */
  readonly limit: number;
  readonly points: readonly SpacePoint[];
  readonly own?: OwnCrown;
}

export function judgesOf(plan: Plan, heats: Heats): Judge[] {
  return plantFeatures(plan).flatMap((feature): Judge[] => {
    const row = rowOf(plan, feature);
    return row ? [judgeOf(plan, heats, feature, row)] : [];
  });
}

function judgeOf(plan: Plan, { rays, heatwave }: Heats, feature: PlantFeature, row: PlantRow): Judge {
  const limit = limitOf(plan, feature, row, rays.days[heatwave].day.date).celsius;
  if (feature.kind === 'bed') return { feature, row, limit, points: bedPoints(plan, feature) };
  const { points, own } = plantPoints(plan, feature);
  return { feature, row, limit, points: points.map(({ point }) => point), own };
}

function bedPoints(plan: Plan, bed: Bed): SpacePoint[] {
  const places = bedPlaces(plan, bed);
  if ('point' in places) return [places.point];
  const { grid, indices } = places;
  const few = Math.min(BED_POINTS, indices.length);
  return Array.from({ length: few }, (_, n): SpacePoint => [
    ...cellCenter(grid, indices[Math.floor(((n + 0.5) * indices.length) / few)]),
    grid.height,
  ]);
}

/** The same judge where it is not about the feature that changed; a wall or a building may come to stand in a bed. */
export function judgeUnder(shifted: Plan, heats: Heats, judge: Judge, changed: Feature): Judge {
  if (judge.feature.id === changed.id)
    return judgeOf(
      shifted,
      heats,
      plantFeatures(shifted).find(({ id }) => id === changed.id) ?? judge.feature,
      judge.row,
    );
  if (judge.feature.kind !== 'bed' || (changed.kind !== 'wall' && changed.kind !== 'building')) return judge;
  const again = judgeOf(shifted, heats, judge.feature, judge.row);
  return samePoints(again.points, judge.points) ? judge : again;
}

function samePoints(a: readonly SpacePoint[], b: readonly SpacePoint[]): boolean {
  return a.length === b.length && a.every((point, p) => point.every((value, axis) => value === b[p][axis]));
}
