import { expect, test } from 'vitest';
import { createDoser } from '../../../../engine/load/leaf/doses.ts';
import { heatDayOf } from '../../../../engine/load/leaf/heat-day.ts';
import { surroundingsAt } from '../../../../engine/load/leaf/surroundings-at.ts';
import { cellPoint } from '../../../../engine/load/light/grid-of.ts';
import { createSkyViewer } from '../../../../engine/load/light/sky-viewer.ts';
import { bedPlaces, bedScorches } from '../../../../engine/load/verdict/bed-load.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import { meanOf } from '../../../../engine/plan/numbers/mean.ts';
import type { Bed, Feature, PlanPoint } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

/** A bed of 1.3 × 0.9 m, its lower left corner here. */
const bedAt = (x: number, y: number): Bed => ({
  id: 'bed',
  kind: 'bed',
  outline: [
    [x, y],
    [x + 1.3, y],
    [x + 1.3, y + 0.9],
    [x, y + 0.9],
  ],
  plantHeight: 0.3,
  plant: 'lettuce',
});
const whiteWall = (id: string, ...path: readonly PlanPoint[]): Feature => ({
  id,
  kind: 'wall',
  path,
  height: 2.4,
  thickness: 0.2,
  colour: 'white',
});
const NORTH = whiteWall('north', [2, 5.1], [8, 5.1]);
const EAST = whiteWall('east', [6.1, 1], [6.1, 5]);

test.each([
  ['along a white wall that the sun shines on', [NORTH], bedAt(4, 4.08)],
  ['in the corner of two', [NORTH, EAST], bedAt(4.68, 4.08)],
  ['with the end of one in it', [whiteWall('end', [5.2, 3], [5.2, 4.3])], bedAt(4, 4.08)],
] as const)('the walls of a bed %s are those of each of its cells, its damage to half a hundredth', (_, walls, bed) => {
  const plan = yardPlan([...walls, bed]);
  const scene = buildScene(plan);
  const sky = createSkyViewer(scene);
  const heat = valueOf(heatDayOf(plan, scene, { kind: 'heatwave' }));
  const row = plantRowOf(plan, 'lettuce')!;
  const places = bedPlaces(plan, bed);
  if ('point' in places) throw new Error('the bed has cells');
  const doser = createDoser(scene, [heat], row, 48);
  const each = places.indices.map((cell) => {
    const point = cellPoint(places.grid, cell);
    return doser.at(point, [surroundingsAt(sky, heat, point)])[0];
  });
  const [{ dose }] = bedScorches(scene, sky, places, row, 48, [heat]);
  expect(Math.abs(dose / meanOf(each) - 1)).toBeLessThan(0.005);
});
