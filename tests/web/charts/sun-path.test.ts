import { expect, test } from 'vitest';
import { fullHoursOf, stretchesOf } from '../../../web/charts/sun-path.ts';

test('full hours lie between the steps, also where the sun passes north', () => {
  const hours = fullHoursOf([
    { clock: 655, azimuth: 2, altitude: 30 },
    { clock: 715, azimuth: 357, altitude: 34 },
    { clock: 725, azimuth: 353, altitude: 33 },
  ]);
  expect(hours.map(({ hour }) => hour)).toEqual([11, 12]);
  expect(hours[0].azimuth).toBeCloseTo(2 - 5 / 12, 9);
  expect(hours[1]).toEqual({ hour: 12, azimuth: 355, altitude: 33.5 });
});

test('a path is cut where the sun goes behind something else', () => {
  const at = (clock: number, share: number, ...blockers: string[]) => ({ clock, share, blockers });
  const stretches = stretchesOf([
    at(400, 0, 'shed'),
    at(410, 0, 'wall'),
    at(420, 1),
    at(430, 0.7, 'gum'),
    at(440, 0.2, 'gum'),
  ]);
  expect(stretches.map(({ lit, behind, steps }) => [lit, behind.join(), steps.length])).toEqual([
    [false, 'shed', 1],
    [false, 'wall', 1],
    [true, '', 2],
    [false, 'gum', 1],
  ]);
});
