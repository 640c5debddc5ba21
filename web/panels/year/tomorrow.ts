import { computed, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import { daysAfter, monthClimate, parseTemperature } from '../../../engine/index.ts';
import type { Forecast } from '../../../engine/index.ts';
import { liveAnswer } from '../../state/live.ts';
import { shownOptions, stage } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { noted, today } from './season.ts';

/** Between a day's high and its low where the climate has no figures for the month. [K] */
const USUAL_SWING = 15;

/** What is typed of the weather service's forecast. An empty date is tomorrow, an empty low the usual one. */
export const typed = signal({ date: '', high: '', low: '' });

export const forecastDate: ReadonlySignal<string> = computed(() => typed.value.date || daysAfter(today(), 1));

/** The forecast, or the sentence that says what is wrong with it; `null` while no high is typed. */
export const forecast: ReadonlySignal<Forecast | string | null> = computed(() => {
  if (typed.value.high.trim() === '') return null;
  const date = forecastDate.value;
  const high = parseTemperature(typed.value.high, units.value);
  if (high === null) return `"${typed.value.high}" is no temperature such as 41.`;
  const low = typed.value.low.trim() === '' ? high - usualSwing(Number(date.slice(5, 7))) : parseTemperature(typed.value.low, units.value);
  return low === null ? `"${typed.value.low}" is no temperature such as 22.` : { date, high, low };
});

/** The day's list, worked out while the stage is open and a high is typed. */
export const dayList = liveAnswer('tomorrow', () => {
  const asked = forecast.value;
  return stage.value === 'year' && asked !== null && typeof asked !== 'string' ? { plan: noted.value, options: shownOptions.value, forecast: asked } : null;
});

function usualSwing(month: number): number {
  const usual = monthClimate(plan.value, month);
  return usual === null ? USUAL_SWING : usual.high - usual.low;
}
