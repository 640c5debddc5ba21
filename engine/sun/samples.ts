import { monthDayOf, monthOfDate } from '../plan/dates/parts.ts';
import { stepMinutesOf } from '../plan/defaults.ts';
import { Kept } from '../plan/kept.ts';
import { refusal } from '../plan/problems.ts';
import type { CivilDate, MonthDay, Problem } from '../plan/types.ts';
import { MS_PER_HOUR, MS_PER_MINUTE } from '../plan/units/per-unit.ts';
import { type Period, type PeriodDay, periodDays } from './days/period-days.ts';
import { hottestMonth } from './days/season.ts';
import { type CivilDay, civilDays, isTimeZone } from './days/zone.ts';
import { sunPosition } from './position.ts';
import type { Setting } from './setting.ts';
import { skyOfClimate, skyOfWeather, type SkyAndAirColumns } from './sky/sky-and-air.ts';
import type { Weather } from './weather/weather.ts';

export { heatDays, type Period } from './days/period-days.ts';

/** A civil day and what holds all through it. */
export interface SampleDay {
  readonly date: CivilDate;
  readonly monthDay: MonthDay;
  readonly month: number;
  /** Its samples are those from `first` up to, not including, `end`. */
  readonly first: number;
  readonly end: number;
  /** The day's first instant and the next day's. [ms UTC] */
  readonly startMs: number;
  readonly endMs: number;
  /**
   * Highest and lowest air of the day, `climate.offset` included, raised on heat days; with a weather file that day's
   * own extremes. [°C]
   */
  readonly high: number;
  readonly low: number;
  /**
   * The month's mean air, (high + low)/2 with `climate.offset`, never raised: a month's `humidity` belongs to it. [°C]
   */
  readonly monthMean: number;
  /** The month's; with a weather file the mean of the file's month. [%], [m/s] */
  readonly humidity: number;
  readonly wind: number;
  /** Standard deviation of the daily high; 0 on heat days and with a weather file. [K] */
  readonly spread: number;
}

/**
 * Every step of a period whose middle has the sun above the horizon, in order of time.
 * One value a sample in every array; `count` of them.
 */
export interface SampleTable extends SunColumns, SkyAndAirColumns {
  readonly days: readonly SampleDay[];
  readonly count: number;
}

interface SunColumns {
  /** Middle of the step. [ms since 1970-01-01 UTC] */
  readonly when: Float64Array;
  /** Length of the step. [h] */
  readonly hours: Float64Array;
  /** True bearing of the sun, morning below 180, afternoon from 180 on. [°] */
  readonly azimuth: Float64Array;
  /** Apparent altitude, above 0. [°] */
  readonly altitude: Float64Array;
  /** True solar time. [h] */
  readonly solarHour: Float64Array;
  /** Index into `days`. */
  readonly dayOf: Int32Array;
}

export type SampleResult =
  | { readonly ok: true; readonly samples: SampleTable }
  | { readonly ok: false; readonly problems: Problem[] };

/**
 * The sun, sky and air of a period at a plan's site. A season of 107 days in steps of 10 minutes is about 9,000
 * samples.
 * @param weather its hours replace clear sky, sunshine and mean air on every day but heat days
 * @returns the samples, or the problems: a month missing from the climate, a date that does not exist, an unknown time
 *   zone
 */
export function samplesOf(plan: Setting, period: Period, weather?: Weather): SampleResult {
  const { site, season, climate } = plan;
  const of = weather === undefined ? [site, season, climate] : [site, season, climate, weather];
  return known.of(of, JSON.stringify(period), () => {
    const hottest = period.kind === 'heatwave' ? hottestMonth(plan, weather) : null;
    return hottest?.ok
      ? samplesOf(plan, { kind: 'heatDay', month: hottest.value.month }, weather)
      : sampled(plan, period, weather);
  });
}

/** Yards that are held against each other stand in one place, season and climate. */
const known = new Kept<SampleResult>();

function sampled(plan: Setting, period: Period, weather?: Weather): SampleResult {
  const { site, climate } = plan;
  if (!isTimeZone(site.timeZone)) {
    return refusal('/site/timeZone', `"${site.timeZone}" is not a known time zone.`);
  }
  const found = periodDays(plan, period, weather);
  if (!found.ok) return found;
  const make = (): SampleTable => tableOf(plan, found.value, weather);
  if (found.value.length !== 1) return { ok: true, samples: make() };
  const [{ date, raise }] = found.value;
  const of = weather === undefined ? [site, climate] : [site, climate, weather];
  return { ok: true, samples: knownDays.of(of, `${stepMinutesOf(plan.season)} ${date} ${raise}`, make) };
}

/** A single day is the same in whatever season it is asked for. */
const knownDays = new Kept<SampleTable>();

function tableOf(plan: Setting, found: readonly PeriodDay[], weather?: Weather): SampleTable {
  const { latitude, longitude, timeZone } = plan.site;
  const dates = found.map(({ date }) => date);
  const stepMinutes = stepMinutesOf(plan.season);
  const of = dates.length === 1 ? [plan.site] : [plan.site, plan.season];
  const { spans, distanceAu, ...suns } = knownSuns.of(of, `${stepMinutes} ${dates.join()}`, () =>
    sunsOf(civilDays(dates, timeZone), latitude, longitude, stepMinutes * MS_PER_MINUTE),
  );
  const { when, azimuth, altitude, solarHour } = suns;
  const columns = emptySky(when.length);
  const days = found.map((day, index): SampleDay => {
    const { date, climate } = day;
    const sky =
      weather !== undefined && day.raise === null ? skyOfWeather(plan, day, weather) : skyOfClimate(plan, day);
    const { first, end } = spans[index];
    for (let k = first; k < end; k++) {
      const sun = {
        azimuth: azimuth[k],
        altitude: altitude[k],
        distanceAu: distanceAu[k],
        solarHour: solarHour[k],
      };
      sky.write(columns, k, when[k], sun);
    }
    return {
      date,
      monthDay: monthDayOf(date),
      month: monthOfDate(date),
      ...spans[index],
      high: sky.high,
      low: sky.low,
      spread: sky.spread,
      monthMean: (climate.high + climate.low) / 2,
      humidity: climate.humidity,
      wind: climate.wind,
    };
  });
  return { days, count: when.length, ...suns, ...columns };
}

/** Where the sun stands through some days, whatever the sky and the air. */
interface Suns extends SunColumns {
  readonly spans: readonly Pick<SampleDay, 'first' | 'end' | 'startMs' | 'endMs'>[];
  readonly distanceAu: Float64Array;
}

/** Yards of one place in other climates stand under the same suns. */
const knownSuns = new Kept<Suns>();

function sunsOf(days: readonly CivilDay[], latitude: number, longitude: number, stepMs: number): Suns {
  const most = days.reduce((steps, { startMs, endMs }) => steps + Math.ceil((endMs - startMs) / stepMs), 0);
  const column = () => new Float64Array(most);
  const [when, hours, azimuth, altitude, solarHour, distanceAu] = [1, 2, 3, 4, 5, 6].map(column);
  const dayOf = new Int32Array(most);
  let count = 0;
  const spans = days.map(({ startMs, endMs }, index) => {
    const first = count;
    for (let stepStart = startMs; stepStart < endMs; stepStart += stepMs) {
      const stepEnd = Math.min(stepStart + stepMs, endMs);
      const middle = (stepStart + stepEnd) / 2;
      const sun = sunPosition(middle, latitude, longitude);
      if (sun.altitude <= 0) continue;
      when[count] = middle;
      hours[count] = (stepEnd - stepStart) / MS_PER_HOUR;
      azimuth[count] = sun.azimuth;
      altitude[count] = sun.altitude;
      solarHour[count] = sun.solarHour;
      distanceAu[count] = sun.distanceAu;
      dayOf[count] = index;
      count += 1;
    }
    return { first, end: count, startMs, endMs };
  });
  return {
    spans,
    when: when.slice(0, count),
    hours: hours.slice(0, count),
    azimuth: azimuth.slice(0, count),
    altitude: altitude.slice(0, count),
    solarHour: solarHour.slice(0, count),
    distanceAu: distanceAu.slice(0, count),
    dayOf: dayOf.slice(0, count),
  };
}

function emptySky(count: number): SkyAndAirColumns {
  const column = () => new Float64Array(count);
  return {
    beam: column(),
    diffuse: column(),
    global: column(),
    glow: column(),
    sunshine: column(),
    air: column(),
    spread: column(),
    humidity: column(),
    humidityAir: column(),
    wind: column(),
  };
}
