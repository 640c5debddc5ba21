/** The engine's public face: what the command line and the page may use. Each folder appends its own lines. */
export type * from './plan/types.ts';
export { DEFAULTS, foliageFromOf, potOf, upBearingOf, worthOf } from './plan/defaults.ts';
export type {
  Cells, HotSpot, LeafHeat, LightClass, LoadResult, Nine, Outcome, PlantLoad, PlantSide, Quantity, SideLoad, SpotResult, Stretch, Verdict,
} from './load/types.ts';
export { QUANTITIES, QUANTITY_UNITS } from './load/types.ts';

export type { Crown, Occluder, Prism, Scene, Sheet, Solid, SpacePoint, Trunk } from './scene/solids.ts';
export { buildScene, stateOf } from './scene/build.ts';
export { planDirection } from './scene/direction.ts';
export type { Passes } from './cast/passes.ts';
export type { GridSpec } from './cast/grid.ts';
export type { Blocker, RayResult } from './cast/ray.ts';
export type { PointCaster } from './cast/share.ts';
export { castRay } from './cast/ray.ts';
export { createPointCaster } from './cast/share.ts';
export { castGrid } from './cast/grid.ts';
export { skyPasses, skyRays, skyView, skyViewGrid } from './cast/sky.ts';
