import { expect, test } from 'vitest';
import { review } from '../../../../engine/output/verbs/review.ts';
import { jsonOf, runLine } from '../../../command-line.ts';

test.each(review.examples)('%s', async (line) => {
  const { code, out } = await runLine(line);
  expect(code).toBe(0);
  expect(out).not.toMatch(/undefined|NaN|\[object/);
  if (!line.includes('--json')) {
    expect(out.replaceAll(/\s+/g, ' ')).toContain('One plant, one year proves little.');
    expect(out).toMatch(/^One summer’s damage is noted: score /);
    expect(out).toContain('Heat: work before 11');
    expect(out.split('\n').every((text) => text.length <= 80)).toBe(true);
  }
});

test('what the demo’s journal notes is there in words', async () => {
  expect(await jsonOf('review demo')).toMatchObject({
    readings: [],
    corrections: [],
    damage: [{ plant: 'lemon', score: 3, words: 'up to half' }],
  });
});
