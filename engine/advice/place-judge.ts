/** What a potted plant would get wherever it might stand, fast enough to ask at a thousand places. */
import { type HeatDay, heatDayOf } from '../load/heat-day.ts';
import { heatDaysOf } from '../load/harm-of.ts';
import { isTooDark } from '../load/light-class.ts';
import { limitOf } from '../load/limit.ts';
import { plantPoints } from '../load/plant-points.ts';
import { createSkyViewer } from '../load/sky-viewer.ts';
import type { Outcome } from '../load/types.ts';
import { nineAt, yardOf } from '../load/yard.ts';
import type { MonthDay, Plan, PlanPoint, Plant, PlantRow } from '../plan/types.ts';
import { buildScene } from '../scene/build.ts';
import type { Weather } from '../sun/weather.ts';
import type { PlantLight } from './compare-types.ts';
import { createLeaves } from './doubt-leaves.ts';

export interface PotStand {
  /** Mean scorch dose over the season's heat days. [K·h/day] */
  readonly harm: number;
  readonly light: PlantLight;
}

export interface PotJudge {
  at(place: PlanPoint): PotStand;
  /** Clear-sky sun at its top on the winter day. [h] */
  winterAt(place: PlanPoint): number;
}

/** The middle of winter at a latitude. */
export function winterDayOf(plan: Plan): MonthDay {
  return plan.site.latitude >= 0 ? '01-15' : '07-15';
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
  const sky = createSkyViewer(scene);
  const days = heats.value.map((heat) => ({ heat, leaf: createLeaves(heat)('thirsty', row) }));
  const doseOf = ({ heat, leaf }: { heat: HeatDay; leaf: ReturnType<ReturnType<typeof createLeaves>> }, shares: Float64Array, view: number): number => {
    let dose = 0;
    for (let k = 0; k < shares.length; k++) dose += Math.max(0, leaf.at(k, shares[k], view) - limit) * heat.samples.hours[k];
    return dose;
  };
  return {
    ok: true,
    value: {
      at(place) {
        const { points, own } = plantPoints(plan, { ...plant, at: place });
        let dose = 0;
        for (const { point } of points) {
          const views = new Map<number, number>();
          for (const day of days) {
            const { state, caster } = day.heat;
            const view = views.get(state) ?? sky.at(point, state, own);
            views.set(state, view);
            dose += doseOf(day, caster.sharesAt(point, own), view);
          }
        }
        const nine = nineAt(season.value, points[0].point, own);
        const least = typeof row.minDLI === 'number' ? ({ quantity: 'dailyLight', value: row.minDLI } as const) : ({ quantity: 'sunHours', value: row.sunHours[0] } as const);
        const light: PlantLight = { sunHours: nine.sunHours, dailyLight: nine.dailyLight, least, tooDark: isTooDark(row, nine) };
        return { harm: dose / points.length / days.length, light };
      },
      winterAt(place) {
        const { points, own } = plantPoints(plan, { ...plant, at: place });
        return nineAt(winter.value, points[0].point, own).sunHours;
      },
    },
  };
}

/** A clear winter month stands in for whatever the climate has: only where the sun stands matters. */
function withWinter(plan: Plan): Plan {
  const month = Number(winterDayOf(plan).slice(0, 2));
  return { ...plan, climate: { ...plan.climate, months: [...plan.climate.months.filter((each) => each.month !== month), { month, high: 15, low: 5, sunshine: 1 }] } };
}
