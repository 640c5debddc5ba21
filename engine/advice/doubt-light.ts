/** What reaches many points of a yard on its heat days, and again when a single shadow caster is not as drawn. */
import type { Passes } from '../cast/passes.ts';
import { createPointCaster } from '../cast/share.ts';
import { skyPasses, skyRays } from '../cast/sky.ts';
import type { HeatDay } from '../load/heat-day.ts';
import type { SpacePoint } from '../plan/geometry.ts';
import type { Crown, Scene } from '../scene/solids.ts';

/** The share of each ray that reaches a point, and what of the sky does in each yearly state. */
export interface Lit {
  /** One a ray: the heat days' samples, one day after the other, then the sky's rays in each state. */
  readonly shares: Float64Array;
  /** Sky view, one a state of `HeatRays.states`. */
  readonly sky: readonly number[];
}

/** The rays by which a yard's heat days are judged, cast all at once. */
export interface HeatRays {
  readonly days: readonly HeatDay[];
  /** Index of each day's first sample among the rays. */
  readonly first: readonly number[];
  /** Yearly states of the yard on the days, each once, and which of them each day has. */
  readonly states: readonly number[];
  readonly stateOf: readonly number[];
  readonly passes: Passes;
}

const SKY = skyRays();

export function heatRaysOf(days: readonly HeatDay[]): HeatRays {
  const states = [...new Set(days.map(({ state }) => state))];
  const parts = [...days.map(({ passes }) => passes), ...states.map(skyPasses)];
  const count = parts.reduce((sum, part) => sum + part.count, 0);
  const passes = { count, azimuth: new Float64Array(count), altitude: new Float64Array(count), state: new Uint16Array(count) };
  const first: number[] = [];
  let at = 0;
  for (const part of parts) {
    first.push(at);
    passes.azimuth.set(part.azimuth, at);
    passes.altitude.set(part.altitude, at);
    passes.state.set(part.state, at);
    at += part.count;
  }
  return { days, first: first.slice(0, days.length), states, stateOf: days.map(({ state }) => states.indexOf(state)), passes };
}

/** Lights points of one scene. */
export interface Lighter {
  at(point: SpacePoint, own?: Crown): Lit;
}

export function createLighter(scene: Scene, rays: HeatRays): Lighter {
  const caster = createPointCaster(scene, rays.passes);
  return { at: (point, own) => litBy(caster.sharesAt(point, own), rays) };
}

/** What a point gets, and what each shadow caster alone lets through to it; one that takes nothing from it has no entry. */
export interface PartedLit extends Lit {
  readonly parts: ReadonlyMap<string, Float64Array>;
}

/** The plant's own crown among the parts: no feature has an empty id. */
const OWN = '';

/** Lights points of one scene caster by caster, so that one of them can be exchanged without casting the others again. */
export function createPartedLighter(scene: Scene, rays: HeatRays): { at(point: SpacePoint, own?: Crown): PartedLit } {
  const open = createPointCaster(filtered(scene, () => false), rays.passes);
  const clear = clearShares(scene, rays);
  const ids = new Set(scene.states.flatMap((occluders) => occluders.map(({ id }) => id)));
  const casters = [...ids].map((only) => ({ id: only, caster: createPointCaster(filtered(scene, (id) => id === only), rays.passes) }));
  return {
    at(point, own) {
      const parts = new Map<string, Float64Array>();
      for (const { id, caster } of casters) keepPart(parts, id, caster.sharesAt(point), clear);
      if (own !== undefined) keepPart(parts, OWN, open.sharesAt(point, own), clear);
      const shares = clear.slice();
      for (const part of parts.values()) for (let k = 0; k < shares.length; k++) shares[k] *= part[k];
      return { ...litBy(shares, rays), parts };
    },
  };
}

/** Lights points when one caster is not as drawn: its own rays are cast, what the others let through is known. */
export interface Relighter {
  /** @returns `was` itself where nothing of it changes */
  at(point: SpacePoint, was: PartedLit): Lit;
}

/** @param shifted the scene in which the feature alone differs */
export function createRelighter(shifted: Scene, feature: string, rays: HeatRays): Relighter {
  const alone = createPointCaster(filtered(shifted, (id) => id === feature), rays.passes);
  const clear = clearShares(shifted, rays);
  const now = new Float64Array(rays.passes.count);
  return {
    at(point, was) {
      alone.sharesAt(point, undefined, now);
      const before = was.parts.get(feature) ?? clear;
      if (same(now, before)) return was;
      const others = [...was.parts].flatMap(([id, part]) => (id === feature ? [] : [part]));
      const shares = was.shares.slice();
      for (let k = 0; k < shares.length; k++) {
        if (now[k] === before[k]) continue;
        let share = now[k];
        for (const part of others) share *= part[k];
        shares[k] = share;
      }
      return litBy(shares, rays);
    },
  };
}

/** What reaches any point that nothing of the yard stands before: the skyline is left. */
function clearShares(scene: Scene, rays: HeatRays): Float64Array {
  return createPointCaster(filtered(scene, () => false), rays.passes).sharesAt([0, 0, 0]);
}

export function castsShadow(scene: Scene, id: string): boolean {
  return scene.states.some((occluders) => occluders.some((occluder) => occluder.id === id));
}

function litBy(shares: Float64Array, { passes, states }: HeatRays): Lit {
  const begin = passes.count - states.length * SKY.count;
  const sky = states.map((_, state) => {
    const at = begin + state * SKY.count;
    let sum = 0;
    for (let k = 0; k < SKY.count; k++) sum += shares[at + k] * SKY.weight[k];
    return sum;
  });
  return { shares, sky };
}

function filtered(scene: Scene, keeps: (id: string) => boolean): Scene {
  return { ...scene, states: scene.states.map((occluders) => occluders.filter(({ id }) => keeps(id))) };
}

function same(a: Float64Array, b: Float64Array): boolean {
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return false;
  return true;
}

function keepPart(parts: Map<string, Float64Array>, id: string, part: Float64Array, clear: Float64Array): void {
  if (!same(part, clear)) parts.set(id, part);
}
