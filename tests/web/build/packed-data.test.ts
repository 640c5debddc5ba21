import { readFile } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bare } from '../../../web/build/bare-data.ts';
import { pack } from '../../../web/build/pack.ts';
import { logistic, logit } from '../../../web/common/packing/bit-odds.ts';
import { unpack } from '../../../web/common/packing/unpack.ts';

test('what is packed is unpacked to the letter, whatever it is', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
      const { packed, length } = pack(text);
      expect(unpack(packed, length)).toBe(text);
    }),
    { numRuns: 20, seed: 1, examples: [[''], ['\0'], ['ÿ'.repeat(300)], ['["Córdoba","",3,3788,-477],'.repeat(50)]] },
  );
});

test('the towns come back whole, and are sent in three quarters of what gzip makes of them', async () => {
  const text = bare(await readFile(new URL('../../../engine/survey/place/places.json', import.meta.url), 'utf8'));
  const { packed, length } = pack(text);
  expect(unpack(packed, length)).toBe(text);
  expect(gzipSync(packed).length).toBeLessThan(0.75 * gzipSync(text, { level: 9 }).length);
});

test('no browser rounds the tables of odds another way, if its exp and log are good to eleven places', () => {
  const chances = Array.from({ length: 4095 }, (_, k) => k + 1);
  const fromHalf = (value: number): number => Math.abs(value - Math.floor(value) - 0.5);
  const raw = chances.flatMap((each) => [logit(each), logistic(each - 2048)]);
  expect(Math.min(...raw.map(fromHalf))).toBeGreaterThan(1e-8);
});
