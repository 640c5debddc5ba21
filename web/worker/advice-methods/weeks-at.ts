import { buildScene, createPointCaster, localIso, samplesOf, stateOf, weightsOf, withOptions } from '../../../engine/index.ts';
import type { CivilDate, Outcome, Plan, PlanPoint } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

export interface WeeksAtArgs {
  readonly plan: Plan;
  /** Ids of the options to show as built. */
  readonly options: readonly string[];
  readonly at: PlanPoint;
  /** [m] */
  readonly height: number;
}

/** One week of the season, or its last days. */
export interface SpotWeek {
  readonly from: CivilDate;
  /** The day in its middle. */
  readonly middle: CivilDate;
  /** By hour of the clock, 0 to 23: share of the hour that harmful sun reaches the spot, mean of the week's days, 0 to 1. */
  readonly harmful: readonly number[];
  /** The same for any sun. */
  readonly sun: readonly number[];
  /** Whether the clocks changed since the week before. */
  readonly clocksChanged: boolean;
}

const DAYS_IN_WEEK = 7;
const MS_PER_HOUR = 3_600_000;

/** The season at a spot: which hours of which weeks bring sun, and which bring harmful sun. */
export function weeksAt({ plan, options, at, height }: WeeksAtArgs, { weather }: Task): Outcome<readonly SpotWeek[]> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  const sampled = samplesOf(built.plan, { kind: 'season' }, weather);
  if (!sampled.ok) return sampled;
  const { samples } = sampled;
  const { days, count, when, dayOf } = samples;
  const scene = buildScene(built.plan);
  const state = Uint16Array.from(dayOf, (day) => stateOf(scene, days[day].monthDay));
  const shares = createPointCaster(scene, { count, azimuth: samples.azimuth, altitude: samples.altitude, state }).sharesAt([at[0], at[1], height]);
  const { hotHours, sunHours } = weightsOf(scene, samples, built.plan.climate.hotAir).channels;
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
    weeks.push({
      from: days[first].date, middle: days[first + Math.floor(inWeek / 2)].date, harmful, sun,
      clocksChanged: first > 0 && offsets[first] !== offsets[first - DAYS_IN_WEEK],
    });
  }
  return { ok: true, value: weeks };
}

/** What the clocks are ahead of UTC. [h] */
function offsetHours(ms: number, timeZone: string): number {
  const said = localIso(ms, timeZone).slice(19);
  const hours = Number(said.slice(1, 3)) + Number(said.slice(4, 6)) / 60;
  return said.startsWith('-') ? -hours : hours;
}
