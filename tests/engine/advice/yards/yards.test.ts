import { describe, expect, test } from 'vitest';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import { plantRowOf } from '../../../../engine/plan/catalogue/plants.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { YARDS } from './table.ts';

/** A search small enough for forty yards. */
const SMALL: SiteRequest = {
  kinds: ['roof', 'screen'],
  sizes: [{ length: 2, width: 2 }],
  step: 0.5,
  turnStep: 45,
};
/** Cloth that takes more than this share of a plant's light must suit it. */
const HANGS_OVER = 0.1;

describe('forty short yards get the advice that they call for', () => {
  test.each(YARDS)('$name', ({ plan, advice }) => {
    const { options, sentence, uncounted } = valueOf(siteOf(plan, SMALL));
    if (advice.cloth === 'none') {
      expect(options).toEqual([]);
      expect(sentence).toMatch(advice.because);
      return;
    }
    const [least, most] = advice.cloth;
    expect(options.length).toBeGreaterThan(0);
    for (const option of options) {
      expect(option.density).toBeGreaterThanOrEqual(least);
      expect(option.density).toBeLessThanOrEqual(most);
      for (const { id, before, after } of option.plants) {
        const named = plan.features.find((feature) => feature.id === id);
        const row = named && 'plant' in named && named.plant ? plantRowOf(plan, named.plant) : undefined;
        if (row?.cloth && after.topLight < (1 - HANGS_OVER) * before.topLight)
          expect(option.density).toBeLessThanOrEqual(row.cloth[1] / 100);
        expect(after.verdict === 'too dark' && before.verdict !== 'too dark').toBe(false);
      }
    }
    // What needs no shade is not what cloth is told to be for.
    for (const { id } of uncounted) expect(options.flatMap(({ why }) => why)).not.toContain(id);
  });
});
