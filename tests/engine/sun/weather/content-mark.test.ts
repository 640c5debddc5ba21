import { expect, test } from 'vitest';
import { contentMark } from '../../../../engine/sun/weather/content-mark.ts';

test('the mark of a content is its FNV-1a hash', () => {
  // RFC 9923's test vectors for 32 bits, from memory: the empty string, "a" and "foobar".
  const marks = ['', 'a', 'foobar'].map((text) => contentMark(new TextEncoder().encode(text)));
  expect(marks).toEqual(['811c9dc5', 'e40c292c', 'bf9cf968']);
});
