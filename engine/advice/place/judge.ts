/** What a potted plant would get wherever it might stand, fast enough to ask at a thousand places. */

import { createPointCaster } from '../../cast/points/point-caster.ts';
import { createDoser } from '../../load/leaf/doses.ts';
import { type HeatDay, heatDayOf, heatDaysOf } from '../../load/leaf/heat-day.ts';
import { surroundingsOn } from '../../load/leaf/surroundings-at.ts';
import { createWallsRound, ONE_RAY_IN, type WallsRound } from '../../load/leaf/walls/walls-round.ts';
import { leastLight, lightStanding } from '../../load/light/light-class.ts';
import { createSkyViewer, type SkyViewer } from '../../load/light/sky-viewer.ts';
import { rootsOf } from '../../load/pot/pot-load.ts';
import type { Outcome, Roots } from '../../load/types.ts';
import { plantHarm } from '../../load/verdict/harm-of.ts';
import { limitOf } from '../../load/verdict/limit.ts';
import { type PlantPoints, plantPoints } from '../../load/verdict/plant-points.ts';
import { nineAt, type Yard, yardOf } from '../../load/yard.ts';
import type { Plan, PlanPoint, Plant, PlantRow } from '../../plan/types.ts';
import { buildScene } from '../../scene/build.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { PlantLight } from '../compare/types.ts';
import { winterDayOf, withWinter } from './winter-day.ts';

export interface PotJudge {
  /** Mean scorch dose over the season's heat days. [K·h/day] */
  harmAt(place: PlanPoint): number;
  /**
   * The same from fewer points and rays, for the few among many places that are worth asking in full.
   * @param instead id of a plant that makes room for it
   */
  roughHarmAt(place: PlanPoint, instead?: string): number;
  /** At its top, season means. */
  lightAt(place: PlanPoint): PlantLight;
  /** Clear-sky sun at its top on the winter day. [h] */
  winterAt(place: PlanPoint): number;
  /** In its pot, on the heatwave day. */
  rootsAt(place: PlanPoint): Roots;
  /** The yard with the pot there. */
  movedTo(place: PlanPoint): PotYard;
}

/** A yard with the pot at some place, over the season and on the heatwave day. */
interface PotYard {
  readonly yard: Yard;
  readonly pot: Plant;
  readonly heats: readonly HeatDay[];
  readonly heatwave: HeatDay;
}

/** Judges of a yard's pots: what does not depend on the pot is laid out once. */
export interface PotJudges {
  of(plant: Plant, row: PlantRow): PotJudge;
  /** The yard's, as they are looked at for a rough judgement. */
  readonly walls: WallsRound;
}

/**
 * @param like of a yard in which no more than a pot stands elsewhere: what shines on the walls is roughly as there
 * @returns the judges, or why a day of the year cannot be made
 */
export function createPotJudges(plan: Plan, weather?: Weather, like?: PotJudges): Outcome<PotJudges> {
  const scene = buildScene(plan);
  const heats = heatDaysOf(plan, scene, weather);
  if (!heats.ok) return heats;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const winter = yardOf(withWinter(plan), { kind: 'day', date: winterDayOf(plan) });
  if (!winter.ok) return winter;
  const walls = createWallsRound(scene, { near: like?.walls }, ONE_RAY_IN);
  const rough = createSkyViewer(scene, walls);
  const yards = { heats: heats.value, heatwave: heatwave.value, season: season.value, winter: winter.value, rough };
  return { ok: true, value: { of: (plant, row) => potJudge(plan, plant, row, yards), walls } };
}

interface Yards {
  readonly heats: readonly HeatDay[];
  readonly heatwave: HeatDay;
  readonly season: Yard;
  readonly winter: Yard;
  /** Looks at the walls along fewer rays. */
  readonly rough: SkyViewer;
}

function potJudge(plan: Plan, plant: Plant, row: PlantRow, yards: Yards): PotJudge {
  const { heats, heatwave, season, winter, rough } = yards;
  const limit = limitOf(plan, plant, row, heatwave.day.date).celsius;
  const pointsAt = (place: PlanPoint) => plantPoints(plan, { ...plant, at: place });
  const doser = createDoser(rough.scene, heats, row, limit);
  const moved = new Map<string, PotYard>();
  const movedTo = (place: PlanPoint): PotYard => {
    const key = place.join(' ');
    let there = moved.get(key);
    if (!there) moved.set(key, (there = yardWithPot(season, { ...plant, at: place }, heats, heatwave)));
    return there;
  };
  const roughHarm = ({ points, own }: PlantPoints): number => {
    let dose = 0;
    for (const { point } of points)
      for (const each of doser.at(point, surroundingsOn(rough, heats, point, own), own)) dose += each;
    return dose / points.length / heats.length;
  };
  return {
    movedTo,
    harmAt(place) {
      const { yard, pot, heats: days } = movedTo(place);
      return plantHarm(yard.plan, yard.scene, yard.sky, days, heatwave.day.date, pot)?.harm ?? 0;
    },
    rootsAt(place) {
      const { yard, pot, heatwave: day } = movedTo(place);
      return rootsOf(yard.plan, yard.sky, day, pot);
    },
    roughHarmAt(place, instead = plant.id) {
      const { points, own } = everyOther(pointsAt(place));
      return roughHarm({ points, own: own && { ...own, of: instead } });
    },
    lightAt(place) {
      const { points, own } = pointsAt(place);
      const { sunHours, dailyLight } = nineAt(season, points[0].point, own);
      return { sunHours, dailyLight, least: leastLight(row), standing: lightStanding(row, dailyLight) };
    },
    winterAt(place) {
      const { points, own } = pointsAt(place);
      return nineAt(winter, points[0].point, own).sunHours;
    },
  };
}

function yardWithPot(season: Yard, pot: Plant, heats: readonly HeatDay[], heatwave: HeatDay): PotYard {
  const plan = {
    ...season.plan,
    features: season.plan.features.map((feature) => (feature.id === pot.id ? pot : feature)),
  };
  const scene = buildScene(plan);
  const dayIn = (heat: HeatDay): HeatDay => ({ ...heat, caster: createPointCaster(scene, heat.passes) });
  const yard = { ...season, plan, scene, caster: createPointCaster(scene, season.passes), sky: createSkyViewer(scene) };
  return { yard, pot, heats: heats.map(dayIn), heatwave: dayIn(heatwave) };
}

/** The top and four of the eight bearings. */
function everyOther({ points, own }: PlantPoints): PlantPoints {
  return { points: points.filter((_, k) => k === 0 || k % 2 === 1), own };
}
