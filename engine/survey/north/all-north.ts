import { elevationOf, upBearingOf } from '../../plan/defaults.ts';
import type { CivilDate, NorthObservation, Plan } from '../../plan/types.ts';
import type { Finding } from '../estimate.ts';
import { type StickShadow, shadowTable } from '../height/shadow-table.ts';
import { northCheckLine } from '../place/place.ts';
import { sunAtMs } from '../place/sun-at.ts';
import { declinationAt } from './declination.ts';
import { northFrom, type NorthSighting } from './north.ts';
import { type ClockWindow, northTimes, tellsNorth } from './times.ts';
import { northTogether, type NorthTogether } from './together.ts';

export interface AllNorth {
  /** One for each observation. */
  readonly findings: readonly Finding<NorthSighting>[];
  /** Of those that tell north; `null` without one. */
  readonly together: NorthTogether | null;
  /** Where the sun would then be highest; `null` without a sighting. */
  readonly check: string | null;
  /** When a pole's shadow tells north best that day. */
  readonly windows: readonly ClockWindow[];
  /** The day's shadows of a 1 m pole, and whether each tells north. */
  readonly shadows: readonly (StickShadow & { readonly tells: boolean })[];
  /** East positive. [°] */
  readonly declination: number;
}

/**
 * North from everything that was seen, and when a shadow tells it on a day.
 * @param date the day on which somebody goes out with a pole
 */
export function allNorth(plan: Plan, observations: readonly NorthObservation[], date: CivilDate): AllNorth {
  const { site, season } = plan;
  const near = site.upBearing === undefined ? undefined : upBearingOf(plan);
  const findings = observations.map((observation) => northFrom(site, observation, season.year, near));
  const sightings = findings.flatMap((finding) => (finding.ok ? [finding.value] : []));
  const together = sightings.length === 0 ? null : northTogether(sightings);
  return {
    findings,
    together,
    check: together && northCheckLine(site, together.upBearing.value, date),
    windows: northTimes(site, date),
    shadows: shadowTable(site, date, 0).map((shadow) => ({
      ...shadow,
      tells: tellsNorth(sunAtMs(shadow.whenMs, site)),
    })),
    declination: declinationAt(site.latitude, site.longitude, elevationOf(site), season.year).declination,
  };
}
