/**
 * What hot days do to plants, month by month: the days that come every summer, one in ten, and the heatwave that may.
 * Clay, cloth and the watch for heat are all dated by them.
 */

import type { Outcome } from '../../load/types.ts';
import { harmOf, type PlantHarm } from '../../load/verdict/harm-of.ts';
import { isEstablished } from '../../load/verdict/limit.ts';
import { plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import { milderBy } from '../../load/verdict/verdict.ts';
import { dayOfMonth } from '../../plan/dates/dates.ts';
import { monthOf } from '../../plan/defaults.ts';
import { Kept } from '../../plan/kept.ts';
import type { CivilDate, Plan } from '../../plan/types.ts';
import { dateIn } from '../../sun/days/calendar.ts';
import { seasonDates, seasonMonths } from '../../sun/days/season.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { bearsWhatBurns } from './growth/fruit.ts';
import { stretchAbove } from './span.ts';

/** A hot day as one in ten is: so many standard deviations above the month's mean high. */
const ONE_IN_TEN = 1.28;
/** A heatwave counts this much beside the days that come every summer, for it may not come. Our choice. */
const HEATWAVE_COUNTS = 0.1;
/** A month's hot days count from this share of what the plant's worst month's do. Our choice. */
const COUNTS_FROM = 0.25;
/** And from so much; what is expected, where that much comes with a heatwave. Our choice. [K·h/day] */
export const LEAST_HARM = 1;
export const LEAST_EXPECTED = HEATWAVE_COUNTS * LEAST_HARM;

/** First and last day, both included. */
export interface Stretch {
  readonly first: CivilDate;
  readonly last: CivilDate;
}

/** The plan with heat days no hotter than one day in ten of their months: what is to be expected every summer. */
function withUsualHeat(plan: Plan): Plan {
  return { ...plan, climate: knownUsual.of([plan.climate], '', () => usualHeat(plan.climate)) };
}

/** The same climate each time: by it the days' air and leaves are kept. */
const knownUsual = new Kept<Plan['climate']>();

function usualHeat(climate: Plan['climate']): Plan['climate'] {
  const hottest = climate.months.toSorted((a, b) => b.high - a.high)[0];
  const raised = hottest.high + ONE_IN_TEN * monthOf(hottest).spread;
  return { ...climate, heatwaveHigh: Math.min(climate.heatwaveHigh, raised) };
}

/** What the hot days of each month of a season do, one entry a plant each. */
export interface HotDays {
  readonly usual: readonly PlantHarm[];
  readonly heatwave: readonly PlantHarm[];
}

/** @param ids of these plants alone */
export function hotDaysOf(plan: Plan, weather?: Weather, ids?: ReadonlySet<string>): Outcome<HotDays> {
  const heatwave = harmOf(plan, weather, ids);
  if (!heatwave.ok) return heatwave;
  const usual = harmOf(withUsualHeat(plan), weather, ids);
  if (!usual.ok) return usual;
  const months = seasonMonths(plan);
  if (!months.ok) return months;
  const [of, rare] = [usual.value, heatwave.value].map((harms) =>
    harms.map((harm) =>
      whileItHangs(
        plan,
        harm,
        months.value.map(({ month }) => month),
      ),
    ),
  );
  return { ok: true, value: { usual: of, heatwave: rare } };
}

/** A fruit's hot days count in the months in which it hangs. */
function whileItHangs(plan: Plan, harm: PlantHarm, months: readonly number[]): PlantHarm {
  const feature = plantFeatures(plan).find(({ id }) => id === harm.id);
  const row = feature && rowOf(plan, feature);
  if (row === undefined || row.limitOf !== 'fruit') return harm;
  const bears = (day: number): boolean => bearsWhatBurns(row, months[day], plan.site.latitude);
  return { ...harm, byHeatDay: harm.byHeatDay.map((dose, day) => (bears(day) ? dose : 0)) };
}

/** What a plant is to expect of each month's hot days. [K·h/day] */
export function expectedHarm({ usual, heatwave }: HotDays, plant: string): number[] {
  const seldom = heatwave.find(({ id }) => id === plant)?.byHeatDay ?? [];
  const often = usual.find(({ id }) => id === plant)?.byHeatDay ?? [];
  return often.map((dose, day) => dose + HEATWAVE_COUNTS * seldom[day]);
}

/** The 21st of each month of a season, for which its hot days stand, and the season's first and last day. */
export interface HotDates extends Stretch {
  readonly dates: readonly CivilDate[];
}

export function hotDatesOf(plan: Plan): Outcome<HotDates> {
  const days = seasonDates(plan);
  const months = seasonMonths(plan);
  if (!days.ok) return days;
  if (!months.ok) return months;
  const [first, last] = [days.value[0], days.value[days.value.length - 1]];
  const dates = months.value.map(({ month, year }) => dateIn(year, dayOfMonth(month, 21)) ?? `${year}-01-21`);
  return { ok: true, value: { first, last, dates } };
}

/**
 * How much each month's hot days count, 1 from where they count at all; `null` where none does.
 * @param doses what they do, by month @param least from which they may count [K·h/day]
 */
export function countedFrom(doses: readonly number[], least: number): number[] | null {
  const worst = Math.max(0, ...doses);
  return worst < least ? null : doses.map((dose) => dose / Math.max(least, COUNTS_FROM * worst));
}

/** The days on which hot days count, straight between the months' 21sts; `null`: none do. */
export function countingDays(counts: readonly number[] | null, { first, last, dates }: HotDates): Stretch | null {
  return counts === null
    ? null
    : stretchAbove(
        dates.map((date, day) => ({ date, value: counts[day] })),
        1,
        first,
        last,
      );
}

/** A plant that stands in the sun unharmed once established needs no shade, however hot its leaves. */
export function wantsShade(plan: Plan, id: string): boolean {
  const feature = plantFeatures(plan).find((candidate) => candidate.id === id);
  const row = feature && rowOf(plan, feature);
  return feature !== undefined && row !== undefined && milderBy(row, isEstablished(plan, feature)) === null;
}

/** From the first to the last day of some stretches; `null` of none. */
export function spanOf(stretches: readonly Stretch[]): Stretch | null {
  if (stretches.length === 0) return null;
  const first = stretches.map((stretch) => stretch.first).toSorted()[0];
  const last = stretches.map((stretch) => stretch.last).toSorted()[stretches.length - 1];
  return { first, last };
}
