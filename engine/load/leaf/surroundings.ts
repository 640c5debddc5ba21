import { MOST_RISE } from './ground.ts';

/**
 * What stands round a point on one day, as far as a leaf there receives more or less for it. Found once a point and
 * day and handed to `absorbed`, which alone reads it.
 */
export interface Surroundings {
  /** Share of the isotropic sky's horizontal irradiance that reaches the point. [1] */
  readonly sky: number;
  /** How far the ground under it rises above the air in 1,000 W/m². [K] */
  readonly groundRise: number;
  /** What walls and buildings throw on it; `null`: none is in view. */
  readonly walls: WallGlow | null;
}

/** Walls and buildings round a point, in the place of the sky and of the ground behind them. */
export interface WallGlow {
  /** Shares of the sky and of the ground that they hide. [1] */
  readonly sky: number;
  readonly ground: number;
  /** Sunlight from them, and their longwave from above and from below the level, one value a sample. [W/m²] */
  readonly light: Float64Array;
  readonly above: Float64Array;
  readonly below: Float64Array;
}

/**
 * Nothing round a point but the sky, and nothing left of the sky, both over the hottest ground: whatever stands round a
 * point lies between.
 */
export const OPEN: Surroundings = { sky: 1, groundRise: MOST_RISE, walls: null };
export const CLOSED: Surroundings = { sky: 0, groundRise: MOST_RISE, walls: null };

/** The same place when so much of the sky reaches it: cloth that is tried hides sky and changes nothing else. */
export function underSky(around: Surroundings, sky: number): Surroundings {
  return { ...around, sky };
}
