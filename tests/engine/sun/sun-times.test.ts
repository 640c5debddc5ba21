import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoPlan } from '../../../engine/plan/demos/index.ts';
import { civilDay, localIso } from '../../../engine/sun/days/zone.ts';
import { sunPosition } from '../../../engine/sun/position.ts';
import { sunTimes } from '../../../engine/sun/sun-times.ts';
import { heatwaveUp, sunUp } from '../../../engine/sun/sun-up.ts';
import { planAt } from './plan-at.ts';

describe('sunrise, noon and sunset of a civil day', () => {
  it('has none where the sun stays up or down', () => {
    const tromso = planAt({ site: { latitude: 69.65, longitude: 18.96, timeZone: 'Europe/Oslo' } });
    expect(sunTimes(tromso, '2026-06-21')).toMatchObject({ riseMs: null, setMs: null });
    expect(sunTimes(tromso, '2026-12-21')).toMatchObject({ riseMs: null, setMs: null });
    expect(sunTimes(tromso, '2026-06-21').highest.altitude).toBeGreaterThan(43);
  });

  it('are in order, noon in the middle and highest, within the civil day for zones that keep near the sun', () => {
    const places = fc.constantFrom(
      { latitude: 37.4, longitude: -5.99, timeZone: 'Europe/Madrid' },
      { latitude: -34.9, longitude: 138.6, timeZone: 'Australia/Adelaide' },
      { latitude: -31.55, longitude: 159.08, timeZone: 'Australia/Lord_Howe' },
      { latitude: 33.45, longitude: -112.07, timeZone: 'America/Phoenix' },
    );
    fc.assert(
      fc.property(places, fc.integer({ min: 0, max: 364 }), (site, days) => {
        const date = new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10);
        const { riseMs, noonMs, setMs, highest } = sunTimes(planAt({ site }), date);
        if (riseMs === null || setMs === null) throw new Error('the sun rises and sets here');
        const { startMs, endMs } = civilDay(date, site.timeZone);
        expect(startMs).toBeLessThan(riseMs);
        expect(riseMs).toBeLessThan(noonMs);
        expect(noonMs).toBeLessThan(setMs);
        expect(setMs).toBeLessThan(endMs);
        for (const minutes of [-20, 20]) {
          expect(sunPosition(noonMs + minutes * 60_000, site.latitude, site.longitude).altitude).toBeLessThan(
            highest.altitude,
          );
        }
        expect(highest.solarHour).toBeCloseTo(12, 4);
      }),
      { seed: 36, numRuns: 100 },
    );
  });

  it('is past two in the afternoon by the summer clock of Seville', () => {
    const seville = planAt({ site: { latitude: 37.39, longitude: -5.99 } });
    expect(localIso(sunTimes(seville, '2026-07-15').noonMs, 'Europe/Madrid').slice(11, 16)).toBe('14:29');
  });

  it('are told by the site’s clock, and not at all where the sun stays up', () => {
    const seville = planAt({ site: { latitude: 37.39, longitude: -5.99 } });
    const up = sunUp(seville, '2026-07-15');
    // Seville in mid-July: about 7:16 to 21:43, from memory.
    expect(up?.from).toMatch(/^07:1[4-8]$/);
    expect(up?.to).toMatch(/^21:4[1-5]$/);
    expect(sunUp(planAt({ site: { latitude: 69.65, longitude: 18.96, timeZone: 'Europe/Oslo' } }), '2026-06-21')).toBe(
      null,
    );
    expect(heatwaveUp(demoPlan('courtyard'))).toEqual(sunUp(demoPlan('courtyard'), '2026-07-21'));
  });
});
