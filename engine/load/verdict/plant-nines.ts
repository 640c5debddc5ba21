import { Kept } from '../../plan/kept.ts';
import type { Plant, Tree } from '../../plan/types.ts';
import type { Nine } from '../types.ts';
import { nineAt, type Yard } from '../yard.ts';
import { nineOfBed } from './bed-load.ts';
import { plantPoints } from './plant-points.ts';
import type { PlantFeature } from './planted.ts';

const known = new Kept<readonly Nine[]>();

/** Where a plant's light is judged: at its top, a bed in its mean. */
export function lightOn(season: Yard, feature: PlantFeature): Nine {
  if (feature.kind === 'bed') return nineOfBed(season, feature);
  const { points, own } = plantPoints(season.plan, feature);
  return nineAt(season, points[0].point, own);
}

/** The nine quantities at each point of a plant or a tree, the top first, once a period. */
export function ninesOf(yard: Yard, feature: Plant | Tree): readonly Nine[] {
  return known.of([yard.sky, yard.samples, feature], '', () => {
    const { points, own } = plantPoints(yard.plan, feature);
    return points.map(({ point }) => nineAt(yard, point, own));
  });
}
