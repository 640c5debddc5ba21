import { occluderShare } from '../cast/ray.ts';
import type { SpacePoint } from '../plan/geometry.ts';
import type { MonthDay, Plan, PlanPoint } from '../plan/types.ts';
import { buildScene, stateOf } from '../scene/build.ts';
import { planDirection } from '../scene/direction.ts';

/** An edge farther from a mark than this is not the one that was marked. [m] */
const FARTHEST = 6;
/** First and widest step outwards, and how much each is wider than the last. [m] */
const FIRST_STEP = 0.01;
const WIDEST_STEP = 0.1;
const WIDENING = 1.2;
const DIRECTIONS = 48;
/** Rounds of narrowing in on the nearest direction, and halvings along it. */
const ROUNDS = 12;
const HALVINGS = 30;

/** The sun at the minute of a mark. */
export interface MarkedSun {
  /** True. [°] */
  readonly azimuth: number;
  /** Apparent. [°] */
  readonly altitude: number;
  readonly monthDay: MonthDay;
}

/**
 * How far a point of the ground lies outside the shadow that one feature throws; negative inside it. [m]
 * @returns `null` where no edge of the shadow is within 6 m, or the sun is down
 */
export function outsideShadow(plan: Plan, feature: string, at: PlanPoint, { azimuth, altitude, monthDay }: MarkedSun): number | null {
  const scene = buildScene({ ...plan, features: plan.features.filter(({ id }) => id === feature) });
  const occluder = scene.states[stateOf(scene, monthDay)].find(({ id }) => id === feature);
  if (!occluder || altitude <= 0) return null;
  const sun: SpacePoint = planDirection(azimuth, altitude, scene.upBearing);
  const shaded = (x: number, y: number) => occluderShare(occluder, [x, y, 0], sun) < 1;
  const inside = shaded(at[0], at[1]);
  const reach = (direction: number, limit: number) => reachOf(shaded, inside, at, direction, limit);
  let nearest = Infinity;
  let toward = 0;
  for (let n = 0; n < DIRECTIONS; n++) {
    const direction = (2 * Math.PI * n) / DIRECTIONS;
    const found = reach(direction, Math.min(FARTHEST, nearest));
    if (found < nearest) [nearest, toward] = [found, direction];
  }
  if (nearest === Infinity) return null;
  for (let round = 0, aside = (2 * Math.PI) / DIRECTIONS; round < ROUNDS; round++, aside /= 2) {
    for (const direction of [toward - aside / 2, toward + aside / 2]) {
      const found = reach(direction, nearest);
      if (found < nearest) [nearest, toward] = [found, direction];
    }
  }
  return inside ? -nearest : nearest;
}

/** Distance from a point to where light turns to shade or back in one direction; ∞ beyond the limit. [m] */
function reachOf(shaded: (x: number, y: number) => boolean, inside: boolean, [x, y]: PlanPoint, direction: number, limit: number): number {
  const dx = Math.cos(direction);
  const dy = Math.sin(direction);
  let near = 0;
  for (let step = FIRST_STEP; near < limit; step = Math.min(WIDEST_STEP, step * WIDENING)) {
    let far = Math.min(limit, near + step);
    if (shaded(x + far * dx, y + far * dy) === inside) {
      near = far;
      continue;
    }
    for (let n = 0; n < HALVINGS; n++) {
      const middle = (near + far) / 2;
      if (shaded(x + middle * dx, y + middle * dy) === inside) near = middle;
      else far = middle;
    }
    return far;
  }
  return Infinity;
}
