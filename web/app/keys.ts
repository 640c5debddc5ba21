import { redo, undo } from '../state/edit.ts';
import { saveFile } from '../state/files.ts';
import { readOut } from '../state/speech.ts';
import { STAGES, goToStage } from '../state/view.ts';
import { STAGE_NAMES } from './stage-names.ts';

/** Keys that work everywhere; all with a modifier, so that no letter typed by chance does anything. */
export const KEYS = [
  { keys: 'Ctrl Z', does: 'undo' },
  { keys: 'Ctrl Shift Z, Ctrl Y', does: 'redo' },
  { keys: 'Ctrl S', does: 'save a file copy' },
  { keys: 'Alt 1 … Alt 6', does: 'go to a stage' },
] as const;

/** While someone types, undo is the text field's own. */
function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable ||
      target.matches('textarea, select, input:not([type=range], [type=checkbox], [type=radio])'))
  );
}

/** Said too, for the focus may be elsewhere. */
function openStage(stage: (typeof STAGES)[number]): void {
  goToStage(stage);
  readOut(STAGE_NAMES[stage].full);
}

export function listenForKeys(): void {
  addEventListener('keydown', (event) => {
    const command = event.ctrlKey || event.metaKey;
    const key = event.key.toLowerCase();
    if (command && key === 's') saveFile();
    else if (event.altKey && !command && /^Digit[1-6]$/.test(event.code))
      openStage(STAGES[Number(event.code.slice(5)) - 1]);
    else if (command && !isTyping(event.target) && key === 'z') (event.shiftKey ? redo : undo)();
    else if (command && !isTyping(event.target) && key === 'y') redo();
    else return;
    event.preventDefault();
  });
}
