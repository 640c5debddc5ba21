/** Frosty nights in sentences: when, who needs what, and how to cover; and the same plant by plant for a table. */

import { dayWords, monthWord, dateWords } from '../../../plan/dates/dates.ts';
import { isCloth } from '../../../plan/kinds.ts';
import type { Plan } from '../../../plan/types.ts';
import { formatClock } from '../../../plan/units/clock.ts';
import { formatFrostLimit, formatTemperature, formatTemperatureDifference } from '../../../plan/units/shown.ts';
import { type Units, unitsOf } from '../../../plan/units/units.ts';
import { agreeingWith } from '../../../plan/words/agreement.ts';
import { capital } from '../../../plan/words/first-letter.ts';
import { listWords } from '../../../plan/words/list-words.ts';
import { nameOf, namesInside } from '../../../plan/words/names.ts';
import { monthClimate } from '../../../sun/climate.ts';
import type { Advice } from '../advice.ts';
import { CLEAR_NIGHT } from './clear-night.ts';
import type { FrostAdvice, FrostPlant } from './types.ts';

type Found = Omit<FrostAdvice, 'advice'>;

/**
 * What frost cloth down to the ground gains at best, on a clear calm night (0 to 3 K claimed; Oregon State University
 * 1988 measured 0.2 to 0.4 K over mulch, and single nights colder than without). [K]
 */
const MOST_GAINED = 3;
/** The same in wind or under cloud: 0 to this, so a plant is only told safe where 0 will do. [K] */
const GAINED_IN_WIND = 1;
/** Nights of a month by which it counts as one of them. Our choice. */
const OFTEN = 0.5;

/** All of it, in the order in which it is needed. */
export function frostWords(plan: Plan, found: Found): Advice[] {
  const { window } = found;
  if (window === null) return frostOpening(plan, found);
  const { tender, annuals } = hurtIn(found);
  return [
    ...frostOpening(plan, found),
    ...(annuals.length === 0
      ? []
      : [
          {
            basis: 'common practice' as const,
            text:
              `The first frost ends ${namesInside(plan, annuals)}: pick what is left before ` +
              `${dateWords(window.first)}.`,
          },
        ]),
    ...tender.flatMap((each) => plantWords(plan, each, found.lowest)),
    ...coverWords(plan, found),
  ];
}

/** When frost comes, or that nobody is hurt by it, or that the plan does not say. */
export function frostOpening(plan: Plan, found: Found): Advice[] {
  const { window, lowest } = found;
  const mildest = window === null ? frostless(plan) : null;
  if (mildest !== null)
    return [
      {
        basis: 'our estimate',
        text:
          `No frost is to be expected: even in the coldest month nights fall to about ` +
          `${formatTemperature(mildest, unitsOf(plan))} only.`,
      },
    ];
  if (window === null)
    return [
      {
        basis: 'our estimate',
        text:
          'The plan does not say when frost comes: add the first and last frost and the lowest night, from a ' +
          'weather station near by, and the winter can be planned.',
      },
    ];
  const nights = lowest === null ? '' : `, ${formatTemperature(lowest, unitsOf(plan))} on the worst nights`;
  const { tender, annuals } = hurtIn(found);
  return [
    {
      basis: 'our estimate',
      text:
        `Frost is likely from ${dayWords(window.first)} to ${dayWords(window.last)}${nights}; for tender plants ask ` +
        `the weather service for its one-year-in-ten dates.`,
    },
    ...(tender.length + annuals.length > 0
      ? []
      : [{ basis: 'our estimate' as const, text: 'No plant here is hurt by nights like that.' }]),
  ];
}

/** Nights so many standard deviations below a month's usual low are not to be expected in a lifetime. Our choice. */
const UNHEARD_OF = 3;

/** The coldest month's low where the whole year is known and none of it comes near frost; else `null`. [°C] */
function frostless(plan: Plan): number | null {
  const months = plan.climate.months.flatMap(({ month }) => monthClimate(plan, month) ?? []);
  if (months.length < 12) return null;
  const coldest = months.toSorted((a, b) => a.low - b.low)[0];
  return coldest.low - UNHEARD_OF * coldest.spread > CLEAR_NIGHT ? coldest.low : null;
}

/** Whom such nights hurt, the tenderest first; annuals apart. */
function hurtIn({ plants }: Found): { readonly tender: readonly FrostPlant[]; readonly annuals: readonly string[] } {
  const hurt = plants.filter(({ reached }) => reached !== false).toSorted((a, b) => b.damage - a.damage);
  return {
    tender: hurt.filter(({ annual }) => !annual),
    annuals: hurt.filter(({ annual }) => annual).map(({ plant }) => plant),
  };
}

function plantWords(plan: Plan, each: FrostPlant, lowest: number | null): Advice[] {
  const { plant, damage, coverBelow, exposure, nights, help } = each;
  const units = unitsOf(plan);
  const limit = (celsius: number) => formatFrostLimit(celsius, units);
  const often =
    nights.length === 0 ? '' : ` Nights of ${limit(damage)} or less in a mean year: ${nightsWords(nights)}.`;
  const about =
    `${capital(namesInside(plan, [plant]))} (damaged from ${limit(damage)}; ${exposure} to the night ` + `sky)`;
  if (help === 'none')
    return [
      {
        basis: 'common practice',
        text:
          `${about} is too large to wrap or carry: water the soil the day before, and cut nothing off until ` +
          `spring.${often}`,
      },
    ];
  const colder = units === 'metric' ? '1 to 3 °C' : '2 to 5 °F';
  return [
    {
      basis: 'our estimate',
      text:
        `${about}: ${help === 'carry' ? 'carry in' : 'cover'} when the forecast says ${limit(coverBelow)} or ` +
        `less, for on a clear calm night a leaf is ${colder} colder than the air.${often}`,
    },
    ...(help === 'wrap' ? wrapLimits(plan, each, lowest) : []),
  ];
}

/** What a cover cannot do for a plant: the worst nights, and days under it. */
function wrapLimits(plan: Plan, { plant, damage, light }: FrostPlant, lowest: number | null): Advice[] {
  const name = namesInside(plan, [plant]);
  const { they } = agreeingWith(nameOf(plan, plant));
  const units = unitsOf(plan);
  return [
    ...(lowest !== null && lowest < damage
      ? [
          {
            basis: 'our estimate' as const,
            text:
              `On nights of ${formatTemperature(lowest, units)} a cover alone does not keep ${name} whole, for in ` +
              `wind or under cloud it gains ${windGain(units)}: expect damage, most at the tips.`,
          },
        ]
      : []),
    ...(light !== null && !light.enough
      ? [
          {
            basis: 'our estimate' as const,
            text:
              `Never leave the cover on ${name} by day: ${they} would have too little light even when the sun ` +
              `shines.`,
          },
        ]
      : []),
  ];
}

function windGain(units: Units): string {
  return `0 to ${formatTemperatureDifference(GAINED_IN_WIND, units)}`;
}

/** "9 in December, 13 in January and 4 in February, seldom in November" */
function nightsWords(nights: FrostPlant['nights']): string {
  const often = nights.filter(({ nights: count }) => count >= OFTEN);
  const seldom = nights.filter(({ nights: count }) => count < OFTEN).map(({ month }) => monthWord(month));
  const parts = [
    ...(often.length > 0
      ? [listWords(often.map(({ month, nights: count }) => `${count.toFixed(0)} in ${monthWord(month)}`))]
      : []),
    ...(seldom.length > 0 ? [`seldom in ${listWords(seldom)}`] : []),
  ];
  return parts.join(', ');
}

/** How to cover; none where nothing can be. */
export function coverWords(plan: Plan, found: Found): Advice[] {
  if (found.window === null || !hurtIn(found).tender.some(({ help }) => help === 'wrap')) return [];
  const units = unitsOf(plan);
  const degrees = (celsius: number) => formatTemperature(celsius, units);
  const { sunset } = found.window;
  return [
    {
      basis: 'common practice',
      text:
        `Put the cover on before sunset${sunset === null ? '' : ` (about ${formatClock(sunset, units)})`}, down to ` +
        `the ground and weighed all round, off the leaves; the heat it keeps comes from the soil, so water that the ` +
        `day before.`,
    },
    {
      basis: 'extension practice',
      text:
        `Off next morning once it is above freezing, or open over ${degrees(15)} outside, ${degrees(27)} inside ` +
        `(${degrees(20)} for cool crops).`,
    },
    {
      basis: 'trial',
      source: 'Oregon State University 1988, row cover effects on minimum air temperature',
      text:
        `Expect 0 to ${formatTemperatureDifference(MOST_GAINED, units)} from a fleece on a clear calm night, ` +
        `${windGain(units)} in wind or under cloud.`,
    },
    ...(plan.features.some(isCloth)
      ? [
          {
            basis: 'our estimate' as const,
            text:
              'Shade cloth left up in winter gains a degree at most and takes the sun that is wanted then: ' +
              'take it off.',
          },
        ]
      : []),
  ];
}

/**
 * Plant by plant: at which forecast, and what to do; with the nights of a mean year that hurt, where months count
 * them.
 */
export function frostTable(
  plan: Plan,
  found: Found,
): { readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] } {
  const { tender, annuals } = hurtIn(found);
  const units = unitsOf(plan);
  const counted = tender.some(({ nights }) => nights.length > 0);
  const rows = tender.map((each) => [
    nameOf(plan, each.plant),
    formatFrostLimit(each.coverBelow, units),
    helpWords(each, found.lowest, units),
    ...(counted ? [nightsWords(each.nights) || 'hardly any'] : []),
  ]);
  const last = found.window === null ? '' : `over with the first frost: pick before ${dayWords(found.window.first)}`;
  return {
    head: ['Plant', 'Forecast', 'Do', ...(counted ? ['Nights that hurt'] : [])],
    rows: [...rows, ...annuals.map((id) => [nameOf(plan, id), '', last, ...(counted ? [''] : [])])],
  };
}

function helpWords({ help, damage, light }: FrostPlant, lowest: number | null, units: Units): string {
  if (help === 'carry') return 'carry in';
  if (help === 'none') return 'too large to cover: water the soil the day before, cut nothing off until spring';
  const worst =
    lowest !== null && lowest < damage ? `; a cover alone fails at ${formatTemperature(lowest, units)}` : '';
  return `cover${worst}${light !== null && !light.enough ? '; off by day, too dark' : ''}`;
}
