/** What reaches many points of a yard on its heat days, and again when a single shadow caster is not as drawn. */
import { type Directions, directionsOf, type Passes } from '../../cast/passes.ts';
import { createDirectionCaster } from '../../cast/share.ts';
import { skyPasses, skyRays } from '../../cast/sky.ts';
import type { HeatDay } from '../../load/leaf/heat-day.ts';
import type { Surroundings } from '../../load/leaf/surroundings.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Feature } from '../../plan/types.ts';
import { sceneOfOne } from '../../scene/build.ts';
import type { Crown, Scene } from '../../scene/solids.ts';

/** What reaches a point. */
export interface Lit {
  /** Share of each ray: the heat days' samples, one day after the other, then the sky's rays in each state. */
  readonly shares: Float64Array;
  /** Of them the samples of each heat day. */
  readonly ofDay: readonly Float64Array[];
  /** One a heat day; days in the same yearly state share theirs. */
  readonly around: readonly Surroundings[];
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
  const passes = {
    count,
    azimuth: new Float64Array(count),
    altitude: new Float64Array(count),
    state: new Uint16Array(count),
  };
  const first: number[] = [];
  let at = 0;
  for (const part of parts) {
    first.push(at);
    passes.azimuth.set(part.azimuth, at);
    passes.altitude.set(part.altitude, at);
    passes.state.set(part.state, at);
    at += part.count;
  }
  return {
    days,
    first: first.slice(0, days.length),
    states,
    stateOf: days.map(({ state }) => states.indexOf(state)),
    passes,
  };
}

/**
 * What a point gets, and what each shadow caster alone lets through to it; one that takes nothing from it has no entry.
 */
interface PartedLit extends Lit {
  readonly parts: ReadonlyMap<string, Float64Array>;
}

/** The plant's own crown among the parts: no feature has an empty id. */
const OWN = '';

/**
 * Lights points of one scene caster by caster, so that one of them can be exchanged without casting the others again.
 */
export interface PartedLighter {
  at(point: SpacePoint, own?: Crown): PartedLit;
  /** Lights points when one feature is another and the rest of the scene is as it was. */
  exchanging(feature: Feature): Relighter;
}

/** Casts the rays of one feature anew; what the others let through is known. */
interface Relighter {
  /** @returns `was` itself where nothing of it changes; else what holds until the next question */
  at(point: SpacePoint, was: PartedLit): Lit;
}

/** Lights points of a scene as it is. What it answers holds until the next question. */
export function createLighter(scene: Scene, rays: HeatRays): { at(point: SpacePoint, own?: Crown): Lit } {
  const caster = createDirectionCaster(scene, directionsOf(scene, rays.passes));
  const lit = emptyLit(rays);
  return {
    at(point, own) {
      caster.sharesAt(point, own, lit.shares);
      sumSky(rays, lit);
      return lit;
    },
  };
}

export function createPartedLighter(scene: Scene, rays: HeatRays): PartedLighter {
  const directions = directionsOf(scene, rays.passes);
  const open = createDirectionCaster({ ...scene, states: scene.states.map(() => []) }, directions);
  // What reaches a point that nothing of the yard stands before: the skyline is left.
  const clear = open.sharesAt([0, 0, 0]);
  const ids = new Set(scene.states.flatMap((occluders) => occluders.map(({ id }) => id)));
  const casters = [...ids].map((only) => ({
    id: only,
    caster: createDirectionCaster(sceneOf(scene, only), directions),
  }));
  return {
    at(point, own) {
      const parts = new Map<string, Float64Array>();
      const keep = (id: string, part: Float64Array) => void (same(part, clear) || parts.set(id, part));
      for (const { id, caster } of casters) keep(id, caster.sharesAt(point));
      if (own !== undefined) keep(OWN, open.sharesAt(point, own));
      const lit = emptyLit(rays);
      lit.shares.set(clear);
      for (const part of parts.values()) for (let k = 0; k < part.length; k++) lit.shares[k] *= part[k];
      sumSky(rays, lit);
      return { ...lit, parts };
    },
    exchanging: (feature) => relighter(scene, feature, rays, directions, clear),
  };
}

function relighter(
  scene: Scene,
  feature: Feature,
  rays: HeatRays,
  directions: Directions,
  clear: Float64Array,
): Relighter {
  const alone = createDirectionCaster(sceneOfOne(scene, feature), directions);
  const now = new Float64Array(directions.count);
  const lit = emptyLit(rays);
  return {
    at(point, was) {
      alone.sharesAt(point, undefined, now);
      const before = was.parts.get(feature.id) ?? clear;
      if (same(now, before)) return was;
      const others = [...was.parts].flatMap(([id, part]) => (id === feature.id ? [] : [part]));
      const { shares } = lit;
      for (let k = 0; k < shares.length; k++) {
        let share = now[k];
        if (share === before[k]) share = was.shares[k];
        else for (const part of others) share *= part[k];
        shares[k] = share;
      }
      sumSky(rays, lit);
      return lit;
    },
  };
}

/** A point's light while it is being worked out. */
interface Lighting extends Lit {
  /** One a state of `HeatRays.states`: what `around` shows of each day. */
  readonly inState: readonly { sky: number }[];
}

function emptyLit({ passes, states, stateOf, days, first }: HeatRays): Lighting {
  const shares = new Float64Array(passes.count);
  const inState = states.map(() => ({ sky: 0 }));
  return {
    shares,
    ofDay: days.map(({ samples }, d) => shares.subarray(first[d], first[d] + samples.count)),
    around: stateOf.map((state) => inState[state]),
    inState,
  };
}

function sumSky({ passes, states }: HeatRays, { shares, inState }: Lighting): void {
  const begin = passes.count - states.length * SKY.count;
  for (let state = 0; state < states.length; state++) {
    const at = begin + state * SKY.count;
    let sum = 0;
    for (let k = 0; k < SKY.count; k++) sum += shares[at + k] * SKY.weight[k];
    inState[state].sky = sum;
  }
}

function sceneOf(scene: Scene, only: string): Scene {
  return { ...scene, states: scene.states.map((occluders) => occluders.filter(({ id }) => id === only)) };
}

function same(a: Float64Array, b: Float64Array): boolean {
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return false;
  return true;
}
