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
}

/**
 * Nothing round a point but the sky, and nothing left of the sky, both over the hottest ground: whatever stands round a
 * point lies between.
 */
export const OPEN: Surroundings = { sky: 1, groundRise: MOST_RISE };
export const CLOSED: Surroundings = { sky: 0, groundRise: MOST_RISE };

/** The same place when so much of the sky reaches it: cloth that is tried hides sky and changes nothing else. */
export function underSky(around: Surroundings, sky: number): Surroundings {
  return { ...around, sky };
}
