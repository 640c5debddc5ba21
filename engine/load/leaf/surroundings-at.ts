import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { meanOf } from '../../plan/numbers/mean.ts';
import type { OwnCrown } from '../../scene/solids.ts';
import { cellPoint } from '../light/grid-of.ts';
import { skyOfCells } from '../light/sky-of-cells.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import { groundRise } from './ground.ts';
import type { HeatDay } from './heat-day.ts';
import type { Surroundings } from './surroundings.ts';

/** Width of the blocks of cells that share their walls. [m] */
const BLOCK = 0.3;
/** A bed of more blocks than a garden's (70 m²) has larger ones. */
const MOST_BLOCKS = 800;

/** @param own the plant's own crown, in the way of this point alone */
export function surroundingsAt(sky: SkyViewer, heat: HeatDay, point: SpacePoint, own?: OwnCrown): Surroundings {
  return surroundingsOn(sky, [heat], point, own)[0];
}

/** One a heat day. */
export function surroundingsOn(
  sky: SkyViewer,
  heats: readonly HeatDay[],
  point: SpacePoint,
  own?: OwnCrown,
): Surroundings[] {
  const rise = groundRise(sky.scene, point);
  const views = onceAState(heats, ({ state }) => sky.at(point, state, own));
  const glows = sky.walls.on(heats, point, own);
  return heats.map((_, d) => ({ sky: views[d], groundRise: rise, walls: glows[d] }));
}

/** Of some cells of a grid: [heat day][cell]. */
export function surroundingsOfCells(
  sky: SkyViewer,
  heats: readonly HeatDay[],
  grid: GridSpec,
  cells: readonly number[],
): Surroundings[][] {
  const { scene, walls } = sky;
  const rises = cells.map((cell) => groundRise(scene, cellPoint(grid, cell)));
  const views = onceAState(heats, ({ day }) => skyOfCells(scene, grid, day.monthDay));
  const middles = middlesOfBlocks(grid, cells);
  const ofBlock = new Map([...new Set(middles)].map((middle) => [middle, walls.on(heats, cellPoint(grid, middle))]));
  return heats.map((_, d) =>
    cells.map((cell, n) => ({
      sky: views[d][cell],
      groundRise: rises[n],
      walls: ofBlock.get(middles[n])?.[d] ?? null,
    })),
  );
}

/**
 * Of each of some cells, the one that its walls are looked at from: what they throw changes little from one cell to the
 * next, and cells of one block share what is seen from the one nearest to their middle.
 */
export function middlesOfBlocks(grid: GridSpec, cells: readonly number[]): number[] {
  const wide = Math.max(1, Math.round(BLOCK / grid.cell), Math.ceil(Math.sqrt(cells.length / MOST_BLOCKS)));
  const across = Math.ceil(grid.columns / wide);
  const columnOf = (cell: number): number => cell % grid.columns;
  const rowOf = (cell: number): number => Math.floor(cell / grid.columns);
  const blockOf = (cell: number): number => Math.floor(rowOf(cell) / wide) * across + Math.floor(columnOf(cell) / wide);
  const blocks = new Map<number, number[]>();
  for (const cell of cells) {
    const inside = blocks.get(blockOf(cell));
    if (inside) inside.push(cell);
    else blocks.set(blockOf(cell), [cell]);
  }
  const middleOf = (inside: readonly number[]): number => {
    const column = meanOf(inside.map(columnOf));
    const row = meanOf(inside.map(rowOf));
    const away = (cell: number): number => Math.hypot(columnOf(cell) - column, rowOf(cell) - row);
    return inside.reduce((nearest, cell) => (away(cell) < away(nearest) ? cell : nearest));
  };
  const middles = new Map([...blocks].map(([block, inside]) => [block, middleOf(inside)]));
  return cells.map((cell) => middles.get(blockOf(cell))!);
}

/** Days in one yearly state share what is found for it. */
function onceAState<T>(heats: readonly HeatDay[], find: (heat: HeatDay) => T): T[] {
  const known = new Map<number, T>();
  return heats.map((heat) => {
    const found = known.get(heat.state) ?? find(heat);
    known.set(heat.state, found);
    return found;
  });
}
