/** Frosty nights, who is hurt by them, and the summer frame's winter cover. */
import type { CivilDate, Plan } from '../../plan/types.ts';
import { formatFrostLimit, formatTemperature, formatTemperatureDifference, unitsOf } from '../../plan/units.ts';
import { clockOf } from '../../load/verdict/clock.ts';
import { isTooDark } from '../../load/light/light-class.ts';
import { normalShare } from '../../load/light/normal.ts';
import { plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import type { Outcome } from '../../load/types.ts';
import { monthWord } from '../../plan/dates.ts';
import { dateIn, datesBetween, monthOfDate, yearOf } from '../../sun/calendar.ts';
import { monthClimate } from '../../sun/climate.ts';
import { seasonDates } from '../../sun/season.ts';
import { sunTimes } from '../../sun/sun-times.ts';
import { dayLight } from '../words/plant-light.ts';
import type { Advice } from './advice.ts';
import { type FrostHelp, frostHelp } from './frost-help.ts';
import { listWords } from '../../plan/list-words.ts';
import { dateWords, namesInside, sentenceCase } from './season/words.ts';

/**
 * A leaf under a clear calm sky is 1 to 3 K colder than the air (Leuning & Cremer 1988, Agric. For. Meteorol.
 * 42:121–133). [K]
 */
export const CLEAR_NIGHT = 2;
/**
 * What frost cloth down to the ground gains at best, on a clear calm night (0 to 3 K claimed; Oregon State University
 * 1988 measured 0.2 to 0.4 K over mulch, and single nights colder than without). [K]
 */
const MOST_GAINED = 3;
/** The same in wind or under cloud: 0 to this, so a plant is only told safe where 0 will do. [K] */
const GAINED_IN_WIND = 1;
/** Light through frost cloth of 17 to 42 g/m². */
const COVER_LIGHT = [0.7, 0.85] as const;
/** Sky views that grade a place's exposure: our own. */
const EXPOSED = 0.8;
const SHELTERED = 0.4;
/** Vegetables damaged from here on are gone with the first frost. Our choice. [°C] */
const ANNUAL_DAMAGE = -1;

export interface FrostPlant {
  readonly plant: string;
  /** Air temperature at which damage begins. [°C] */
  readonly damage: number;
  readonly help: FrostHelp;
  /** Cover when the forecast is at or below this. [°C] */
  readonly coverBelow: number;
  /** The coldest night on record reaches it; `null` where no record is in the plan. */
  readonly reached: boolean | null;
  readonly exposure: 'exposed' | 'half sheltered' | 'sheltered';
  /** Nights of a mean month with air at or below `damage`; months without figures are left out. */
  readonly nights: readonly { readonly month: number; readonly nights: number }[];
  /** Annual that frost ends: nothing to bring through the winter. */
  readonly annual: boolean;
  /** Daily light under a cover on a clear day in the middle of the frost time. [mol/m² a day] */
  readonly light: { readonly low: number; readonly high: number; readonly enough: boolean } | null;
}

export interface FrostAdvice {
  /** First and last frost to expect after the season; `null` where the climate does not say. */
  readonly window: { readonly first: CivilDate; readonly last: CivilDate; readonly sunset: string | null } | null;
  readonly lowest: number | null;
  readonly plants: readonly FrostPlant[];
  readonly advice: readonly Advice[];
}

/** @returns the frost advice, or why it cannot be made */
export function frostAdvice(plan: Plan): Outcome<FrostAdvice> {
  const dates = seasonDates(plan);
  if (!dates.ok) return dates;
  const window = windowOf(plan, dates.value[dates.value.length - 1]);
  const lowest = plan.climate.frost?.lowest ?? null;
  const middle = window && datesBetween(window.first, window.last);
  const coldest = middle === null ? null : middle[Math.floor(middle.length / 2)];
  const plants: FrostPlant[] = [];
  const winter = coldest === null ? null : winterLight(plan, coldest);
  if (winter !== null && !winter.ok) return winter;
  for (const feature of plantFeatures(plan)) {
    const row = rowOf(plan, feature);
    if (row?.frostDamage === undefined) continue;
    const nine = winter?.value.of(feature) ?? null;
    const under = nine && COVER_LIGHT.map((share) => share * nine.dailyLight);
    plants.push({
      plant: feature.id,
      damage: row.frostDamage,
      help: frostHelp(feature),
      coverBelow: row.frostDamage + CLEAR_NIGHT,
      reached: lowest === null ? null : lowest <= row.frostDamage + CLEAR_NIGHT,
      exposure:
        nine === null || nine.skyView >= EXPOSED
          ? 'exposed'
          : nine.skyView >= SHELTERED
            ? 'half sheltered'
            : 'sheltered',
      annual: row.group === 'vegetable' && row.frostDamage >= ANNUAL_DAMAGE,
      nights: nightsBelow(plan, row.frostDamage, window === null ? 1 : monthOfDate(window.first)),
      light: nine &&
        under && { low: under[0], high: under[1], enough: !isTooDark(row, { ...nine, dailyLight: under[0] }) },
    });
  }
  const sunset = coldest === null ? null : sunTimes(plan, coldest).setMs;
  const withSunset = window && { ...window, sunset: sunset === null ? null : clockOf(sunset, plan.site.timeZone) };
  return {
    ok: true,
    value: { window: withSunset, lowest, plants, advice: sentences(plan, { window: withSunset, lowest, plants }) },
  };
}

/** The frost time that follows a season. */
function windowOf(plan: Plan, seasonEnd: CivilDate): { first: CivilDate; last: CivilDate } | null {
  const { first, last } = plan.climate.frost ?? {};
  if (first === undefined || last === undefined) return null;
  const begins = nextDay(first, seasonEnd);
  return { first: begins, last: nextDay(last, begins) };
}

/** The next time a day of the year comes, from a date on; 29 February waits for its leap year no longer than a day. */
function nextDay(monthDay: string, from: CivilDate): CivilDate {
  const year = yearOf(from);
  const days = [year, year + 1].map((candidate) => dateIn(candidate, monthDay) ?? `${candidate}-02-28`);
  return days[0] >= from ? days[0] : days[1];
}

/** A clear day in a month the climate may not have: the light depends on no temperature. The summer cloth is down. */
function winterLight(plan: Plan, date: CivilDate) {
  const month = monthOfDate(date);
  const months = plan.climate.months.some((row) => row.month === month)
    ? plan.climate.months
    : [...plan.climate.months, { month, high: 15, low: 5 }];
  const features = plan.features.filter(({ kind }) => kind !== 'canopy' && kind !== 'screen');
  const year = yearOf(date);
  const clear = months.map((row) => (row.month === month ? { ...row, sunshine: 1, sunshineAfternoon: 1 } : row));
  return dayLight(
    {
      ...plan,
      features,
      season: { ...plan.season, year, from: date.slice(5), to: date.slice(5) },
      climate: { ...plan.climate, months: clear },
    },
    { kind: 'day', date: date.slice(5) },
  );
}

/**
 * Of the months that have figures, in the order of the winter; nights scatter about a month's mean low as days do about
 * its mean high.
 */
function nightsBelow(plan: Plan, damage: number, begins: number): { month: number; nights: number }[] {
  const place = (month: number): number => (month - begins + 12) % 12;
  return plan.climate.months
    .toSorted((a, b) => place(a.month) - place(b.month))
    .flatMap(({ month }) => {
      const climate = monthClimate(plan, month);
      if (climate === null) return [];
      const share =
        climate.spread > 0 ? normalShare((damage - climate.low) / climate.spread) : Number(climate.low <= damage);
      const nights = share * 30;
      return nights < 0.1 ? [] : [{ month, nights }];
    });
}

/** "9 in December, 13 in January and 4 in February, seldom in November" */
function nightsWords(nights: FrostPlant['nights']): string {
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
function wrapLimits(
  plan: Plan,
  { plant, damage, light }: FrostPlant,
  lowest: number | null,
  degrees: (celsius: number) => string,
  windGain: string,
): Advice[] {
  const name = namesInside(plan, [plant]);
  return [
    ...(lowest !== null && lowest < damage
      ? [
          {
            basis: 'our estimate' as const,
            text:
              `On nights of ${degrees(lowest)} a cover alone does not keep ${name} whole, for in wind or under cloud ` +
              `it gains ${windGain}: expect damage, most at the tips.`,
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

function sentences(plan: Plan, { window, lowest, plants }: Omit<FrostAdvice, 'advice'>): Advice[] {
  const units = unitsOf(plan);
  const degrees = (celsius: number) => formatTemperature(celsius, units);
  const limit = (celsius: number) => formatFrostLimit(celsius, units);
  if (window === null)
    return [
      {
        basis: 'our estimate',
        text:
          'The plan does not say when frost comes: add the first and last frost and the lowest night, from a ' +
          'weather station near by, and the winter can be planned.',
      },
    ];
  const advice: Advice[] = [
    {
      basis: 'our estimate',
      text:
        `Frost to expect from ${dateWords(window.first)} to ` +
        `${dateWords(window.last)}${lowest === null ? '' : `, on the worst nights ${degrees(lowest)}`}. These ` +
        `dates are chances, not promises: for tender plants ask the weather service for the date that one year in ` +
        `ten goes past.`,
    },
  ];
  const windGain = `0 to ${formatTemperatureDifference(GAINED_IN_WIND, units)}`;
  const colder = units === 'metric' ? '1 to 3 °C' : '2 to 5 °F';
  const hurt = plants.filter(({ reached }) => reached !== false).toSorted((a, b) => b.damage - a.damage);
  if (hurt.length === 0)
    return [...advice, { basis: 'our estimate', text: 'No plant here is hurt by nights like that.' }];
  const annuals = hurt.filter(({ annual }) => annual).map(({ plant }) => plant);
  if (annuals.length > 0)
    advice.push({
      basis: 'common practice',
      text: `The first frost ends ${namesInside(plan, annuals)}: pick what is left before ${dateWords(window.first)}.`,
    });
  const tender = hurt.filter(({ annual }) => !annual);
  for (const each of tender) {
    const { plant, damage, coverBelow, exposure, nights, help } = each;
    const often =
      nights.length === 0 ? '' : ` Nights of ${limit(damage)} or less in a mean year: ${nightsWords(nights)}.`;
    const name = sentenceCase(namesInside(plan, [plant]));
    const about = `${name} (damaged from ${limit(damage)}; ${exposure} to the night sky)`;
    const why = `for on a clear calm night a leaf is ${colder} colder than the air`;
    const text =
      help === 'none'
        ? `${about} is too large to wrap or carry: water the soil the day before, and cut nothing off until spring.`
        : `${about}: ${help === 'carry' ? 'carry it in' : 'cover it'} when the forecast says ${limit(coverBelow)} or ` +
          `less, ${why}.`;
    advice.push({ basis: help === 'none' ? 'common practice' : 'our estimate', text: `${text}${often}` });
    if (help === 'wrap') advice.push(...wrapLimits(plan, each, lowest, degrees, windGain));
  }
  if (!tender.some(({ help }) => help === 'wrap')) return advice;
  advice.push(
    {
      basis: 'common practice',
      text:
        `Put the cover on before ` +
        `sunset${window.sunset === null ? '' : ` (${window.sunset} in the middle of the frost time)`}, down to the ` +
        `ground ` +
        `and weighed all round, off the leaves; the heat it keeps comes from the soil.`,
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
        `${windGain} in wind or under cloud. Water the soil the day before.`,
    },
    {
      basis: 'extension practice',
      source: 'Penn State Extension, on floating row covers',
      text: `Fleece of 17 to 42 g/m² (½ to 1¼ oz/yd²) lets 70 to 85 % of the light through.`,
    },
  );
  if (plan.features.some(({ kind }) => kind === 'canopy' || kind === 'screen')) {
    advice.push({
      basis: 'our estimate',
      text:
        'Shade cloth left up in winter gains a degree at most and takes the sun that is wanted then: take it ' +
        'off and hang frost cloth from the same frame.',
    });
  }
  return advice;
}
