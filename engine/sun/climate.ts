import { monthOf, offsetOf, turbidityOf } from '../plan/defaults.ts';
import type { Setting } from './setting.ts';
import type { Weather } from './weather/weather.ts';

/** A month of the climate, nothing absent, `climate.offset` in its high and low. */
export interface MonthClimate {
  readonly month: number;
  /** Mean daily high and low. [°C] */
  readonly high: number;
  readonly low: number;
  /** [%] */
  readonly humidity: number;
  /** [m/s] */
  readonly wind: number;
  /** Share of the daylight with the sun's disc out, before and from solar noon. */
  readonly sunshineMorning: number;
  readonly sunshineAfternoon: number;
  /** Standard deviation of the daily highs. [K] */
  readonly spread: number;
  /** Linke turbidity. */
  readonly turbidity: number;
}

/**
 * A month of a plan's climate, or null when the plan has no figures for it. With a weather file its high, low, humidity
 * and wind are the file's means (high and low: of the daily extremes), and the plan's offset is added to them too.
 * @param month 1 to 12
 */
export function monthClimate(plan: Setting, month: number, weather?: Weather): MonthClimate | null {
  const { climate } = plan;
  const own = climate.months.find((candidate) => candidate.month === month);
  if (own === undefined) return null;
  const offset = offsetOf(climate);
  const measured = weather?.months[month - 1];
  const usual = monthOf(own);
  return {
    month,
    high: (measured?.high ?? own.high) + offset,
    low: (measured?.low ?? own.low) + offset,
    humidity: measuredOr(measured?.humidity, usual.humidity),
    wind: measuredOr(measured?.wind, usual.wind),
    sunshineMorning: usual.sunshine,
    sunshineAfternoon: own.sunshineAfternoon ?? usual.sunshine,
    spread: usual.spread,
    turbidity: turbidityOf(climate, own),
  };
}

/** A weather file marks what it lacks by NaN. */
function measuredOr(measured: number | undefined, usual: number): number {
  return measured === undefined || Number.isNaN(measured) ? usual : measured;
}
