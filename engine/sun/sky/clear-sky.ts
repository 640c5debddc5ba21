import { radiansOf } from '../../plan/geometry/angles.ts';
import { SOLAR_CONSTANT } from '../sun-constants.ts';
import { pressureRatio, relativeAirMass } from './air-mass.ts';
import { ineichenPerez, type SkyIrradiance } from './ineichen-perez.ts';

export type { SkyIrradiance } from './ineichen-perez.ts';

const DARK: SkyIrradiance = { beam: 0, diffuse: 0, global: 0 };

export interface ClearSkyPlace {
  /** Apparent solar altitude. [°] At or below 0 all is dark. */
  readonly altitude: number;
  /** [m] */
  readonly elevation: number;
  /** Linke turbidity, 1 to 10: 2 very clear, 3.5 usual, 4.5 a dusty or monsoon month, 6 hazy. */
  readonly turbidity: number;
  readonly distanceAu: number;
}

/**
 * Beam, diffuse and global irradiance of the cloudless sky (Ineichen & Perez 2002, air mass of Kasten & Young 1989).
 */
export function clearSky({ altitude, elevation, turbidity, distanceAu }: ClearSkyPlace): SkyIrradiance {
  if (altitude <= 0) return DARK;
  return ineichenPerez({
    sinAltitude: Math.sin(radiansOf(altitude)),
    airMass: pressureRatio(elevation) * relativeAirMass(altitude),
    extraterrestrial: SOLAR_CONSTANT / (distanceAu * distanceAu),
    elevation,
    turbidity,
  });
}
