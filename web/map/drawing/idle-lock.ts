import { onEdit, undo } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';

/** A phone that nobody has drawn on for so long is likely in a hand that does something else. */
const LOCK_AFTER_MS = 120_000;

let lastChangeMs = performance.now();
onEdit(unlock);

/** Whether a drag by touch must not move things: two minutes have passed without a change. */
export function isLocked(): boolean {
  return performance.now() - lastChangeMs > LOCK_AFTER_MS;
}

/** Says why a drag moved the paper instead of the thing, and how to go on. */
export function sayLocked(): void {
  say('Locked, after two minutes without a change, so that a slip of the thumb moves nothing.', 'warning', {
    label: 'Unlock',
    run: unlock,
  });
}

/** After a drag by touch, which may have been a slip. @param what as undo names it: "Move wall" */
export function offerUndo(what: string): void {
  say(`${what}: done.`, 'done', { label: 'Undo', run: undo });
}

function unlock(): void {
  lastChangeMs = performance.now();
}
