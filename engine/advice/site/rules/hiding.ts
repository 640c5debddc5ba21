import type { GridSpec } from '../../../cast/grids/grid-spec.ts';
import { cellCenter, gridOf, maskOf } from '../../../load/light/grid-of.ts';
import { plantFeatures } from '../../../load/verdict/planted.ts';
import { distance, openRing } from '../../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../../plan/geometry/shapes.ts';
import type { Canopy, Plan, PlanPoint, Screen } from '../../../plan/types.ts';
import { hiddenHeightAt, hiddenHeightGrid, sightLinesOf } from '../../sight/hidden-height.ts';
import { hungOf } from '../kinds/hung.ts';
import { distanceToShape } from '../shapes.ts';

/** Edges of cloth are looked at in steps of at most this. [m] */
const LOOK_STEP = 0.5;
/** Cloth for a plant hangs within this of it. Our choice. [m] */
const NEAR_PLANTS = 2;
/**
 * An eye from which less than this share of the ground near the plants hides the lowest cloth asked for sees
 * everything. Our choice.
 */
const SEES_ALL_BUT = 0.05;
const ROUNDING = 1e-6;

export interface Hiding {
  /** Eyes that look in on nearly all the ground near the plants, whatever is done: they bind nothing. */
  readonly impossible: readonly string[];
  /** Eyes that the cloth must be hidden from. */
  readonly from: readonly string[];
  /** How tall a thing may stand unseen by those at a point. [m] */
  heightAt(at: PlanPoint): number;
  isHidden(cloth: Canopy | Screen): boolean;
}

/** @param lowest The lowest cloth that is searched. [m] */
export function hidingOf(plan: Plan, lowest: number): Hiding {
  const eyes = plan.features.filter((feature) => feature.kind === 'eye');
  const others = plan.features.filter((feature) => feature.kind !== 'eye');
  const grid = gridOf(plan, { cell: LOOK_STEP, height: 0 });
  const near = eyes.length > 0 ? groundNearPlants(plan, grid) : [];
  const impossible = eyes.filter((eye) => {
    const heights = hiddenHeightGrid(sightLinesOf({ ...plan, features: [...others, eye] }), grid);
    return near.filter((index) => heights[index] >= lowest).length < SEES_ALL_BUT * near.length;
  });
  const from = eyes.filter((eye) => !impossible.includes(eye));
  const sight = sightLinesOf({ ...plan, features: [...others, ...from] });
  return {
    impossible: impossible.map(({ id }) => id),
    from: from.map(({ id }) => id),
    heightAt: (at) => hiddenHeightAt(sight, at).height + ROUNDING,
    isHidden(cloth) {
      if (from.length === 0) return true;
      const hides = ([x, y, z]: SpacePoint) => hiddenHeightAt(sight, [x, y]).height >= z - ROUNDING;
      const edge = hungOf(cloth).edge();
      return edge.every(hides) && edge.every((a, k) => k === 0 || between(edge[k - 1], a).every(hides));
    },
  };
}

/** Cells of a grid on which cloth for one of the plants may hang. */
function groundNearPlants(plan: Plan, grid: GridSpec): number[] {
  const mask = maskOf(plan, grid);
  const shapes = plantFeatures(plan).map((feature) =>
    feature.kind === 'bed' ? openRing(feature.outline) : [feature.at, feature.at],
  );
  return Array.from(mask, (_, index) => index).filter(
    (index) =>
      mask[index] === 0 && shapes.some((shape) => distanceToShape(shape, [cellCenter(grid, index)]) <= NEAR_PLANTS),
  );
}

function between(a: SpacePoint, b: SpacePoint): SpacePoint[] {
  const steps = Math.ceil(distance([a[0], a[1]], [b[0], b[1]]) / LOOK_STEP);
  return Array.from({ length: Math.max(0, steps - 1) }, (_, k) => {
    const t = (k + 1) / steps;
    return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1]), a[2] + t * (b[2] - a[2])];
  });
}
