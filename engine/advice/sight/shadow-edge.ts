import { shadowRingsOf } from '../../cast/drawn/shadow-rings.ts';
import { distance, nearestOnSegment, pointInRing } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Feature, MonthDay, PlanPoint } from '../../plan/types.ts';
import { occluderOn } from '../../scene/build.ts';
import { stretchesInside } from '../../scene/prism.ts';
import type { Ring } from '../../scene/solids.ts';

/** An edge farther from a mark than this is not the one that was marked. [m] */
const FARTHEST = 6;
/** Corners of a round shadow: of a crown of 4 m the edge is right to a millimetre. */
const ROUND = 96;
/** Parts of a shadow that leave no wider gap than this between them are one. [m] */
const JOIN = 1e-6;
const DIRECTIONS = 48;
/** Rounds of narrowing in on the nearest direction. */
const ROUNDS = 12;

/** The sun at the minute of a mark. */
export interface MarkedSun {
  /** True. [°] */
  readonly azimuth: number;
  /** Apparent. [°] */
  readonly altitude: number;
  readonly monthDay: MonthDay;
}

export interface EdgeFound {
  /** How far a point lies outside the shadow; negative inside it. [m] */
  readonly outside: number;
  /** Where the shadow's edge is nearest to the point. */
  readonly nearest: PlanPoint;
}

/**
 * How far a point of the ground lies outside the shadow that one feature throws.
 * @returns `null` where no edge of the shadow is within 6 m, or the sun is down
 */
export function edgeNear(
  feature: Feature,
  upBearing: number,
  at: PlanPoint,
  { azimuth, altitude, monthDay }: MarkedSun,
): EdgeFound | null {
  const occluder = occluderOn(feature, monthDay);
  if (occluder === null) return null;
  const rings = shadowRingsOf([occluder], azimuth, altitude, upBearing, 0, ROUND);
  const found = rings.some((ring) => pointInRing(at, ring)) ? fromInside(rings, at) : fromOutside(rings, at);
  return found !== null && Math.abs(found.outside) <= FARTHEST ? found : null;
}

function fromOutside(rings: readonly Ring[], at: PlanPoint): EdgeFound | null {
  let found: EdgeFound | null = null;
  for (const ring of rings) {
    for (let k = 0; k < ring.length; k++) {
      const nearest = nearestOnSegment(at, ring[k], ring[(k + 1) % ring.length]);
      const outside = distance(at, nearest);
      if (found === null || outside < found.outside) found = { outside, nearest };
    }
  }
  return found;
}

/** Ways out are looked for all round, then on both sides of the shortest. */
function fromInside(rings: readonly Ring[], at: PlanPoint): EdgeFound {
  let shortest = Infinity;
  let toward = 0;
  const look = (direction: number): void => {
    const way = wayOut(rings, at, direction);
    if (way < shortest) [shortest, toward] = [way, direction];
  };
  for (let n = 0; n < DIRECTIONS; n++) look((2 * Math.PI * n) / DIRECTIONS);
  for (let round = 0, aside = Math.PI / DIRECTIONS; round < ROUNDS; round++, aside /= 2) {
    const middle = toward;
    look(middle - aside);
    look(middle + aside);
  }
  return { outside: -shortest, nearest: [at[0] + shortest * Math.cos(toward), at[1] + shortest * Math.sin(toward)] };
}

/** How far it is from a point inside to the end of the shade in one direction. [m] */
function wayOut(rings: readonly Ring[], at: PlanPoint, direction: number): number {
  const start: SpacePoint = [at[0], at[1], 0];
  const beam: SpacePoint = [Math.cos(direction), Math.sin(direction), 0];
  const stretches = rings.flatMap((ring) => stretchesInside(ring, start, beam)).toSorted((a, b) => a[0] - b[0]);
  let end = 0;
  for (const [from, to] of stretches) if (from <= end + JOIN) end = Math.max(end, to);
  return end;
}
