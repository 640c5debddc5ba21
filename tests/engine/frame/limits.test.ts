import { expect, test } from 'vitest';
import { costOf, sheetOf } from '../../../engine/frame/sheet.ts';
import { frameDrawing } from '../../../engine/frame/layout/drawing.ts';
import type { Canopy, PlanPoint, Screen } from '../../../engine/plan/types.ts';
import { roof, screen, yardWith } from './yard.ts';

function messageOf(thing: Canopy | Screen): string | null {
  const result = sheetOf(yardWith([thing]), thing.id);
  return result.ok ? null : result.problems.map(({ message }) => message).join(' ');
}

test('a roof or a screen smaller than a saw cuts has a sheet, and an end', () => {
  const path: PlanPoint[] = [
    [2, 2],
    [2.001, 2],
  ];
  for (const size of [0.0005, 0.001, 0.0015, 0.002]) {
    expect(messageOf({ ...roof, length: size })).toBeNull();
    expect(messageOf({ ...roof, length: size, width: size, height: 10 * size })).toBeNull();
  }
  expect(messageOf({ ...screen, path })).toBeNull();
});

test('what the take-off leaves nothing of is refused', () => {
  expect(messageOf({ ...roof, length: 1.5, frame: { takeOff: 0.75 } })).toMatch(/nothing is left of a/);
});

test('a frame of more posts than hands set is refused with their number, before it is laid out', () => {
  const huge: Canopy = { ...roof, length: 400, width: 300, frame: { maxBay: 0.5 } };
  // (400 / 0.5 + 1) × (300 / 0.5 + 1)
  expect(messageOf(huge)).toMatch(/it would take 481401 posts; frames of up to 1000 are worked out\. Two cures: /);
  expect(costOf(huge, yardWith([huge])).ok).toBe(false);
  expect(frameDrawing(huge, yardWith([huge]))).toBeNull();
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
  if (!result.ok) throw new Error(result.problems[0].message);
  expect(result.sheet.cuts.flatMap(({ pieces }) => pieces)).toHaveLength(39 * 2 + 40);
});
