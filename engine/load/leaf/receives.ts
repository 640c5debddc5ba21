/** What a leaf takes up at a moment and a point: every light and glow on it is put together here and nowhere else. */
import { absorbedByLeaf, blackBody, clearSkyEmissivity } from './leaf-balance.ts';
import { CLOSED, OPEN, type Surroundings } from './surroundings.ts';

const GROUND_ALBEDO = 0.25;
/**
 * How much hotter dry ground in full sun is than the air; in proportion to the share of the beam. A choice of this
 * project. [K]
 */
const SUNNY_GROUND_RISE = 18;
/** Emissivity of what hides the sky; it stands at the air's temperature. */
const COVER_EMISSIVITY = 0.95;

/** The air and the light at one moment of a clear day. */
export interface LeafMoment {
  /** [°C] */
  readonly air: number;
  /** Highest of the day. [°C] */
  readonly airMax: number;
  /** [kPa] */
  readonly vapour: number;
  /** [kPa] */
  readonly pressure: number;
  /** At the leaf. [m/s] */
  readonly wind: number;
  /** Clear-sky beam and diffuse. [W/m²] */
  readonly beam: number;
  readonly diffuse: number;
  /** Sine of the sun's apparent altitude. */
  readonly sinAltitude: number;
}

/** What comes from the whole of each source at a moment, worked out once for all points. */
export interface Incoming {
  /** [°C] */
  readonly air: number;
  /** On a surface that faces the sun, and of the sky on the level. [W/m²] */
  readonly beam: number;
  readonly diffuse: number;
  readonly sinAltitude: number;
  /** Longwave of the clear sky, and of what hides it. [W/m²] */
  readonly clearSky: number;
  readonly cover: number;
}

export function incomingAt({ air, vapour, beam, diffuse, sinAltitude }: LeafMoment): Incoming {
  const black = blackBody(air);
  return {
    air,
    beam,
    diffuse,
    sinAltitude,
    clearSky: clearSkyEmissivity(air, vapour) * black,
    cover: COVER_EMISSIVITY * black,
  };
}

/**
 * Radiation that a leaf facing the sun takes up. [W/m²]
 * @param share of the beam that reaches it, 0 to 1; the ground below gets the same
 * @param absorptance of the leaf to sunlight
 */
export function absorbed(from: Incoming, share: number, around: Surroundings, absorptance: number): number {
  const { sky } = around;
  const beam = from.beam * share;
  const diffuse = from.diffuse * sky;
  const light = {
    beam,
    sky: diffuse,
    ground: beam * from.sinAltitude + diffuse,
    above: sky * from.clearSky + (1 - sky) * from.cover,
    below: blackBody(from.air + SUNNY_GROUND_RISE * share),
  };
  return absorbedByLeaf(light, GROUND_ALBEDO, absorptance);
}

/**
 * The most that any point can take up: in the whole beam, and, all of it being linear in the sky, under no sky or
 * under all of it. [W/m²]
 */
export function mostAbsorbed(from: Incoming, absorptance: number): number {
  return Math.max(absorbed(from, 1, OPEN, absorptance), absorbed(from, 1, CLOSED, absorptance));
}
