/** Goods that are the same for every frame: screws, ties, what goes into the ground. */

import type { Plan } from '../../plan/types.ts';
import { line, packedLine } from './line.ts';
import type { Aisle } from './line.ts';
import { priceOf } from './prices.ts';
import type { PriceKey } from './prices.ts';
import { concreteBag } from './stock.ts';
import type { CostItem } from './types.ts';

interface Good {
  readonly aisle: Aisle;
  /** Of what is sold otherwise from market to market, by the yard's. */
  readonly name: string | ((plan: Plan) => string);
  readonly unit: string;
  readonly price: PriceKey;
  /** Sold in packs. */
  readonly packed?: true;
}

const GOODS = {
  screws: {
    aisle: 'joints',
    name: 'set screws or eye-bolts, one a socket',
    unit: 'piece',
    price: 'screw',
    packed: true,
  },
  'zinc-paint': { aisle: 'joints', name: 'zinc paint for cut ends, small tin', unit: 'tin', price: 'zincPaint' },
  ties: { aisle: 'cloth', name: 'elastic ties with a ball', unit: 'piece', price: 'tie', packed: true },
  clips: {
    aisle: 'cloth',
    name: 'plastic snap clips for the cloth’s edge',
    unit: 'piece',
    price: 'clip',
    packed: true,
  },
  thread: { aisle: 'cloth', name: 'UV-proof polyester thread, one spool', unit: 'spool', price: 'thread' },
  'hem-rods': {
    aisle: 'cloth',
    name: 'steel rods, 8 mm × 2 m (5/16 in × 6 1/2 ft), for the lower hems',
    unit: 'piece',
    price: 'hemRod',
  },
  concrete: {
    aisle: 'ground',
    name: (plan) => `ready-mixed dry concrete, bags of ${concreteBag(plan).name}`,
    unit: 'bag',
    price: 'concrete',
  },
  'hold-downs': {
    aisle: 'ground',
    name: 'bent anchor bolts, M10 × 200 (3/8 × 8 in), nuts and washers, two a foot',
    unit: 'piece',
    price: 'holdDown',
  },
  'u-bolts': {
    aisle: 'ground',
    name: 'U-bolts, M10 (3/8 in), for the bottom rail, two a post',
    unit: 'piece',
    price: 'holdDown',
  },
  stakes: {
    aisle: 'ground',
    name: 'rebar stakes, 12 mm × 0.6 m (1/2 in × 2 ft), with caps',
    unit: 'piece',
    price: 'stake',
  },
  augers: { aisle: 'ground', name: 'garden augers, 30 to 40 cm (12 to 16 in)', unit: 'piece', price: 'auger' },
  'water-cans': {
    aisle: 'ground',
    name: 'water cans with a lid, 25 litres (6.6 gallons)',
    unit: 'piece',
    price: 'waterCan',
  },
  'strap-clamps': {
    aisle: 'ground',
    name: 'strap clamps for the tube (hose clamps will do), one a strap',
    unit: 'piece',
    price: 'strapClamp',
  },
  straps: { aisle: 'ground', name: 'straps with ratchet, one a post or stay', unit: 'piece', price: 'strap' },
} as const satisfies Readonly<Record<string, Good>>;

export type GoodsId = keyof typeof GOODS;

/** The line of one sort of goods; none where the frame takes none. */
export function goodsLines(plan: Plan, id: GoodsId, need: number): CostItem[] {
  if (need <= 0) return [];
  const { aisle, name: called, unit, price, packed }: Good = GOODS[id];
  const name = typeof called === 'string' ? called : called(plan);
  const of = packed ? packedLine : line;
  return [of({ id, aisle, name, unit }, need, priceOf(plan, price), { of: 'other' })];
}
