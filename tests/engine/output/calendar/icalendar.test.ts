import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type CalendarEvent, icalendar } from '../../../../engine/output/calendar/icalendar.ts';

const request = { name: 'Yard', yard: 'y', stamp: '20260101T000000Z' };
const eventOf = (id: string, title: string, text: string): CalendarEvent => ({
  id,
  kind: 'check',
  from: '2026-12-31',
  to: '2026-12-31',
  title,
  notes: [text],
});

describe('RFC 5545 lines', () => {
  test('whatever a person types, every line is at most 75 octets long, ended by CRLF, and no character is cut', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 150 }),
        fc.string({ unit: 'grapheme', maxLength: 150 }),
        (title, text) => {
          const file = icalendar([eventOf('id', title, text)], request);
          expect(file.endsWith('END:VCALENDAR\r\n')).toBe(true);
          const lines = file.slice(0, -2).split('\r\n');
          expect(Math.max(...lines.map((line) => new TextEncoder().encode(line).length))).toBeLessThanOrEqual(75);
          // oxlint-disable-next-line no-control-regex -- none may be left
          expect(lines.filter((line) => /[\u0000-\u0008\n\r]/.test(line) || !line.isWellFormed())).toEqual([]);
          expect(lines.filter((line) => line === 'BEGIN:VEVENT')).toHaveLength(1);
        },
      ),
      { seed: 7, numRuns: 100 },
    );
  });

  test('two things with ids that look alike never share an identifier', () => {
    const uids = (ids: string[]) =>
      icalendar(
        ids.map((id) => eventOf(id, 't', 'x')),
        request,
      ).match(/UID:[^\r]*/g);
    const ids = ['a b', 'a_b', 'a.b', 'ab', 'a_20_b'];
    expect(new Set(uids(ids)).size).toBe(ids.length);
  });

  test('New Year’s Eve ends in the next year', () => {
    expect(icalendar([eventOf('e', 't', 'x')], request)).toContain('DTEND;VALUE=DATE:20270101');
  });
});
