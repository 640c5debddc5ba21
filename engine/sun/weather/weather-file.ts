import type { Plan, Problem } from '../../plan/types.ts';
import { contentMark } from './content-mark.ts';
import { parseEpw } from './epw.ts';
import { weatherWarnings } from './weather-fit.ts';
import type { Weather } from './weather.ts';

export interface WeatherFile {
  readonly weather: Weather;
  /** Of the file's content. */
  readonly mark: string;
  /** The year's hottest hour. [°C] */
  readonly hottest: number;
  readonly warnings: readonly string[];
}

/** Reads a weather file for a yard. @param bytes Of an EPW file. */
export function weatherFile(
  plan: Plan,
  bytes: Uint8Array,
): { readonly ok: true; readonly value: WeatherFile } | { readonly ok: false; readonly problems: Problem[] } {
  const read = parseEpw(bytes);
  if (!read.ok) return read;
  const { weather } = read;
  return {
    ok: true,
    value: {
      weather,
      mark: contentMark(bytes),
      hottest: weather.air.reduce((most, value) => Math.max(most, value), -Infinity),
      warnings: weatherWarnings(plan, weather).map(({ message }) => message),
    },
  };
}
