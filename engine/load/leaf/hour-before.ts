import { isDark } from '../../cast/passes.ts';
import { MS_PER_HOUR } from '../../plan/units/per-unit.ts';
import type { Scene } from '../../scene/solids.ts';
import type { SampleTable } from '../../sun/samples.ts';
import { FRUIT_SKY_PART } from './leaf.ts';
import type { HourBefore, LeafMoment } from './receives.ts';

/**
 * The hour before each sample of one day. In the open the beam comes whole above the skyline and not at all below it,
 * and so does the sky.
 */
export function hoursBefore(
  scene: Scene,
  samples: SampleTable,
  light: readonly Pick<LeafMoment, 'beam' | 'diffuse'>[],
): HourBefore[] {
  const open = light.map(({ beam }, k) => (isDark(scene, samples.azimuth[k], samples.altitude[k]) ? 0 : beam));
  let first = 0;
  const hours = light.map((_, k) => {
    while (samples.when[first] <= samples.when[k] - MS_PER_HOUR) first++;
    let beam = 0;
    let diffuse = 0;
    let openBeam = 0;
    for (let n = first; n <= k; n++) {
      beam += light[n].beam * samples.hours[n];
      diffuse += light[n].diffuse * samples.hours[n];
      openBeam += open[n] * samples.hours[n];
    }
    return { first, beam, diffuse, open: openBeam + FRUIT_SKY_PART * diffuse };
  });
  const openMost = Math.max(0, ...hours.map((hour) => hour.open));
  return hours.map(({ first: from, beam, diffuse }) => ({ first: from, beam, diffuse, openMost }));
}
