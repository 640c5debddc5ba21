export interface ClearSkyInput {
  /** Sine of the apparent solar altitude. */
  readonly sinAltitude: number;
  /** Air mass, pressure-corrected. */
  readonly airMass: number;
  /** Irradiance above the air on a surface that faces the sun. [W/m²] */
  readonly extraterrestrial: number;
  /** [m] */
  readonly elevation: number;
  /** Linke turbidity, 1 to 10. */
  readonly turbidity: number;
}

export interface SkyIrradiance {
  /** Direct, on a surface that faces the sun. [W/m²] */
  readonly beam: number;
  /** Of the sky, on the horizontal. [W/m²] */
  readonly diffuse: number;
  /** All, on the horizontal. [W/m²] */
  readonly global: number;
}

/**
 * Irradiance under a cloudless sky. None of the three is below 0. Source: Ineichen & Perez (2002), Solar Energy
 * 73(3):151–157; its correct form in Perez et al. (2002), Solar Energy 73(5):307–317. Departure: without the factor
 * exp(0.01·AM^1.8) that some programs put on the global irradiance; it lets a low sun outshine the source.
 */
export function ineichenPerez({
  sinAltitude,
  airMass,
  extraterrestrial,
  elevation,
  turbidity,
}: ClearSkyInput): SkyIrradiance {
  const f1 = Math.exp(-elevation / 8000);
  const f2 = Math.exp(-elevation / 1250);
  const a1 = 5.09e-5 * elevation + 0.868;
  const a2 = 3.92e-5 * elevation + 0.0387;
  const global = a1 * extraterrestrial * sinAltitude * Math.exp(-a2 * airMass * (f1 + f2 * (turbidity - 1)));
  const clean = (0.664 + 0.163 / f1) * extraterrestrial * Math.exp(-0.09 * airMass * (turbidity - 1));
  const most = (global * (1 - (0.1 - 0.2 * Math.exp(-turbidity)) / (0.1 + 0.882 / f1))) / sinAltitude;
  const beam = Math.max(0, Math.min(clean, most));
  return { beam, diffuse: Math.max(0, global - beam * sinAltitude), global };
}
