/** Who may be sprayed with clay at all, whoever asks: the year, or the ladder of cheaper cures. */

import { type LightStanding, lightStanding } from '../../../load/light/light-class.ts';
import type { Outcome } from '../../../load/types.ts';
import { plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import { dayOfMonth } from '../../../plan/dates/dates.ts';
import { monthOfDate, yearOf } from '../../../plan/dates/parts.ts';
import type { CivilDate, Plan, PlantRow } from '../../../plan/types.ts';
import { withoutCloth } from '../../../plan/yards/without-cloth.ts';
import { dateIn, daysAfter } from '../../../sun/days/calendar.ts';
import { seasonMonths } from '../../../sun/days/season.ts';
import type { Weather } from '../../../sun/weather/weather.ts';
import { dayLight } from '../../words/plant-light.ts';
import { isInFlower } from './bloom.ts';

const EATEN_LEAVES: readonly string[] = ['lettuce', 'spinach', 'chard', 'kale', 'cabbage', 'amaranth', 'leafy'];
/** A cloth that takes more of a plant's light shades it. */
const SHADED_FROM = 0.1;

/** Why a plant is not to be sprayed this season, as a clause; `null`: it may be, where it is not in flower. */
export function noClayBecause(
  row: PlantRow,
  at: { readonly standing: LightStanding; readonly isUnderCloth: boolean; readonly flowersAllSummer: boolean },
): string | null {
  if (row.group === 'herb' || EATEN_LEAVES.includes(row.id))
    return 'leaves that are eaten, and clay is hard to wash off';
  if (at.standing !== 'enough') return 'too little light already, and clay takes more';
  if (at.isUnderCloth) return 'under cloth already';
  return at.flowersAllSummer ? 'in flower all summer: never spray flowers' : null;
}

/**
 * Plants that are not to be sprayed, and why.
 * @returns or why their light cannot be worked out
 */
export function clayRefusals(plan: Plan, weather?: Weather): Outcome<ReadonlyMap<string, string>> {
  const months = seasonMonths(plan);
  if (!months.ok) return months;
  const hot = hotMonths(
    plan,
    months.value.map(({ month }) => month),
  );
  const now = dayLight(plan, { kind: 'season' }, weather);
  if (!now.ok) return now;
  const clothless = withoutCloth(plan);
  const bare = clothless === plan ? now : dayLight(clothless, { kind: 'season' }, weather);
  if (!bare.ok) return bare;
  const refused = plantFeatures(plan).flatMap((feature): [string, string][] => {
    const row = rowOf(plan, feature);
    if (row === undefined) return [];
    const light = now.value.of(feature).dailyLight;
    const why = noClayBecause(row, {
      standing: lightStanding(row, light),
      isUnderCloth: light < (1 - SHADED_FROM) * bare.value.of(feature).dailyLight,
      flowersAllSummer: hot.every((month) => isInFlower(row, month, plan.site.latitude)),
    });
    return why === null ? [] : [[feature.id, why]];
  });
  return { ok: true, value: new Map(refused) };
}

/** Of some months those in which a coat is wanted: as good as the hottest. Our choice. [K] */
const AS_HOT = 3;

function hotMonths({ climate }: Plan, months: readonly number[]): number[] {
  const highs = climate.months.filter(({ month }) => months.includes(month));
  const hottest = Math.max(...highs.map(({ high }) => high));
  return highs.filter(({ high }) => high >= hottest - AS_HOT).map(({ month }) => month);
}

/** The first day from a date on that is not in a month of the plant's flowers, at most a year on. */
export function outOfFlower(row: PlantRow, latitude: number, from: CivilDate): CivilDate {
  let date = from;
  for (let k = 0; k < 12 && isInFlower(row, monthOfDate(date), latitude); k++) date = nextMonth(date);
  return date;
}

function nextMonth(date: CivilDate): CivilDate {
  const [year, month] = [yearOf(date), monthOfDate(date)];
  const next = month === 12 ? [year + 1, 1] : [year, month + 1];
  return dateIn(next[0], dayOfMonth(next[1], 1)) ?? daysAfter(date, 31);
}
