import { computed } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { usualCell } from '../../engine/index.ts';
import type { Period, Stretch } from '../../engine/index.ts';
import { clockWords } from '../common/words.ts';
import { liveAnswer } from './live.ts';
import { reckonedPlan, skyPlan } from './reckoned.ts';
import { mapCell, mapHeight, minute, monthDay, periodKind, pin, shownOptions } from './view.ts';

/** What the numbers on the screen are for. */
export const period: ReadonlySignal<Period> = computed(() =>
  periodKind.value === 'season'
    ? { kind: 'season' }
    : periodKind.value === 'heatwave'
      ? { kind: 'heatwave' }
      : { kind: 'day', date: monthDay.value },
);

/** Edges of a cell that are wanted: a season takes three times as long at the finer. [m] */
const USUAL = 0.25;
const FINE = 0.1;

/** Edge of a cell of the map as it was chosen, else fine on a single day. [m] */
export const wantedCell: ReadonlySignal<number> = computed(
  () => mapCell.value ?? (periodKind.value === 'season' ? USUAL : FINE),
);

/** Edge of a cell that is worked out anew while something is moved: coarser on large or crowded ground. [m] */
export const usualCellHere: ReadonlySignal<number> = computed(() => usualCell(reckonedPlan.value));

/** Edge of a cell of the map, coarser on ground as much. [m] */
const reckonedCell: ReadonlySignal<number> = computed(() => (wantedCell.value * usualCellHere.value) / USUAL);

/** The graded yard: map, hot spots, plants. */
export const heat = liveAnswer('load', () => ({
  plan: reckonedPlan.value,
  options: shownOptions.value,
  period: period.value,
  cell: reckonedCell.value,
  height: mapHeight.value,
}));

/** The sun of the day under the bead, minute by minute. */
export const day = liveAnswer('day', () => ({
  plan: skyPlan.value,
  monthDay: periodKind.value === 'heatwave' ? 'heatwave' : monthDay.value,
}));

/** From sunrise to sunset of the heatwave day; `null` while another day is shown. */
export const sunUp = computed((): Stretch | null => {
  const table = periodKind.value === 'heatwave' ? day.value.shown?.value : undefined;
  if (table === undefined) return null;
  const first = table.altitude.findIndex((altitude) => altitude > 0);
  const last = table.altitude.findLastIndex((altitude) => altitude > 0);
  return first < 0 ? null : { from: clockWords(table.clock[first], '24'), to: clockWords(table.clock[last], '24') };
});

/** The pinned spot's hours, at the map's height. */
export const spot = liveAnswer('spot', () => {
  const at = pin.value;
  return (
    at && { plan: reckonedPlan.value, options: shownOptions.value, period: period.value, at, height: mapHeight.value }
  );
});

/** Where the sun stands at the time bead; `null` until the day is known, and `altitude` at or below 0 at night. */
export interface SunNow {
  /** True. [°] */
  readonly azimuth: number;
  /** Apparent. [°] */
  readonly altitude: number;
  /** Minutes after midnight by the site's clocks. */
  readonly clock: number;
  readonly air: number;
  readonly harm: number;
}

export const sunNow: ReadonlySignal<SunNow | null> = computed(() => {
  const table = day.value.shown?.value;
  if (!table) return null;
  const index = Math.min(Math.max(0, Math.round(minute.value)), table.minutes);
  return {
    azimuth: table.azimuth[index],
    altitude: table.altitude[index],
    clock: table.clock[index],
    air: table.air[index],
    harm: table.harm[index],
  };
});
