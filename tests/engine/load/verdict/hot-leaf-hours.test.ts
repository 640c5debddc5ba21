import { expect, test } from 'vitest';
import { plantLoadsOf } from '../../../../engine/load/load-of.ts';
import { hotLeafHours } from '../../../../engine/load/verdict/hot-leaf-hours.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { valueOf } from '../../../parts/outcome.ts';

const PLAN = demoPlan('courtyard');
const hoursOver = (month: number, id = 'lemon'): number[] =>
  valueOf(hotLeafHours(PLAN, id))
    .find((one) => one.month === month)
    ?.over.flatMap((hot, hour) => (hot ? [hour] : [])) ?? [];

test('in the hottest month the hours are those of the verdict, whose worst place is the top', () => {
  const lemon = valueOf(plantLoadsOf(PLAN, { period: { kind: 'heatwave' } })).find(({ id }) => id === 'lemon');
  expect(lemon?.from).toBe('top');
  const july = hoursOver(7);
  expect(july[0]).toBe(Number(lemon?.when?.from.slice(0, 2)));
  expect(july.at(-1)).toBe(Number(lemon?.when?.to.slice(0, 2)));
  expect(july).toEqual(july.map((_, k) => july[0] + k));
});

test('a cooler month has fewer of them; a bed, and a plant nobody named, none that anybody could say', () => {
  expect(hoursOver(9).length).toBeLessThan(hoursOver(7).length);
  expect(valueOf(hotLeafHours(PLAN, 'geraniums'))).toEqual([]);
  expect(valueOf(hotLeafHours(PLAN, 'house'))).toEqual([]);
});
