import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import { skyViewGrid } from '../../cast/sky.ts';
import { Kept } from '../../plan/kept.ts';
import type { MonthDay } from '../../plan/types.ts';
import { stateOf } from '../../scene/build.ts';
import type { Scene } from '../../scene/solids.ts';

/** The grids of beds are kept; a yard's whole map has more cells, and is laid out once. */
const MOST_CELLS = 20_000;

const known = new Kept<Float64Array>();

/** Sky view of every cell of a grid on a day, index = j·columns + i. [1] */
export function skyOfCells(scene: Scene, grid: GridSpec, day: MonthDay): Float64Array {
  const make = () => skyViewGrid(scene, grid, day);
  if (grid.columns * grid.rows > MOST_CELLS) return make();
  const cells = [stateOf(scene, day), ...Object.values(grid)].join(' ');
  return known.of([scene], cells, make);
}
