import type { PlanPoint } from '../../../plan/types.ts';
import { isLookedAtEvery, NOTHING } from '../../sight/seen.ts';
import { nodeOf, type TurnedLattice } from '../search/turned-lattice.ts';
import type { YardRules } from './yard-rules.ts';

/**
 * What the ground forbids, node by node of one turn of the lattice: quick questions that rule most forbidden places out
 * before a bound is looked at. What passes here is still asked of the rules in full.
 */
export interface GroundMask {
  /** Whether a post can stand at a node. */
  postFits(i: number, j: number): boolean;
  /** Whether the posts at the corners of a × b cells from node (i, j) can stand. */
  cornersFit(i: number, j: number, a: number, b: number): boolean;
  /** Whether nothing under a roof's nodes forbids it. @param blocked of `blockedAt` its height */
  isClear(blocked: Int32Array, i: number, j: number, a: number, b: number): boolean;
  /** Summed-area table of the nodes that no roof of a height may cover; one node larger each way. */
  blockedAt(height: number): Int32Array;
  /**
   * Whether cloth over a × b cells (a screen: one of them 0) is hidden up to a height at all nodes that are looked at:
   * its corners, and along its edges those between them.
   */
  isHidden(i: number, j: number, a: number, b: number, height: number): boolean;
  /** Whether the nodes between the corners are among the points that are looked at: else they tell nothing. */
  readonly looksBetween: boolean;
}

export function groundMask(
  rules: YardRules,
  hiddenHeight: (at: PlanPoint) => number,
  turned: TurnedLattice,
): GroundMask {
  const { columns, rows } = turned;
  const across = columns + 1;
  const posts = new Int8Array(across * (rows + 1)).fill(-1);
  const looksBetween = isLookedAtEvery(turned.step);
  const postAt = (i: number, j: number): boolean => {
    const index = j * across + i;
    if (posts[index] < 0) posts[index] = rules.postFits(nodeOf(turned, i, j)) ? 1 : 0;
    return posts[index] === 1;
  };
  const blocked = new Map<string, Int32Array>();
  let inside: Uint8Array | null = null;
  return {
    looksBetween,
    postFits: postAt,
    cornersFit: (i, j, a, b) => postAt(i, j) && postAt(i + a, j) && postAt(i, j + b) && postAt(i + a, j + b),
    isClear: (sums, i, j, a, b) => {
      const low = j * (across + 1) + i;
      const high = low + (b + 1) * (across + 1);
      return sums[high + a + 1] - sums[high] - sums[low + a + 1] + sums[low] === 0;
    },
    blockedAt(height) {
      // Most heights are as high over everything in the yard as their neighbours are.
      const key = rules.clearancesAt(height);
      let sums = blocked.get(key);
      if (sums === undefined) {
        inside ??= insideOf(rules, turned);
        blocked.set(key, (sums = blockedSums(rules, turned, inside, height)));
      }
      return sums;
    },
    isHidden: hiddenReader(hiddenHeight, turned, looksBetween),
  };
}

/** 1 for every node on the property. */
function insideOf(rules: YardRules, turned: TurnedLattice): Uint8Array {
  const across = turned.columns + 1;
  return Uint8Array.from({ length: across * (turned.rows + 1) }, (_, index) =>
    rules.isIn(nodeOf(turned, index % across, Math.floor(index / across))) ? 1 : 0,
  );
}

function blockedSums(rules: YardRules, turned: TurnedLattice, inside: Uint8Array, height: number): Int32Array {
  const { columns, rows } = turned;
  const width = columns + 2;
  const sums = new Int32Array(width * (rows + 2));
  for (let j = 0; j <= rows; j++) {
    let along = 0;
    for (let i = 0; i <= columns; i++) {
      if (inside[j * (columns + 1) + i] === 0 || !rules.roofCovers(nodeOf(turned, i, j), height)) along++;
      sums[(j + 1) * width + i + 1] = along + sums[j * width + i + 1];
    }
  }
  return sums;
}

/** How many nodes are seen at a height before each along its row, and along its column, the node itself counted. */
interface SeenSums {
  readonly alongRow: Int32Array;
  readonly alongColumn: Int32Array;
}

function hiddenReader(
  hiddenHeight: (at: PlanPoint) => number,
  turned: TurnedLattice,
  looksBetween: boolean,
): GroundMask['isHidden'] {
  const across = turned.columns + 1;
  let hidden: Float64Array | null = null;
  const known = new Map<number, SeenSums>();
  return (i, j, a, b, height) => {
    let sums = known.get(height);
    if (sums === undefined) {
      hidden ??= hiddenHeights(hiddenHeight, turned);
      known.set(height, (sums = seenSums(hidden, across, height)));
    }
    const { alongRow, alongColumn } = sums;
    const low = j * across + i;
    const high = low + b * across;
    if (
      isSeenAt(alongRow, low, i) ||
      isSeenAt(alongRow, low + a, i + a) ||
      isSeenAt(alongRow, high, i) ||
      isSeenAt(alongRow, high + a, i + a)
    )
      return false;
    return (
      !looksBetween ||
      (alongRow[low + a] === alongRow[low] &&
        alongRow[high + a] === alongRow[high] &&
        alongColumn[high] === alongColumn[low] &&
        alongColumn[high + a] === alongColumn[low + a])
    );
  };
}

/** @param column of the node at `index` */
function isSeenAt(alongRow: Int32Array, index: number, column: number): boolean {
  return alongRow[index] > (column === 0 ? 0 : alongRow[index - 1]);
}

function hiddenHeights(hiddenHeight: (at: PlanPoint) => number, turned: TurnedLattice): Float64Array {
  const across = turned.columns + 1;
  const heights = new Float64Array(across * (turned.rows + 1));
  for (let index = 0; index < heights.length; index++)
    heights[index] = hiddenHeight(nodeOf(turned, index % across, Math.floor(index / across)));
  return heights;
}

function seenSums(hidden: Float64Array, across: number, height: number): SeenSums {
  const alongRow = new Int32Array(hidden.length);
  const alongColumn = new Int32Array(hidden.length);
  for (let index = 0; index < hidden.length; index++) {
    const seen = hidden[index] >= height - NOTHING ? 0 : 1;
    alongRow[index] = seen + (index % across === 0 ? 0 : alongRow[index - 1]);
    alongColumn[index] = seen + (index < across ? 0 : alongColumn[index - across]);
  }
  return { alongRow, alongColumn };
}
