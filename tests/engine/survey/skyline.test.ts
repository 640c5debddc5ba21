import fc from 'fast-check';
import { expect, test } from 'vitest';
import { skylineFrom } from '../../../engine/survey/skyline.ts';
import { valueOf } from '../../parts/outcome.ts';
import { reasonOf } from './places-for-tests.ts';

const look = (bearing: number, altitude: number) => ({ bearing, altitude });

test('looks become true azimuths round the compass, the needle’s error taken off, never below the level', () => {
  expect(valueOf(skylineFrom([look(350, 12), look(100, -3), look(220, 7.6)], 11))).toEqual([
    { azimuth: 1, altitude: 12 },
    { azimuth: 111, altitude: 0 },
    { azimuth: 231, altitude: 8 },
  ]);
});

test('two looks the same way are one, the higher', () => {
  expect(valueOf(skylineFrom([look(10, 4), look(11, 9), look(120, 2), look(240, 3)], 0))).toHaveLength(3);
});

test('fewer than three say nothing; a gap of more than half the round is told', () => {
  expect(reasonOf(skylineFrom([look(10, 4), look(11, 9)], 0))).toContain('3 places');
  const narrow = skylineFrom([look(10, 4), look(60, 9), look(120, 2)], 0);
  expect(narrow.ok && narrow.notes.join()).toContain('More than half');
});

test('whatever was sighted, no azimuth comes twice and all stand in their order (law)', () => {
  const sighting = fc.record({
    bearing: fc.double({ min: 0, max: 360, noNaN: true }),
    altitude: fc.double({ min: -20, max: 60, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(sighting, { maxLength: 30 }), fc.integer({ min: -30, max: 30 }), (looks, declination) => {
      const made = skylineFrom(looks, declination);
      if (!made.ok) return;
      const azimuths = made.value.map(({ azimuth }) => azimuth);
      expect(azimuths).toEqual([...new Set(azimuths)].toSorted((a, b) => a - b));
      expect(made.value.every(({ azimuth, altitude }) => azimuth < 360 && altitude >= 0)).toBe(true);
    }),
    { seed: 1 },
  );
});
