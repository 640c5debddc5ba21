/**
 * What stands round a point on one day, as far as a leaf there receives more or less for it. Found once a point and
 * day and handed to `absorbed`, which alone reads it.
 */
export interface Surroundings {
  /** Share of the isotropic sky's horizontal irradiance that reaches the point. [1] */
  readonly sky: number;
}

/** Nothing round a point but the sky, and nothing left of the sky: whatever stands round a point lies between. */
export const OPEN: Surroundings = { sky: 1 };
export const CLOSED: Surroundings = { sky: 0 };

/** The same place when so much of the sky reaches it: cloth that is tried hides sky and changes nothing else. */
export function underSky(around: Surroundings, sky: number): Surroundings {
  return { ...around, sky };
}
