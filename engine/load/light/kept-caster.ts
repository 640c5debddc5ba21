import { directionsOf, type Passes } from '../../cast/passes.ts';
import { createRememberingCaster, type RememberingCaster } from '../../cast/points/remembering-caster.ts';
import { Kept } from '../../plan/kept.ts';
import { sceneLike, stateIn } from '../../scene/scene-of.ts';
import type { Scene } from '../../scene/solids.ts';
import type { SampleTable } from '../../sun/samples.ts';
import { skyPasses } from '../../cast/sky.ts';
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
