import { METRES_PER_FOOT } from '../../../plan/units/per-unit.ts';
import type { Units } from '../../../plan/units/units.ts';
import type { ClothKind, ClothSize } from '../types.ts';

/** Everything that is tried, in cells and metres. */
export interface Lattice {
  /** [°] */
  readonly turns: readonly number[];
  /** Of the positions. [m] */
  readonly step: number;
  readonly kinds: readonly ClothKind[];
  readonly roof: RoofForms;
  readonly drops: DropForms;
  readonly screen: ScreenForms;
}

/** A footprint in cells along u and v. */
export interface Footprint {
  readonly a: number;
  readonly b: number;
}

export interface RoofForms {
  /** Either way round. */
  readonly sizes: readonly Footprint[];
  /** [m] */
  readonly heights: readonly number[];
}

/** Roofs with drops are tried at these turns, sizes and heights, some of the lattice's. */
export interface DropForms extends RoofForms {
  readonly turns: readonly number[];
  /** [m] */
  readonly depths: readonly number[];
  readonly maxDrops: 1 | 2;
}

export interface ScreenForms {
  /** Lengths in cells. */
  readonly cells: readonly number[];
  /** [m] */
  readonly tops: readonly number[];
  readonly bottom: number;
}

/** What a request asks of forms, whatever the kind of cloth. */
export interface AskedForms {
  /** The longer side first. */
  readonly sizes: readonly ClothSize[];
  /** `null`: any. [m] */
  readonly heights: readonly number[] | null;
  /** Of the positions. [m] */
  readonly step: number;
  /** In which sizes are read: heights are tried in them. */
  readonly units: Units;
  /** [°] */
  readonly turns: readonly number[];
  /** Height cap; Infinity: none. [m] */
  readonly cap: number;
  /** Heights that hide near the plants, where cloth must be hidden. [m] */
  readonly hiddenUpTo: readonly number[];
  readonly dropDepths?: readonly number[];
  readonly maxDrops?: 1 | 2;
}

export function cellsOf(metres: number, step: number): number {
  return Math.max(1, Math.round(metres / step));
}

/** Sizes in cells, each way round. */
export function footprintsOf(sizes: readonly ClothSize[], step: number): Footprint[] {
  const known = new Map<string, Footprint>();
  for (const { length, width } of sizes) {
    const [a, b] = [cellsOf(width, step), cellsOf(length, step)];
    known.set(`${a} ${b}`, { a, b });
    known.set(`${b} ${a}`, { a: b, b: a });
  }
  return [...known.values()];
}

/** A cap below the highest usual height is tried itself, and so are heights that hide: rules are used to the full. */
export function withLimits(heights: readonly number[], { cap, hiddenUpTo }: AskedForms): number[] {
  const limits = [...(cap > 0.5 && cap < heights[heights.length - 1] ? [cap] : []), ...hiddenUpTo];
  return [...new Set([...heights, ...limits])].sort((a, b) => a - b);
}

/** Heights and depths of cloth as people who measure in feet would have them. @returns metres */
export function inFeet(...feet: readonly number[]): readonly number[] {
  return feet.map((value) => value * METRES_PER_FOOT);
}

/** Turns far apart first, so that good bests stand early. */
export function spreadOut(turns: readonly number[]): number[] {
  const order: number[] = [];
  for (let gap = 8; gap >= 1; gap /= 2) {
    turns.forEach((turn, k) => {
      if (k % gap === 0 && !order.includes(turn)) order.push(turn);
    });
  }
  return order;
}

/** More cloth mostly spares more: found first, it leaves fewer others worth a look. */
export function falling(values: readonly number[]): number[] {
  return values.toSorted((a, b) => b - a);
}

export function largestFirst(sizes: readonly Footprint[]): Footprint[] {
  return sizes.toSorted((one, other) => other.a * other.b - one.a * one.b);
}
