import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { OwnCrown } from '../../scene/solids.ts';
import { cellPoint } from '../light/grid-of.ts';
import { skyOfCells } from '../light/sky-of-cells.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import { groundRise } from './ground.ts';
import type { HeatDay } from './heat-day.ts';
import type { Surroundings } from './surroundings.ts';

/** Width of the blocks of cells that share their walls. [m] */
const BLOCK = 0.5;

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
  const firsts = firstsOfBlocks(grid, cells);
  const ofBlock = new Map([...new Set(firsts)].map((first) => [first, walls.on(heats, cellPoint(grid, first))]));
  return heats.map((_, d) =>
    cells.map((cell, n) => ({
      sky: views[d][cell],
      groundRise: rises[n],
      walls: ofBlock.get(firsts[n])?.[d] ?? null,
    })),
  );
}

/**
 * Of each of some cells, the one that its walls are looked at from: what they throw changes little from one cell to the
 * next, and cells of one block share what its first one sees.
 */
export function firstsOfBlocks(grid: GridSpec, cells: readonly number[]): number[] {
  const blocks = Math.max(1, Math.round(BLOCK / grid.cell));
  const across = Math.ceil(grid.columns / blocks);
  const firstOf = new Map<number, number>();
  return cells.map((cell) => {
    const block = Math.floor(cell / grid.columns / blocks) * across + Math.floor((cell % grid.columns) / blocks);
    const first = firstOf.get(block) ?? cell;
    firstOf.set(block, first);
    return first;
  });
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
