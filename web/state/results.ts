import { computed } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { usualCell } from '../../engine/index.ts';
import type { Period } from '../../engine/index.ts';
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

const FINE = 0.25;

/** Edge of a cell of the map: as it was chosen, and coarser where the ground is so large or crowded. [m] */
export const reckonedCell: ReadonlySignal<number> = computed(
  () => (mapCell.value * usualCell(reckonedPlan.value)) / FINE,
);

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
