import { skyViewGrid } from '../../cast/sky.ts';
import type { GridSpec } from '../../cast/grids/grid-spec.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { OwnCrown } from '../../scene/solids.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import { groundRise } from './ground.ts';
import { cellPoint } from '../light/grid-of.ts';
import type { HeatDay } from './heat-day.ts';
import type { Surroundings, WallGlow } from './surroundings.ts';

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

/**
 * Of some cells of a grid: [heat day][cell]. What walls throw changes little from one cell to the next: cells of one
 * block share what its first one sees.
 */
export function surroundingsOfCells(
  sky: SkyViewer,
  heats: readonly HeatDay[],
  grid: GridSpec,
  cells: readonly number[],
): Surroundings[][] {
  const { scene, walls } = sky;
  const rises = cells.map((cell) => groundRise(scene, cellPoint(grid, cell)));
  const views = onceAState(heats, ({ day }) => skyViewGrid(scene, grid, day.monthDay));
  const blocks = Math.max(1, Math.round(BLOCK / grid.cell));
  const blockOf = (cell: number) =>
    `${Math.floor((cell % grid.columns) / blocks)} ${Math.floor(cell / grid.columns / blocks)}`;
  const ofBlock = new Map<string, (WallGlow | null)[]>();
  const glows = cells.map((cell) => {
    const block = blockOf(cell);
    let glow = ofBlock.get(block);
    if (!glow) ofBlock.set(block, (glow = walls.on(heats, cellPoint(grid, cell))));
    return glow;
  });
  return heats.map((_, d) =>
    cells.map((cell, n) => ({ sky: views[d][cell], groundRise: rises[n], walls: glows[n][d] })),
  );
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
