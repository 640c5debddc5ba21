import { directionsOf, type Passes } from '../../cast/passes.ts';
import type { PointCaster } from '../../cast/points/point-caster.ts';
import { createRememberingCaster, type RememberingCaster } from '../../cast/points/remembering-caster.ts';
import { skyPasses } from '../../cast/sky.ts';
import { Kept } from '../../plan/kept.ts';
import { sceneLike, stateIn } from '../../scene/scene-of.ts';
import type { Scene } from '../../scene/solids.ts';
import type { SampleTable } from '../../sun/samples.ts';
import { passesOf } from './passes-of.ts';

const known = new Kept<RememberingCaster>();

/** The caster that all questions about a scene under some suns share: what reaches a point it finds once. */
export function sunCaster(scene: Scene, samples: SampleTable): RememberingCaster {
  const { azimuth } = samples;
  const like = sceneLike(scene);
  return known.of([scene, azimuth], 'suns', () =>
    caster(scene, passesOf(scene, samples), like && known.known([like, azimuth], 'suns')),
  );
}

/** What reaches a wall from the sun before it. */
export interface FacingCaster extends PointCaster {
  /** The samples in which the sun is less than a right angle from the way that the wall faces, rising. */
  readonly samples: Int32Array;
}

const knownFacing = new Kept<RememberingCaster & FacingCaster>();

/** The same of a wall that faces a bearing: only the samples are cast in which the sun stands before it. [°] */
export function facingCaster(scene: Scene, samples: SampleTable, bearing: number): FacingCaster {
  const { azimuth } = samples;
  const like = sceneLike(scene);
  const key = `facing ${bearing}`;
  return knownFacing.of([scene, azimuth], key, () => {
    const all = passesOf(scene, samples);
    const before = Int32Array.from(azimuth.keys()).filter((k) => isBefore(azimuth[k], bearing));
    const passes = {
      count: before.length,
      azimuth: Float64Array.from(before, (k) => all.azimuth[k]),
      altitude: Float64Array.from(before, (k) => all.altitude[k]),
      state: Uint16Array.from(before, (k) => all.state[k]),
    };
    return { ...caster(scene, passes, like && knownFacing.known([like, azimuth], key)), samples: before };
  });
}

function isBefore(azimuth: number, bearing: number): boolean {
  const apart = Math.abs(azimuth - bearing) % 360;
  return Math.min(apart, 360 - apart) < 90;
}

/** The same of the sky's rays in a yearly state. */
export function skyCaster(scene: Scene, state: number): RememberingCaster {
  const like = sceneLike(scene);
  return known.of([scene], `sky ${state}`, () =>
    caster(scene, skyPasses(state), like && known.known([like], `sky ${stateIn(like, scene, state)}`)),
  );
}

function caster(scene: Scene, passes: Passes, like?: RememberingCaster): RememberingCaster {
  return createRememberingCaster(scene, directionsOf(scene, passes), like);
}
