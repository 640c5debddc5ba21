import { parseEpw, weatherWarnings } from '../../../engine/index.ts';
import type { Outcome, Plan, Weather } from '../../../engine/index.ts';
import { contentMark } from '../content-mark.ts';

export interface WeatherFile {
  readonly weather: Weather;
  /** Of the file's content. */
  readonly mark: string;
  /** The year's hottest hour. [°C] */
  readonly hottest: number;
  readonly warnings: readonly string[];
}

/** Reads a weather file for a yard. @param bytes Of an EPW file. */
export function weatherFile({
  plan,
  bytes,
}: {
  readonly plan: Plan;
  readonly bytes: Uint8Array;
}): Outcome<WeatherFile> {
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
