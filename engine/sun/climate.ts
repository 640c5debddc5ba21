import { DEFAULTS } from '../plan/defaults.ts';
import type { Plan } from '../plan/types.ts';
import type { Weather } from './weather.ts';

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
export function monthClimate(plan: Plan, month: number, weather?: Weather): MonthClimate | null {
  const { climate } = plan;
  const own = climate.months.find((candidate) => candidate.month === month);
  if (own === undefined) return null;
  const offset = climate.offset ?? DEFAULTS.offset;
  const measured = weather?.months[month - 1];
  const sunshine = own.sunshine ?? DEFAULTS.sunshine;
  return {
    month,
    high: (measured?.high ?? own.high) + offset,
    low: (measured?.low ?? own.low) + offset,
    humidity: firstNumber(measured?.humidity, own.humidity, DEFAULTS.humidity),
    wind: firstNumber(measured?.wind, own.wind, DEFAULTS.wind),
    sunshineMorning: sunshine,
    sunshineAfternoon: own.sunshineAfternoon ?? sunshine,
    spread: own.spread ?? DEFAULTS.spread,
    turbidity: own.turbidity ?? climate.turbidity ?? DEFAULTS.turbidity,
  };
}

/** The first that is given and not NaN. */
function firstNumber(measured: number | undefined, own: number | undefined, otherwise: number): number {
  if (measured !== undefined && !Number.isNaN(measured)) return measured;
  return own ?? otherwise;
}
