import { computed } from '@preact/signals';
import { canopyHeightOver, footprintOf, whatStandsAt, type Cloth, isCloth } from '../../../engine/index.ts';
import type { Feature, PlanPoint } from '../../../engine/index.ts';
import { drawnPlan } from '../../map/drawing/drawn-plan.ts';
import { calledOf } from '../../map/drawing/feature-edits.ts';
import { openOption } from '../parts/tried.ts';

/** A post that cannot stand where it is. */
export interface BarredPost {
  readonly at: PlanPoint;
  readonly cloth: string;
  /** What is in its way. */
  readonly by: string;
}

/** A plant that is taller than the cloth over it. */
export interface LowRoof {
  readonly plant: string;
  readonly cloth: string;
}

/** Cloth that the open option brings, where it is now, also while it is dragged. */
const clothNow = computed<readonly Cloth[]>(() => {
  const brought = new Set(openOption.value?.adds?.map(({ id }) => id));
  return drawnPlan.value.features.filter((feature): feature is Cloth => isCloth(feature) && brought.has(feature.id));
});

export const postsInTheWay = computed<readonly BarredPost[]>(() =>
  clothNow.value.flatMap((cloth) =>
    // Posts between the corners are the builder's to shift.
    cornerPosts(cloth).flatMap((at) => {
      const by = whatStandsAt(drawnPlan.value, at);
      return by === undefined ? [] : [{ at, cloth: calledOf(cloth), by }];
    }),
  ),
);

/** Corners that stand on posts: on a wall the back two do not. */
function cornerPosts(cloth: Cloth): readonly PlanPoint[] {
  const corners = footprintOf(cloth);
  return cloth.kind === 'canopy' && cloth.onWall === true ? [corners[0], corners[3]] : corners;
}

/** Roofs that hang lower than a plant under them is tall. */
export const lowRoofs = computed<readonly LowRoof[]>(() =>
  clothNow.value.flatMap((cloth) =>
    cloth.kind === 'screen'
      ? []
      : drawnPlan.value.features.flatMap((feature) => {
          const top = topOf(feature);
          const hangs = top && canopyHeightOver(cloth, top.at);
          return top && hangs !== null && top.height > hangs
            ? [{ plant: calledOf(feature), cloth: calledOf(cloth) }]
            : [];
        }),
  ),
);

function topOf(feature: Feature): { readonly at: PlanPoint; readonly height: number } | null {
  return feature.kind === 'plant' || (feature.kind === 'tree' && feature.plant !== undefined)
    ? { at: feature.at, height: feature.height }
    : null;
}
