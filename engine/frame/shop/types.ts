/** What is bought: the cloth as it is cut and tied, and the list with its prices. */

import type { ClothForm, ClothPlace, JointKind } from '../layout/types.ts';

export interface ClothPiece {
  readonly kind: ClothForm;
  readonly where: ClothPlace;
  /** As it hangs, along × across. [m] */
  readonly finished: readonly [number, number];
  /** As cut from the roll, hems and laps included. [m] */
  readonly cut: readonly [number, number];
  readonly density: number;
  readonly buy: 'ready-made' | 'from the roll';
  /** Width of the roll or panel. [m] */
  readonly rollWidth: number;
  readonly strips: number;
  readonly seams: number;
  /** Length to buy off the roll. [m] */
  readonly rollLength: number;
  readonly ties: number;
  /** From tie to tie on the frame, along and across. [m] */
  readonly tieSpacing: readonly [number, number];
  readonly direction: string;
  /** Ids of the posts that it hangs between; `null` for a roof. */
  readonly between: readonly [string, string] | null;
}

export interface FrostCloth {
  /** One sheet over the roof and down to the ground, all round or on the sides where no wall is. [m] */
  readonly cut: readonly [number, number];
  readonly weights: number;
  readonly sentence: string;
}

export interface ClothPlan {
  readonly pieces: readonly ClothPiece[];
  readonly area: number;
  /** Gap between cloth and tube on each side, filled by the ties. [m] */
  readonly gap: number;
  readonly tieSpacing: number;
  /** Inward pull of a taut cloth on its rails, and at which gust. [N/m], [m/s] */
  readonly pull: { readonly perMetre: number; readonly sag: number; readonly gust: number };
  readonly notes: readonly string[];
  readonly frost: FrostCloth | null;
}

/** A line of the shopping list, with what it is a line of. */
export type CostItem = CostLine & Bought;

export type Bought =
  /** `tube`: its id in the stock list; `length`: as sold. [m] */
  | { readonly of: 'tube'; readonly tube: string; readonly length: number }
  | { readonly of: 'joint'; readonly joint: JointKind; readonly adjustable: boolean }
  /** `panel`: area of a ready-made one, by which its price is remembered; `null` for cloth off the roll. [m²] */
  | { readonly of: 'cloth'; readonly panel: number | null }
  | { readonly of: 'other' };

export interface CostLine {
  readonly id: string;
  readonly aisle: string;
  readonly name: string;
  /** What the frame takes, and what is bought: whole packs. Cloth in m². */
  readonly need: number;
  readonly count: number;
  readonly unit: string;
  /** Pieces in a pack, 1 where sold singly. */
  readonly pack: number;
  readonly price: number | null;
  readonly amount: number | null;
  readonly priceFrom: 'yours' | 'example' | 'none';
  /**
   * Key of the plan's `stock.prices` that sets it; `null` where the stock list itself holds the price (tubes, own
   * cloth).
   */
  readonly priceKey: string | null;
}

export interface Cost {
  readonly currency: string;
  /** Sum of the items that have a price; `null` when none has. */
  readonly total: number | null;
  readonly items: readonly CostItem[];
  /** Names of the items without a price. */
  readonly missing: readonly string[];
  readonly note: string;
}
