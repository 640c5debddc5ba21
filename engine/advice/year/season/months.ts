/** A page for each month in which something is to be done. */

import { dayWords, dayOfMonth } from '../../../plan/dates/dates.ts';
import { monthOfDate, yearOf } from '../../../plan/dates/parts.ts';
import type { Plan } from '../../../plan/types.ts';
import { unitsOf } from '../../../plan/units/units.ts';
import { namedInside } from '../../../plan/words/names.ts';
import { seasonMonths } from '../../../sun/days/season.ts';
import type { Advice } from '../advice.ts';
import { litresWords } from '../water/litres-words.ts';
import type { PlantWater } from '../water/water.ts';
import type { MonthPage, SeasonEvent } from './types.ts';

export function monthPages(plan: Plan, events: readonly SeasonEvent[], water: readonly PlantWater[]): MonthPage[] {
  const summer = seasonMonths(plan);
  const pages = new Map<string, { year: number; month: number; advice: Advice[] }>();
  const page = (year: number, month: number) => {
    const key = `${year}-${dayOfMonth(month, 1)}`;
    const found = pages.get(key) ?? { year, month, advice: [] };
    pages.set(key, found);
    return found.advice;
  };
  for (const event of events) {
    const advice = page(yearOf(event.from), monthOfDate(event.from));
    advice.push({ basis: event.advice[0]?.basis ?? 'our estimate', text: `${daysOf(event)}: ${event.title}.` });
    // What the steps of hardening are stands nowhere else.
    if (event.kind === 'harden') advice.push(...event.advice);
  }
  for (const [index, { year, month }] of (summer.ok ? summer.value : []).entries()) {
    const advice = page(year, month);
    const drinks = waterSentence(plan, water, month);
    if (drinks !== null) advice.push({ basis: 'our estimate', text: drinks });
    if (index === 0)
      advice.push({
        basis: 'common practice',
        text:
          `Water early in the morning, mulch off the stem, feel the ` +
          `${hasPots(plan) ? 'pots twice a day' : 'soil'}: a ` +
          'plant limp at six in the morning is thirsty, at four in the afternoon perhaps only hot.',
      });
  }
  return [...pages.entries()].toSorted(([a], [b]) => a.localeCompare(b)).map(([, value]) => value);
}

function hasPots({ features }: Plan): boolean {
  return features.some((feature) => feature.kind === 'plant' && feature.container === true);
}

function daysOf({ from, to }: SeasonEvent): string {
  return from === to ? `About ${dayWords(from)}` : `${dayWords(from)} to ${dayWords(to)}`;
}

/** What a mean day of the month takes, plant by plant. */
function waterSentence(plan: Plan, water: readonly PlantWater[], month: number): string | null {
  const units = unitsOf(plan);
  const parts = water.flatMap(({ plant, days }) => {
    const day = days.find((candidate) => candidate.month === month && !candidate.heatwave);
    return day === undefined ? [] : [`${namedInside(plan, plant)} ${litresWords(day.now, units)}`];
  });
  return parts.length === 0 ? null : `Water a day: ${parts.join(', ')}.`;
}
