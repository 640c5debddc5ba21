import type { PlanPoint } from '../../../plan/types.ts';
import { nodeOf, type TurnedLattice } from '../search/turned-lattice.ts';
import { NOTHING } from '../../sight/seen.ts';
import type { YardRules } from './yard-rules.ts';

/**
 * What the ground forbids, node by node of one turn of the lattice: quick questions that rule most forbidden places out
 * before a bound is looked at. What passes here is still asked of the rules in full.
 */
export interface GroundMask {
  /** Whether the posts at the corners of a × b cells from node (i, j) can stand. */
  cornersFit(i: number, j: number, a: number, b: number): boolean;
  /** Whether nothing under a roof's nodes forbids it. @param blocked of `blockedAt` its height */
  isClear(blocked: Int32Array, i: number, j: number, a: number, b: number): boolean;
  /** Summed-area table of the nodes that no roof of a height may cover; one node larger each way. */
  blockedAt(height: number): Int32Array;
  /** Whether cloth at a node is hidden up to a height, asked once a node. */
  isHidden(i: number, j: number, height: number): boolean;
}

export function groundMask(
  rules: YardRules,
  hiddenHeight: (at: PlanPoint) => number,
  turned: TurnedLattice,
): GroundMask {
  const { columns, rows } = turned;
  const across = columns + 1;
  const posts = new Int8Array(across * (rows + 1)).fill(-1);
  const hidden = new Float64Array(across * (rows + 1)).fill(-1);
  const postAt = (i: number, j: number): boolean => {
    const index = j * across + i;
    if (posts[index] < 0) posts[index] = rules.postFits(nodeOf(turned, i, j)) ? 1 : 0;
    return posts[index] === 1;
  };
  return {
    cornersFit: (i, j, a, b) => postAt(i, j) && postAt(i + a, j) && postAt(i, j + b) && postAt(i + a, j + b),
    isClear: (blocked, i, j, a, b) => {
      const low = j * (across + 1) + i;
      const high = low + (b + 1) * (across + 1);
      return blocked[high + a + 1] - blocked[high] - blocked[low + a + 1] + blocked[low] === 0;
    },
    blockedAt(height) {
      const sums = new Int32Array((across + 1) * (rows + 2));
      for (let j = 0; j <= rows; j++) {
        let along = 0;
        for (let i = 0; i <= columns; i++) {
          if (!rules.roofCovers(nodeOf(turned, i, j), height)) along++;
          sums[(j + 1) * (across + 1) + i + 1] = along + sums[j * (across + 1) + i + 1];
        }
      }
      return sums;
    },
    isHidden(i, j, height) {
      const index = j * across + i;
      if (hidden[index] < 0) hidden[index] = hiddenHeight(nodeOf(turned, i, j));
      return hidden[index] >= height - NOTHING;
    },
  };
}
