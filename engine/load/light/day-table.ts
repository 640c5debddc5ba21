import type { CivilDate, MonthDay, Plan } from '../../plan/types.ts';
import { buildScene } from '../../scene/build.ts';
import { dateOfDay } from '../../sun/days/season.ts';
import { civilDay, localIso } from '../../sun/days/zone.ts';
import { sunPosition } from '../../sun/position.ts';
import { samplesOf, type SampleTable } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { Outcome } from '../types.ts';
import { weightsOf } from './weights.ts';

/** One civil day's sun, minute by elapsed minute: index = whole minutes since the day began, the last its end. */
export interface DayTable {
  readonly date: CivilDate;
  readonly startMs: number;
  /** Length of the day: 1440, or 1380 and 1500 where the clocks change. */
  readonly minutes: number;
  /** True, 0 to 360. [°] */
  readonly azimuth: Float64Array;
  /** Apparent; below 0 at night. [°] */
  readonly altitude: Float64Array;
  /** What the clocks read, minutes after midnight. */
  readonly clock: Int16Array;
  /**
   * How harmful the sun is, 0 to 1: the chance that the air is at or above the hot limit while the sun shines (the
   * weight of hot hours).
   */
  readonly harm: Float64Array;
  /** Mean air; NaN at night. [°C] */
  readonly air: Float64Array;
  /** The zone's clocks against UTC at midday: "+02:00". */
  readonly offset: string;
  /** Why there is no `harm` and `air`, in one sentence; `null` when there is. */
  readonly noClimate: string | null;
}

/** The sun of a chosen day, or of the heatwave day, minute by minute. `plan` needs no features. */
export function dayTable(plan: Plan, monthDay: MonthDay | 'heatwave', weather?: Weather): Outcome<DayTable> {
  const { latitude, longitude, timeZone } = plan.site;
  const sampled = samplesOf(
    plan,
    monthDay === 'heatwave' ? { kind: 'heatwave' } : { kind: 'day', date: monthDay },
    weather,
  );
  const dated = dateOfDay(plan, monthDay === 'heatwave' ? plan.season.from : monthDay);
  if (!dated.ok) return dated;
  const date = sampled.ok ? sampled.samples.days[0].date : dated.value;
  const { startMs, endMs } = civilDay(date, timeZone);
  const minutes = Math.round((endMs - startMs) / 60_000);
  const table = {
    azimuth: new Float64Array(minutes + 1),
    altitude: new Float64Array(minutes + 1),
    clock: new Int16Array(minutes + 1),
    harm: new Float64Array(minutes + 1),
    air: new Float64Array(minutes + 1).fill(NaN),
  };
  for (let minute = 0; minute <= minutes; minute++) {
    const sun = sunPosition(startMs + minute * 60_000, latitude, longitude);
    table.azimuth[minute] = sun.azimuth;
    table.altitude[minute] = sun.altitude;
  }
  fillClock(table.clock, startMs, timeZone);
  if (sampled.ok) fillFromSamples(table, plan, sampled.samples, startMs);
  const offset = localIso(startMs + minutes * 30_000, timeZone).slice(19);
  return {
    ok: true,
    value: { date, startMs, minutes, ...table, offset, noClimate: sampled.ok ? null : sampled.problems[0].message },
  };
}

/** Clocks only jump on a quarter hour, so every fifteenth minute is looked up. */
function fillClock(clock: Int16Array, startMs: number, timeZone: string): void {
  let reading = 0;
  for (let minute = 0; minute < clock.length; minute++) {
    if (minute % 15 === 0) {
      const iso = localIso(startMs + minute * 60_000, timeZone);
      reading = Number(iso.slice(11, 13)) * 60 + Number(iso.slice(14, 16));
    }
    clock[minute] = reading++;
  }
  if (clock[clock.length - 1] === 0) clock[clock.length - 1] = 1440;
}

function fillFromSamples(
  table: Pick<DayTable, 'harm' | 'air'>,
  plan: Plan,
  samples: SampleTable,
  startMs: number,
): void {
  const { hotHours } = weightsOf(buildScene(plan), samples, plan.climate.hotAir).channels;
  for (let i = 0; i < samples.count; i++) {
    const middle = (samples.when[i] - startMs) / 60_000;
    const half = samples.hours[i] * 30;
    for (let minute = Math.ceil(middle - half); minute < middle + half; minute++) {
      table.harm[minute] = hotHours[i] / samples.hours[i];
      table.air[minute] = samples.air[i];
    }
  }
}
