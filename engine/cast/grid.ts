import type { Scene } from '../scene/solids.ts';
import type { Passes } from './passes.ts';
import { createPointCaster } from './share.ts';

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
export function castGrid(scene: Scene, grid: GridSpec, passes: Passes, channels: readonly Float64Array[]): Float64Array[] {
  const caster = createPointCaster(scene, passes);
  const sums = channels.map(() => new Float64Array(grid.columns * grid.rows));
  const shares = new Float64Array(passes.count);
  for (let j = 0; j < grid.rows; j++) {
    for (let i = 0; i < grid.columns; i++) {
      caster.sharesAt([grid.x0 + (i + 0.5) * grid.cell, grid.y0 + (j + 0.5) * grid.cell, grid.height], undefined, shares);
      channels.forEach((weights, c) => {
        sums[c][j * grid.columns + i] = shares.reduce((sum, share, k) => sum + share * weights[k], 0);
      });
    }
  }
  return sums;
}
