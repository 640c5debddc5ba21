/**
 * Which one input would bring the estimate nearest to the readings: offered with what it gains, never made by itself.
 */

import { monthOfDate } from '../../plan/dates/parts.ts';
import { monthOf, upBearingOf } from '../../plan/defaults.ts';
import { wrapBearing } from '../../plan/geometry/angles.ts';
import { isCloth } from '../../plan/kinds.ts';
import type { Feature, Plan } from '../../plan/types.ts';
import { formatTemperatureDifference, formatShare } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { namedInside } from '../../plan/words/names.ts';
import { checkReadings, type LeafReading } from './readings.ts';
import type { Correction, ReadingCheck } from './types.ts';

/** So many readings outside on one side are no chance. */
export const ENOUGH_OUTSIDE = 3;
/** A correction must take at least this share of the error away. Our choice. */
const LEAST_GAIN = 0.15;
const TRY_MINUTES = 5;

interface Candidate {
  readonly what: string;
  readonly pointer: string;
  readonly from: number;
  readonly values: readonly number[];
  readonly words: (value: number) => string;
  readonly made: (value: number) => Plan;
}

/** Best first; none unless three or more readings lie outside on one side. */
export function correctionsOf(
  plan: Plan,
  readings: readonly LeafReading[],
  checks: readonly ReadingCheck[],
): Correction[] {
  const outside = checks.filter((check) => check.outside);
  const hot = outside.filter(({ difference }) => difference > 0).length;
  if (Math.max(hot, outside.length - hot) < ENOUGH_OUTSIDE) return [];
  const errorBefore = errorOf(checks);
  const found = candidates(plan, checks).flatMap((candidate): Correction[] => {
    const tried = candidate.values.map((value) => ({
      value,
      error: errorOf(checkReadings(candidate.made(value), readings, TRY_MINUTES).checks),
    }));
    const best = tried.reduce((least, one) => (one.error < least.error ? one : least), tried[0]);
    if (best === undefined || best.error > (1 - LEAST_GAIN) * errorBefore) return [];
    const made = candidate.made(best.value);
    return [
      {
        what: candidate.what,
        pointer: candidate.pointer,
        from: candidate.from,
        to: best.value,
        errorBefore,
        errorAfter: best.error,
        plan: made,
        sentence: sentence(plan, candidate, best.value, errorBefore, best.error),
      },
    ];
  });
  return found.toSorted((a, b) => a.errorAfter - b.errorAfter);
}

/** Root mean square of the differences. [K] */
function errorOf(checks: readonly ReadingCheck[]): number {
  return checks.length === 0
    ? 0
    : Math.sqrt(checks.reduce((sum, { difference }) => sum + difference * difference, 0) / checks.length);
}

function candidates(plan: Plan, checks: readonly ReadingCheck[]): Candidate[] {
  const densities = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9];
  const list: Candidate[] = [];
  for (const [index, feature] of plan.features.entries()) {
    const replaced = (changed: Feature): Plan => ({ ...plan, features: plan.features.with(index, changed) });
    const name = namedInside(plan, feature.id);
    if (isCloth(feature)) {
      list.push({
        what: `the density of ${name}`,
        pointer: `/features/${index}/measuredDensity`,
        from: feature.measuredDensity ?? feature.density,
        values: densities,
        words: formatShare,
        made: (value) => replaced({ ...feature, measuredDensity: value }),
      });
    } else if (feature.kind === 'tree') {
      list.push({
        what: `how much light ${name} lets through`,
        pointer: `/features/${index}/openness`,
        from: feature.openness,
        values: [0.05, 0.1, 0.2, 0.3, 0.45, 0.6],
        words: formatShare,
        made: (value) => replaced({ ...feature, openness: value }),
      });
    }
  }
  const up = upBearingOf(plan);
  list.push({
    what: 'the direction of north on the plan',
    pointer: '/site/upBearing',
    from: up,
    values: [-15, -10, -5, 5, 10, 15].map((turn) => wrapBearing(up + turn)),
    words: (value) => `${value.toFixed(0)}°`,
    made: (value) => ({ ...plan, site: { ...plan.site, upBearing: value } }),
  });
  for (const month of new Set(checks.map(({ when }) => monthOfDate(when)))) {
    const index = plan.climate.months.findIndex((row) => row.month === month);
    if (index < 0) continue;
    const row = plan.climate.months[index];
    list.push({
      what: `the wind of month ${month}`,
      pointer: `/climate/months/${index}/wind`,
      from: monthOf(row).wind,
      values: [1, 2, 3, 4.5, 6, 8],
      words: (value) => `${value.toFixed(1)} m/s`,
      made: (value) => ({
        ...plan,
        climate: { ...plan.climate, months: plan.climate.months.with(index, { ...row, wind: value }) },
      }),
    });
  }
  return list;
}

function sentence(plan: Plan, { what, from, words }: Candidate, to: number, before: number, after: number): string {
  const degrees = (kelvin: number) => formatTemperatureDifference(kelvin, unitsOf(plan), 1);
  return (
    `If ${what} is ${words(to)} and not ${words(from)}, the readings’ mean distance from the estimate falls ` +
    `from ${degrees(before)} to ${degrees(after)}: measure it, and change it only if you find it so.`
  );
}
