import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { turnBetween } from '../../../../engine/plan/geometry/angles.ts';
import type { ClockTime, PlanPoint } from '../../../../engine/plan/types.ts';
import { declinationAt } from '../../../../engine/survey/north/declination.ts';
import {
  northFrom,
  northFromCompass,
  northFromShadow,
  northFromVanishing,
} from '../../../../engine/survey/north/north.ts';
import { northTimes } from '../../../../engine/survey/north/times.ts';
import { type Place, sunAt } from '../../../../engine/survey/place/sun-at.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { COURTYARD, DESERT, LANE, reasonOf } from '../places-for-tests.ts';

const DEGREE = Math.PI / 180;

/** The shadow that a pole at (4, 7) would throw on a plan whose +y bears `upBearing`. */
function shadowOn(place: Place, when: ClockTime, upBearing: number, length: number): [PlanPoint, PlanPoint] {
  const direction = (valueOf(sunAt(when, place)).azimuth + 180 - upBearing) * DEGREE;
  return [
    [4, 7],
    [4 + length * Math.sin(direction), 7 + length * Math.cos(direction)],
  ];
}

describe('north from the shadow of a pole', () => {
  test('a shadow drawn without error gives the plan’s north back', () => {
    const north = valueOf(northFromShadow(DESERT, shadowOn(DESERT, '2026-07-15T08:30', 37, 1.8), '2026-07-15T08:30'));
    expect(Math.abs(turnBetween(37, north.upBearing.value))).toBeLessThan(0.05);
  });

  test('any plan, either hemisphere, any hour that is not refused', () => {
    const hours = fc.integer({ min: 7 * 60, max: 19 * 60 });
    let told = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(DESERT, COURTYARD, LANE),
        fc.integer({ min: 1, max: 12 }),
        hours,
        fc.double({ min: 0, max: 359.9, noNaN: true }),
        fc.double({ min: 0.5, max: 6, noNaN: true }),
        (place, month, minute, up, length) => {
          const when =
            `2026-${String(month).padStart(2, '0')}-11T` +
            `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
          const finding = northFromShadow(place, shadowOn(place, when, up, length), when);
          if (!finding.ok) return;
          told += 1;
          expect(Math.abs(turnBetween(up, finding.value.upBearing.value))).toBeLessThan(1e-6);
        },
      ),
      { seed: 72, numRuns: 300 },
    );
    expect(told).toBeGreaterThan(150);
  });

  test('at D1, 2 May, 10:00, a shadow (−1.67, −0.50) m says that the plan’s top bears 20°', () => {
    const finding = northFromShadow(
      COURTYARD,
      [
        [3, 2],
        [3 - 1.67, 2 - 0.5],
      ],
      '2026-05-02T10:00',
    );
    const north = valueOf(finding);
    expect(north.sun?.azimuth).toBeCloseTo(93.3, 1);
    expect(north.sun?.altitude).toBeCloseTo(29.8, 1);
    expect(Math.abs(north.upBearing.value - 20)).toBeLessThan(0.1);
    expect(north.upBearing.pm).toBeGreaterThan(0.5);
    expect(north.upBearing.pm).toBeLessThan(1.5);
  });

  test('the same at 14:20 is refused, with the reason and better times', () => {
    const reason = reasonOf(
      northFromShadow(
        COURTYARD,
        [
          [3, 2],
          [3 - 1.67, 2 - 0.5],
        ],
        '2026-05-02T14:20',
      ),
    );
    expect(reason).toMatch(/68° high and swings 0\.\d° a minute/);
    expect(reason).toMatch(/Try 08:\d\d to 11:\d\d or 17:\d\d to 19:\d\d that day/);
  });

  test('refused around a high noon, at dawn, by night, and for a line of a few centimetres', () => {
    const line: [PlanPoint, PlanPoint] = [
      [0, 0],
      [1.2, 0.4],
    ];
    expect(reasonOf(northFromShadow(DESERT, line, '2026-07-15T12:30'))).toContain('a minute');
    expect(reasonOf(northFromShadow(DESERT, line, '2026-07-15T05:45'))).toContain('stands only');
    expect(reasonOf(northFromShadow(DESERT, line, '2026-07-15T23:00'))).toContain('below the horizon');
    expect(
      reasonOf(
        northFromShadow(
          DESERT,
          [
            [0, 0],
            [0.05, 0.05],
          ],
          '2026-07-15T08:30',
        ),
      ),
    ).toContain('too short');
    expect(reasonOf(northFromShadow(DESERT, line, 'half past eight'))).toContain('no date and time');
    expect(reasonOf(northFromShadow({ ...DESERT, timeZone: 'Mars/Gale' }, line, '2026-07-15T08:30'))).toContain(
      'Mars/Gale',
    );
  });

  test('near the equator a high sun may swing slowly, and is refused for its height', () => {
    const equator = { latitude: 0.3, longitude: 32.6, timeZone: 'Africa/Kampala' };
    const when = '2026-03-20T11:10';
    const { altitude, swing } = valueOf(sunAt(when, equator));
    expect(altitude).toBeGreaterThan(60);
    expect(Math.abs(swing)).toBeLessThan(0.1);
    expect(
      reasonOf(
        northFromShadow(
          equator,
          [
            [0, 0],
            [-1, 0.1],
          ],
          when,
        ),
      ),
    ).toContain(`${altitude.toFixed(0)}° high`);
  });

  test('a sun over 45° is warned of', () => {
    const when = '2026-07-15T09:40';
    const finding = northFromShadow(DESERT, shadowOn(DESERT, when, 12, 1), when);
    expect(finding.ok && finding.notes.join()).toMatch(/stood 5\d° high/);
  });

  test('± grows with a shorter line and with a worse clock: √((atan 0.02/length)² + (swing · minutes)²)', () => {
    const when = '2026-07-15T08:30';
    const { swing } = valueOf(sunAt(when, DESERT));
    const pmOf = (length: number, minutes: number): number =>
      valueOf(northFromShadow(DESERT, shadowOn(DESERT, when, 5, length), when, { minutes })).upBearing.pm;
    expect(pmOf(1, 3)).toBeCloseTo(Math.hypot(Math.atan(0.02 / 1) / DEGREE, swing * 3), 9);
    expect(pmOf(0.5, 3)).toBeGreaterThan(pmOf(1, 3));
    expect(pmOf(1, 10)).toBeGreaterThan(pmOf(1, 3));
    // The bearing runs 0.12 to 0.14° a minute until nine.
    expect(swing).toBeGreaterThan(0.11);
    expect(swing).toBeLessThan(0.15);
  });
});

describe('the times of a day that tell north', () => {
  test('morning and afternoon of a high summer day, none of them near noon', () => {
    const windows = northTimes(DESERT, '2026-07-15');
    expect(windows).toHaveLength(2);
    expect(windows[0].from < '07:00' && windows[0].to > '09:00' && windows[0].to < '10:00').toBe(true);
    expect(windows[1].from > '15:30' && windows[1].from < '16:00' && windows[1].to > '18:00').toBe(true);
  });

  test('in December the whole middle of the day', () => {
    expect(northTimes(DESERT, '2026-12-21')).toHaveLength(1);
  });

  test('a day with no sun has none', () => {
    expect(northTimes({ latitude: 75, longitude: 20, timeZone: 'Europe/Oslo' }, '2026-12-21')).toEqual([]);
  });
});

describe('north by other ways', () => {
  test('a wall whose shadow vanishes lies under the sun, and the end that fits what is believed is taken', () => {
    const when = '2026-12-11T08:05';
    const { azimuth } = valueOf(sunAt(when, LANE));
    // On a plan whose top bears 352°, a wall drawn along the sun's direction, from the far end to the near one.
    const direction = (azimuth - 352) * DEGREE;
    const along: [PlanPoint, PlanPoint] = [
      [9 + 5 * Math.sin(direction), 3 + 5 * Math.cos(direction)],
      [9, 3],
    ];
    const north = valueOf(northFromVanishing(LANE, along, when, { near: 10 }));
    expect(north.upBearing.value).toBeCloseTo(352, 6);
    expect(north.otherEnd).toBeCloseTo(172, 6);
  });

  test('true north is the needle’s plus the declination, east positive', () => {
    const along: [PlanPoint, PlanPoint] = [
      [0, 0],
      [0, 12],
    ];
    expect(valueOf(northFromCompass(COURTYARD, 351, along, 2026, -0.4)).upBearing.value).toBeCloseTo(350.6, 9);
    const { declination } = declinationAt(33.4, -112, 340, 2026);
    expect(valueOf(northFromCompass(DESERT, 20, along, 2026)).upBearing.value).toBeCloseTo(20 + declination, 9);
    // Along +x, a quarter turn clockwise from the plan's top.
    expect(
      valueOf(
        northFromCompass(
          COURTYARD,
          95,
          [
            [0, 0],
            [3, 0],
          ],
          2026,
          0,
        ),
      ).upBearing.value,
    ).toBeCloseTo(5, 9);
  });

  test('an observation kept in the plan is read again, its own ± winning', () => {
    const north = valueOf(
      northFrom(
        COURTYARD,
        {
          by: 'compass',
          reading: 351,
          along: [
            [0, 0],
            [0, 12],
          ],
          declination: -0.4,
          pm: 3,
        },
        2026,
      ),
    );
    expect(north.upBearing).toEqual({ value: 350.6, pm: 3 });
    expect(valueOf(northFrom(COURTYARD, { by: 'picture', bearing: -3 }, 2026)).upBearing.value).toBe(357);
  });
});
