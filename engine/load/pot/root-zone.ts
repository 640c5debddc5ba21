/**
 * How warm the roots in a pot get, whether they stand it, and what helps. Held against measured pots: a lone bare pot
 * in full sun and pots among others under their plants, 13 of 14 values inside the spread.
 */

import { DEGREE } from '../../plan/geometry/angles.ts';
import type { RootVerdict } from '../types.ts';
import { BEARINGS } from '../verdict/plant-points.ts';
import { AIR_GAP, type Pot, type PotDay, settledDay } from './pot-heat.ts';

/** What a pot's wall looks like to the sun; a wrapped one is taken to be wrapped in white. */
export type PotColour = 'white' | 'light' | 'terracotta' | 'dark' | 'wrapped';
/**
 * Share of sunlight that a pot's wall takes in: white as it is in use (0.2 new to 0.4 dusty), light, terracotta, black
 * (from memory).
 */
export const POT_ABSORPTANCE: Readonly<Record<PotColour, number>> = {
  white: 0.3,
  light: 0.5,
  terracotta: 0.65,
  dark: 0.9,
  wrapped: 0.3,
};

/** Roots are judged this far inside the wall. [m] */
const ROOT_DEPTH = 0.02;
/**
 * Roots stop growing, and die within hours. [°C] (From memory: Ingram, Ruter & Martin 2015, HortScience 50:530–539.)
 */
export const HOT_ROOTS = 38;
export const COOKING_ROOTS = 46;

/** Share of the light that still reaches a side on which another pot stands close by. */
const BEHIND_NEIGHBOUR = 0.2;

/** Spread of a root zone at the air's temperature, and what each kelvin above it adds, roots of squares. [K], [K/K] */
const LEAST_SPREAD = 3.5;
const SPREAD_OF_RISE = 0.25;

export interface RootZone {
  /** Warmest of the day and of the eight sides, where and when. [°C], bearing [°], true solar time [h] */
  readonly warmest: number;
  readonly bearing: number;
  readonly hour: number;
  readonly verdict: RootVerdict;
  /** Warmest of the day on each side, by `BEARINGS`. [°C] */
  readonly sides: Float64Array;
  /** Warmest of the day in the middle of the pot. [°C] */
  readonly middle: number;
}

export function rootVerdict(temperature: number): RootVerdict {
  if (temperature >= COOKING_ROOTS) return 'cooking';
  return temperature >= HOT_ROOTS ? 'hot roots' : 'fine';
}

/**
 * How far a warmest root zone may be off. [K] By one step each way of wind, colour, soil, wall, haze and ground light a
 * quarter of its rise; 13 of 14 measured values lie inside.
 * @param rise of the root zone above the day's highest air, or the difference of two root zones of one day [K]
 */
export function rootSpread(rise: number): number {
  return Math.hypot(LEAST_SPREAD, SPREAD_OF_RISE * rise);
}

/**
 * Sunlight on one side of a pot's wall. [W/m²] The wall sees half the sky and half the ground.
 * @param beam on a surface that faces the sun, after all in the way [W/m²]
 * @param azimuth @param altitude of the sun [°]
 * @param sky from the sky on the level, after all that hides it [W/m²]
 * @param ground sunlight on the ground beside it [W/m²] @param albedo of that ground
 */
export function wallLight(
  bearing: number,
  beam: number,
  azimuth: number,
  altitude: number,
  sky: number,
  ground: number,
  albedo: number,
): number {
  const facing = Math.cos(altitude * DEGREE) * Math.max(0, Math.cos((azimuth - bearing) * DEGREE));
  return beam * facing + 0.5 * (sky + albedo * ground);
}

/** Warmest root zone of a day that repeats itself until the pot has settled. @param depth inside the wall [m] */
export function rootZone(day: PotDay, pot: Pot, depth = ROOT_DEPTH): RootZone {
  const { sides, hours, middle } = settledDay(day, pot, depth);
  let at = 0;
  for (let side = 1; side < sides.length; side++) if (sides[side] > sides[at]) at = side;
  const warmest = sides[at];
  return { warmest, bearing: BEARINGS[at], hour: hours[at], verdict: rootVerdict(warmest), sides, middle };
}

/** The pot painted, or wrapped in white cloth or paper that lies against it. */
export function whiteWrapped(pot: Pot): Pot {
  return { ...pot, absorptance: Math.min(pot.absorptance, POT_ABSORPTANCE.white) };
}

/** The pot inside a wider one, with air between. @param outer what the outer one takes in */
export function doublePotted(pot: Pot, outer = pot.absorptance): Pot {
  return { ...pot, absorptance: outer, insulation: pot.insulation + AIR_GAP };
}

/** The day with other pots close by on some sides. @param bearings sides on which one stands, of `BEARINGS` */
export function grouped(day: PotDay, bearings: readonly number[]): PotDay {
  return dimmed(day, (side) => (bearings.includes(BEARINGS[side]) ? BEHIND_NEIGHBOUR : 1));
}

/** The day with a board, cloth or low plant before the pot all round. @param share of the light that it leaves */
export function potShaded(day: PotDay, share: number): PotDay {
  return dimmed(day, () => share);
}

function dimmed(day: PotDay, shareOf: (side: number) => number): PotDay {
  return { ...day, light: day.light.map((light, i) => light * shareOf(i % BEARINGS.length)) };
}
