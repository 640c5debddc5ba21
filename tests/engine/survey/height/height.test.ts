import { describe, expect, test } from 'vitest';
import {
  heightFromPicture,
  heightOfEdge,
  heightOfTop,
  heightOfTree,
  type Slope,
  slopeFromPole,
  slopeFromTime,
} from '../../../../engine/survey/height/height.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { COURTYARD, DESERT, LANE, reasonOf } from '../places-for-tests.ts';

const taped = (value: number) => ({ value, pm: 0.02 });
const exact = (value: number) => ({ value, pm: 0 });
const at45: Slope = { tangent: { value: 1, pm: 0 }, azimuth: 230 };

describe('heights from shadows', () => {
  test('a lamp post whose shadow is 5.2 m on 2 May at 10:00 is 2.98 m high', () => {
    const height = valueOf(heightOfTop(valueOf(slopeFromTime(COURTYARD, '2026-05-02T10:00')), taped(5.2)));
    expect(height.value).toBeCloseTo(2.98, 2);
    // 2 cm of tape, two minutes of a sun that climbs 0.19° a minute.
    expect(height.pm).toBeGreaterThan(0.03);
    expect(height.pm).toBeLessThan(0.08);
  });

  test('the neighbour’s gum is 11.0 m, not 11.8 m: a round crown’s tip is not thrown by its top', () => {
    const finding = heightOfTree(
      valueOf(slopeFromTime(LANE, '2027-01-10T09:00')),
      taped(17.95),
      'round',
      taped(8),
      taped(3.5),
    );
    expect(valueOf(finding).value).toBeCloseTo(11.0, 1);
    expect(finding.ok && finding.notes.join()).toContain('11.8 m');
  });

  test('a crown 4 m wide from 1.8 m whose tip lies 6.80 m off at 45° is 6.0 m high', () => {
    expect(Math.abs(valueOf(heightOfTree(at45, exact(6.8), 'round', exact(4), exact(1.8))).value - 6)).toBeLessThan(
      0.02,
    );
  });

  test('a 6 m tree with a 4 m crown would be read 6.3 m at 30°, 6.8 at 45° and 8.0 at 60° from the tip alone', () => {
    for (const [altitude, naive] of [
      [30, 6.3],
      [45, 6.8],
      [60, 8.0],
    ]) {
      const t = Math.tan((altitude * Math.PI) / 180);
      const tip = (6 + 1.8) / 2 / t + Math.hypot(2, 4.2 / 2 / t);
      expect(tip * t).toBeCloseTo(naive, 1);
      expect(valueOf(heightOfTree({ tangent: exact(t) }, exact(tip), 'round', exact(4), exact(1.8))).value).toBeCloseTo(
        6,
        9,
      );
    }
  });

  test('a column’s far rim throws the tip, a cone’s apex does only while the sun is low', () => {
    expect(valueOf(heightOfTree(at45, exact(7.5), 'column', exact(3), exact(0.4))).value).toBeCloseTo(6, 9);
    expect(valueOf(heightOfTree(at45, exact(6.1), 'cone', exact(3), exact(0.4))).value).toBeCloseTo(6.1, 9);
    const reason = reasonOf(heightOfTree(at45, exact(1.9), 'cone', exact(3), exact(0.4)));
    expect(reason).toContain('lower rim');
    expect(reason).toContain('at most 1.9 m');
  });

  test('a shadow too short for its crown is refused in words', () => {
    expect(reasonOf(heightOfTree(at45, exact(3.5), 'round', exact(4), exact(1.8)))).toContain(
      'too short for that crown',
    );
    expect(reasonOf(heightOfTree(at45, exact(3.5), 'round', exact(0), exact(1.8)))).toContain('how wide');
    expect(reasonOf(heightOfTree(at45, exact(3.5), 'round', exact(3), exact(-0.2)))).toContain('under the ground');
    expect(reasonOf(heightOfTop(at45, exact(0)))).toContain('longer than 0 m');
  });

  test('a pole beside it needs no clock', () => {
    const slope = valueOf(slopeFromPole(taped(1.5), taped(2.4)));
    const height = valueOf(heightOfTop(slope, taped(9.6)));
    expect(height.value).toBeCloseTo(6, 9);
    // Relative errors add as squares: 0.02/1.5, 0.02/2.4, 0.02/9.6.
    expect(height.pm / 6).toBeCloseTo(Math.hypot(0.02 / 1.5, 0.02 / 2.4, 0.02 / 9.6), 3);
    expect(reasonOf(slopeFromPole(taped(0), taped(2)))).toContain('no shadow');
    expect(reasonOf(slopeFromPole(taped(1.5), taped(0)))).toContain('longer than 0 m');
  });

  test('a wall’s edge: the depth of its shadow at right angles, and none on the sun’s own side', () => {
    const slope: Slope = { tangent: exact(Math.tan((35 * Math.PI) / 180)), azimuth: 270 };
    // The sun 45° off the normal: a depth of 1.5 m is 1.5·√2 along the ray.
    expect(valueOf(heightOfEdge(slope, exact(1.5), 45)).value).toBeCloseTo(1.5 * Math.SQRT2 * slope.tangent.value, 9);
    expect(reasonOf(heightOfEdge(slope, exact(1.5), 225))).toContain('other side');
    expect(reasonOf(heightOfEdge(slope, exact(1.5), 2))).toContain('almost along');
    expect(reasonOf(heightOfEdge({ tangent: exact(1) }, exact(1.5), 45))).toContain('clock');
  });

  test('a sun below the horizon, too low or overhead tells no height', () => {
    expect(reasonOf(slopeFromTime(DESERT, '2026-06-21T23:00'))).toContain('below the horizon');
    expect(reasonOf(slopeFromTime(DESERT, '2026-06-21T05:35'))).toContain('only');
    expect(reasonOf(slopeFromTime({ ...DESERT, latitude: 23.4 }, '2026-06-21T12:28'))).toContain('too short');
  });

  test('a helper of known height in a picture', () => {
    const height = valueOf(heightFromPicture(taped(1.75), 350, 1200));
    expect(height.value).toBeCloseTo(6, 9);
    expect(height.pm).toBeGreaterThan(0.15);
    expect(reasonOf(heightFromPicture(taped(1.75), 12, 40))).toContain('too small');
  });
});
