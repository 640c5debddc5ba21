/** What reaches points of a yard on its heat days. */

import { directionsOf } from '../../cast/passes.ts';
import { createDirectionCaster } from '../../cast/points/point-caster.ts';
import { skyRays } from '../../cast/sky.ts';
import { groundRise } from '../../load/leaf/ground.ts';
import type { Surroundings, WallGlow } from '../../load/leaf/surroundings.ts';
import type { WallsRound } from '../../load/leaf/walls/walls-round.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import type { HeatRays } from './heat-rays.ts';

/** What reaches a point. */
export interface Lit {
  /** Share of each ray: the heat days' samples, one day after the other, then the sky's rays in each state. */
  readonly shares: Float64Array;
  /** Of them the samples of each heat day. */
  readonly ofDay: readonly Float64Array[];
  /** One a heat day; days in the same yearly state share theirs. */
  readonly around: readonly Surroundings[];
}

const SKY = skyRays();

/** Lights points of a scene as it is. What it answers holds until the next question. */
export function createLighter(
  scene: Scene,
  rays: HeatRays,
  walls: WallsRound,
): { at(point: SpacePoint, own?: OwnCrown): Lit } {
  const caster = createDirectionCaster(scene, directionsOf(scene, rays.passes));
  const lit = emptyLit(rays);
  return {
    at(point, own) {
      caster.sharesAt(point, own, lit.shares);
      lookRound(rays, lit, groundRise(scene, point), walls.on(rays.days, point, own));
      return lit;
    },
  };
}

/** A point's light while it is being worked out. */
interface Lighting extends Lit {
  readonly around: readonly { -readonly [key in keyof Surroundings]: Surroundings[key] }[];
}

export function emptyLit({ days, first, passes }: HeatRays): Lighting {
  const shares = new Float64Array(passes.count);
  return {
    shares,
    ofDay: days.map(({ samples }, d) => shares.subarray(first[d], first[d] + samples.count)),
    around: days.map(() => ({ sky: 0, groundRise: 0, walls: null })),
  };
}

/** Adds up the sky that the shares leave, and looks at the ground and at the walls. */
export function lookRound(
  { passes, states, stateOf }: HeatRays,
  { shares, around }: Lighting,
  rise: number,
  walls: readonly (WallGlow | null)[],
): void {
  const begin = passes.count - states.length * SKY.count;
  const skies = states.map((_, state) => {
    const at = begin + state * SKY.count;
    let sum = 0;
    for (let k = 0; k < SKY.count; k++) sum += shares[at + k] * SKY.weight[k];
    return sum;
  });
  for (let d = 0; d < around.length; d++) {
    around[d].sky = skies[stateOf[d]];
    around[d].groundRise = rise;
    around[d].walls = walls[d];
  }
}
