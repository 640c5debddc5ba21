/**
 * How far a leaf, or a fruit's skin, may be off: each cause pushed once each way through the leaf's own balance, half
 * of the way between the two taken, the parts added as the root of their squares.
 */

import { DEFAULTS, fruitWidthOf } from '../../plan/defaults.ts';
import type { PlantRow, Shelter } from '../../plan/types.ts';
import { type HeatDay, LEAF_WIND_SHARE, LEAST_LEAF_WIND } from './heat-day.ts';
import { blackBody, LEAF_ABSORPTANCE } from './leaf-balance.ts';
import { fruitStillness, STOMATA, stomataTemperature, surfaceTemperature, type Watering } from './leaf.ts';
import { absorbed, incomingAt, type LeafMoment } from './receives.ts';
import type { Surroundings, WallGlow } from './surroundings.ts';

/** Causes of a leaf's spread; what each is worth to one leaf at one moment. [K] */
export const SPREAD_CAUSES = ['wind', 'stomata', 'ground', 'light', 'width', 'walls', 'itself'] as const;
export type SpreadParts = Readonly<Record<(typeof SPREAD_CAUSES)[number], number>>;

/** Wind at the leaf over wind above the yard, were the yard one class more open, and one more closed. */
const WIND_STEPS: Readonly<Record<Shelter, readonly [number, number]>> = {
  open: [0.6, 0.3],
  sheltered: [0.45, 0.15],
  court: [0.3, 0.1],
};
/** Pores twice as wide or half: measured crops with water run 0.1 to 0.8, closed leaves 0.005 to 0.05 mol m⁻² s⁻¹. */
const STOMATA_STEP = 2;
/** Of a ground's rise. */
const GROUND_STEP = 1 / 3;
/** Of the share of sunlight that a leaf takes in. */
const LIGHT_STEP = 0.05;
/** Leaves of one plant. */
const WIDTH_STEP = 1.3;
/** Of the light that walls throw, by the shade of their colour; and of their glow above the air. */
const WALL_LIGHT_STEP = 0.2;
const WALL_GLOW_STEP = 1 / 3;
/** Leaves touch, cup and tilt, and the balance is a model: right to so much at best. [K] (From memory.) */
const ITSELF = 1.5;
/** Of a fruit's rise: ± 3 K of 12 (the line of Schrader, Zhang & Sun 2003). */
const FRUIT_LINE = 0.25;
/**
 * What takes heat off a sunlit apple at about 1 m/s: air past a ball of its width (Nu = 2 + 0.6·√Re·∛Pr, Ranz &
 * Marshall 1952, half as much again in wind that gusts), by the root of the width more past a smaller one; and what it
 * radiates. [W m⁻² K⁻¹] (From memory.)
 */
const APPLE = { convection: 19, radiation: 6 } as const;

/** One leaf, or fruit, at one moment. */
export interface LeafCase {
  readonly moment: LeafMoment;
  /** Of the day, for what walls throw on it then. */
  readonly sample: number;
  readonly shelter: Shelter;
  readonly row: PlantRow;
  readonly watering: Watering;
  /** Of the beam. */
  readonly share: number;
  readonly around: Surroundings;
  /** Of sunlight; a bare leaf's where nothing is said. */
  readonly absorptance?: number;
}

/** What is pushed: factors, but `light`, which is added. */
interface Push {
  readonly wind?: number;
  readonly stomata?: number;
  readonly ground?: number;
  readonly light?: number;
  readonly width?: number;
  /** +1 or −1. */
  readonly walls?: number;
}

/** @param temperature of a fruit's skin, whose rise is all that its spread hangs on [°C] */
export function spreadParts(leaf: LeafCase, temperature: number): SpreadParts {
  return leaf.row.limitOf === 'fruit' ? fruitParts(leaf, temperature) : partsOf(leaf, (push) => pushed(leaf, push));
}

/** The parts together. [K] */
export function spreadOf(parts: SpreadParts): number {
  return Math.hypot(...SPREAD_CAUSES.map((cause) => parts[cause]));
}

/** Of a leaf, or fruit, at one sample of a heat day. [K] @param sample −1: on a day without sun */
export function spreadOn(
  heat: HeatDay,
  sample: number,
  row: PlantRow,
  watering: Watering,
  shares: Float64Array,
  around: Surroundings,
): number {
  if (sample < 0) return ITSELF;
  const { moments, shelter } = heat;
  const leaf = { moment: moments[sample], sample, shelter, row, watering, share: shares[sample], around };
  return spreadOf(spreadParts(leaf, heat.leaves(watering, row).on(sample, shares, around)));
}

/**
 * Of what one change takes off a leaf: causes that both leaves share are pushed on both together, and what a leaf is by
 * itself falls away. [K] @param more parts of the change alone, such as what its cloth's density may be off [K]
 */
export function differenceSpread(before: LeafCase, after: LeafCase, more: readonly number[] = []): number {
  if (before.row.limitOf === 'fruit') return Math.hypot(...fruitDifference(before, after), ...more);
  const parts = partsOf(before, (push) => pushed(after, push) - pushed(before, push));
  return Math.hypot(spreadOf({ ...parts, itself: 0 }), ...more);
}

/** By how much a change cools a leaf, or a fruit. [K] */
export interface Cooler {
  /** With its pores as they were: of a watered and a thirsty one the less and the more, and how far they may be off. */
  readonly less: number;
  readonly more: number;
  readonly spread: number;
  /** Where the change lets a thirsty leaf keep its pores open. */
  readonly opened: number;
}

/** @param moreParts of the change alone, such as what its cloth's density may be off [K] */
export function coolerBy(
  before: Omit<LeafCase, 'watering'>,
  after: Omit<LeafCase, 'watering'>,
  moreParts: readonly number[] = [],
): Cooler {
  const at = (leaf: Omit<LeafCase, 'watering'>, watering: Watering) => plainTemperature({ ...leaf, watering });
  const steps = (['watered', 'thirsty'] as const).map((watering) => ({
    by: at(before, watering) - at(after, watering),
    spread: differenceSpread({ ...before, watering }, { ...after, watering }, moreParts),
  }));
  const [less, more] = steps.toSorted((a, b) => a.by - b.by);
  return {
    less: less.by,
    more: more.by,
    spread: Math.max(less.spread, more.spread),
    opened: at(before, 'thirsty') - at(after, 'watered'),
  };
}

function plainTemperature({ moment, row, watering, share, around, absorptance, sample }: LeafCase): number {
  return surfaceTemperature(moment, row, watering, share, around, absorptance, sample);
}

/** Of the line, of the fruit's width, and of the wind. [K] */
function fruitDifference(before: LeafCase, after: LeafCase): number[] {
  const by = plainTemperature(before) - plainTemperature(after);
  return [FRUIT_LINE * by, unlikeAnApple(before.row) * by, windOnFruit(before, by)];
}

function partsOf({ shelter, around }: LeafCase, at: (push: Push) => number): SpreadParts {
  const middle = at({});
  const half = (up: Push, down: Push) => (Math.abs(at(up) - middle) + Math.abs(at(down) - middle)) / 2;
  const [more, less] = windFactors(shelter);
  return {
    wind: half({ wind: more }, { wind: less }),
    stomata: half({ stomata: STOMATA_STEP }, { stomata: 1 / STOMATA_STEP }),
    ground: half({ ground: 1 + GROUND_STEP }, { ground: 1 - GROUND_STEP }),
    light: half({ light: LIGHT_STEP }, { light: -LIGHT_STEP }),
    width: half({ width: WIDTH_STEP }, { width: 1 / WIDTH_STEP }),
    walls: around.walls === null ? 0 : half({ walls: 1 }, { walls: -1 }),
    itself: ITSELF,
  };
}

/** A fruit's skin rises with the wind alone; its line is an apple's, and has its own spread. */
function fruitParts(leaf: LeafCase, temperature: number): SpreadParts {
  const rise = temperature - leaf.moment.air;
  return {
    wind: windOnFruit(leaf, rise),
    stomata: 0,
    ground: 0,
    light: 0,
    width: Math.abs(rise) * unlikeAnApple(leaf.row),
    walls: 0,
    itself: Math.max(ITSELF, FRUIT_LINE * Math.abs(rise)),
  };
}

/** Fruit that is sooner cooler than told, since an apple is reckoned with: less than half as wide. */
export function isSmallFruit(row: PlantRow): boolean {
  return row.limitOf === 'fruit' && fruitWidthOf(row) < DEFAULTS.fruitWidth / 2;
}

/** The share of an apple's rise by which a fruit of another width may differ: a grape's is nearly half of it less. */
function unlikeAnApple(row: PlantRow): number {
  const { convection, radiation } = APPLE;
  const taken = convection * Math.sqrt(DEFAULTS.fruitWidth / fruitWidthOf(row)) + radiation;
  return Math.abs((convection + radiation) / taken - 1);
}

/** @param rise of a fruit, or the difference of two [K] */
function windOnFruit({ moment, shelter }: LeafCase, rise: number): number {
  const calm = fruitStillness(moment.wind);
  const [more, less] = windFactors(shelter).map((factor) =>
    Math.abs(fruitStillness(blown(moment, factor).wind) / calm - 1),
  );
  return (Math.abs(rise) * (more + less)) / 2;
}

function windFactors(shelter: Shelter): readonly [number, number] {
  const [more, less] = WIND_STEPS[shelter];
  return [more / LEAF_WIND_SHARE[shelter], less / LEAF_WIND_SHARE[shelter]];
}

function blown(moment: LeafMoment, factor: number): LeafMoment {
  return { ...moment, wind: Math.max(LEAST_LEAF_WIND, moment.wind * factor) };
}

/** The leaf's balance with a cause off. [°C] */
function pushed({ sample, row, watering, share, ...leaf }: LeafCase, push: Push): number {
  const { wind = 1, stomata = 1, ground = 1, light = 0, width = 1, walls = 0 } = push;
  const moment = wind === 1 ? leaf.moment : blown(leaf.moment, wind);
  const around: Surroundings = {
    ...leaf.around,
    groundRise: leaf.around.groundRise * ground,
    walls: walls === 0 ? leaf.around.walls : brighter(leaf.around.walls, moment.air, walls),
  };
  const takenUp = absorbed(incomingAt(moment, sample), share, around, (leaf.absorptance ?? LEAF_ABSORPTANCE) + light);
  return stomataTemperature(moment, { ...row, leafWidth: row.leafWidth * width }, STOMATA[watering] * stomata, takenUp);
}

function brighter(walls: WallGlow | null, air: number, sign: number): WallGlow | null {
  if (walls === null) return null;
  const glow = (of: Float64Array, hidden: number) =>
    of.map((each) => each + sign * WALL_GLOW_STEP * (each - hidden * blackBody(air)));
  return {
    ...walls,
    light: walls.light.map((each) => each * (1 + sign * WALL_LIGHT_STEP)),
    above: glow(walls.above, walls.sky),
    below: glow(walls.below, walls.ground),
  };
}
