/** How much water each plant, bed and pot uses in a day, in the open, without cloth and as it stands. */

import { LEAF_WIND_SHARE } from '../../../load/leaf/heat-day.ts';
import type { Outcome } from '../../../load/types.ts';
import { plantFeatures, type PlantFeature, rowOf } from '../../../load/verdict/planted.ts';
import { dayOfMonth } from '../../../plan/dates/dates.ts';
import { elevationOf, potOf } from '../../../plan/defaults.ts';
import { area, openRing } from '../../../plan/geometry/shapes.ts';
import { countUp } from '../../../plan/numbers/tolerances.ts';
import type { Plan, Plant } from '../../../plan/types.ts';
import { withoutCloth } from '../../../plan/yards/without-cloth.ts';
import { shelterOf } from '../../../scene/shelter.ts';
import { monthClimate } from '../../../sun/climate.ts';
import { dayOfYear } from '../../../sun/days/calendar.ts';
import { seasonMonths } from '../../../sun/days/season.ts';
import type { Period } from '../../../sun/samples.ts';
import type { Weather } from '../../../sun/weather/weather.ts';
import { type DayLight, dayLight } from '../../words/plant-light.ts';
import { adjustedCoefficient, tabledCoefficient } from './crop-coefficients.ts';
import { type FaoDay, referenceEvapotranspiration, saturation, windAtTwoMetres } from './fao56.ts';

/** The true need is from so much less to so much more than the tables say. Our choice. */
const COEFFICIENT_PM = 0.2;
/** Share of a pot's volume that a plant can drink, 15 to 25 % (from memory). */
const USABLE_SHARE = 0.2;
const LITRES_PER_M3 = 1000;
/** Forecasts and normals give the wind at this height. [m] */
const STATION_HEIGHT = 10;

interface CropCoefficient {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** One day's water. 1 mm on 1 m² is 1 litre. */
interface WaterDay {
  /** 1 to 12, or the heatwave day. */
  readonly month: number;
  readonly heatwave: boolean;
  /** Reference evapotranspiration in the open. [mm a day] */
  readonly reference: number;
  /** Under the open sky, in this yard without its cloth, and as it stands. [L a day] */
  readonly open: number;
  readonly bare: number;
  readonly now: number;
}

export interface PlantWater {
  readonly plant: string;
  /** Ground that it covers. [m²] */
  readonly area: number;
  /** Of the hottest day. */
  readonly coefficient: CropCoefficient;
  /** A mean day of each month of the season, then the heatwave day. */
  readonly days: readonly WaterDay[];
  /** `null` in the ground. What the pot holds to drink [L], and how often it needs filling on the heatwave day. */
  readonly pot: { readonly usable: number; readonly timesADay: number } | null;
}

/**
 * The water of every plant, planted tree and bed.
 * @returns or why a day cannot be made: a month missing from the climate
 */
export function waterOf(plan: Plan, weather?: Weather): Outcome<PlantWater[]> {
  const months = seasonMonths(plan);
  if (!months.ok) return months;
  const days: DayOfYard[] = [];
  for (const { month } of months.value) {
    const day = dayOfYard(plan, { kind: 'day', date: dayOfMonth(month, 15) }, weather);
    if (!day.ok) return day;
    days.push(day.value);
  }
  const heatwave = dayOfYard(plan, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  days.push(heatwave.value);
  const value = plantFeatures(plan).map((feature): PlantWater => {
    const ofDays = days.map((day) => waterDay(plan, feature, day));
    const middle = coefficientOn(plan, feature, heatwave.value);
    return {
      plant: feature.id,
      area: areaCovered(feature),
      coefficient: { low: middle * (1 - COEFFICIENT_PM), middle, high: middle * (1 + COEFFICIENT_PM) },
      days: ofDays,
      pot: potWater(feature, ofDays[ofDays.length - 1].now),
    };
  });
  return { ok: true, value };
}

/** What each plant takes on one day as the yard stands, by its id. [L a day] */
export function waterOn(plan: Plan, period: Period, weather?: Weather): Outcome<ReadonlyMap<string, number>> {
  const day = dayOfYard(plan, period, weather);
  if (!day.ok) return day;
  return {
    ok: true,
    value: new Map(plantFeatures(plan).map((feature) => [feature.id, waterDay(plan, feature, day.value).now])),
  };
}

/** One day, in the yard as it stands and without its cloth. */
interface DayOfYard {
  readonly isHeatwave: boolean;
  readonly now: DayLight;
  readonly bare: DayLight;
  readonly fao: FaoDay;
  /** Wind in the yard over wind in the open. */
  readonly wind: number;
}

function dayOfYard(plan: Plan, period: Period, weather?: Weather): Outcome<DayOfYard> {
  const clothless = withoutCloth(plan);
  const now = dayLight(plan, period, weather);
  if (!now.ok) return now;
  const bare = clothless === plan ? now : dayLight(clothless, period, weather);
  if (!bare.ok) return bare;
  const wind = LEAF_WIND_SHARE[shelterOf(plan).shelter] / LEAF_WIND_SHARE.open;
  const fao = faoDay(plan, now.value, weather);
  return { ok: true, value: { isHeatwave: period.kind === 'heatwave', now: now.value, bare: bare.value, fao, wind } };
}

function waterDay(plan: Plan, feature: PlantFeature, day: DayOfYard): WaterDay {
  const { fao, wind, now, bare } = day;
  const perMillimetre = coefficientOn(plan, feature, day) * areaCovered(feature);
  const at = (light: DayLight): number => {
    const { dailyLight, skyView } = light.of(feature);
    const share = light.open > 0 ? Math.min(1, dailyLight / light.open) : 1;
    return perMillimetre * referenceEvapotranspiration(fao, { light: share, sky: skyView, wind });
  };
  const reference = referenceEvapotranspiration(fao);
  return {
    month: now.day.month,
    heatwave: day.isHeatwave,
    reference,
    open: perMillimetre * reference,
    bare: at(bare),
    now: at(now),
  };
}

function coefficientOn(plan: Plan, feature: PlantFeature, { fao }: DayOfYard): number {
  const height = feature.kind === 'bed' ? feature.plantHeight : feature.height;
  const driest = Math.min(100, (100 * fao.vapour) / saturation(fao.high));
  return adjustedCoefficient(tabledCoefficient(rowOf(plan, feature)), fao.wind, driest, height);
}

/**
 * A laid-out day at the plan's site in the open. The air's moisture is the month's, on hot days too, as for the leaves:
 * that of its mean temperature.
 */
function faoDay(plan: Plan, { day, solar }: Pick<DayLight, 'day' | 'solar'>, weather?: Weather): FaoDay {
  const { high, low } = monthClimate(plan, day.month, weather) ?? day;
  return {
    high: day.high,
    low: day.low,
    vapour: (day.humidity / 100) * saturation((high + low) / 2),
    wind: windAtTwoMetres(day.wind, STATION_HEIGHT),
    solar,
    latitude: plan.site.latitude,
    dayOfYear: dayOfYear(day.date),
    elevation: elevationOf(plan.site),
  };
}

function areaCovered(feature: PlantFeature): number {
  if (feature.kind === 'bed') return area(openRing(feature.outline));
  const width = feature.kind === 'tree' ? feature.crownWidth : feature.spread;
  return (Math.PI / 4) * width * width;
}

function potWater(feature: PlantFeature, litres: number): PlantWater['pot'] {
  if (feature.kind !== 'plant' || feature.container !== true) return null;
  const usable = usableWater(feature);
  return { usable, timesADay: Math.max(1, countUp(litres / usable)) };
}

/** What a straight-sided pot holds to drink. [L] */
export function usableWater(plant: Plant): number {
  const { width, height } = potOf(plant);
  return (Math.PI / 4) * width * width * height * LITRES_PER_M3 * USABLE_SHARE;
}
