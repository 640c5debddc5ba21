import { describe, expect, test } from 'vitest';
import { northCheckLine, placeCheckLine, placeNotes } from '../../../../engine/survey/place/place.ts';
import { zoneAt } from '../../../../engine/survey/place/zone-at.ts';
import { COURTYARD, DESERT, LANE } from '../places-for-tests.ts';

describe('a place is held against what the person knows of their own sun', () => {
  test('the check line names height, clock, zone and side of the midsummer sun', () => {
    expect(placeCheckLine(DESERT, 2026)).toBe(
      'The sun stands 80° high at 12:30 (America/Phoenix) on 21 June and is in the south: does that fit?',
    );
  });

  test('south of the equator midsummer is in December and the sun in the north', () => {
    expect(placeCheckLine(LANE, 2026)).toMatch(/79° high .* on 21 December and is in the north/);
  });

  test('a lost minus sign shows: the same longitude to the east has its noon at another hour', () => {
    expect(placeCheckLine({ ...COURTYARD, longitude: 4.78 }, 2026)).not.toBe(placeCheckLine(COURTYARD, 2026));
  });

  test('in the tropics the noon sun may be overhead, and may be in the north in June', () => {
    expect(placeCheckLine({ latitude: 23.4, longitude: 58, timeZone: 'Asia/Muscat' }, 2026)).toContain(
      'almost straight overhead',
    );
    expect(placeCheckLine({ latitude: 13.5, longitude: 2.1, timeZone: 'Africa/Niamey' }, 2026)).toContain(
      'in the north:',
    );
  });

  test('the drawing’s north is checked by the edge of the sheet that the noon sun stands over', () => {
    expect(northCheckLine(COURTYARD, 0, '2026-05-02')).toContain('over the bottom of the drawing, in the south');
    expect(northCheckLine(COURTYARD, 45, '2026-05-02')).toContain('over the lower right of the drawing');
    expect(northCheckLine(LANE, 352, '2026-12-21')).toContain('over the top of the drawing, in the north');
  });

  test('beyond the polar circle it is said that this is not the place, and nothing is refused', () => {
    expect(placeNotes(69.7)).toHaveLength(1);
    expect(placeNotes(-67)).toHaveLength(1);
    expect(placeNotes(66.6)).toEqual([]);
  });

  test('the zone follows from the place', () => {
    expect(zoneAt(COURTYARD.latitude, COURTYARD.longitude)).toBe('Europe/Madrid');
    expect(zoneAt(LANE.latitude, LANE.longitude)).toBe('Australia/Adelaide');
    expect(zoneAt(DESERT.latitude, DESERT.longitude)).toBe('America/Phoenix');
    expect(() => zoneAt(95, 0)).toThrow(RangeError);
  });
});
