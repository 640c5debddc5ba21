/** What a leaf takes up at a moment and a point: every light and glow on it is put together here and nowhere else. */

import { absorbedByLeaf, blackBody, clearSkyEmissivity } from './leaf-balance.ts';
import { CLOSED, OPEN, type Surroundings } from './surroundings.ts';
import { faceGlow, SKY_ON_FACE } from './wall-light.ts';

/** Share of sunlight that the ground throws back. */
export const GROUND_ALBEDO = 0.25;
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
  /** On a surface that faces the sun, the glow round the sun included; and of the rest of the clear sky. [W/m²] */
  readonly beam: number;
  readonly diffuse: number;
  /** Sine of the sun's apparent altitude. */
  readonly sinAltitude: number;
  /** What a fruit, which warms slowly, still feels of the hour before. */
  readonly hour: HourBefore;
}

/** The hour up to a sample's middle, its own step included; while the sun is down nothing came. */
export interface HourBefore {
  /** First sample whose middle lies in it. */
  readonly first: number;
  /** Means of `beam` and `diffuse`. [W/m²] */
  readonly beam: number;
  readonly diffuse: number;
  /** Most of the day of what a fruit takes of such means in the open. [W/m²] */
  readonly openMost: number;
}

/** What comes from the whole of each source at a moment, worked out once for all points. */
export interface Incoming {
  /** Which of the day's samples. */
  readonly sample: number;
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

export function incomingAt({ air, vapour, beam, diffuse, sinAltitude }: LeafMoment, sample: number): Incoming {
  const black = blackBody(air);
  return {
    sample,
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
  const { sky, groundRise, walls } = around;
  const beam = from.beam * share;
  const diffuse = from.diffuse * sky;
  const ground = beam * from.sinAltitude + diffuse;
  const soil = blackBody(from.air + (groundRise * ground) / 1000);
  if (walls === null) {
    const above = sky * from.clearSky + (1 - sky) * from.cover;
    return absorbedByLeaf({ beam, sky: diffuse, ground, above, below: soil }, GROUND_ALBEDO, absorptance);
  }
  const k = from.sample;
  const left = 1 - walls.ground;
  const light = {
    beam,
    sky: diffuse + walls.light[k],
    ground: ground * left,
    above: sky * from.clearSky + (1 - sky - walls.sky) * from.cover + walls.above[k],
    below: soil * left + walls.below[k],
  };
  return absorbedByLeaf(light, GROUND_ALBEDO, absorptance);
}

/**
 * The most that any point can take up among walls of some colours: in the whole beam, and, none of it bending down with
 * the sky, under no sky or under all of it. [W/m²]
 */
export function mostAbsorbed(from: Incoming, absorptance: number, colours: readonly number[]): number {
  const most = Math.max(absorbed(from, 1, OPEN, absorptance), absorbed(from, 1, CLOSED, absorptance));
  return colours.reduce((sofar, colour) => Math.max(sofar, amongWalls(from, absorptance, colour)), most);
}

/** Among walls of one colour all round, in the sun as far as upright ones can be, and nothing else above or below. */
function amongWalls(from: Incoming, absorptance: number, reflects: number): number {
  const { air, beam, diffuse, sinAltitude } = from;
  const on = beam * Math.sqrt(1 - sinAltitude * sinAltitude) + SKY_ON_FACE * diffuse;
  const glow = faceGlow(air, reflects, on);
  return absorbedByLeaf({ beam, sky: 2 * reflects * on, ground: 0, above: glow, below: glow }, 0, absorptance);
}
