/**
 * Harm and verdicts of a yard's plants, cast with rays at the plants' points, and again for a plan in which one input is off.
 * Where a single shadow caster changed, its own rays are cast and everything else is reused.
 */
import { bedPlaces } from '../load/bed-load.ts';
import { cellCenter } from '../load/grid-of.ts';
import { type HeatDay, heatDayOf } from '../load/heat-day.ts';
import { heatDaysOf } from '../load/harm-of.ts';
import type { Watering } from '../load/leaf.ts';
import { isTooDark } from '../load/light-class.ts';
import { isEstablished, limitOf } from '../load/limit.ts';
import { plantPoints } from '../load/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../load/planted.ts';
import type { Nine, Outcome, Verdict } from '../load/types.ts';
import { type HeatVerdict, milderBy, verdictOf } from '../load/verdict.ts';
import { nineAt, type Yard, yardOf } from '../load/yard.ts';
import { worthOf } from '../plan/defaults.ts';
import type { SpacePoint } from '../plan/geometry.ts';
import type { Bed, Plan, PlantRow } from '../plan/types.ts';
import { buildScene } from '../scene/build.ts';
import type { Crown, Scene } from '../scene/solids.ts';
import type { Weather } from '../sun/weather.ts';
import { createLeaves, type Leaves } from './doubt-leaves.ts';
import {
  castsShadow, createLighter, createPartedLighter, createRelighter, type HeatRays, heatRaysOf, type Lit, type PartedLit, type Relighter,
} from './doubt-light.ts';

/** A bed is judged at no more than this many of its cells, evenly spread. */
const BED_POINTS = 9;
const LASTS = 0.5 - 1e-9;

/** What the season's heat does to one plant. */
export interface RayHarm {
  readonly id: string;
  readonly worth: number;
  /** Scorch dose, mean over the season's heat days. [K·h/day] */
  readonly harm: number;
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

/** The season's heat days, and which of them is the heatwave day. */
interface Heats {
  readonly rays: HeatRays;
  readonly heatwave: number;
  readonly leaves: readonly Leaves[];
}

/** @returns the yard's plants that name their row, or why a heat day cannot be made */
export function createRayYard(plan: Plan, weather?: Weather): Outcome<RayYard> {
  const scene = buildScene(plan);
  const heats = heatsOf(plan, scene, weather);
  if (!heats.ok) return heats;
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const { rays } = heats.value;
  const lighter = createPartedLighter(scene, rays);
  const judges = judgesOf(plan, heats.value);
  const lit = judges.map(({ points, own }) => points.map((point) => lighter.at(point, own)));
  const light = judges.map((judge) => topLight(season.value, judge));
  const baseAt = judges.map((judge, k) => lit[k].map((point) => sufferedAt(heats.value, judge, point)));
  const base = judges.map((judge, k) => harmFrom(plan, judge, baseAt[k], light[k]));
  /** Only points at which something changed are judged again. */
  const harmsOf = (inPlan: Plan, again: readonly Judge[], seen: readonly (readonly Lit[])[], by: Heats = heats.value) =>
    again.map((judge, k) => {
      const alike = judge === judges[k] && by === heats.value;
      if (alike && seen[k] === lit[k]) return base[k];
      const suffered = seen[k].map((point, p) => (alike && point === lit[k][p] ? baseAt[k][p] : sufferedAt(by, judge, point)));
      return harmFrom(inPlan, judge, suffered, lightUnder(light[k], heats.value, lit[k], seen[k]));
    });
  const value: RayYard = {
    base,
    under(shifted, feature) {
      if (shifted.climate !== plan.climate) {
        const hot = heatsOf(shifted, scene, weather);
        return hot.ok ? { ok: true, value: harmsOf(shifted, judges, lit, hot.value) } : hot;
      }
      if (shifted.features === plan.features && shifted.site === plan.site) {
        return { ok: true, value: harmsOf(shifted, judgesOf(shifted, heats.value), lit) };
      }
      if (feature === null) {
        const turned = createLighter(buildScene(shifted), rays);
        const again = judgesOf(shifted, heats.value);
        return { ok: true, value: harmsOf(shifted, again, again.map(({ points, own }) => points.map((point) => turned.at(point, own)))) };
      }
      const again = judges.map((judge) => judgeUnder(shifted, heats.value, judge, feature));
      const after = buildScene(shifted);
      const relighter = castsShadow(scene, feature) ? createRelighter(after, feature, rays) : null;
      const afresh = again.some((judge, k) => judge !== judges[k]) ? createLighter(after, rays) : null;
      const seen = again.map((judge, k) => {
        if (judge !== judges[k] && afresh) return judge.points.map((point) => afresh.at(point, judge.own));
        return relighter ? relit(relighter, judge, lit[k]) : lit[k];
      });
      return { ok: true, value: harmsOf(shifted, again, seen) };
    },
  };
  return { ok: true, value };
}

function heatsOf(plan: Plan, scene: Scene, weather?: Weather): Outcome<Heats> {
  const days = heatDaysOf(plan, scene, weather);
  if (!days.ok) return days;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const rays = heatRaysOf(days.value);
  const leaves = days.value.map(createLeaves);
  return { ok: true, value: { rays, heatwave: days.value.findIndex(({ day }) => day.date === heatwave.value.day.date), leaves } };
}

function judgesOf(plan: Plan, heats: Heats): Judge[] {
  return plantFeatures(plan).flatMap((feature): Judge[] => {
    const row = rowOf(plan, feature);
    return row ? [judgeOf(plan, heats, feature, row)] : [];
  });
}

function judgeOf(plan: Plan, { rays, heatwave }: Heats, feature: PlantFeature, row: PlantRow): Judge {
  const limit = limitOf(plan, feature, row, rays.days[heatwave].day.date).celsius;
  if (feature.kind === 'bed') return { feature, row, limit, points: bedPoints(plan, feature) };
  const { points, own } = plantPoints(plan, feature);
  return { feature, row, limit, points: points.map(({ point }) => point), own };
}

function bedPoints(plan: Plan, bed: Bed): SpacePoint[] {
  const places = bedPlaces(plan, bed);
  if ('point' in places) return [places.point];
  const { grid, indices } = places;
  const few = Math.min(BED_POINTS, indices.length);
  return Array.from({ length: few }, (_, n): SpacePoint => [...cellCenter(grid, indices[Math.floor(((n + 0.5) * indices.length) / few)]), grid.height]);
}

/** The same judge where it is not about the feature that changed; a wall or a building may come to stand in a bed. */
function judgeUnder(shifted: Plan, heats: Heats, judge: Judge, id: string): Judge {
  const changed = shifted.features.find((feature) => feature.id === id);
  if (judge.feature.id === id) return judgeOf(shifted, heats, plantFeatures(shifted).find((feature) => feature.id === id) ?? judge.feature, judge.row);
  if (judge.feature.kind !== 'bed' || (changed?.kind !== 'wall' && changed?.kind !== 'building')) return judge;
  const again = judgeOf(shifted, heats, judge.feature, judge.row);
  return samePoints(again.points, judge.points) ? judge : again;
}

function samePoints(a: readonly SpacePoint[], b: readonly SpacePoint[]): boolean {
  return a.length === b.length && a.every((point, p) => point.every((value, axis) => value === b[p][axis]));
}

/** The same list where none of its points gets anything else. */
function relit(relighter: Relighter, { points }: Judge, was: readonly PartedLit[]): readonly Lit[] {
  const now = points.map((point, p) => relighter.at(point, was[p]));
  return now.every((each, p) => each === was[p]) ? was : now;
}

/** What the heat does at one point. */
interface Suffered {
  /** Scorch doses, mean over the heat days. [K·h/day] */
  readonly dose: number;
  readonly inHeat: HeatVerdict;
}

function sufferedAt(heats: Heats, judge: Judge, lit: Lit): Suffered {
  const { days } = heats.rays;
  let doses = 0;
  for (let d = 0; d < days.length; d++) doses += doseAt(heats, d, judge, lit);
  const lasts = (watering: Watering) => longestOver(heats, watering, judge, lit) >= LASTS;
  return { dose: doses / days.length, inHeat: lasts('watered') ? 'will burn' : lasts('thirsty') ? 'at risk' : 'fine' };
}

function doseAt({ rays, leaves }: Heats, d: number, { row, limit }: Judge, { shares, sky }: Lit): number {
  const { hours, count } = rays.days[d].samples;
  const thirsty = leaves[d]('thirsty', row);
  const first = rays.first[d];
  const view = sky[rays.stateOf[d]];
  let dose = 0;
  for (let k = 0; k < count; k++) dose += Math.max(0, thirsty(k, shares[first + k], view) - limit) * hours[k];
  return dose;
}

/** A plant's harm is the mean of its points, its verdict that of the worst. */
function harmFrom(plan: Plan, { feature, row }: Judge, points: readonly Suffered[], light: Nine): RayHarm {
  const inHeat = (['will burn', 'at risk'] as const).find((verdict) => points.some((point) => point.inHeat === verdict)) ?? 'fine';
  const verdict = verdictOf(inHeat, milderBy(row, isEstablished(plan, feature)), isTooDark(row, light));
  return { id: feature.id, worth: worthOf(feature), harm: points.reduce((sum, { dose }) => sum + dose, 0) / points.length, verdict };
}

/** Longest time on end that a leaf is at its limit or over it on the heatwave day. [h] */
function longestOver({ rays, heatwave, leaves }: Heats, watering: Watering, { row, limit }: Judge, { shares, sky }: Lit): number {
  const { hours, count } = rays.days[heatwave].samples;
  const leaf = leaves[heatwave](watering, row);
  const first = rays.first[heatwave];
  const view = sky[rays.stateOf[heatwave]];
  let run = 0;
  let longest = 0;
  for (let k = 0; k < count; k++) {
    run = leaf(k, shares[first + k], view) >= limit ? run + hours[k] : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}

/** The season's light at the top; of a bed the mean of its points. */
function topLight(yard: Yard, { feature, points, own }: Judge): Nine {
  if (feature.kind !== 'bed') return nineAt(yard, points[0], own);
  const nines = points.map((point) => nineAt(yard, point));
  const mean = (key: keyof Nine) => nines.reduce((sum, nine) => sum + nine[key], 0) / nines.length;
  return { ...nines[0], sunHours: mean('sunHours'), dailyLight: mean('dailyLight') };
}

/** The season's light when what a plant gets on the heatwave day changes: by the same ratio. */
function lightUnder(light: Nine, heats: Heats, before: readonly Lit[], after: readonly Lit[]): Nine {
  if (before === after) return light;
  const was = dayLight(heats, before);
  const is = dayLight(heats, after);
  const ratio = (a: number, b: number) => (b > 0 ? a / b : 1);
  return { ...light, sunHours: light.sunHours * ratio(is.sun, was.sun), dailyLight: light.dailyLight * ratio(is.all, was.all) };
}

/** Of the heatwave day, at the first point: a plant's top. */
function dayLight({ rays, heatwave }: Heats, [{ shares, sky }]: readonly Lit[]): { sun: number; all: number } {
  const { moments, samples }: HeatDay = rays.days[heatwave];
  const first = rays.first[heatwave];
  const view = sky[rays.stateOf[heatwave]];
  let sun = 0;
  let all = 0;
  for (let k = 0; k < samples.count; k++) {
    const { beam, diffuse, sinAltitude } = moments[k];
    sun += shares[first + k] * samples.hours[k];
    all += (shares[first + k] * beam * sinAltitude + view * diffuse) * samples.hours[k];
  }
  return { sun, all };
}
