import { computed } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { daysAfter, parseTemperature } from '../../../engine/index.ts';
import type { Forecast } from '../../../engine/index.ts';
import { liveAnswer } from '../../state/live.ts';
import { shownOptions, stage } from '../../state/view.ts';
import { units } from '../../state/yard.ts';
import { keepText, keptText } from '../parts/kept-stock.ts';
import { noted, today } from './season.ts';

const KEPT = 'tomorrow/';

interface Typed {
  readonly date: string;
  readonly high: string;
  readonly low: string;
}

/**
 * What is typed of the weather service's forecast, kept on this machine until the day is over. An empty low is the
 * usual one.
 */
export const typed: ReadonlySignal<Typed> = computed(() => {
  const date = keptText(`${KEPT}date`);
  return date >= today()
    ? { date, high: keptText(`${KEPT}high`), low: keptText(`${KEPT}low`) }
    : { date: daysAfter(today(), 1), high: '', low: '' };
});

export function keepTyped(change: Partial<Typed>): void {
  for (const [key, text] of Object.entries({ ...typed.value, ...change })) keepText(`${KEPT}${key}`, text);
}

/** The forecast, or the sentence that says what is wrong with it; `null` while no high is typed. */
export const forecast: ReadonlySignal<Forecast | string | null> = computed(() => {
  if (typed.value.high.trim() === '') return null;
  const { date } = typed.value;
  const high = parseTemperature(typed.value.high, units.value);
  if (high === null) return `"${typed.value.high}" is no temperature such as 41.`;
  if (typed.value.low.trim() === '') return { date, high };
  const low = parseTemperature(typed.value.low, units.value);
  return low === null ? `"${typed.value.low}" is no temperature such as 22.` : { date, high, low };
});

/** The day's list, worked out while the stage is open and a high is typed. */
export const dayList = liveAnswer('tomorrow', () => {
  const asked = forecast.value;
  return stage.value === 'year' && asked !== null && typeof asked !== 'string'
    ? { plan: noted.value, options: shownOptions.value, forecast: asked }
    : null;
});
