/** What a potted plant would get wherever it might stand, fast enough to ask at a thousand places. */
import { createDoser } from '../../load/leaf/doses.ts';
import { type HeatDay, heatDayOf, heatDaysOf } from '../../load/leaf/heat-day.ts';
import { surroundingsOn } from '../../load/leaf/surroundings-at.ts';
import { leastLight, lightStanding } from '../../load/light/light-class.ts';
import { limitOf } from '../../load/verdict/limit.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { createSkyViewer } from '../../load/light/sky-viewer.ts';
import { createWallsRound, ONE_RAY_IN } from '../../load/leaf/walls/walls-round.ts';
import type { Outcome } from '../../load/types.ts';
import { nineAt, type Yard, yardOf } from '../../load/yard.ts';
import type { Plan, PlanPoint, Plant, PlantRow } from '../../plan/types.ts';
import { buildScene } from '../../scene/build.ts';
import type { Weather } from '../../sun/weather.ts';
import type { PlantLight } from '../compare/types.ts';
import { winterDayOf, withWinter } from './winter-day.ts';

export interface PotJudge {
  /** Mean scorch dose over the season's heat days. [K·h/day] */
  harmAt(place: PlanPoint): number;
  /** At its top, season means. */
  lightAt(place: PlanPoint): PlantLight;
  /** Clear-sky sun at its top on the winter day. [h] */
  winterAt(place: PlanPoint): number;
  /** The yard over the season, and the heatwave day in it. */
  readonly season: Yard;
  readonly heatwave: HeatDay;
}

export function createPotJudge(plan: Plan, plant: Plant, row: PlantRow, weather?: Weather): Outcome<PotJudge> {
  const scene = buildScene(plan);
  const heats = heatDaysOf(plan, scene, weather);
  if (!heats.ok) return heats;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const winter = yardOf(withWinter(plan), { kind: 'day', date: winterDayOf(plan) });
  if (!winter.ok) return winter;
  const limit = limitOf(plan, plant, row, heatwave.value.day.date).celsius;
  const pointsAt = (place: PlanPoint) => plantPoints(plan, { ...plant, at: place });
  const doser = createDoser(scene, heats.value, row, limit);
  const sky = createSkyViewer(scene, createWallsRound(scene, undefined, ONE_RAY_IN));
  return {
    ok: true,
    value: {
      harmAt(place) {
        const { points, own } = pointsAt(place);
        let dose = 0;
        for (const { point } of points)
          for (const each of doser.at(point, surroundingsOn(sky, heats.value, point, own), own)) dose += each;
        return dose / points.length / heats.value.length;
      },
      lightAt(place) {
        const { points, own } = pointsAt(place);
        const { sunHours, dailyLight } = nineAt(season.value, points[0].point, own);
        return { sunHours, dailyLight, least: leastLight(row), standing: lightStanding(row, dailyLight) };
      },
      winterAt(place) {
        const { points, own } = pointsAt(place);
        return nineAt(winter.value, points[0].point, own).sunHours;
      },
      season: season.value,
      heatwave: heatwave.value,
    },
  };
}
