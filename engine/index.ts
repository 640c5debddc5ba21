/** The engine's public face: what the command line and the page may use. Each folder appends its own lines. */
export type * from './plan/types.ts';
export { DEFAULTS, foliageFromOf, potOf, upBearingOf, worthOf } from './plan/defaults.ts';
export type {
  Cells, HotSpot, LeafHeat, LightClass, LoadResult, Nine, Outcome, PlantLoad, PlantSide, Quantity, SideLoad, SpotResult, Stretch, Verdict,
} from './load/types.ts';
export { QUANTITIES, QUANTITY_UNITS } from './load/types.ts';
