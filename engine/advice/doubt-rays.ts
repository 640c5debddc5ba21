/**
 * Scorch doses and verdicts of a yard's plants on the heatwave day, cast with rays at the plants' points, and again for a plan in
 * which one input is off. Where a single shadow caster changed, its own rays are cast and everything else is reused.
 */
import { createPointCaster, type PointCaster } from '../cast/share.ts';
import { skyPasses, skyRays } from '../cast/sky.ts';
import { bedPlaces } from '../load/bed-load.ts';
import { cellCenter } from '../load/grid-of.ts';
import { type HeatDay, heatDayOf } from '../load/heat-day.ts';
import { isTooDark } from '../load/light-class.ts';
import { isEstablished, limitOf } from '../load/limit.ts';
import { plantPoints } from '../load/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../load/planted.ts';
import type { Nine, Outcome, Verdict } from '../load/types.ts';
import { milderBy, verdictOf } from '../load/verdict.ts';
import { nineAt, type Yard, yardOf } from '../load/yard.ts';
import { worthOf } from '../plan/defaults.ts';
import type { SpacePoint } from '../plan/geometry.ts';
import type { Plan, PlantRow } from '../plan/types.ts';
import { buildScene } from '../scene/build.ts';
import type { Crown, Scene } from '../scene/solids.ts';
import type { Weather } from '../sun/weather.ts';
import { createLeaves, type Leaves } from './doubt-leaves.ts';

/** A bed is judged at no more than this many of its cells, evenly spread. */
const BED_POINTS = 9;
const LASTS = 0.5 - 1e-9;

/** What the heatwave day does to one plant. */
export interface RayHarm {
  readonly id: string;
  readonly worth: number;
  /** Scorch dose, mean of its points. [K·h/day] */
  readonly dose: number;
  readonly verdict: Verdict;
}

export interface RayYard {
  readonly base: readonly RayHarm[];
  /** The same plants in the same order when the plan is this one instead: it differs from the yard's in one input. */
  under(shifted: Plan, feature: string | null): Outcome<readonly RayHarm[]>;
}

interface Judge {
  readonly feature: PlantFeature;
  readonly row: PlantRow;
  readonly limit: number;
  readonly points: readonly SpacePoint[];
  readonly own?: Crown;
}

/** The share of the beam in each sample, and of the sky, at one point. */
interface Lit {
  readonly shares: Float64Array;
  readonly sky: number;
}

/** Casters of the beam and of the sky for one scene. */
interface Casters {
  readonly beam: PointCaster;
  readonly sky: PointCaster;
}

const SKY_WEIGHT = skyRays().weight;

/** @returns the yard's plants that name their row, or why the heatwave day cannot be made */
export function createRayYard(plan: Plan, weather?: Weather): Outcome<RayYard> {
  const scene = buildScene(plan);
  const made = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!made.ok) return made;
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const heat = made.value;
  const casters = castersOf(scene, heat);
  const judges = judgesOf(plan, heat);
  const lit = judges.map(({ points, own }) => points.map((point) => litAt(casters, point, own)));
  const light = judges.map((judge) => topLight(season.value, judge));
  const leaves = createLeaves(heat);
  const harms = (with_: readonly Judge[], seen: readonly (readonly Lit[])[], table: Leaves, inPlan: Plan) =>
    with_.map((judge, k) => harmFrom(inPlan, heat, judge, seen[k], table, lightUnder(light[k], heat, lit[k], seen[k])));
  const shadeWithout = new Map<string, Casters>();
  const value: RayYard = {
    base: harms(judges, lit, leaves, plan),
    under(shifted, feature) {
      if (shifted.climate !== plan.climate) {
        const hot = heatDayOf(shifted, scene, { kind: 'heatwave' }, weather);
        return hot.ok ? { ok: true, value: harms(judges, lit, createLeaves(hot.value), shifted) } : hot;
      }
      const again = judgesOf(shifted, heat);
      if (shifted.features === plan.features && shifted.site === plan.site) return { ok: true, value: harms(again, lit, leaves, shifted) };
      const after = castersOf(buildScene(shifted), heat);
      const seen = again.map((judge, k) => {
        if (feature === null || judge.feature.id === feature) return judge.points.map((point) => litAt(after, point, judge.own));
        return lit[k];
      });
      if (feature !== null && casts(scene, feature)) {
        const alone = { before: onlyOf(scene, feature, heat), after: onlyOf(buildScene(shifted), feature, heat) };
        let without = shadeWithout.get(feature);
        if (!without) shadeWithout.set(feature, (without = castersOf(withoutOf(scene, feature), heat)));
        again.forEach((judge, k) => {
          if (judge.feature.id !== feature) seen[k] = judge.points.map((point, p) => relit(alone, without, point, judge.own, lit[k][p]));
        });
      }
      return { ok: true, value: harms(again, seen, leaves, shifted) };
    },
  };
  return { ok: true, value };
}

function castersOf(scene: Scene, heat: HeatDay): Casters {
  return { beam: createPointCaster(scene, heat.passes), sky: createPointCaster(scene, skyPasses(heat.state)) };
}

function judgesOf(plan: Plan, heat: HeatDay): Judge[] {
  return plantFeatures(plan).flatMap((feature): Judge[] => {
    const row = rowOf(plan, feature);
    if (!row) return [];
    const limit = limitOf(plan, feature, row, heat.day.date).celsius;
    if (feature.kind !== 'bed') {
      const { points, own } = plantPoints(plan, feature);
      return [{ feature, row, limit, points: points.map(({ point }) => point), own }];
    }
    const places = bedPlaces(plan, feature);
    if ('point' in places) return [{ feature, row, limit, points: [places.point] }];
    const { grid, indices } = places;
    const few = Math.min(BED_POINTS, indices.length);
    const points = Array.from({ length: few }, (_, n): SpacePoint => [...cellCenter(grid, indices[Math.floor(((n + 0.5) * indices.length) / few)]), grid.height]);
    return [{ feature, row, limit, points }];
  });
}

function litAt({ beam, sky }: Casters, point: SpacePoint, own?: Crown): Lit {
  return { shares: beam.sharesAt(point, own), sky: weighed(sky.sharesAt(point, own)) };
}

function weighed(shares: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < shares.length; k++) sum += shares[k] * SKY_WEIGHT[k];
  return sum;
}

function casts(scene: Scene, id: string): boolean {
  return scene.states.some((occluders) => occluders.some((occluder) => occluder.id === id));
}

function onlyOf(scene: Scene, id: string, heat: HeatDay): Casters {
  return castersOf({ ...scene, states: scene.states.map((occluders) => occluders.filter((occluder) => occluder.id === id)) }, heat);
}

function withoutOf(scene: Scene, id: string): Scene {
  return { ...scene, states: scene.states.map((occluders) => occluders.filter((occluder) => occluder.id !== id)) };
}

/** What a point gets once one caster's own shade has changed; the same object where it has not. */
function relit(alone: { readonly before: Casters; readonly after: Casters }, without: Casters, point: SpacePoint, own: Crown | undefined, was: Lit): Lit {
  const beam = alone.after.beam.sharesAt(point);
  const sky = alone.after.sky.sharesAt(point);
  const sameBeam = same(alone.before.beam.sharesAt(point), beam);
  const sameSky = same(alone.before.sky.sharesAt(point), sky);
  if (sameBeam && sameSky) return was;
  return {
    shares: sameBeam ? was.shares : times(without.beam.sharesAt(point, own), beam),
    sky: sameSky ? was.sky : weighed(times(without.sky.sharesAt(point, own), sky)),
  };
}

function same(a: Float64Array, b: Float64Array): boolean {
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return false;
  return true;
}

function times(into: Float64Array, by: Float64Array): Float64Array {
  for (let k = 0; k < into.length; k++) into[k] *= by[k];
  return into;
}

function harmFrom(plan: Plan, heat: HeatDay, { feature, row, limit }: Judge, lit: readonly Lit[], leaves: Leaves, light: Nine): RayHarm {
  const { hours, count } = heat.samples;
  const thirsty = leaves('thirsty', row);
  const watered = leaves('watered', row);
  let dose = 0;
  let thirstyHours = 0;
  let wateredHours = 0;
  for (const { shares, sky } of lit) {
    let thirstyRun = 0;
    let wateredRun = 0;
    for (let k = 0; k < count; k++) {
      const leaf = thirsty(k, shares[k], sky);
      if (leaf > limit) dose += (leaf - limit) * hours[k];
      thirstyRun = leaf >= limit ? thirstyRun + hours[k] : 0;
      wateredRun = watered(k, shares[k], sky) >= limit ? wateredRun + hours[k] : 0;
      thirstyHours = Math.max(thirstyHours, thirstyRun);
      wateredHours = Math.max(wateredHours, wateredRun);
    }
  }
  const inHeat = wateredHours >= LASTS ? 'will burn' : thirstyHours >= LASTS ? 'at risk' : 'fine';
  const verdict = verdictOf(inHeat, milderBy(row, isEstablished(plan, feature)), isTooDark(row, light));
  return { id: feature.id, worth: worthOf(feature), dose: dose / lit.length, verdict };
}

/** The season's light at the top; of a bed the mean of its points. */
function topLight(yard: Yard, { feature, points, own }: Judge): Nine {
  if (feature.kind !== 'bed') return nineAt(yard, points[0], own);
  const nines = points.map((point) => nineAt(yard, point));
  const mean = (key: keyof Nine) => nines.reduce((sum, nine) => sum + nine[key], 0) / nines.length;
  return { ...nines[0], sunHours: mean('sunHours'), dailyLight: mean('dailyLight') };
}

/** The season's light when what a plant gets on the heatwave day changes: by the same ratio. */
function lightUnder(light: Nine, heat: HeatDay, before: readonly Lit[], after: readonly Lit[]): Nine {
  if (before === after) return light;
  const hoursBefore = dayLight(heat, before[0]);
  const hoursAfter = dayLight(heat, after[0]);
  const ratio = (a: number, b: number) => (b > 0 ? a / b : 1);
  return { ...light, sunHours: light.sunHours * ratio(hoursAfter.sun, hoursBefore.sun), dailyLight: light.dailyLight * ratio(hoursAfter.all, hoursBefore.all) };
}

function dayLight(heat: HeatDay, { shares, sky }: Lit): { sun: number; all: number } {
  let sun = 0;
  let all = 0;
  for (let k = 0; k < shares.length; k++) {
    const { beam, diffuse, sinAltitude } = heat.moments[k];
    sun += shares[k] * heat.samples.hours[k];
    all += (shares[k] * beam * sinAltitude + sky * diffuse) * heat.samples.hours[k];
  }
  return { sun, all };
}
