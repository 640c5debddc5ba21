/** The site, the season and the climate: where the yard is, how it lies, how hot it gets there. */

import { monthWord } from '../dates/dates.ts';
import { HOW, SURFACE } from './feature.ts';
import { defaulted, list, monthDay, number, object, optional, point, text, words } from './form.ts';
import type { Json, NumberRule } from './form.ts';

const BEARING: NumberRule = { min: -360, max: 360, unit: 'degrees' };
const SHARE: NumberRule = { min: 0, max: 1 };
/** Warmer than any air measured, so that °F typed by mistake are found. */
const AIR: NumberRule = { min: -60, max: 62, unit: '°C' };
const TURBIDITY: NumberRule = { min: 1, max: 10 };
const line = { form: 'line' } as const;
const clockTime = { form: 'clock-time' } as const;

const NORTH_OBSERVATION = {
  form: 'kinds',
  called: (_: Json, index: number) => `North observation ${index + 1}`,
  tag: 'by',
  what: 'a way to find north',
  common: { pm: optional(number({ min: 0, max: 180, unit: 'degrees' })) },
  kinds: {
    shadow: { line, when: clockTime },
    vanish: { along: line, when: clockTime },
    compass: {
      reading: number(BEARING),
      along: line,
      declination: optional(number({ min: -180, max: 180, unit: 'degrees' })),
    },
    picture: { bearing: number(BEARING) },
  },
} as const;

const SKYLINE_POINT = object((_, index) => `Skyline point ${index + 1}`, {
  azimuth: number({ min: 0, max: 360, unit: 'degrees' }),
  altitude: number({ min: -90, max: 90, unit: 'degrees' }),
});

export const SITE = object('Site', {
  latitude: number({ min: -90, max: 90, unit: 'degrees' }),
  longitude: number({ min: -180, max: 180, unit: 'degrees' }),
  elevation: defaulted(number({ min: -500, max: 9000, unit: 'm' })),
  /** IANA name. */
  timeZone: { form: 'zone' },
  /** True bearing of the plan's +y axis. */
  upBearing: defaulted(number(BEARING)),
  boundary: { form: 'outline', cells: 'cell' },
  /** How far the wind reaches the plants. Absent: guessed from the walls, hedges and buildings drawn. */
  shelter: optional(words('open', 'sheltered', 'court')),
  /** What lies on the ground. Absent: nothing is known of it. */
  surface: optional(SURFACE),
  /** What posts would stand in, for frames that say nothing of their own. */
  soil: optional(words('garden', 'hard', 'loose', 'wet', 'paving', 'wheels')),
  skyline: optional(
    list(SKYLINE_POINT, {
      empty: 'skyline has no points; leave it out for a level horizon.',
      once: {
        key: 'azimuth',
        as: (azimuth) => Number(azimuth) % 360,
        says: (azimuth) => `there is already a point at azimuth ${azimuth} degrees.`,
      },
    }),
  ),
  underlay: optional(
    object('Underlay', {
      image: { form: 'image' },
      at: point,
      width: number({ above: 0, max: 20_000, unit: 'm' }),
      turn: defaulted(number({ min: -3600, max: 3600, unit: 'degrees' })),
      opacity: defaulted(number(SHARE)),
    }),
  ),
  northFrom: optional(list(NORTH_OBSERVATION)),
  pace: optional(
    object('Pace', {
      steps: number({ above: 0, max: 10_000 }),
      length: number({ above: 0, max: 10_000, unit: 'm' }),
    }),
  ),
  rules: optional(
    object('Rules', {
      maxHeight: optional(number({ above: 0, max: 500, unit: 'm' })),
      setback: optional(number({ min: 0, max: 500, unit: 'm' })),
      note: optional(text),
    }),
  ),
  tap: optional(point),
  hose: optional(number({ min: 0, max: 1000, unit: 'm' })),
  how: optional(HOW),
});

export const YEAR = number({ min: 1900, max: 2199, whole: true });

export const SEASON = object('Season', {
  /** Year of `from`. */
  year: YEAR,
  from: { form: 'season-day' },
  to: { form: 'season-day' },
  /** Divides 60. */
  stepMinutes: defaulted(number({ min: 1, max: 60, whole: true })),
});

export const CLIMATE_MONTH = object(monthCalled, {
  month: number({ min: 1, max: 12, whole: true }),
  high: number(AIR),
  low: number(AIR),
  humidity: defaulted(number({ min: 0, max: 100, unit: '%' })),
  wind: defaulted(number({ min: 0, max: 60, unit: 'm/s' })),
  sunshine: defaulted(number(SHARE)),
  sunshineAfternoon: optional(number(SHARE)),
  spread: defaulted(number({ min: 0, max: 20, unit: 'K' })),
  turbidity: defaulted(number(TURBIDITY)),
});

export const CLIMATE = object('Climate', {
  from: optional(words('rough', 'months', 'file')),
  source: optional(text),
  offset: defaulted(number({ min: -20, max: 20, unit: 'K' })),
  /** [m/s] */
  gust: optional(number({ min: 0, max: 120, unit: 'm/s' })),
  turbidity: defaulted(number(TURBIDITY)),
  hotAir: number(AIR),
  heatwaveHigh: number(AIR),
  frost: optional(
    object('Frost', {
      first: optional(monthDay),
      last: optional(monthDay),
      lowest: optional(number({ min: -60, max: 30, unit: '°C' })),
    }),
  ),
  months: list(CLIMATE_MONTH, {
    once: { key: 'month', says: (month) => `${monthWord(Number(month))} is there twice.` },
  }),
  how: optional(HOW),
});

function monthCalled({ month }: Json, index: number): string {
  return typeof month === 'number' && Number.isInteger(month) && month >= 1 && month <= 12
    ? `Climate, ${monthWord(month)}`
    : `Climate, month row ${index + 1}`;
}

/** How warm one summer really was, beside the climate: what two years are held against each other by. */
export const SUMMER = object(({ year }, index) => `Summer ${typeof year === 'number' ? year : index + 1}`, {
  /** Year in which the season begins. */
  year: YEAR,
  /** Mean daily high and low of a month as it was; without a low it lies as far below the high as usual. */
  months: list(
    object(monthCalled, {
      month: number({ min: 1, max: 12, whole: true }),
      high: number(AIR),
      low: optional(number(AIR)),
    }),
    { once: { key: 'month', says: (month) => `${monthWord(Number(month))} is there twice.` } },
  ),
  /** High of its hottest day. */
  hottest: optional(number(AIR)),
});
