import type { Scene } from '../../scene/solids.ts';
import { directionsOf } from '../passes.ts';
import type { Passes } from '../passes.ts';
import type { GridSpec } from './grid-spec.ts';
import { PassCaster } from './pass-caster.ts';
import { ShadeSums } from './shade-sums.ts';

/**
 * Σ share·weight over the passes for every cell: the same shares as `castRay` at the cells' centres, fast.
 *
 * Only shadows are visited, never cells × solids: per pass and row each shadow is a pair of crossings; a sweep along
 * the row turns them into runs of equal share, which go into difference arrays; only crowns are worked out cell by
 * cell.
 * @param channels One weight a pass each; all channels share one pass over the scene.
 * @returns One array a channel, index = j·columns + i.
 */
export function castGrid(
  scene: Scene,
  grid: GridSpec,
  passes: Passes,
  channels: readonly Float64Array[],
): Float64Array[] {
  const directions = directionsOf(scene, passes);
  const caster = new PassCaster(scene, grid, directions);
  const sums = new ShadeSums(grid.columns, grid.rows, channels);
  for (let k = 0; k < directions.count; k++) {
    if (directions.dark[k] === 0 && sums.open(k)) caster.cast(k, sums);
  }
  return sums.left();
}
