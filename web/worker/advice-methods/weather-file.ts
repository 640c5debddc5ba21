import { parseEpw, weatherWarnings } from '../../../engine/index.ts';
import type { Outcome, Plan, WeatherMonth, WeatherPlace } from '../../../engine/index.ts';

export interface WeatherFile {
  readonly place: WeatherPlace;
  /** January first. */
  readonly months: readonly WeatherMonth[];
  /** The year's hottest hour. [°C] */
  readonly hottest: number;
  readonly warnings: readonly string[];
}

/** What a weather file says of the months of a yard's place. @param bytes Of an EPW file. */
export function weatherFile({ plan, bytes }: { readonly plan: Plan; readonly bytes: Uint8Array }): Outcome<WeatherFile> {
  const read = parseEpw(bytes);
  if (!read.ok) return read;
  const { place, months, air } = read.weather;
  return { ok: true, value: { place, months, hottest: air.reduce((most, value) => Math.max(most, value), -Infinity), warnings: weatherWarnings(plan, read.weather).map(({ message }) => message) } };
}
