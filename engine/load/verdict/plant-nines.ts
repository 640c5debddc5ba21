import { Kept } from '../../plan/kept.ts';
import type { Plant, Tree } from '../../plan/types.ts';
import type { Nine } from '../types.ts';
import { nineAt, type Yard } from '../yard.ts';
import { plantPoints } from './plant-points.ts';

const known = new Kept<readonly Nine[]>();

/** The nine quantities at each point of a plant or a tree, the top first, once a period. */
export function ninesOf(yard: Yard, feature: Plant | Tree): readonly Nine[] {
  return known.of([yard.sky, yard.samples, feature], '', () => {
    const { points, own } = plantPoints(yard.plan, feature);
    return points.map(({ point }) => nineAt(yard, point, own));
  });
}
