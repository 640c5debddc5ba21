import { expect, test } from 'vitest';
import { sectionOf } from '../../../../engine/advice/sight/section.ts';
import { sectionPicture } from '../../../../engine/output/report/section.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';
import { mustBeOk } from '../../../parts/outcome.ts';

test('a cut on paper is true to scale, with the heights of cloth and plant, and nothing of it cut off', () => {
  const chosen = withOptions(demoPlan('courtyard'), ['A']);
  mustBeOk(chosen);
  const cut = sectionOf(chosen.plan, { canopy: 'lemon-roof', plant: 'lemon' });
  mustBeOk(cut);
  for (const [units, heights] of [
    ['metric', ['1.70 m', '2.60 m']],
    ['imperial', ['5 ft 7 in', '8 ft 6½ in']],
  ] as const) {
    const svg = sectionPicture('Cut', cut.value, units);
    const [, width, box] = /width="([\d.]+)mm" height="[\d.]+mm" viewBox="([^"]*)"/.exec(svg) ?? [];
    const [left, top, wide] = box.split(' ').map(Number);
    // A centimetre to the drawing unit: a tenth of a millimetre of paper at 1 : 100.
    expect(Number(width) / wide).toBeCloseTo(0.1, 2);
    const words = [...svg.matchAll(/<text x="(\S+)" y="(\S+)" font-size="(\S+)"[^>]*>([^<]*)</g)];
    expect(words.map(([, , , , text]) => text)).toEqual(expect.arrayContaining([...heights, '1 : 100']));
    for (const [, x, y, letters, text] of words) {
      const half = 0.25 * Number(letters) * text.length;
      expect(Number(y) - 0.8 * Number(letters), text).toBeGreaterThanOrEqual(top);
      expect(Number(x) - half, text).toBeGreaterThanOrEqual(left);
      expect(Number(x) + half, text).toBeLessThanOrEqual(left + wide);
    }
  }
});
