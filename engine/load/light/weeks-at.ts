import { createPointCaster } from '../../cast/points/point-caster.ts';
import { monthOfDate } from '../../plan/dates/parts.ts';
import type { CivilDate, Plan, PlanPoint } from '../../plan/types.ts';
import { MS_PER_HOUR } from '../../plan/units/per-unit.ts';
import { buildScene, stateOf } from '../../scene/build.ts';
import { localIso } from '../../sun/days/zone.ts';
import { samplesOf } from '../../sun/samples.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import type { Outcome } from '../types.ts';
import { hotLeafHours, type HotLeafHours } from '../verdict/hot-leaf-hours.ts';
import { weightsOf } from './weights.ts';

export interface WeeksRequest {
  /** [m] */
  readonly height: number;
  /** The plant whose top the spot is. */
  readonly plant?: string;
  readonly span: 'season' | 'year';
  readonly weather?: Weather;
}

/** One week of the span, or its last days. */
export interface SpotWeek {
  readonly from: CivilDate;
  /** The day in its middle. */
  readonly middle: CivilDate;
  /**
   * By hour of the clock, 0 to 23: share of the hour that harmful sun reaches the spot, mean of the week's days, 0 to
   * 1.
   */
  readonly harmful: readonly number[];
  /** The same for any sun. */
  readonly sun: readonly number[];
  /**
   * Whether the plant's thirsty leaf is over its limit in that hour on a heat day of the week's month; `null` where
   * nobody can say.
   */
  readonly over: readonly boolean[] | null;
  /** Whether the clocks changed since the week before. */
  readonly clocksChanged: boolean;
}

const DAYS_IN_WEEK = 7;

/**
 * The season or the year at a spot: which hours of which weeks bring sun, which bring harmful sun, and which are too
 * hot for a leaf.
 */
export function weeksAt(
  plan: Plan,
  at: PlanPoint,
  { height, plant, span, weather }: WeeksRequest,
): Outcome<readonly SpotWeek[]> {
  const sampled = samplesOf(span === 'year' ? wholeYear(plan) : plan, { kind: 'season' }, weather);
  if (!sampled.ok) return sampled;
  const { samples } = sampled;
  const heats = plant === undefined ? null : hotLeafHours(plan, plant, weather);
  const { days, count, when, dayOf } = samples;
  const scene = buildScene(plan);
  const state = Uint16Array.from(dayOf, (day) => stateOf(scene, days[day].monthDay));
  const shares = createPointCaster(scene, {
    count,
    azimuth: samples.azimuth,
    altitude: samples.altitude,
    state,
  }).sharesAt([at[0], at[1], height]);
  const { hotHours, sunHours } = weightsOf(scene, samples, plan.climate.hotAir).channels;
  const offsets = days.map(({ startMs, endMs }) => offsetHours((startMs + endMs) / 2, plan.site.timeZone));

  const weeks: SpotWeek[] = [];
  for (let first = 0; first < days.length; first += DAYS_IN_WEEK) {
    const inWeek = Math.min(DAYS_IN_WEEK, days.length - first);
    const harmful = Array.from({ length: 24 }, () => 0);
    const sun = Array.from({ length: 24 }, () => 0);
    for (let k = days[first].first; k < days[first + inWeek - 1].end; k++) {
      const hour = Math.floor(when[k] / MS_PER_HOUR + offsets[dayOf[k]]) % 24;
      // The weights are means over the season's days already.
      harmful[hour] += (shares[k] * hotHours[k] * days.length) / inWeek;
      sun[hour] += (shares[k] * sunHours[k] * days.length) / inWeek;
    }
    const middle = days[first + Math.floor(inWeek / 2)].date;
    weeks.push({
      from: days[first].date,
      middle,
      harmful,
      sun,
      over: overIn(heats?.ok ? heats.value : [], middle),
      clocksChanged: first > 0 && offsets[first] !== offsets[first - DAYS_IN_WEEK],
    });
  }
  return { ok: true, value: weeks };
}

function overIn(heats: readonly HotLeafHours[], date: CivilDate): readonly boolean[] | null {
  return heats.find(({ month }) => month === monthOfDate(date))?.over ?? null;
}

/**
 * The year that the season begins in. A month without a climate counts as clear: its hours of sun are asked for, not
 * its heat.
 */
function wholeYear(plan: Plan): Plan {
  const months = Array.from(
    { length: 12 },
    (_, k) =>
      plan.climate.months.find(({ month }) => month === k + 1) ?? { month: k + 1, high: 20, low: 10, sunshine: 1 },
  );
  return { ...plan, season: { ...plan.season, from: '01-01', to: '12-31' }, climate: { ...plan.climate, months } };
}

/** What the clocks are ahead of UTC. [h] */
function offsetHours(ms: number, timeZone: string): number {
  const said = localIso(ms, timeZone).slice(19);
  const hours = Number(said.slice(1, 3)) + Number(said.slice(4, 6)) / 60;
  return said.startsWith('-') ? -hours : hours;
}
