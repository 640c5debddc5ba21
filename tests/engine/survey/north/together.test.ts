import { describe, expect, test } from 'vitest';
import type { NorthSighting } from '../../../../engine/survey/north/north.ts';
import { northTogether } from '../../../../engine/survey/north/together.ts';

const sighting = (by: NorthSighting['by'], value: number, pm: number, otherEnd?: number): NorthSighting => ({
  by,
  upBearing: { value, pm },
  otherEnd,
});

describe('several ways to north', () => {
  test('the surer one weighs more: 1/±²', () => {
    const { upBearing, spread, apart } = northTogether([sighting('shadow', 20, 1), sighting('compass', 23, 2)]);
    expect(upBearing.value).toBeCloseTo((20 * 4 + 23) / 5, 9);
    expect(spread).toBeCloseTo(3, 9);
    expect(apart).toBeNull();
  });

  test('the mean goes the short way round north', () => {
    expect(northTogether([sighting('shadow', 359, 1), sighting('picture', 3, 1)]).upBearing.value).toBeCloseTo(1, 9);
  });

  test('over 5° apart: both are named and the person chooses', () => {
    const together = northTogether([sighting('shadow', 20, 1), sighting('compass', 29, 8), sighting('picture', 21, 2)]);
    expect(together.apart).toEqual([0, 1]);
    expect(together.notes.join()).toBe(
      'Two ways to north differ by 9.0°: the shadow says 20.0° (± 1.0°), the compass says 29.0° (± 8.0°). Which ' +
        'one do you keep?',
    );
  });

  test('sightings that scatter more than their ± allow widen the ±', () => {
    const calm = northTogether([sighting('shadow', 20, 1), sighting('shadow', 20.5, 1)]).upBearing.pm;
    const wild = northTogether([sighting('shadow', 18, 1), sighting('shadow', 22, 1)]).upBearing.pm;
    expect(calm).toBeCloseTo(Math.SQRT1_2, 9);
    expect(wild).toBeCloseTo(2, 9);
  });

  test('a wall takes the end that the others point to', () => {
    expect(northTogether([sighting('vanish', 171, 2, 351), sighting('compass', 349, 8)]).upBearing.value).toBeCloseTo(
      (351 * 16 + 349) / 17,
      9,
    );
  });

  test('without a sighting there is no north', () => {
    expect(() => northTogether([])).toThrow(RangeError);
  });
});
