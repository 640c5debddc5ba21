import { MS_PER_HOUR } from '../../plan/units/per-unit.ts';
import { clockOf } from '../../sun/days/zone.ts';
import type { SampleTable } from '../../sun/samples.ts';
import type { Stretch } from '../types.ts';

/** From the start of one sample's step to the end of another's. */
export function stretchOf(samples: SampleTable, first: number, last: number, timeZone: string): Stretch {
  const edge = (k: number, sign: 1 | -1) =>
    clockOf(samples.when[k] + (sign * samples.hours[k] * MS_PER_HOUR) / 2, timeZone);
  return { from: edge(first, -1), to: edge(last, 1) };
}
