import { expect, test } from 'vitest';
import { costOf, sheetOf } from '../../../engine/frame/sheet.ts';
import type { Canopy, Cloth, PlanPoint, Screen } from '../../../engine/plan/types.ts';
import { shownName } from '../../../engine/plan/words/shown-name.ts';
import { mustBeOk } from '../../parts/outcome.ts';
import { roof, screen, yardWith } from './yard.ts';

function messageOf(thing: Cloth): string | null {
  const result = sheetOf(yardWith([thing]), thing.id);
  return result.ok ? null : result.problems.map(({ message }) => message).join(' ');
}

test('a roof or a screen with a member under ten centimetres is refused, one of ten has a sheet, and each has an end', () => {
  const long = (metres: number): PlanPoint[] => [
    [2, 2],
    [2 + metres, 2],
  ];
  for (const size of [0.0005, 0.002, 0.099]) {
    const words = /less than 100 mm, too little to build with, is left of a /;
    expect(messageOf({ ...roof, length: size })).toMatch(words);
    expect(messageOf({ ...roof, length: size, width: size, height: 10 * size })).toMatch(words);
    expect(messageOf({ ...screen, path: long(size) })).toMatch(words);
  }
  expect(messageOf({ ...roof, length: 0.1, width: 0.1 })).toBeNull();
  expect(messageOf({ ...screen, path: long(0.1) })).toBeNull();
});

test('what the take-off leaves nothing of is refused', () => {
  expect(messageOf({ ...roof, length: 1.5, frame: { takeOff: 0.75 } })).toMatch(/nothing is left of a/);
});

test('a rail of which the take-off leaves less than ten centimetres is refused, and one of ten is cut', () => {
  const leaving = (left: number): string | null =>
    messageOf({ ...roof, length: 1.5, width: 1.5, frame: { maxBay: 1.5, takeOff: (1.5 - left) / 2 } });
  expect(leaving(0.099)).toBe(
    'Roof: less than 100 mm, too little to build with, is left of a top rail, crosswise after the take-off at ' +
      'both ends.',
  );
  expect(leaving(0.1)).toBeNull();
  // Rails are judged before posts, which stand over them by less than 10 cm here.
  expect(messageOf({ ...roof, length: 2, width: 2, height: 1.55, frame: { maxBay: 2, takeOff: 0.75 } })).toMatch(
    /is left of a post after the take-off/,
  );
});

test('a frame of more posts than hands set is refused with their number, before it is laid out', () => {
  const huge: Canopy = { ...roof, length: 400, width: 300, frame: { maxBay: 0.5 } };
  // (400 / 0.5 + 1) × (300 / 0.5 + 1)
  expect(messageOf(huge)).toMatch(/it would take 481401 posts; frames of up to 1000 are worked out\. Two cures: /);
  expect(costOf(huge, yardWith([huge])).ok).toBe(false);
  const fence: Screen = {
    ...screen,
    frame: { maxBay: 0.3 },
    path: Array.from({ length: 9 }, (_, k) => [k * 50, 60 * (k % 2)]),
  };
  expect(messageOf(fence)).toMatch(/it would take 2089 posts/);
});

test('a screen of forty bends, each stretch of another length, has a sheet', () => {
  const path = Array.from({ length: 40 }, (_, k): PlanPoint => [2 + 0.35 * k + 0.004 * k * k, 4 + 0.2 * (k % 2)]);
  const result = sheetOf(yardWith([{ ...screen, path }]), screen.id);
  mustBeOk(result);
  expect(result.sheet.cuts.flatMap(({ pieces }) => pieces)).toHaveLength(39 * 2 + 40);
});

test('names of tubes and of money are told as short and as closed as every name', () => {
  const long = `\u202E${'x'.repeat(1000)}`;
  const plan = yardWith([{ ...roof, frame: { tube: 'own' } }]);
  const own = { id: 'own', name: long, outside: 0.0424, wall: 0.0026, length: 6, price: 80 };
  const result = sheetOf({ ...plan, stock: { ...plan.stock, tubes: [own], currency: long } }, roof.id);
  mustBeOk(result);
  const told = JSON.stringify(result.sheet);
  expect(told).toContain(shownName(long));
  expect(told).not.toContain('x'.repeat(61));
});
