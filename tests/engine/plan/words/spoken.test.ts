import { describe, expect, test } from 'vitest';
import { lessDamage, spokenClock, spokenCount } from '../../../../engine/plan/words/spoken.ts';

describe('clock times, shares and counts as people say them', () => {
  test('a time is told to the half hour, with noon and midnight by their names', () => {
    expect(['13:30', '20:40', '07:12', '12:10', '23:50', '00:20'].map(spokenClock)).toEqual([
      'half past one',
      'half past eight',
      'seven',
      'noon',
      'midnight',
      'half past midnight',
    ]);
  });

  test('what is spared is told as a part where it is near one, else to the tenth, never finer', () => {
    expect([0.76, 0.65, 0.48, 0.34, 0.43, 0.12, 0.99].map(lessDamage)).toEqual([
      'three quarters less heat damage',
      'two thirds less heat damage',
      'half the heat damage',
      'a third less heat damage',
      'about 40 % less heat damage',
      'about 10 % less heat damage',
      'next to no heat damage',
    ]);
  });

  test('counts up to twelve are words', () => {
    expect([1, 4, 12, 13].map(spokenCount)).toEqual(['one', 'four', 'twelve', '13']);
  });
});
