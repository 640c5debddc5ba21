import type { MonthDay } from '../plan/types.ts';
import type { Crown, Scene, SpacePoint } from '../scene/solids.ts';
import type { GridSpec } from './grid.ts';
import type { Passes } from './passes.ts';

/** The 577 rays of the isotropic sky (four to each Tregenza patch, the cap one) and what each weighs; weights add up to 1. */
export interface SkyRays {
  readonly azimuth: Float64Array;
  readonly altitude: Float64Array;
  readonly weight: Float64Array;
}

export function skyRays(): SkyRays {
  throw new Error('not yet');
}

/** The sky's rays as passes of one yearly state. */
export function skyPasses(_state: number): Passes {
  throw new Error('not yet');
}

/** Share of the isotropic sky's horizontal irradiance that reaches a point on a day. [1] */
export function skyView(_scene: Scene, _point: SpacePoint, _monthDay: MonthDay, _own?: Crown): number {
  throw new Error('not yet');
}

/** `skyView` of every cell on a day, index = j·columns + i. [1] */
export function skyViewGrid(_scene: Scene, _grid: GridSpec, _monthDay: MonthDay): Float64Array {
  throw new Error('not yet');
}
