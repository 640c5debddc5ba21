import { expect, test } from 'vitest';
import { KeptByContent } from '../../../engine/plan/kept.ts';

test('what is equal is worked out once, whoever made it, and what differs anew', () => {
  const kept = new KeptByContent<number>(2);
  let made = 0;
  const ask = (content: object) => kept.of(content, () => ++made);
  expect([ask({ a: [1, 2] }), ask({ a: [1, 2] }), ask({ a: [2, 1] }), ask({ a: [1, 2] })]).toEqual([1, 1, 2, 1]);
});

test('only the last few are kept, the longest unused first to go', () => {
  const kept = new KeptByContent<number>(2);
  let made = 0;
  const ask = (content: string) => kept.of(content, () => ++made);
  expect(['a', 'b', 'a', 'c', 'a', 'b'].map(ask)).toEqual([1, 2, 1, 3, 1, 4]);
});
