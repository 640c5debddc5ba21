/** Which piece is cut from which tube. */

/** One tube as bought and what is cut from it: pieces + lost + left = stock. */
export interface CutTube {
  readonly tube: string;
  readonly stock: number;
  readonly pieces: readonly number[];
  /** Turned to chips by the saw. [m] */
  readonly lost: number;
  readonly left: number;
}

export interface CutPlan {
  readonly tubes: readonly CutTube[];
  readonly kerf: number;
  /** What was made smallest. */
  readonly counted: 'tubes' | 'price' | 'length';
  /** Whether no cheaper way of cutting exists; otherwise `bound` is how little `amount` could be at best. */
  readonly proven: boolean;
  readonly bound: number;
  /** Of all tubes, in the unit of `counted`: a number, money, or metres. */
  readonly amount: number;
  readonly savings: readonly CutSaving[];
}

/** A small change that would save tubes, or their price where the shop sells several lengths. */
export interface CutSaving {
  readonly change: string;
  readonly tubes: number;
  /** Of the tubes, or of the whole frame where its size changes; `null` where a price is not known. */
  readonly money: number | null;
}
