import fc from 'fast-check';
import { expect, test } from 'vitest';
import { NOTHING_YET } from '../../../../web/panels/first/answers.ts';
import { northOf, SHEET_WAYS } from '../../../../web/panels/first/north-of.ts';

const PHOENIX = { latitude: 33.45, longitude: -112.07, timeZone: 'America/Phoenix' };
/** The sun stands in the south: 12:34 by Phoenix's clocks on 21 June (NOAA solar calculator, from memory: 12:30). */
const NOON_MS = Date.parse('2026-06-21T12:30:00-07:00');
const EIGHTHS = { N: 0, NE: 45, E: 90, SE: 135, S: 180, SW: 225, W: 270, NW: 315 } as const;

test('at noon north of the tropic a shadow falls north: where it falls up the sheet, the sheet’s top is north', () => {
  const found = northOf({ ...NOTHING_YET, northBy: 'shadow', shadowTo: 'N', shadowAtMs: NOON_MS }, PHOENIX);
  expect(found).toMatchObject({ ok: true, how: { by: 'shadow', pm: 22.5 } });
  if (!found.ok) return;
  expect(Math.min(found.upBearing, 360 - found.upBearing)).toBeLessThan(6);
});

test('a shadow that falls so much further clockwise on the sheet turns the sheet’s top as much the other way (law)', () => {
  fc.assert(
    fc.property(fc.constantFrom(...(Object.keys(SHEET_WAYS) as (keyof typeof SHEET_WAYS)[])), (shadowTo) => {
      const up = northOf({ ...NOTHING_YET, northBy: 'shadow', shadowTo: 'N', shadowAtMs: NOON_MS }, PHOENIX);
      const turned = northOf({ ...NOTHING_YET, northBy: 'shadow', shadowTo, shadowAtMs: NOON_MS }, PHOENIX);
      if (!up.ok || !turned.ok) throw new Error('The sun is up.');
      expect((turned.upBearing + EIGHTHS[shadowTo] - up.upBearing + 720) % 360).toBeCloseTo(0, 6);
    }),
    { seed: 1 },
  );
});

test('a shadow by night, and a bearing that is none, are refused in a sentence', () => {
  expect(
    northOf({ ...NOTHING_YET, northBy: 'shadow', shadowAtMs: Date.parse('2026-06-21T23:00:00-07:00') }, PHOENIX),
  ).toMatchObject({ ok: false, message: expect.stringContaining('The sun is down') as string });
  expect(northOf({ ...NOTHING_YET, northBy: 'phone', heading: '400' }, PHOENIX)).toMatchObject({ ok: false });
  expect(northOf({ ...NOTHING_YET, northBy: 'phone', heading: '95°' }, PHOENIX)).toMatchObject({ upBearing: 95 });
});

test('where nothing is known the sheet may lie any way round', () => {
  expect(northOf(NOTHING_YET, PHOENIX)).toEqual({ ok: true, upBearing: 0, how: { by: 'guess', pm: 180 } });
});
