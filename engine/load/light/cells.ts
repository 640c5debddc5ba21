import { castGrid } from '../../cast/grids/cast-grid.ts';
import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import { type Cells, type Nine, QUANTITIES, type Quantity } from '../types.ts';
import { dayInState, type Yard } from '../yard.ts';
import { nineOf } from './nine.ts';
import { skyOfCells } from './sky-of-cells.ts';
import { CHANNELS, type Channel } from './weights.ts';

/**
 * The nine quantities of every cell of a grid.
 * @param mask 1 where a cell has no value: it becomes NaN in every array
 */
export function cellsOf(yard: Yard, grid: GridSpec, mask: Uint8Array): Cells {
  const nineOfCell = cellReader(yard, grid);
  const cells = Object.fromEntries(QUANTITIES.map((name) => [name, new Float64Array(mask.length).fill(NaN)])) as Record<
    Quantity,
    Float64Array
  >;
  for (let index = 0; index < mask.length; index++) {
    if (mask[index] === 1) continue;
    const nine = nineOfCell(index);
    for (const name of QUANTITIES) cells[name][index] = nine[name];
  }
  return cells;
}

/** Casts a grid once and gives the nine quantities of any of its cells. */
export function cellReader(yard: Yard, grid: GridSpec): (index: number) => Nine {
  const { channels, sky } = yard.weights;
  const sums = castGrid(
    yard.scene,
    grid,
    yard.passes,
    CHANNELS.map((channel) => channels[channel]),
  );
  const views = sky.map((part) => skyOfCells(yard.scene, grid, dayInState(yard, part.state)));
  const sumsOfCell = Object.fromEntries(CHANNELS.map((channel) => [channel, 0])) as Record<Channel, number>;
  return (index) => {
    for (const [k, channel] of CHANNELS.entries()) sumsOfCell[channel] = sums[k][index];
    return nineOf(
      sumsOfCell,
      yard.weights,
      views.map((view) => view[index]),
    );
  };
}
