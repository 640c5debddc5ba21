import { createPointCaster, type PointCaster } from '../../cast/points/point-caster.ts';
import { skyPasses, skyRays } from '../../cast/sky.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { sceneLike } from '../../scene/scene-of.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import { createWallsRound, type WallsRound } from '../leaf/walls/walls-round.ts';
import type { WallsUnder } from '../leaf/walls/walls-under.ts';
import { skyCaster } from './kept-caster.ts';

/** Sky views of many points of one scene. */
export interface SkyViewer {
  readonly scene: Scene;
  /** What walls and buildings throw on points of it. */
  readonly walls: WallsRound | WallsUnder;
  /**
   * Share of the isotropic sky's horizontal irradiance that reaches a point in a yearly state. [1]
   * @param own an extra crown in the way for this point alone
   */
  at(point: SpacePoint, state: number, own?: OwnCrown): number;
}

/** Lays the sky's rays out once for each yearly state that is asked for. */
export function createSkyViewer(
  scene: Scene,
  walls: SkyViewer['walls'] = createWallsRound(scene),
  casterIn: (state: number) => PointCaster = (state) => createPointCaster(scene, skyPasses(state)),
): SkyViewer {
  const { weight } = skyRays();
  const casters = new Map<number, PointCaster>();
  const shares = new Float64Array(weight.length);
  return {
    scene,
    walls,
    at(point, state, own) {
      let caster = casters.get(state);
      if (!caster) casters.set(state, (caster = casterIn(state)));
      caster.sharesAt(point, own, shares);
      let sum = 0;
      for (let k = 0; k < shares.length; k++) sum += shares[k] * weight[k];
      return sum;
    },
  };
}

/** Of a yard as it stands, to which cloth may be added. */
type YardViewer = SkyViewer & { readonly walls: WallsRound };
const known = new WeakMap<Scene, YardViewer>();

/** The viewer that all questions about a scene share: what it finds of a point it finds once. */
export function skyViewerOf(scene: Scene): YardViewer {
  let viewer = known.get(scene);
  if (!viewer) {
    const before = sceneLike(scene);
    const walls = createWallsRound(scene, { like: before && known.get(before)?.walls });
    viewer = { ...createSkyViewer(scene, walls, (state) => skyCaster(scene, state)), walls };
    known.set(scene, viewer);
  }
  return viewer;
}
