import { expect, test } from 'vitest';
import { dayTable, demoPlan, sunPosition } from '../../../../engine/index.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

const PLAN = demoPlan('courtyard');

test('a day has 1440 minutes, 1380 and 1500 where the clocks change, and its clock runs to midnight', () => {
  // European Union: clocks go forward on the last Sunday of March, back on that of October.
  for (const [monthDay, minutes] of [
    ['07-21', 1440],
    ['03-29', 1380],
    ['10-25', 1500],
  ] as const) {
    const day = dayTable({ ...PLAN, season: { ...PLAN.season, year: 2026 } }, monthDay);
    mustBeOk(day);
    expect([day.value.minutes, day.value.clock[0], day.value.clock[day.value.minutes]]).toEqual([minutes, 0, 1440]);
  }
});

test('every minute has the sun of that minute, and air and harm only while it is up', () => {
  const day = dayTable(PLAN, 'heatwave');
  mustBeOk(day);
  const { startMs, altitude, azimuth, air, harm } = day.value;
  for (let minute = 0; minute <= day.value.minutes; minute += 97) {
    const sun = sunPosition(startMs + minute * 60_000, PLAN.site.latitude, PLAN.site.longitude);
    expect([azimuth[minute], altitude[minute]]).toEqual([sun.azimuth, sun.altitude]);
    if (sun.altitude < -1) expect([air[minute], harm[minute]]).toEqual([NaN, 0]);
  }
  expect(Math.max(...harm)).toBeLessThanOrEqual(1);
  expect(Math.max(...harm)).toBeGreaterThan(0.5);
});

test('a day of a month without a climate has its sun, and says why it has no air', () => {
  const day = dayTable(PLAN, '01-21');
  expect(day.ok && day.value.noClimate).toMatch(/month|January|climate/i);
  expect(day.ok && Math.max(...day.value.altitude)).toBeGreaterThan(20);
});
