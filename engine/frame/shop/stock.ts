/**
 * What the shop sells: the plan's own list, else these tubes and cloth widths. All tube is taken as steel. Conduit:
 * outside diameter and wall of electrical metallic tubing (ANSI C80.3, UL 797) as listed by the Steel Tube Institute;
 * the trade size is not the outside diameter. Scaffold tube EN 39 type 3; the rest are common sizes (from memory).
 */

import type { Plan, StockCloth, StockTube } from '../../plan/types.ts';
import { shownName } from '../../plan/words/shown-name.ts';
import { currencyOf, exampleIn } from './prices.ts';

/** Lost at a cut by the saw most people own. [m] A rolling tube cutter loses nothing. */
const DEFAULT_KERF = 0.002;
const TEN_FEET = 3.048;

/**
 * Where conduit and cloth in feet are the usual goods, and where metric ones are. Never by the units shown: they change
 * no frame.
 */
type Market = 'american' | 'metric';

/** id, usual in which market, name, outside mm, wall mm, length m, USD, EUR */
type TubeRow = readonly [string, Market | 'both', string, number, number, number, number | null, number | null];
const TUBES: readonly TubeRow[] = [
  ['emt-1-2', 'american', 'conduit, trade size 1/2 in', 17.93, 1.07, TEN_FEET, 6, null],
  ['emt-3-4', 'american', 'conduit, trade size 3/4 in', 23.42, 1.24, TEN_FEET, 10, null],
  ['emt-1', 'american', 'conduit, trade size 1 in', 29.54, 1.45, TEN_FEET, 16, null],
  ['emt-1-1-4', 'american', 'conduit, trade size 1-1/4 in', 38.35, 1.65, TEN_FEET, 25, null],
  ['emt-1-1-2', 'american', 'conduit, trade size 1-1/2 in', 44.2, 1.65, TEN_FEET, 32, null],
  ['emt-2', 'american', 'conduit, trade size 2 in', 55.8, 1.65, TEN_FEET, 42, null],
  ['fence-1-3-8', 'american', 'fence rail, 1-3/8 in', 34.9, 1.4, 3.2004, 20, null],
  ['tube-25', 'metric', 'light galvanised tube, 25 mm', 25, 1.5, 3, 10, 9],
  ['tube-25-6', 'metric', 'light galvanised tube, 25 mm', 25, 1.5, 6, 20, 18],
  ['tube-32', 'metric', 'light galvanised tube, 32 mm', 32, 1.5, 3, 13, 12],
  ['tube-32-6', 'metric', 'light galvanised tube, 32 mm', 32, 1.5, 6, 26, 24],
  ['tube-38', 'metric', 'light galvanised tube, 38 mm', 38, 1.5, 3, 16, 15],
  ['tube-38-6', 'metric', 'light galvanised tube, 38 mm', 38, 1.5, 6, 32, 30],
  ['steel-42', 'metric', 'galvanised tube, 42.4 mm', 42.4, 2.6, 3, 40, 30],
  ['steel-42-6', 'metric', 'galvanised tube, 42.4 mm', 42.4, 2.6, 6, 80, 60],
  ['scaffold-48', 'both', 'scaffold tube, 48.3 mm', 48.3, 3.2, 3, 40, 33],
  ['scaffold-48-4', 'both', 'scaffold tube, 48.3 mm', 48.3, 3.2, 4, 53, 44],
  ['scaffold-48-6', 'both', 'scaffold tube, 48.3 mm', 48.3, 3.2, 6, 80, 66],
];

/** The ids of the tubes that stand in for a shop's list. */
export const TUBE_IDS: readonly string[] = TUBES.map(([id]) => id);

/** Widths of cloth sold off the roll. [m] */
const ROLL_WIDTHS: Readonly<Record<Market, readonly number[]>> = {
  metric: [2, 3, 4, 6],
  american: [1.8288, 2.4384, 3.048, 3.6576, 4.8768, 6.096],
};

const DEFAULT_TUBE: Readonly<Record<Market, string>> = { metric: 'tube-32', american: 'emt-1' };
/** Two rows are the same tube in two lengths when diameter and wall agree this well. [m] */
const SAME_TUBE = 5e-5;

/** Every tube on sale; the price of a usual one is the plan's by the tube's id, else an example. */
export function stockTubes(plan: Plan): readonly StockTube[] {
  return plan.stock?.tubes !== undefined && plan.stock.tubes.length > 0 ? plan.stock.tubes : defaultTubes(plan);
}

/**
 * Of those, the ones that shops of the place usually have: the plan's own, or conduit and fence rail where those are
 * the usual goods and metric tube elsewhere.
 */
export function usualTubes(plan: Plan): readonly StockTube[] {
  const all = stockTubes(plan);
  const market = marketOf(plan);
  return all === plan.stock?.tubes ? all : defaultTubes(plan, (usual) => usual === 'both' || usual === market);
}

/** Cloth on sale; a row without a length, or 20 m and longer, is a roll. */
export function stockCloth(plan: Plan): readonly StockCloth[] {
  const own = plan.stock?.cloth ?? [];
  return own.length > 0 ? own : ROLL_WIDTHS[marketOf(plan)].map((width) => ({ width }));
}

/** To what a shop measures off a roll: 10 cm, or half a foot. Common practice, no source. [m] */
const ROLL_STEPS: Readonly<Record<Market, number>> = { metric: 0.1, american: TEN_FEET / 20 };

/** [m] */
export function rollStep(plan: Plan): number {
  return ROLL_STEPS[marketOf(plan)];
}

/** Dry concrete as it is sold (from memory). */
const BAGS: Readonly<Record<Market, { readonly mass: number; readonly name: string }>> = {
  metric: { mass: 25, name: '25 kg (55 lb)' },
  american: { mass: 27.2155, name: '60 lb (27 kg)' },
};

/** A bag of dry concrete: what is in it [kg], and what is written on it. */
export function concreteBag(plan: Plan): (typeof BAGS)[Market] {
  return BAGS[marketOf(plan)];
}

/** [m] */
export function kerfOf(plan: Plan): number {
  return plan.stock?.kerf ?? DEFAULT_KERF;
}

/** A tube and every length in which it is sold, shortest first. `own`: out of the plan's own list. */
export interface TubeChoice {
  readonly tube: StockTube;
  readonly lengths: readonly StockTube[];
  readonly own: boolean;
}

/** The tube of an id; `null` when nobody sells it. It may come from the usual goods too. */
export function tubeChoice(plan: Plan, id: string): TubeChoice | null {
  const lists = [stockTubes(plan), defaultTubes(plan)];
  const list = lists.find((rows) => rows.some((row) => row.id === id)) ?? [];
  const tube = list.find((row) => row.id === id);
  return tube === undefined ? null : choiceIn(plan, list, tube);
}

/** Every tube that a frame for which none is named may be built of: the one most often used first. */
export function tubeChoices(plan: Plan): readonly TubeChoice[] {
  let choices = choicesKnown.get(plan);
  if (choices === undefined) choicesKnown.set(plan, (choices = choicesOf(plan)));
  return choices;
}

/** Whoever prices many frames asks for the same over and over; a plan never changes. */
const choicesKnown = new WeakMap<Plan, readonly TubeChoice[]>();

function choicesOf(plan: Plan): TubeChoice[] {
  const list = usualTubes(plan);
  const usual = DEFAULT_TUBE[marketOf(plan)];
  const firsts = list.filter((tube, index) => list.findIndex((other) => isSame(tube, other)) === index);
  return firsts
    .toSorted((a, b) => Number(b.id === usual) - Number(a.id === usual))
    .map((tube) => choiceIn(plan, list, tube));
}

function choiceIn(plan: Plan, list: readonly StockTube[], tube: StockTube): TubeChoice {
  const lengths = list.filter((row) => isSame(row, tube)).toSorted((a, b) => a.length - b.length);
  return { tube: asShown(tube), lengths: lengths.map(asShown), own: list === plan.stock?.tubes };
}

/** A tube as it is told of: its name may be a person's own. */
function asShown(tube: StockTube): StockTube {
  return { ...tube, name: shownName(tube.name) };
}

function isSame(a: StockTube, b: StockTube): boolean {
  return Math.abs(a.outside - b.outside) < SAME_TUBE && Math.abs(a.wall - b.wall) < SAME_TUBE;
}

function marketOf(plan: Plan): Market {
  return /^(America|US|Canada)\/|^Pacific\/Honolulu$/.test(plan.site.timeZone) ? 'american' : 'metric';
}

function defaultTubes(plan: Plan, sold: (usual: TubeRow[1]) => boolean = () => true): StockTube[] {
  const currency = currencyOf(plan);
  return TUBES.filter(([, usual]) => sold(usual)).map(([id, , name, outsideMm, wallMm, length, usd, eur]) => {
    const price = plan.stock?.prices?.[id] ?? exampleIn(currency, [usd, eur]);
    return { id, name, outside: outsideMm / 1000, wall: wallMm / 1000, length, ...(price === null ? {} : { price }) };
  });
}
