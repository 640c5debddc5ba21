/**
 * Example prices, so that a first total can be shown: rough shop prices of 2024 to 2026 without delivery, from memory.
 * Every one gives way to the plan's `stock.prices`, by the same key. Two currencies, never converted into each other; a
 * plan in any other currency starts without prices.
 */

import type { Plan } from '../../plan/types.ts';
import { shownName } from '../../plan/words/shown-name.ts';

export interface Price {
  /** Of `stock.prices`, `null` where the stock list holds the price. */
  readonly key: string | null;
  readonly price: number | null;
  readonly from: 'yours' | 'example' | 'none';
}

type Pair = readonly [usd: number, eur: number];

/** Each for one piece but cloth, which is for a square metre. Tubes carry theirs in the stock list. */
const EXAMPLE_PRICES = {
  corner2: [7, 8],
  corner3: [9, 10],
  corner3Heavy: [12, 17],
  tee3: [12, 12],
  way4: [12, 12],
  way5: [17, 19],
  cross4: [12, 12],
  adjustable: [15, 16],
  clamp: [5, 5],
  wallBracket: [12, 12],
  foot: [6, 6],
  screw: [0.5, 0.5],
  clothRoll: [2, 1.5],
  clothMade: [4, 3.5],
  frostCloth: [0.6, 0.5],
  tie: [0.5, 0.5],
  clip: [0.6, 0.5],
  thread: [8, 7],
  hemRod: [4, 4],
  concrete: [6, 5],
  holdDown: [1.5, 1.5],
  stake: [4, 4],
  auger: [10, 10],
  waterCan: [10, 9],
  strap: [8, 7],
  strapClamp: [2, 2],
  zincPaint: [9, 8],
} as const satisfies Readonly<Record<string, Pair>>;

export type PriceKey = keyof typeof EXAMPLE_PRICES;
export const PRICE_KEYS: readonly string[] = Object.keys(EXAMPLE_PRICES);

/**
 * The currency a plan's prices are in: its own, else euros in Europe and Africa and dollars elsewhere. Never by the
 * units shown.
 */
export function currencyOf(plan: Plan): string {
  const own = plan.stock?.currency;
  return own === undefined ? (/^(Europe|Africa)\//.test(plan.site.timeZone) ? 'EUR' : 'USD') : shownName(own);
}

/** The price of one piece (cloth: of a square metre), the plan's own before the example. */
export function priceOf(plan: Plan, key: PriceKey): Price {
  const own = plan.stock?.prices?.[key];
  if (own !== undefined) return { key, price: own, from: 'yours' };
  const example = exampleIn(currencyOf(plan), EXAMPLE_PRICES[key]);
  return example === null ? { key, price: null, from: 'none' } : { key, price: example, from: 'example' };
}

/** The half of a pair that is in a currency, `null` when neither is. */
export function exampleIn(currency: string, pair: readonly [usd: number | null, eur: number | null]): number | null {
  return currency === 'USD' ? pair[0] : currency === 'EUR' ? pair[1] : null;
}
