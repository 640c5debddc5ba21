import { expect, test } from 'vitest';
import { eavesOf, lieOf, monthOf, opennessOf, potOf, riseOf, shadesOf } from '../../../engine/plan/defaults.ts';
import type { Building, Canopy, ClimateMonth, Hedge, Plant } from '../../../engine/plan/types.ts';

const roof: Canopy = { kind: 'canopy', id: 'roof', center: [0, 0], height: 2.4, length: 3, width: 2, density: 0.5 };
const house: Building = { kind: 'building', id: 'house', outline: [], height: 4 };
const lemon: Plant = { kind: 'plant', id: 'lemon', at: [1, 2], height: 1.7, spread: 1.1 };
const hedge: Hedge = { kind: 'hedge', id: 'hedge', path: [], height: 1.5, thickness: 0.6 };
const july: ClimateMonth = { month: 7, high: 36, low: 19 };

test('a number that was left out does not compile where it is read past its default', () => {
  // Each line is a planted fault: the compiler, which reads this file too, refuses a line that it finds no fault in.
  // @ts-expect-error: rise
  const higher: number = roof.rise ?? 0;
  // @ts-expect-error: eaves
  const past: boolean = (house.eaves ?? 0) > 0;
  // @ts-expect-error: pot
  const wide: number = lemon.pot?.width ?? 0.4;
  // @ts-expect-error: wind
  const { wind = 2 }: { wind?: number } = july;
  // @ts-expect-error: what passes through a hedge
  const share: number = 1 - hedge.openness;
  expect([higher, past, wide, wind, share]).toEqual([0, false, 0.4, 2, Number.NaN]);
});

test('what stands for it is read at one place, and what was said wins', () => {
  expect([riseOf(roof), riseOf({ ...roof, rise: -0.3 })]).toEqual([0, -0.3]);
  expect([eavesOf(house), eavesOf({ ...house, eaves: 0.6 })]).toEqual([0, 0.6]);
  expect(potOf({ ...lemon, pot: { width: 0.7 } })).toEqual({ width: 0.7, height: 0.35 });
  expect([opennessOf(hedge), opennessOf(lemon), opennessOf({ ...hedge, openness: 0 })]).toEqual([0.05, 0.15, 0]);
  expect([shadesOf(lemon), shadesOf({ ...lemon, shades: false })]).toEqual([true, false]);
  expect(monthOf({ ...july, wind: 0 })).toEqual({ humidity: 40, wind: 0, sunshine: 1, spread: 3.5 });
  expect(lieOf({ opacity: 0 })).toEqual({ turn: 0, opacity: 0 });
});
