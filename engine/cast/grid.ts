import { SEGMENT } from '../scene/outline.ts';
import type { Scene } from '../scene/solids.ts';
import { TOUCH } from '../scene/ties.ts';
import { CrownShadows } from './crown-shadows.ts';
import { gridSolids } from './grid-solids.ts';
import type { GridSolids } from './grid-solids.ts';
import type { GridSpec } from './grid-spec.ts';
import { directionsOf } from './passes.ts';
import type { Passes } from './passes.ts';
import { RowSweep } from './row-sweep.ts';
import { ShadeSums } from './shade-sums.ts';
import { ShadowEdges } from './shadow-edges.ts';
import { addLidShadow, addPrismShadow, addSheetShadow, mostPrismEdges } from './shadows.ts';

export type { GridSpec } from './grid-spec.ts';

/** Corners of a sheet cut by the plane. */
const MOST_CORNERS = 5;

/**
 * Σ share·weight over the passes for every cell: the same shares as `castRay` at the cells' centres, fast.
 *
 * Only shadows are visited, never cells × solids: per pass and row each shadow is a pair of crossings; a sweep along the
 * row turns them into runs of equal share, which go into difference arrays; only crowns are worked out cell by cell.
 * @param channels One weight a pass each; all channels share one pass over the scene.
 * @returns One array a channel, index = j·columns + i.
 */
export function castGrid(scene: Scene, grid: GridSpec, passes: Passes, channels: readonly Float64Array[]): Float64Array[] {
  const directions = directionsOf(scene, passes);
  const sums = new ShadeSums(grid.columns, grid.rows, channels.length);
  const open = new Float64Array(channels.length);
  const casters = scene.states.map((occluders) => new StateCaster(gridSolids(occluders, grid), grid));
  for (let k = 0; k < directions.count; k++) {
    if (directions.dark[k] === 1) continue;
    let any = false;
    for (let c = 0; c < channels.length; c++) {
      const weight = channels[c][k];
      sums.weights[c] = weight;
      open[c] += weight;
      any ||= weight !== 0;
    }
    if (any) casters[directions.state[k]].cast(directions.x[k], directions.y[k], directions.z[k], sums);
  }
  return channels.map((_, c) => sums.leftOf(open[c], c));
}

/** The solids of one yearly state over a grid, with the buffers to cast them. */
class StateCaster {
  private readonly solids: GridSolids;
  private readonly cell: number;
  private readonly edges: ShadowEdges;
  private readonly crowns: CrownShadows;
  private readonly sweep: RowSweep;
  private readonly corners = new Float64Array(2 * MOST_CORNERS);

  constructor(solids: GridSolids, grid: GridSpec) {
    this.solids = solids;
    this.cell = grid.cell;
    const capacity =
      solids.prisms.reduce((sum, prism) => sum + mostPrismEdges(prism), 0) +
      solids.lids.reduce((sum, lid) => sum + lid.outline.length / SEGMENT, 0) +
      MOST_CORNERS * solids.sheets.length + 2 * solids.crowns.length;
    this.edges = new ShadowEdges(grid.columns, grid.rows, capacity);
    this.crowns = new CrownShadows(solids.crowns, grid);
    this.sweep = new RowSweep(grid.columns, capacity, solids.crowns.length);
  }

  cast(dx: number, dy: number, dz: number, sums: ShadeSums): void {
    const { solids, cell, edges } = this;
    const reachU = dx / (dz * cell);
    const reachV = dy / (dz * cell);
    for (let p = 0; p < solids.prisms.length; p++) addPrismShadow(edges, solids.prisms[p], dx, dy, reachU, reachV, TOUCH / cell);
    for (let l = 0; l < solids.lids.length; l++) addLidShadow(edges, solids.lids[l], reachU, reachV);
    for (let s = 0; s < solids.sheets.length; s++) addSheetShadow(edges, solids.sheets[s], reachU, reachV, this.corners);
    this.crowns.addTo(edges, dx, dy, dz, reachU, reachV);
    this.sweep.run(edges, this.crowns, sums);
  }
}
