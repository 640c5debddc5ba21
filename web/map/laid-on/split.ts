import { signal } from '@preact/signals';

/** A bar across the drawing with one picture to its left and another to its right; who lays the pictures sets it. */
export interface Split {
  /** Where it stands, and between which it may: across the plan. [m] */
  readonly x: number;
  readonly from: number;
  readonly to: number;
  /** What is shown on either side, in a word. */
  readonly left: string;
  readonly right: string;
  move(x: number): void;
}

/** `null`: the drawing is not split. */
export const split = signal<Split | null>(null);

/** One press of an arrow key. [m] */
export const SPLIT_STEP = 0.25;

/** Moves the bar as far as it may go. */
export function moveSplit({ from, to, move }: Split, x: number): void {
  move(Math.round(Math.min(to, Math.max(from, x)) * 100) / 100);
}
