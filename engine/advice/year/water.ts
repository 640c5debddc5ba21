/** How much water each plant, bed and pot uses in a day, in the open, without cloth and as it stands. */
import { area, openRing } from '../../plan/geometry/shapes.ts';
import { elevationOf, potOf } from '../../plan/defaults.ts';
import type { Plan, Plant } from '../../plan/types.ts';
import { plantFeatures, type PlantFeature, rowOf } from '../../load/verdict/planted.ts';
import type { Outcome } from '../../load/types.ts';
import { dayOfYear } from '../../sun/calendar.ts';
import { monthClimate } from '../../sun/climate.ts';
import type { Period } from '../../sun/samples.ts';
import { seasonMonths } from '../../sun/season.ts';
import type { Weather } from '../../sun/weather.ts';
import { type DayLight, dayLight } from '../words/plant-light.ts';
import { meanSaturation, referenceEvapotranspiration, windAtTwoMetres } from './water-fao56.ts';

/**
 * Crop coefficient of an isolated leafy plant, and of a succulent: range and middle (from memory, after FAO-56's
 * tables).
 */
const LEAFY: CropCoefficient = { low: 0.8, middle: 1, high: 1.2 };
const SUCCULENT: CropCoefficient = { low: 0.4, middle: 0.45, high: 0.5 };
/**
 * Of the light that shade takes, this share of the water use goes with it. Published nets save 17 to 50 %; chosen
 * between, ± 10 points.
 */
const SAVED_BY_SHADE = 0.65;
/** Share of a pot's volume that a plant can drink, 15 to 25 % (from memory). */
const USABLE_SHARE = 0.2;
const LITRES_PER_M3 = 1000;
/** Forecasts and normals give the wind at this height. [m] */
const STATION_HEIGHT = 10;
/** Air is never quite still (FAO-56, p. 63, from memory). [m/s] */
const LEAST_WIND = 0.5;

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
  const periods: Period[] = [
    ...months.value.map(({ month }): Period => ({ kind: 'day', date: `${String(month).padStart(2, '0')}-15` })),
    { kind: 'heatwave' },
  ];
  const clothless: Plan = {
    ...plan,
    features: plan.features.filter(({ kind }) => kind !== 'canopy' && kind !== 'screen'),
  };
  const hasCloth = clothless.features.length < plan.features.length;
  const days: {
    readonly period: Period;
    readonly now: DayLight;
    readonly bare: DayLight;
    readonly reference: number;
  }[] = [];
  for (const period of periods) {
    const now = dayLight(plan, period, weather);
    if (!now.ok) return now;
    const bare = hasCloth ? dayLight(clothless, period, weather) : now;
    if (!bare.ok) return bare;
    days.push({ period, now: now.value, bare: bare.value, reference: referenceOf(plan, now.value, weather) });
  }
  const value = plantFeatures(plan).map((feature): PlantWater => {
    const coefficient = rowOf(plan, feature)?.group === 'succulent' ? SUCCULENT : LEAFY;
    const ground = groundOf(feature);
    const ofDays = days.map(({ period, now, bare, reference }): WaterDay => {
      const open = coefficient.middle * reference * ground;
      const at = (light: DayLight) =>
        open * shadeFactor(light.open > 0 ? light.of(feature).dailyLight / light.open : 1);
      return {
        month: now.day.month,
        heatwave: period.kind === 'heatwave',
        reference,
        open,
        bare: at(bare),
        now: at(now),
      };
    });
    return {
      plant: feature.id,
      area: ground,
      coefficient,
      days: ofDays,
      pot: potWater(feature, ofDays[ofDays.length - 1].now),
    };
  });
  return { ok: true, value };
}

/**
 * What is left of the water use where a share of the open sky's light arrives: half the light gone, a third of the
 * water saved.
 */
export function shadeFactor(lightShare: number): number {
  return 1 - SAVED_BY_SHADE * (1 - Math.min(1, Math.max(0, lightShare)));
}

/**
 * Reference evapotranspiration of a laid-out day at the plan's site. [mm a day] The air's moisture is the month's, on
 * hot days too.
 */
function referenceOf(plan: Plan, { day, solar }: Pick<DayLight, 'day' | 'solar'>, weather?: Weather): number {
  const climate = monthClimate(plan, day.month, weather);
  const mean = climate === null ? meanSaturation(day.high, day.low) : meanSaturation(climate.high, climate.low);
  return referenceEvapotranspiration({
    high: day.high,
    low: day.low,
    vapour: (day.humidity / 100) * mean,
    wind: Math.max(LEAST_WIND, windAtTwoMetres(day.wind, STATION_HEIGHT)),
    solar,
    latitude: plan.site.latitude,
    dayOfYear: dayOfYear(day.date),
    elevation: elevationOf(plan.site),
  });
}

function groundOf(feature: PlantFeature): number {
  if (feature.kind === 'bed') return area(openRing(feature.outline));
  const width = feature.kind === 'tree' ? feature.crownWidth : feature.spread;
  return (Math.PI / 4) * width * width;
}

function potWater(feature: PlantFeature, litres: number): PlantWater['pot'] {
  if (feature.kind !== 'plant' || feature.container !== true) return null;
  const usable = potVolume(feature) * USABLE_SHARE;
  return { usable, timesADay: Math.max(1, Math.ceil(litres / usable - 1e-9)) };
}

/** A straight-sided pot. [L] */
function potVolume(plant: Plant): number {
  const { width, height } = potOf(plant);
  return (Math.PI / 4) * width * width * height * LITRES_PER_M3;
}
