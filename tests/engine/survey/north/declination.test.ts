import { expect, test, vi } from 'vitest';
import { declinationAt } from '../../../../engine/survey/north/declination.ts';

test('the needle of the low desert points some ten degrees east of north', () => {
  expect(declinationAt(33.4, -112, 340, 2026.47).declination).toBeCloseTo(9.65, 1);
});

test('beyond the model’s years its last year holds, a note says so, and the console stays silent', () => {
  const warn = vi.spyOn(console, 'warn').mockImplementation(() => {});
  const later = declinationAt(33.4, -112, 340, 2034);
  expect(later.notes.join()).toContain('for 2034');
  expect(later.declination).toBe(declinationAt(33.4, -112, 340, 2029.99).declination);
  expect(declinationAt(33.4, -112, 340, 2019).notes).toHaveLength(1);
  expect(declinationAt(33.4, -112, 340, 2027).notes).toEqual([]);
  expect(warn).not.toHaveBeenCalled();
  warn.mockRestore();
});
