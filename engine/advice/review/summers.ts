/** How warm two summers were, by what was typed of them: weather of one year, which the climate is not. */

import { meanOf } from '../../plan/numbers/mean.ts';
import type { Climate, Plan, Summer } from '../../plan/types.ts';
import { seasonMonths } from '../../sun/days/season.ts';

/** Two summers as they were. */
export interface TwoSummers {
  readonly climates: readonly [Climate, Climate];
  /** How much warmer the hottest month of the later one was. [K] */
  readonly warmer: number;
}

/**
 * @param older @param newer the yards of the two years
 * @returns `null` where it is not known of both. Files of old held a summer in the climate of its own year: where two
 *   years' climates differ and neither is a guess, they still count as that.
 */
export function summersOf(plan: Plan, years: readonly [number, number], older: Plan, newer: Plan): TwoSummers | null {
  const typed = years.map((year) => plan.summers?.find((summer) => summer.year === year));
  const [first, second] = typed;
  const hottest = hottestMonth(plan);
  if (hottest === null) return null;
  if (first !== undefined && second !== undefined) {
    const climates = [asItWas(plan, first, hottest), asItWas(plan, second, hottest)] as const;
    return { climates, warmer: highOf(climates[1], hottest) - highOf(climates[0], hottest) };
  }
  const guessed = [older, newer].some(({ climate }) => climate.from === 'rough');
  if (first !== undefined || second !== undefined || guessed || sameMonths(older.climate, newer.climate)) return null;
  const climates = [older.climate, newer.climate] as const;
  return { climates, warmer: highOf(climates[1], hottest) - highOf(climates[0], hottest) };
}

/**
 * The climate with a summer's months in the place of its own; months that nobody typed are as much warmer or cooler
 * than usual as the typed ones are on average, and so is the hottest day.
 */
function asItWas({ climate }: Plan, summer: Summer, hottest: number): Climate {
  const pairs = summer.months.flatMap((row) => {
    const usual = climate.months.find(({ month }) => month === row.month);
    return usual === undefined ? [] : [row.high - usual.high];
  });
  const shift = pairs.length === 0 ? 0 : meanOf(pairs);
  const months = climate.months.map((usual) => {
    const was = summer.months.find(({ month }) => month === usual.month);
    const high = was?.high ?? usual.high + shift;
    return { ...usual, high, low: Math.min(high, was?.low ?? usual.low + high - usual.high) };
  });
  const raised = climate.heatwaveHigh - highOf(climate, hottest);
  return { ...climate, months, heatwaveHigh: summer.hottest ?? highOf({ ...climate, months }, hottest) + raised };
}

/** Month of the season with the highest mean high. 1 to 12 */
function hottestMonth(plan: Plan): number | null {
  const months = seasonMonths(plan);
  if (!months.ok) return null;
  const rows = plan.climate.months.filter((row) => months.value.some(({ month }) => month === row.month));
  return rows.toSorted((a, b) => b.high - a.high)[0]?.month ?? null;
}

function highOf({ months }: Pick<Climate, 'months'>, month: number): number {
  return months.find((row) => row.month === month)?.high ?? 0;
}

function sameMonths(a: Climate, b: Climate): boolean {
  return (
    a.heatwaveHigh === b.heatwaveHigh &&
    a.months.every((row) => {
      const other = b.months.find(({ month }) => month === row.month);
      return other === undefined || (other.high === row.high && other.low === row.low);
    })
  );
}
