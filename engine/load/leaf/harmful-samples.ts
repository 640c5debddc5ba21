import type { Passes } from '../../cast/passes.ts';
import type { PlantRow } from '../../plan/types.ts';
import type { HeatDay } from './heat-day.ts';
import { surfaceTemperature } from './leaf.ts';

/** Samples of some heat days, one entry each in every array, in the order of the days and of their times. */
export interface HarmfulSamples {
  readonly count: number;
  /** Index into the heat days. */
  readonly day: Int32Array;
  /** Index into that day's samples. */
  readonly sample: Int32Array;
  readonly passes: Passes;
}

/**
 * The samples at which a row's thirsty leaf can pass its limit at all. At the others no share of the beam does harm, so
 * that nothing has to
 * be cast: a leaf is warmest in the whole beam, and, what it absorbs being linear in the sky view, under no sky or
 * under all of it.
 */
export function harmfulSamples(heats: readonly HeatDay[], row: PlantRow, limit: number): HarmfulSamples {
  const found = heats.flatMap(({ moments }, day) =>
    moments.flatMap((moment, sample) => {
      const hottest = Math.max(
        surfaceTemperature(moment, row, 'thirsty', 1, 0),
        surfaceTemperature(moment, row, 'thirsty', 1, 1),
      );
      return hottest > limit ? [{ day, sample }] : [];
    }),
  );
  return {
    count: found.length,
    day: Int32Array.from(found, ({ day }) => day),
    sample: Int32Array.from(found, ({ sample }) => sample),
    passes: {
      count: found.length,
      azimuth: Float64Array.from(found, ({ day, sample }) => heats[day].passes.azimuth[sample]),
      altitude: Float64Array.from(found, ({ day, sample }) => heats[day].passes.altitude[sample]),
      state: Uint16Array.from(found, ({ day, sample }) => heats[day].passes.state[sample]),
    },
  };
}
