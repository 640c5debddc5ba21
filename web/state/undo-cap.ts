import { withoutPictures } from './storage/pictures.ts';
import type { Step } from './yard.ts';

/** How far undo reaches back: as many steps as this, and no more than so many letters of plans together. */
export const UNDO_STEPS = 200;
export const UNDO_LETTERS = 8e6;

/** Letters of a step's plan in a file, but for its pictures: those are kept once. */
const LETTERS = new WeakMap<Step, number>();

function lettersOf(step: Step): number {
  let letters = LETTERS.get(step);
  if (letters === undefined)
    LETTERS.set(step, (letters = JSON.stringify(withoutPictures(step.plan, new Map())).length));
  return letters;
}

/**
 * The newest steps that undo may keep; the oldest of them stands for all before it and is not undone. The newest and
 * the one before it are kept whatever their size.
 */
export function withinUndo(steps: readonly Step[]): readonly Step[] {
  let letters = 0;
  let from = steps.length;
  while (from > 0 && steps.length - from <= UNDO_STEPS) {
    letters += lettersOf(steps[from - 1]);
    if (letters > UNDO_LETTERS && steps.length - from >= 2) break;
    from--;
  }
  return from === 0 ? steps : steps.slice(from);
}
