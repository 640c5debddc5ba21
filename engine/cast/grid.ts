import type { Scene } from '../scene/solids.ts';
import type { Passes } from './passes.ts';

/**
 * Square cells at one height above the ground.
 * ```
 *  y up   row 1  | 3 | 4 | 5 |        centre of (i, j) = (x0 + (i + ½)·cell, y0 + (j + ½)·cell)
 *         row 0  | 0 | 1 | 2 |        index = j·columns + i
 *        (x0, y0)
 * ```
 */
export interface GridSpec {
  readonly x0: number;
  readonly y0: number;
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly height: number;
}

/**
 * Σ share·weight over the passes for every cell: the same shares as `castRay` at the cells' centres, fast.
 * @param channels One weight a pass each; all channels share one pass over the scene.
 * @returns One array a channel, index = j·columns + i.
 */
export function castGrid(_scene: Scene, _grid: GridSpec, _passes: Passes, _channels: readonly Float64Array[]): Float64Array[] {
  throw new Error('not yet');
}
