import { expect, test } from 'vitest';
import { placeOf } from '../../../../engine/advice/place/place.ts';
import { stepsBetween, wayWords } from '../../../../engine/advice/place/steps.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { parsePlan } from '../../../../engine/plan/file/parse.ts';
import { planText } from '../../../../engine/plan/file/serialize.ts';
import type { Feature, Plan, PlanPoint } from '../../../../engine/plan/types.ts';

const demo = demoPlan('courtyard');
const ground = (id: string, x: number, steps?: number): Feature => ({
  id,
  kind: 'ground',
  surface: 'paving',
  outline: [
    [x, 0],
    [x + 3, 0],
    [x + 3, 9],
    [x, 9],
  ],
  ...(steps === undefined ? {} : { steps }),
});
/** A terrace two steps up, and beside it, over a part of it, a sunken path one step down. */
const yard: Plan = { ...demo, features: [ground('terrace', 0, 2), ground('path', 2, -1)] };

test('the steps between two places are those of the pieces of ground that they lie on, the last drawn counting', () => {
  const [terrace, path, lawn]: PlanPoint[] = [
    [1, 4],
    [2.5, 4],
    [7, 4],
  ];
  expect(stepsBetween(yard, lawn, terrace)).toBe(2);
  expect(stepsBetween(yard, terrace, path)).toBe(-3);
  expect(stepsBetween(yard, path, lawn)).toBe(1);
  expect(stepsBetween({ ...yard, features: [ground('terrace', 0)] }, lawn, terrace)).toBe(0);
});

test('they are said with the way: two steps down, one step up, nothing on the level', () => {
  expect([-2, 1, 0, 9].map((steps) => wayWords('7.5 m', steps))).toEqual([
    '7.5 m away, two steps down',
    '7.5 m away, one step up',
    '7.5 m away',
    '7.5 m away, 9 steps up',
  ]);
});

test('a pot’s places name them; a half step or a hundred is refused in a file', () => {
  const lemon = demo.features.find(({ id }) => id === 'lemon')!;
  const [x, y] = demo.site.boundary[0];
  const all: Feature = { ...ground('low', 0, -2), outline: [...demo.site.boundary] } as Feature;
  const here: Feature = {
    ...ground('here', 0, 0),
    outline: around(lemon.kind === 'plant' ? lemon.at : [x, y]),
  } as Feature;
  const found = placeOf({ ...demo, features: [...demo.features, all, here] }, { plant: 'lemon', count: 2 });
  if (!found.ok) throw new Error(found.problems[0].message);
  const away = found.value.spots.filter(({ stay }) => !stay);
  expect(away.map(({ steps }) => steps)).toEqual(away.map(() => -2));
  expect(away[0].sentence).toMatch(/ m away, two steps down: /);
  for (const steps of [0.5, 100])
    expect(parsePlan(planText({ ...yard, features: [ground('terrace', 0, steps)] })).ok).toBe(false);
});

/** A square of 0.8 m: no other place of the lattice within a pot's width lies on it. */
function around([x, y]: PlanPoint): PlanPoint[] {
  return [
    [x - 0.4, y - 0.4],
    [x + 0.4, y - 0.4],
    [x + 0.4, y + 0.4],
    [x - 0.4, y + 0.4],
  ];
}
