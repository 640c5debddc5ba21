import fc from 'fast-check';
import { expect, test } from 'vitest';
import { clockWords, readClock } from '../../../web/common/words.ts';

test('a time is read back from the words it is shown in, by either clock', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1439 }), fc.constantFrom('24', '12'), (minutes, clock) => {
      expect(readClock(clockWords(minutes, clock))).toBe(minutes);
    }),
  );
});

test('a time is understood as people type it, and what is none is refused', () => {
  const typed = ['17:05', '17.05', '1705', '17h05', '5:05 pm', '5.05PM', '5:05 p.m.'];
  for (const text of typed) expect(readClock(text), text).toBe(17 * 60 + 5);
  expect([readClock('9'), readClock('noon'), readClock('12 am'), readClock('12:30 pm')]).toEqual([540, 720, 0, 750]);
  for (const text of ['', 'half past', '24:00', '12:60', '13 pm', '0 am', '-3'])
    expect(readClock(text), text).toBe(null);
});
