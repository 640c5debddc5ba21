import { expect, test } from 'vitest';
import { domePoint } from '../../../web/charts/dome.ts';
import type { DomeSide } from '../../../web/charts/dome.ts';

const at = (azimuth: number, altitude: number, side: DomeSide): number[] =>
  domePoint([azimuth, altitude], side).map((value) => Math.round(value * 10) / 10 || 0);

test('north is up on both sides of the dome; east lies right on the plan and left when one looks up', () => {
  expect([at(0, 0, 'map'), at(0, 0, 'sky')]).toEqual([
    [0, -100],
    [0, -100],
  ]);
  expect([at(90, 0, 'map'), at(90, 0, 'sky')]).toEqual([
    [100, 0],
    [-100, 0],
  ]);
  expect([at(180, 0, 'map'), at(180, 0, 'sky')]).toEqual([
    [0, 100],
    [0, 100],
  ]);
});

test('altitude goes evenly from the rim to the middle', () => {
  expect([at(180, 0, 'map'), at(180, 30, 'map'), at(180, 75, 'map'), at(180, 90, 'map')].map(([, y]) => y)).toEqual([
    100, 66.7, 16.7, 0,
  ]);
});
