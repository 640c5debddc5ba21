import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import type { Outcome } from '../../../engine/index.ts';
import { followNewest } from '../../../web/state/newest.ts';
import { turn } from '../turn.ts';

/** A question asked, answered when the test says so. */
interface Asked {
  readonly args: number;
  answer(value: string): void;
  reject(): void;
}

function follower() {
  const question = signal<number | null>(null);
  const answered = signal<string | null>(null);
  const asked: Asked[] = [];
  const stop = followNewest(
    question,
    (args) =>
      new Promise<Outcome<string>>((resolve, reject) =>
        asked.push({
          args,
          answer: (value) => resolve({ ok: true, value }),
          reject: () => reject(new DOMException('Ended.', 'AbortError')),
        }),
      ),
    answered,
  );
  return { question, answered, asked, stop };
}

test('while an answer is under way only the newest question waits', async () => {
  const { question, answered, asked } = follower();
  for (const value of [1, 2, 3]) question.value = value;
  asked[0].answer('one');
  await turn();
  expect(asked.map(({ args }) => args)).toEqual([1, 3]);
  asked[1].answer('three');
  await turn();
  expect(answered.value).toBe('three');
});

test('a question that is called off has no answer, and the next one is asked', async () => {
  const { question, answered, asked } = follower();
  question.value = 1;
  asked[0].reject();
  await turn();
  expect(answered.value).toBe(null);
  question.value = 2;
  expect(asked.map(({ args }) => args)).toEqual([1, 2]);
  asked[1].answer('two');
  await turn();
  expect(answered.value).toBe('two');
});

test('an answer that comes after the end is not taken', async () => {
  const { question, answered, asked, stop } = follower();
  question.value = 1;
  stop();
  asked[0].answer('late');
  await turn();
  expect(answered.value).toBe(null);
});
