import { afterEach, beforeEach, expect, test } from 'vitest';
import { demoPlan } from '../../../../engine/index.ts';
import { timesIn } from '../../../../web/panels/parts/times.ts';
import { settings } from '../../../../web/state/settings.ts';
import { history } from '../../../../web/state/yard.ts';

const before = settings.value;
const clockOf = (clock: '12' | '24'): void => void (settings.value = { ...before, clock });

beforeEach(() => void (history.value = { steps: [{ label: 'Demo yard', plan: demoPlan('courtyard') }], cursor: 0 }));
afterEach(() => void (settings.value = before));

test('on a machine of 24 hours a sentence stays as the engine wrote it', () => {
  clockOf('24');
  expect(timesIn('Sun comes in under it from 17:40 to 20:05.')).toBe('Sun comes in under it from 17:40 to 20:05.');
});

test('on a machine of 12 hours every time is told so, noon and midnight too, and no number that is none', () => {
  clockOf('12');
  expect(timesIn('From 17:40 until 20:05 the sun comes in.')).toBe('From 5:40 pm until 8:05 pm the sun comes in.');
  expect(['00:10', '12:00', '09:05'].map(timesIn)).toEqual(['12:10 am', '12:00 pm', '9:05 am']);
  for (const none of ['at 1 : 50, 24:30 and 07:65', '11:30 to 1:10 pm']) expect(timesIn(none)).toBe(none);
});
