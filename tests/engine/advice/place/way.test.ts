import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeOf } from '../../../../engine/advice/place/place.ts';
import { type Way, wayBetween, wayNote, wayWords } from '../../../../engine/advice/place/way.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { parsePlan } from '../../../../engine/plan/file/parse.ts';
import { planText } from '../../../../engine/plan/file/serialize.ts';
import type { Feature, Plan, PlanPoint } from '../../../../engine/plan/types.ts';
import { wall } from '../../../parts/drawn.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

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
  expect(wayBetween(yard, lawn, terrace).steps).toBe(2);
  expect(wayBetween(yard, terrace, path).steps).toBe(-3);
  expect(wayBetween(yard, path, lawn).steps).toBe(1);
  expect(wayBetween({ ...yard, features: [ground('terrace', 0)] }, lawn, terrace).steps).toBe(0);
});

test('they are said with the way: two steps down, one step up, nothing on the level', () => {
  const way = (steps: number): Way => ({ metres: 7.5, steps, round: [] });
  expect([-2, 1, 0, 9].map((steps) => wayWords(yard, way(steps), 'metric'))).toEqual([
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
  mustBeOk(found);
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

describe('what stands in the straight way', () => {
  const named = (id: string, path: readonly PlanPoint[], height = 1.8): Feature =>
    wall(id, path, { name: `The ${id} wall`, height });
  const walled = (...features: Feature[]): Plan => ({ ...demo, features });
  const [west, east]: PlanPoint[] = [
    [2, 3],
    [8, 3],
  ];
  const across = (from: number, to: number): PlanPoint[] => [
    [5, from],
    [5, to],
  ];

  test('a wall, a hedge and a house are gone round, and named; a kerb is stepped over, a bed is no wall', () => {
    const house: Feature = {
      id: 'house',
      kind: 'building',
      name: 'House',
      outline: [
        [6, 2],
        [7, 2],
        [7, 4],
        [6, 4],
      ],
      height: 3,
    };
    const yards = walled(named('middle', across(0, 8)), named('kerb', across(0, 8), 0.15), house);
    const way = wayBetween(yards, west, east);
    expect(way).toEqual({ metres: 6, steps: 0, round: ['middle', 'house'] });
    expect(wayWords(yards, way, 'metric')).toBe('6.0 m away, round the middle wall and the house');
    expect(wayBetween(yards, west, [3, 3]).round).toEqual([]);
  });

  test('where a gate or an open end leads there the metres are those of the way, else those of the crow', () => {
    // Closed form: straight to the gate's middle and straight on.
    const gate = walled(named('south', across(0, 4)), named('north', across(4.9, 8.5)));
    const way = wayBetween(gate, west, east);
    expect(way.metres).toBeCloseTo(2 * Math.hypot(3, 1.45), 9);
    expect(way.led).toBe(true);
    expect(wayNote(gate, 0.5, [way], 'metric')).toMatch(/^How far to carry is told round what stands in the way/);
    // Round the end of a wall: longer than straight to its end and on, by a corner taken wide at most.
    const end = wayBetween(walled(named('short', across(0, 5))), west, east);
    expect(end.metres).toBeGreaterThan(2 * Math.hypot(3, 2));
    expect(end.metres).toBeLessThan(2 * Math.hypot(3, 2.6) + 0.01);
    expect(wayBetween(walled(named('whole', across(0, 8.5))), west, east)).toEqual({
      metres: 6,
      steps: 0,
      round: ['whole'],
    });
  });

  test('a way round is never shorter than the straight one, and the same there and back (law)', () => {
    const yards = walled(
      named('a', across(0, 5)),
      named('b', [
        [2, 6],
        [7, 6],
      ]),
    );
    const point = fc.tuple(
      fc.double({ min: 0.2, max: 10.8, noNaN: true }),
      fc.double({ min: 0.2, max: 8.3, noNaN: true }),
    );
    fc.assert(
      fc.property(point, point, (from, to) => {
        const [there, back] = [wayBetween(yards, from, to), wayBetween(yards, to, from)];
        expect(there.metres).toBeGreaterThanOrEqual(Math.hypot(from[0] - to[0], from[1] - to[1]) - 1e-9);
        expect(there.metres).toBeCloseTo(back.metres, 9);
      }),
      { seed: 31 },
    );
  });

  test('the gate between is told, whether the pot goes through it, and that none is drawn', () => {
    const gate = (width: number) => walled(named('south', across(0, 4)), named('north', across(4 + width, 8)));
    const note = (yards: Plan, pot: number) => wayNote(yards, pot, [wayBetween(yards, west, east)], 'metric');
    expect(note(gate(0.9), 0.5)).toContain('The narrowest gate on the way is 0.90 m wide.');
    expect(note(gate(0.7), 0.65)).toContain('0.70 m wide, too narrow to carry the pot of 0.65 m through.');
    expect(note(walled(named('middle', across(0, 8))), 0.5)).toContain('No gate is drawn');
    // A gate elsewhere in the yard is nobody's business: the way goes round the open end.
    const elsewhere = walled(
      named('short', across(0, 4)),
      named('a', [
        [9, 6],
        [9, 8.5],
      ]),
      named('b', [
        [9, 2],
        [9, 5.3],
      ]),
    );
    expect(wayBetween(elsewhere, west, east).led).toBe(true);
    expect(note(elsewhere, 0.65)).not.toContain('gate on the way');
    // One that stands open in the straight way is gone through all the same.
    const straight = walled(named('south', across(0, 2.65)), named('north', across(3.35, 8.5)));
    expect(wayBetween(straight, west, east)).toEqual({ metres: 6, steps: 0, round: [], gate: expect.closeTo(0.7, 9) });
    expect(note(straight, 0.65)).toContain('too narrow to carry the pot of 0.65 m through.');
    expect(note(walled(), 0.5)).toBe('How far to carry is told as the crow flies, with the steps that are drawn.');
  });
});
