/** What is said of a cloth through the year: when it hangs and why, and how it comes down. */

import type { LightStanding } from '../../../load/light/light-class.ts';
import { dayWords } from '../../../plan/dates/dates.ts';
import { monthDayOf } from '../../../plan/dates/parts.ts';
import { inYearlySpan } from '../../../plan/dates/year-span.ts';
import type { CivilDate, Plan } from '../../../plan/types.ts';
import { formatTemperature } from '../../../plan/units/shown.ts';
import { unitsOf } from '../../../plan/units/units.ts';
import { namesInside } from '../../../plan/words/names.ts';
import { datesBetween } from '../../../sun/days/calendar.ts';
import type { Advice } from '../advice.ts';
import { stormAdvice } from './storms.ts';
import type { ClothLight, ClothSeason } from './types.ts';

export function clothAdvice(plan: Plan, season: Omit<ClothSeason, 'advice'>): Advice[] {
  const names = namesInside(plan, [season.canopy]);
  if (season.up === null || season.down === null) {
    return [
      {
        basis: 'our estimate',
        text:
          `Leave the cloth of ${names} off: on no month’s hot day does it spare a plant that wants shade harm worth ` +
          `the work.`,
      },
    ];
  }
  return [
    { basis: 'our estimate', text: datesWords(plan, season, season.up, season.down) },
    ...unknownMonths(season),
    {
      basis: 'extension practice',
      source: 'University of Arizona, Maricopa County Cooperative Extension',
      text:
        'Put it up earlier if leaves bleach or wilt in the afternoon before then; do not leave it up out of ' +
        'habit once the heat is over.',
    },
    ...stormAdvice(plan, season.up, season.down),
    ...season.light.map((light): Advice => ({ basis: 'our estimate', text: lightWords(plan, light) })),
  ];
}

/** When, and why then. */
function datesWords(
  plan: Plan,
  { canopy, plants, months, shortOfLight, earlierUnknown, laterUnknown }: Omit<ClothSeason, 'advice'>,
  up: CivilDate,
  down: CivilDate,
): string {
  const from = earlierUnknown ? `by ${dayWords(up)} at the latest` : `about ${dayWords(up)}`;
  const to = laterUnknown ? `not before ${dayWords(down)}` : `about ${dayWords(down)}`;
  const outside =
    earlierUnknown && laterUnknown ? null : earlierUnknown ? 'after' : laterUnknown ? 'before' : 'before and after';
  const why =
    shortOfLight.length === 0
      ? 'the cloth spares little'
      : `the light is worth more to ${namesInside(plan, shortOfLight)}`;
  const rest = outside === null ? '' : `; ${outside}, ${why}`;
  return (
    `Put the cloth of ${namesInside(plan, [canopy])} up ${from} and take it down ${to}: between those days hot days ` +
    `hurt ${namesInside(plan, plants)} ${sparesMuch(months) ? 'much ' : ''}more without it${rest}.`
  );
}

/** Less than this share taken off is no great deal. Our choice. */
const MUCH = 0.3;

function sparesMuch(months: ClothSeason['months']): boolean {
  const sum = (of: 'harmOpen' | 'harmCovered') => months.reduce((all, month) => all + month[of], 0);
  return sum('harmCovered') <= (1 - MUCH) * sum('harmOpen');
}

function unknownMonths({ earlierUnknown, laterUnknown }: Omit<ClothSeason, 'advice'>): Advice[] {
  if (!earlierUnknown && !laterUnknown) return [];
  const which = earlierUnknown && laterUnknown ? 'before and after' : earlierUnknown ? 'before' : 'after';
  return [
    {
      basis: 'our estimate',
      text: `The climate has no figures for the month ${which}: add its high and low, and the date can be told.`,
    },
  ];
}

const ENOUGH: Readonly<Record<LightStanding, string>> = {
  enough: 'enough',
  short: 'a little short, with fewer flowers and fruit',
  'too dark': 'too little, so take a thinner cloth or fold this one back in the mornings',
};

function lightWords(plan: Plan, { plant, open, covered, standing, standingOpen }: ClothLight): string {
  const judged = standingOpen === 'too dark' ? 'too little, as without it' : ENOUGH[standing];
  return (
    `Of ${open.toFixed(0)} mol/m² of daily light, the summer’s mean, ${covered.toFixed(0)} are left for ` +
    `${namesInside(plan, [plant])} under it: ${judged}.`
  );
}

/** Where the plan's own dates for a cloth leave out days on which it is wanted. */
export function clothNotes(plan: Plan, { canopy, up, down, drawn }: ClothSeason): string[] {
  if (up === null || down === null || drawn === null) return [];
  const missed = datesBetween(up, down).filter((date) => !inYearlySpan(drawn, monthDayOf(date))).length;
  return missed === 0
    ? []
    : [
        `The plan hangs ${namesInside(plan, [canopy])} from ${dayWords(drawn.from)} to ${dayWords(drawn.to)}; that ` +
          `leaves out ${missed} days on which it is wanted.`,
      ];
}

/**
 * Leaves that grew under cloth: how to bring them into the sun.
 * @param heat an air temperature not to do it above [°C]
 */
export function uncoverAdvice(plan: Plan, heat: number): Advice[] {
  return [
    {
      basis: 'common practice',
      text:
        'Take the cloth down in steps: fold it back for an hour more of sun every day over 10 to 14 days, the ' +
        'morning sun first, or wait for a cloudy spell.',
    },
    {
      basis: 'extension practice',
      source: 'UF/IFAS Gardening Solutions; University of Arizona, Maricopa County',
      text:
        `Do not begin within 3 days of a hot spell (${formatTemperature(heat, unitsOf(plan))} or more), water ` +
        `the day before, and go back a step if leaves bleach.`,
    },
  ];
}
