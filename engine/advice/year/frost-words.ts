/** What the winter asks for, in sentences: when frost comes, whom it hurts, and what a cover does and does not do. */
import { monthWord } from '../../plan/dates.ts';
import { listWords } from '../../plan/list-words.ts';
import type { Plan } from '../../plan/types.ts';
import {
  formatFrostLimit,
  formatTemperature,
  formatTemperatureDifference,
  type Units,
  unitsOf,
} from '../../plan/units.ts';
import type { Advice } from './advice.ts';
import type { FrostAdvice, FrostPlant } from './frost-types.ts';
import { dateWords, namesInside, sentenceCase } from './season/words.ts';

/**
 * What frost cloth down to the ground gains at best, on a clear calm night (0 to 3 K claimed; Oregon State University
 * 1988 measured 0.2 to 0.4 K over mulch, and single nights colder than without). [K]
 */
const MOST_GAINED = 3;
/** The same in wind or under cloud: 0 to this, so a plant is only told safe where 0 will do. [K] */
const GAINED_IN_WIND = 1;

type Window = NonNullable<FrostAdvice['window']>;

export function frostWords(plan: Plan, { window, lowest, plants }: Omit<FrostAdvice, 'advice'>): Advice[] {
  if (window === null)
    return [
      {
        basis: 'our estimate',
        text:
          'The plan does not say when frost comes: add the first and last frost and the lowest night, from a ' +
          'weather station near by, and the winter can be planned.',
      },
    ];
  const units = unitsOf(plan);
  const expected = expectedWords(window, lowest, units);
  const hurt = plants.filter(({ reached }) => reached !== false).toSorted((a, b) => b.damage - a.damage);
  if (hurt.length === 0)
    return [expected, { basis: 'our estimate', text: 'No plant here is hurt by nights like that.' }];
  const annuals = hurt.filter(({ annual }) => annual).map(({ plant }) => plant);
  const tender = hurt.filter(({ annual }) => !annual);
  return [
    expected,
    ...(annuals.length > 0
      ? [
          {
            basis: 'common practice' as const,
            text:
              `The first frost ends ${namesInside(plan, annuals)}: pick what is left before ` +
              `${dateWords(window.first)}.`,
          },
        ]
      : []),
    ...tender.flatMap((plant) => [
      nightWords(plan, plant, units),
      ...(plant.help === 'wrap' ? wrapLimits(plan, plant, lowest, units) : []),
    ]),
    ...(tender.some(({ help }) => help === 'wrap') ? coverWords(plan, window, units) : []),
  ];
}

function expectedWords(window: Window, lowest: number | null, units: Units): Advice {
  const worst = lowest === null ? '' : `, on the worst nights ${formatTemperature(lowest, units)}`;
  return {
    basis: 'our estimate',
    text:
      `Frost to expect from ${dateWords(window.first)} to ${dateWords(window.last)}${worst}. These dates are ` +
      `chances, not promises: for tender plants ask the weather service for the date that one year in ten goes past.`,
  };
}

/** What to do for a plant before a frosty night, from which forecast on, and how often. */
function nightWords(
  plan: Plan,
  { plant, damage, coverBelow, exposure, nights, help }: FrostPlant,
  units: Units,
): Advice {
  const limit = (celsius: number) => formatFrostLimit(celsius, units);
  const often = nights.length === 0 ? '' : ` Nights of ${limit(damage)} or less in a mean year: ${oftenWords(nights)}.`;
  const name = sentenceCase(namesInside(plan, [plant]));
  const about = `${name} (damaged from ${limit(damage)}; ${exposure} to the night sky)`;
  if (help === 'none')
    return {
      basis: 'common practice',
      text:
        `${about} is too large to wrap or carry: water the soil the day before, and cut nothing off until ` +
        `spring.${often}`,
    };
  const colder = units === 'metric' ? '1 to 3 °C' : '2 to 5 °F';
  return {
    basis: 'our estimate',
    text:
      `${about}: ${help === 'carry' ? 'carry it in' : 'cover it'} when the forecast says ${limit(coverBelow)} or ` +
      `less, for on a clear calm night a leaf is ${colder} colder than the air.${often}`,
  };
}

/** "9 in December, 13 in January and 4 in February, seldom in November" */
function oftenWords(nights: FrostPlant['nights']): string {
  const often = nights.filter(({ nights: count }) => count >= 0.5);
  const seldom = nights.filter(({ nights: count }) => count < 0.5).map(({ month }) => monthWord(month));
  const parts = [
    ...(often.length > 0
      ? [listWords(often.map(({ month, nights: count }) => `${count.toFixed(0)} in ${monthWord(month)}`))]
      : []),
    ...(seldom.length > 0 ? [`seldom in ${listWords(seldom)}`] : []),
  ];
  return parts.join(', ');
}

/** What a cover cannot do for a plant: the worst nights, and days under it. */
function wrapLimits(plan: Plan, { plant, damage, light }: FrostPlant, lowest: number | null, units: Units): Advice[] {
  const name = namesInside(plan, [plant]);
  return [
    ...(lowest !== null && lowest < damage
      ? [
          {
            basis: 'our estimate' as const,
            text:
              `On nights of ${formatTemperature(lowest, units)} a cover alone does not keep ${name} whole, for in ` +
              `wind or under cloud it gains ${gainedInWind(units)}: expect damage, most at the tips.`,
          },
        ]
      : []),
    ...(light !== null && !light.enough
      ? [
          {
            basis: 'our estimate' as const,
            text: `Never leave the cover on ${name} by day: it would have too little light even when the sun shines.`,
          },
        ]
      : []),
  ];
}

function gainedInWind(units: Units): string {
  return `0 to ${formatTemperatureDifference(GAINED_IN_WIND, units)}`;
}

/** How a cover is used and what it gains, wherever something is wrapped. */
function coverWords(plan: Plan, { sunset }: Window, units: Units): Advice[] {
  const degrees = (celsius: number) => formatTemperature(celsius, units);
  const beforeSunset = sunset === null ? 'before sunset' : `before sunset (${sunset} in the middle of the frost time)`;
  const hasSummerCloth = plan.features.some(({ kind }) => kind === 'canopy' || kind === 'screen');
  return [
    {
      basis: 'common practice',
      text:
        `Put the cover on ${beforeSunset}, down to the ground and weighed all round, off the leaves; the heat it ` +
        `keeps comes from the soil.`,
    },
    {
      basis: 'extension practice',
      text:
        `Take it off, or open it, next morning once it is above freezing; by day open it when it is over ` +
        `${degrees(15)} outside, or over ${degrees(27)} inside (${degrees(20)} for cool crops).`,
    },
    {
      basis: 'trial',
      source: 'Oregon State University 1988, row cover effects on minimum air temperature',
      text:
        `Expect 0 to ${formatTemperatureDifference(MOST_GAINED, units)} from a fleece on a clear calm night, ` +
        `${gainedInWind(units)} in wind or under cloud. Water the soil the day before.`,
    },
    {
      basis: 'extension practice',
      source: 'Penn State Extension, on floating row covers',
      text: `Fleece of 17 to 42 g/m² (½ to 1¼ oz/yd²) lets 70 to 85 % of the light through.`,
    },
    ...(hasSummerCloth
      ? [
          {
            basis: 'our estimate' as const,
            text:
              'Shade cloth left up in winter gains a degree at most and takes the sun that is wanted then: take it ' +
              'off and hang frost cloth from the same frame.',
          },
        ]
      : []),
  ];
}
