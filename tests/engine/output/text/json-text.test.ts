import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { jsonPieces } from '../../../../engine/output/text/json-text.ts';

const written = (value: unknown) => [...jsonPieces(value)].join('');

it('writes every value as the language’s own JSON does', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      expect(JSON.parse(written(value))).toEqual(JSON.parse(JSON.stringify(value)));
      expect(written({ a: value, b: undefined })).toBe(`{"a":${written(value)}}`);
    }),
    { seed: 8259, numRuns: 500 },
  );
  expect(written({ a: [1, 'x', null], b: {}, c: [] })).toBe('{"a":[1,"x",null],"b":{},"c":[]}');
});

it('writes typed arrays and anything else that can be iterated as lists', () => {
  expect(written({ all: Float64Array.of(1.5, NaN, -0), none: new Float64Array(0) })).toBe(
    '{"all":[1.5,null,0],"none":[]}',
  );
  expect(written(new Set([{ a: 1 }, 'b']))).toBe('[{"a":1},"b"]');
  const long = Float64Array.from({ length: 10_000 }, (_, k) => k / 7);
  expect(JSON.parse(written(long))).toEqual([...long]);
});

it('comes in pieces that are never long, and made as they are read', () => {
  let made = 0;
  const items = {
    *[Symbol.iterator]() {
      for (; made < 1_000_000; made++) yield { number: made };
    },
  };
  for (const piece of jsonPieces({ items })) {
    expect(piece.length).toBeLessThan(100_000);
    break;
  }
  expect(made).toBeLessThan(10_000);
});

it('no text in it steers a terminal, and none is changed', () => {
  const text = 'a\u009b31m\u001b[2J\u007f\u2028';
  // oxlint-disable-next-line no-control-regex -- control characters are what is looked for
  expect(written({ text })).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u2028]/);
  expect(JSON.parse(written({ text }))).toEqual({ text });
});
