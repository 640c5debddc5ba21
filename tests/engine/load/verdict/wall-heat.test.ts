import { describe, expect, test } from 'vitest';
import { heatDayOf } from '../../../../engine/load/leaf/heat-day.ts';
import { litPoint } from '../../../../engine/load/leaf/scorch.ts';
import { createSkyViewer } from '../../../../engine/load/light/sky-viewer.ts';
import { wallHeats, wallWords } from '../../../../engine/load/verdict/wall-heat.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import type { Colour, Feature, PlanPoint } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { wall } from '../../../parts/drawn.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

/** East of the leaf at [6, 4], its face turned to the afternoon. */
const whiteWall = (
  colour: Colour,
  x = 6.6,
  path: readonly PlanPoint[] = [
    [x, 0],
    [x, 8],
  ],
): Feature => wall('w', path, { name: 'White wall', height: 2.6, colour });

function asked(features: readonly Feature[], kind = 'lemon') {
  const plan = yardPlan(features);
  const row = plantRowOf(plan, kind)!;
  const scene = buildScene(plan);
  const heat = valueOf(heatDayOf(plan, scene, { kind: 'heatwave' }));
  const sky = createSkyViewer(scene);
  const at = { side: null, point: [6, 4, 1] } as const;
  const lit = litPoint(heat, sky, at.point);
  const run = { first: 0, last: heat.samples.count - 1, hours: 14, excess: 1 };
  return { plan, heat, row, lit, told: wallHeats(plan, heat, sky, row, at, lit, run) };
}

describe('what a wall adds to a leaf', () => {
  test('is told of the white wall to the east in the afternoon, in degrees and hours', () => {
    const { plan, told } = asked([whiteWall('white')]);
    expect(told).toHaveLength(1);
    const [{ id, adds, from, to }] = told;
    expect(id).toBe('w');
    expect(adds).toBeGreaterThan(1.5);
    expect(adds).toBeLessThan(6);
    expect(from >= '12:00' && to <= '20:00').toBe(true);
    expect(wallWords(plan, told, 'metric')).toMatch(/^the white wall adds [2-6] °C from 1[2-6]:00 to (18|19|20):00$/);
    expect(wallWords(plan, told, 'imperial')).toMatch(/^the white wall adds ([4-9]|10) °F from/);
  });

  test('is the difference to the same leaf before the same wall black to the sun and as cool as the air', () => {
    const { heat, row, lit, told } = asked([whiteWall('white')]);
    const leaf = heat.leaves('thirsty', row);
    const bare = { ...lit.around, walls: null };
    const adds = Array.from(
      heat.samples.hours,
      (_, k) => leaf.on(k, lit.shares, lit.around) - leaf.on(k, lit.shares, bare),
    );
    expect(told[0].adds).toBeLessThanOrEqual(Math.max(...adds));
    expect(told[0].adds).toBeGreaterThanOrEqual(Math.max(...adds) / 2);
  });

  test('is not told of a wall far off, nor of one that the sun does not reach, nor of a fruit', () => {
    expect(asked([whiteWall('white', 11)]).told).toEqual([]);
    const roof: Feature = { id: 'r', kind: 'canopy', center: [6, 4], length: 60, width: 60, height: 3, density: 1 };
    expect(asked([whiteWall('white'), roof]).told).toEqual([]);
    expect(asked([whiteWall('white')], 'blueberry').told).toEqual([]);
  });
});
