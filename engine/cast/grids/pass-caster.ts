import { SEGMENT } from '../../scene/outline.ts';
import type { Scene } from '../../scene/solids.ts';
import { TOUCH } from '../../scene/ties.ts';
import type { Directions } from '../passes.ts';
import { gridSolids } from './grid-solids.ts';
import type { GridSolids } from './grid-solids.ts';
import type { GridSpec } from './grid-spec.ts';
import { RowSweep } from './row-sweep.ts';
import type { ShadeSink } from './row-sweep.ts';
import { BodyShadows } from './shadows/body-shadows.ts';
import {
  addLidShadow,
  addPrismShadow,
  addClothShadow,
  mostPrismEdges,
  MOST_CORNERS,
} from './shadows/flat-sided-shadows.ts';
import { ShadowEdges } from './shadows/shadow-edges.ts';

/** Casts a scene's shadows on a grid, one pass at a time, into a sink. Holds the buffers that takes. */
export class PassCaster {
  private readonly directions: Directions;
  private readonly states: readonly StateCaster[];

  constructor(scene: Scene, grid: GridSpec, directions: Directions) {
    this.directions = directions;
    this.states = scene.states.map((occluders) => new StateCaster(gridSolids(occluders, grid), grid));
  }

  cast(pass: number, sink: ShadeSink): void {
    const { x, y, z, state } = this.directions;
    this.states[state[pass]].cast(x[pass], y[pass], z[pass], sink);
  }
}

/** The solids of one yearly state over a grid, with the buffers to cast them. */
class StateCaster {
  private readonly solids: GridSolids;
  private readonly cell: number;
  private readonly edges: ShadowEdges;
  private readonly bodies: BodyShadows;
  private readonly sweep: RowSweep;
  private readonly corners = new Float64Array(2 * MOST_CORNERS);

  constructor(solids: GridSolids, grid: GridSpec) {
    this.solids = solids;
    this.cell = grid.cell;
    const capacity =
      solids.prisms.reduce((sum, prism) => sum + mostPrismEdges(prism), 0) +
      solids.lids.reduce((sum, lid) => sum + lid.outline.length / SEGMENT, 0) +
      MOST_CORNERS * solids.sheets.length +
      2 * (solids.crowns.length + solids.stands.length);
    this.edges = new ShadowEdges(grid.columns, grid.rows, capacity);
    this.bodies = new BodyShadows(solids, grid);
    this.sweep = new RowSweep(grid.columns, capacity, this.bodies.count);
  }

  cast(dx: number, dy: number, dz: number, sink: ShadeSink): void {
    const { solids, cell, edges } = this;
    const reachU = dx / (dz * cell);
    const reachV = dy / (dz * cell);
    for (let p = 0; p < solids.prisms.length; p++)
      addPrismShadow(edges, solids.prisms[p], dx, dy, reachU, reachV, TOUCH / cell);
    for (let l = 0; l < solids.lids.length; l++) addLidShadow(edges, solids.lids[l], reachU, reachV);
    for (let s = 0; s < solids.sheets.length; s++)
      addClothShadow(edges, solids.sheets[s], dx, dy, dz, reachU, reachV, this.corners);
    this.bodies.addTo(edges, dx, dy, dz, reachU, reachV);
    this.sweep.run(edges, this.bodies, sink);
  }
}
