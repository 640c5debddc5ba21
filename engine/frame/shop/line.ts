/** One line of the shopping list: what the frame takes, what is bought for it, and what that comes to. */

import { countUp } from '../../plan/numbers/tolerances.ts';
import type { Price } from './prices.ts';
import type { Bought, CostItem, CostLine } from './types.ts';

const PACK = 10;

const AISLES = {
  tube: 'Tube',
  joints: 'Joints and fixings',
  cloth: 'Cloth and ties',
  ground: 'Ground and anchors',
} as const;

export type Aisle = keyof typeof AISLES;

interface Named extends Pick<CostLine, 'id' | 'name' | 'unit'> {
  readonly aisle: Aisle;
}

/** What the frame takes is what is bought. */
export function line(named: Named, count: number, price: Price, bought: Bought): CostItem {
  return priced(named, count, count, 1, price, bought);
}

/** Bought in whole packs; what is over is told as spare. */
export function packedLine(named: Named, need: number, price: Price, bought: Bought): CostItem {
  const packs = countUp(need / PACK);
  return priced(named, need, packs * PACK, PACK, price, bought);
}

function priced(
  { id, aisle, name, unit }: Named,
  need: number,
  count: number,
  pack: number,
  { key, price, from }: Price,
  bought: Bought,
): CostItem {
  return {
    id,
    aisle: AISLES[aisle],
    name,
    need,
    count,
    unit,
    pack,
    price,
    amount: price === null ? null : cents(price * count),
    priceFrom: from,
    priceKey: key,
    ...bought,
  };
}

export function cents(amount: number): number {
  return Math.round(amount * 100) / 100;
}

/** What is bought over need, in words; empty where nothing is: `24 needed, 3 packs of 10, 6 to spare`. */
export function packWords({ need, count, pack }: CostLine): string {
  if (pack === 1) return '';
  const packs = count / pack;
  const over = count > need ? `, ${count - need} to spare` : '';
  return `${need} needed, ${packs} ${packs === 1 ? 'pack' : 'packs'} of ${pack}${over}`;
}
