/**
 * When each cloth should hang: by what it spares its own plants and the light it leaves them, not by the date of habit.
 */

import type { Outcome } from '../../../load/types.ts';
import type { PlantHarm } from '../../../load/verdict/harm-of.ts';
import { harmOf } from '../../../load/verdict/harm-of.ts';
import { plantFeatures } from '../../../load/verdict/planted.ts';
import { isCloth } from '../../../plan/kinds.ts';
import type { CivilDate, Cloth, Plan } from '../../../plan/types.ts';
import type { Weather } from '../../../sun/weather/weather.ts';
import {
  countedFrom,
  countingDays,
  expectedHarm,
  hotDaysOf,
  hotDatesOf,
  LEAST_EXPECTED,
  LEAST_HARM,
  spanOf,
  wantsShade,
} from '../hot-days.ts';
import type { HotDates, HotDays } from '../hot-days.ts';
import { lightUnder, shortOn } from './light.ts';
import type { ClothMonth, ClothSeason } from './types.ts';
import { clothAdvice } from './words.ts';

/**
 * In a month in which a plant has light enough without the cloth and too little under it, hot days must count so many
 * times as much for the cloth to hang. Our choice.
 */
const FOR_LIGHT = 2;

/**
 * When the cloth of every canopy and screen should hang: on no day on which hot days do not count for its plants.
 * @param wide the plan with a season of all months to look at @param stands what its hot days do as it stands
 * @param bare and without any cloth
 */
export function clothSeasons(
  plan: Plan,
  wide: Plan,
  stands: HotDays,
  bare: HotDays,
  weather?: Weather,
): Outcome<ClothSeason[]> {
  const cloths = wide.features.filter(isCloth);
  if (cloths.length === 0) return { ok: true, value: [] };
  // Together all cloths are judged as hanging all year: the question is when each should.
  const hung: Plan = {
    ...wide,
    features: wide.features.map((feature) => (isCloth(feature) ? { ...feature, up: undefined } : feature)),
  };
  const covered = cloths.every(({ up }) => up === undefined)
    ? { ok: true as const, value: stands }
    : hotDaysOf(hung, weather);
  if (!covered.ok) return covered;
  const dates = hotDatesOf(hung);
  if (!dates.ok) return dates;
  const value: ClothSeason[] = [];
  for (const cloth of cloths) {
    const found = clothSeason(plan, { hung, covered: covered.value, bare, dates: dates.value }, cloth, weather);
    if (!found.ok) return found;
    value.push(found.value);
  }
  return { ok: true, value };
}

/** The yard with all cloth hung, and what its hot days do so and without any. */
interface Hung {
  readonly hung: Plan;
  readonly covered: HotDays;
  readonly bare: HotDays;
  readonly dates: HotDates;
}

function clothSeason(plan: Plan, yard: Hung, cloth: Cloth, weather?: Weather): Outcome<ClothSeason> {
  const { hung, covered, bare, dates } = yard;
  const without = withoutThing(hung, cloth.id);
  const isOnly = hung.features.filter(isCloth).length === 1;
  const open = isOnly ? { ok: true as const, value: bare.heatwave } : harmOf(without, weather);
  if (!open.ok) return open;
  const plants = open.value
    .filter(({ id, byHeatDay }, k) => {
      const under = covered.heatwave[k].byHeatDay;
      return wantsShade(plan, id) && byHeatDay.some((dose, day) => dose - under[day] >= LEAST_HARM);
    })
    .map(({ id }) => id);
  const uncovered = isOnly ? { ok: true as const, value: bare } : hotDaysOf(without, weather, new Set(plants));
  if (!uncovered.ok) return uncovered;
  const counts = plants.map((plant) => countsFor(plant, uncovered.value, yard));
  const short = shortOn(hung, without, datesToLight(counts, dates.dates), weather);
  if (!short.ok) return short;
  const isShort = (date: CivilDate) => (short.value.get(date) ?? []).length > 0;
  const stretches = counts.flatMap((each) => {
    const weighed = each?.map((count, day) => (isShort(dates.dates[day]) ? count / FOR_LIGHT : count)) ?? null;
    return countingDays(weighed, dates) ?? [];
  });
  const hangs = spanOf(stretches);
  const itsOwn = plantFeatures(plan).filter(({ id }) => plants.includes(id));
  const light = lightUnder(plan, withoutThing(plan, cloth.id), itsOwn, { kind: 'season' }, weather);
  if (!light.ok) return light;
  const season = {
    canopy: cloth.id,
    plants,
    up: hangs?.first ?? null,
    down: hangs?.last ?? null,
    earlierUnknown: hangs?.first === dates.first,
    laterUnknown: hangs?.last === dates.last,
    shortOfLight: [...new Set([...short.value.values()].flat())],
    drawn: plan.features.filter(isCloth).find(({ id }) => id === cloth.id)?.up ?? null,
    months: monthsOf(plants, dates, open.value, covered.heatwave),
    light: light.value,
  };
  return { ok: true, value: { ...season, advice: clothAdvice(plan, season) } };
}

function withoutThing(plan: Plan, thing: string): Plan {
  return { ...plan, features: plan.features.filter(({ id }) => id !== thing) };
}

/** How much each month's hot days count for hanging a cloth over a plant: as far as they hurt it and it spares that. */
function countsFor(plant: string, uncovered: HotDays, { covered, bare }: Hung): readonly number[] | null {
  const under = expectedHarm(covered, plant);
  const spared = countedFrom(
    expectedHarm(uncovered, plant).map((dose, day) => dose - under[day]),
    LEAST_EXPECTED,
  );
  const hurt = countedFrom(expectedHarm(bare, plant), LEAST_EXPECTED);
  return spared === null || hurt === null ? null : spared.map((count, day) => Math.min(count, hurt[day]));
}

/** The 21sts that bear on when a cloth hangs: on which some plant's hot days count, and those next to them. */
function datesToLight(counts: readonly (readonly number[] | null)[], dates: readonly CivilDate[]): CivilDate[] {
  const isCounted = (day: number) => counts.some((each) => (each?.[day] ?? 0) >= 1);
  return dates.filter((_, day) => isCounted(day - 1) || isCounted(day) || isCounted(day + 1));
}

function monthsOf(
  plants: readonly string[],
  { dates }: HotDates,
  open: readonly PlantHarm[],
  covered: readonly PlantHarm[],
): ClothMonth[] {
  const sum = (harms: readonly PlantHarm[], day: number) =>
    harms.reduce((total, { id, byHeatDay }) => total + (plants.includes(id) ? byHeatDay[day] : 0), 0);
  return dates.map((date, day) => ({ date, harmOpen: sum(open, day), harmCovered: sum(covered, day) }));
}
