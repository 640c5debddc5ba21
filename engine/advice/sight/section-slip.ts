/**
 * When the low sun slips under a canopy to a point, and what more cloth would stop it, minute by minute through one
 * day.
 */

import type { Passes } from '../../cast/passes.ts';
import { createPointCaster } from '../../cast/points/point-caster.ts';
import { riseOf, turnOf, upBearingOf } from '../../plan/defaults.ts';
import { canopyEdge } from '../../plan/geometry/cloth-shapes.ts';
import { turned } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Canopy, DropSide, Plan } from '../../plan/types.ts';
import { MS_PER_MINUTE } from '../../plan/units/per-unit.ts';
import { buildScene, stateOf } from '../../scene/build.ts';
import { planDirection } from '../../scene/direction.ts';
import type { OwnCrown } from '../../scene/solids.ts';
import { sunPosition } from '../../sun/position.ts';
import type { SampleDay } from '../../sun/samples.ts';

/** Less of the beam than this is no sun. */
const NO_SUN = 0.05;
const SIDES: readonly DropSide[] = ['front', 'back', 'left', 'right'];

/** The sun of one minute. */
interface SunMinute {
  readonly ms: number;
  /** True. [°] */
  readonly azimuth: number;
  /** Apparent. [°] */
  readonly altitude: number;
}

/** A day's sun over a plan with one canopy taken apart from the rest. */
export interface CanopyDay {
  readonly minutes: readonly SunMinute[];
  /** Share of each minute's beam past everything but the canopy, and past the canopy alone. */
  sharesAt(point: SpacePoint, own?: OwnCrown): { readonly rest: Float64Array; readonly cloth: Float64Array };
  /** Towards each minute's sun. */
  readonly directions: readonly SpacePoint[];
}

/** Sun that reaches a point past the canopy that shades it at other hours. Indices into `minutes`, both included. */
export interface Slip {
  readonly first: number;
  readonly last: number;
}

/** How much more cloth stops the sun until some minute: either the roof carried on, or drops. [m] */
export interface Cure {
  /** Beyond each edge; 0 where none is needed. */
  readonly overhang: Readonly<Record<DropSide, number>>;
  /** Below each edge; 0 where none is needed. `null` where no drop can: the point does not stand under the roof. */
  readonly drops: Readonly<Record<DropSide, number>> | null;
}

export function canopyDayOf(plan: Plan, canopy: Canopy, day: SampleDay): CanopyDay {
  const { latitude, longitude } = plan.site;
  const minutes: SunMinute[] = [];
  for (let ms = day.startMs; ms < day.endMs; ms += MS_PER_MINUTE) {
    const { azimuth, altitude } = sunPosition(ms, latitude, longitude);
    if (altitude > 0) minutes.push({ ms, azimuth, altitude });
  }
  const castersOf = (features: Plan['features']) => {
    const scene = buildScene({ ...plan, features });
    const passes: Passes = {
      count: minutes.length,
      azimuth: Float64Array.from(minutes, ({ azimuth }) => azimuth),
      altitude: Float64Array.from(minutes, ({ altitude }) => altitude),
      state: new Uint16Array(minutes.length).fill(stateOf(scene, day.monthDay)),
    };
    return createPointCaster(scene, passes);
  };
  const rest = castersOf(plan.features.filter(({ id }) => id !== canopy.id));
  const cloth = castersOf([canopy]);
  return {
    minutes,
    sharesAt: (point, own) => ({ rest: rest.sharesAt(point, own), cloth: cloth.sharesAt(point) }),
    directions: minutes.map(({ azimuth, altitude }) => planDirection(azimuth, altitude, upBearingOf(plan))),
  };
}

/**
 * The sun that comes in under the cloth in the evening, after the cloth has stopped it for the last time; in the
 * morning, before it does for the first time. `null` where the cloth never shades the point, or nothing of the sun is
 * left then.
 */
export function slipOf(day: CanopyDay, point: SpacePoint, half: 'evening' | 'morning', own?: OwnCrown): Slip | null {
  const { rest, cloth } = day.sharesAt(point, own);
  const shaded = (k: number) => cloth[k] < 1 && rest[k] > NO_SUN;
  const lit = (k: number) => rest[k] > NO_SUN && cloth[k] >= 1;
  const count = day.minutes.length;
  const order = Array.from({ length: count }, (_, n) => (half === 'evening' ? n : count - 1 - n));
  const turn = order.findLastIndex(shaded);
  if (turn < 0) return null;
  const after = order.slice(turn + 1).filter(lit);
  if (after.length === 0) return null;
  return { first: Math.min(after[0], after[after.length - 1]), last: Math.max(after[0], after[after.length - 1]) };
}

/** What more cloth keeps the sun of some minutes from a point. */
export function cureOf(canopy: Canopy, day: CanopyDay, point: SpacePoint, minutes: readonly number[]): Cure {
  const overhang = noCloth();
  const drops = noCloth();
  let under = true;
  const [right, forward] = inFrame(canopy, point);
  if (Math.abs(right) > canopy.width / 2 || Math.abs(forward) > canopy.length / 2) under = false;
  for (const k of minutes) {
    const [dx, dy, dz] = day.directions[k];
    const [dRight, dForward] = inFrame(canopy, [canopy.center[0] + dx, canopy.center[1] + dy, dz]);
    grow(overhang, beyond(canopy, point[2], [right, forward], [dRight, dForward, dz]));
    if (under) grow(drops, below(canopy, point[2], [right, forward], [dRight, dForward, dz]));
  }
  return { overhang, drops: under ? drops : null };
}

type Lengths = Record<DropSide, number>;

function noCloth(): Lengths {
  return { front: 0, back: 0, left: 0, right: 0 };
}

function grow(most: Lengths, more: Readonly<Lengths>): void {
  for (const side of SIDES) most[side] = Math.max(most[side], more[side]);
}

/** A point in the canopy's own axes: to the right and forward of its centre. [m] */
function inFrame(canopy: Canopy, [x, y]: SpacePoint): [right: number, forward: number] {
  const [u, v] = turned([x, y], canopy.center, -turnOf(canopy));
  return [u - canopy.center[0], v - canopy.center[1]];
}

/** How far beyond each edge the ray meets the roof's plane. */
function beyond(
  canopy: Canopy,
  z: number,
  [right, forward]: readonly [number, number],
  [dRight, dForward, dz]: SpacePoint,
): Lengths {
  const slope = riseOf(canopy) / canopy.length;
  const over = canopy.height + slope * (forward + canopy.length / 2) - z;
  const climb = dz - slope * dForward;
  // A ray that never climbs to the plane is stopped by no roof, however long.
  const reach = climb > 0 ? Math.max(0, over / climb) : Infinity;
  const r = right + reach * dRight;
  const f = forward + reach * dForward;
  return {
    front: Math.max(0, f - canopy.length / 2),
    back: Math.max(0, -f - canopy.length / 2),
    left: Math.max(0, -r - canopy.width / 2),
    right: Math.max(0, r - canopy.width / 2),
  };
}

/** How far below the edge by which it leaves the footprint the ray passes. */
function below(
  canopy: Canopy,
  z: number,
  [right, forward]: readonly [number, number],
  [dRight, dForward, dz]: SpacePoint,
): Lengths {
  const toSide = dRight === 0 ? Infinity : (Math.sign(dRight) * (canopy.width / 2) - right) / dRight;
  const toEnd = dForward === 0 ? Infinity : (Math.sign(dForward) * (canopy.length / 2) - forward) / dForward;
  const reach = Math.min(toSide, toEnd);
  const side: DropSide = toSide < toEnd ? (dRight > 0 ? 'right' : 'left') : dForward > 0 ? 'front' : 'back';
  const [a, b] = canopyEdge(canopy, side);
  const along = side === 'left' || side === 'right' ? (forward + reach * dForward) / canopy.length + 0.5 : 0;
  // The ends of the left edge run from front to back, those of the right edge from back to front.
  const edge = side === 'left' ? b[2] + along * (a[2] - b[2]) : a[2] + along * (b[2] - a[2]);
  return { ...noCloth(), [side]: Math.max(0, edge - (z + reach * dz)) };
}
