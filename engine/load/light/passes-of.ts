import type { Passes } from '../../cast/passes.ts';
import { stateOf } from '../../scene/build.ts';
import type { Scene } from '../../scene/solids.ts';
import type { SampleTable } from '../../sun/samples.ts';

/** The samples of a period as directions to cast along, each in the yard's yearly state of its day. */
export function passesOf(scene: Scene, samples: SampleTable): Passes {
  const states = samples.days.map((day) => stateOf(scene, day.monthDay));
  return {
    count: samples.count,
    azimuth: samples.azimuth,
    altitude: samples.altitude,
    state: Uint16Array.from(samples.dayOf, (day) => states[day]),
  };
}
