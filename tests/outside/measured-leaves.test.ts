import { describe, expect, it } from 'vitest';
import { MEASURED } from './measured-rows.ts';
import { saidOf } from './measured.ts';

/** What does not lie inside, each with the reason that we see. */
const OUTSIDE: Readonly<Record<string, string>> = {
  'coffee leaf, kaolin, the other cultivar or season': 'the most of a season, 0.2 K beyond what we allow',
  'apple under 20 % net': 'a net may stop more than it is sold as, and stills and wets the air',
  'walnut hull, sunlit': 'hulls hang among leaves',
};

describe('measured leaves and fruit', () => {
  it.each(MEASURED.map((row) => [`${row.what}: ${row.source}`, row] as const))('%s', (_, row) => {
    const { inside, range } = saidOf(row);
    const told = `measured ${row.measured}, ours ${range.map((each) => each.toFixed(1)).join(' to ')}`;
    expect(inside, told).toBe(!(row.what in OUTSIDE));
  });

  it('at least twenty are there, and each names its source and how far it was seen', () => {
    expect(MEASURED.length).toBeGreaterThanOrEqual(20);
    for (const { source } of MEASURED) expect(source).toMatch(/seen/);
  });
});
