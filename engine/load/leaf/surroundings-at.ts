import { skyViewGrid } from '../../cast/sky.ts';
import type { GridSpec } from '../../cast/grid.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Crown, Scene } from '../../scene/solids.ts';
import type { SkyViewer } from '../light/sky-viewer.ts';
import type { HeatDay } from './heat-day.ts';
import type { Surroundings } from './surroundings.ts';

/** @param own an extra crown in the way for this point alone */
export function surroundingsAt(sky: SkyViewer, heat: HeatDay, point: SpacePoint, own?: Crown): Surroundings {
  return { sky: sky.at(point, heat.state, own) };
}

/** One a heat day; days on which the yard is in the same state share theirs. */
export function surroundingsOn(
  sky: SkyViewer,
  heats: readonly HeatDay[],
  point: SpacePoint,
  own?: Crown,
): Surroundings[] {
  return onceAState(heats, (heat) => surroundingsAt(sky, heat, point, own));
}

/** Of some cells of a grid: [heat day][cell]. */
export function surroundingsOfCells(
  scene: Scene,
  heats: readonly HeatDay[],
  grid: GridSpec,
  cells: readonly number[],
): Surroundings[][] {
  return onceAState(heats, (heat) => {
    const views = skyViewGrid(scene, grid, heat.day.monthDay);
    return cells.map((cell) => ({ sky: views[cell] }));
  });
}

function onceAState<T>(heats: readonly HeatDay[], find: (heat: HeatDay) => T): T[] {
  const known = new Map<number, T>();
  return heats.map((heat) => {
    const found = known.get(heat.state) ?? find(heat);
    known.set(heat.state, found);
    return found;
  });
}
