import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { saveFile } from '../../state/files.ts';
import { saveState } from '../../state/saving.ts';
import { copyYard, showNewest } from '../../state/shelf.ts';
import { notice, spoken } from '../../state/speech.ts';
import type { Notice } from '../../state/speech.ts';
import { openYard } from '../../state/yard.ts';
import './style.css';

/** What was done is said for so long; a screen reader has it besides. [ms] */
const DONE_STAYS_MS = 8_000;

/** Says at the foot of the drawing what was done or went wrong, with one way on. */
export function Notices() {
  const said = notice.value;
  const { readOnly } = openYard.value;
  const state = saveState.value;
  const box = useRef<HTMLDivElement>(null);
  useLeaving(said, box);
  return (
    <div class="notices" ref={box}>
      {readOnly !== null && (
        <p class="notice notice-problem">
          <span>{readOnly}</span>
          <button type="button" onClick={showNewest}>
            Show the newest
          </button>
          <button type="button" onClick={copyYard}>
            Keep this one as a copy
          </button>
        </p>
      )}
      {readOnly === null && state.kind === 'unsaved' && said?.text !== state.why && (
        <p class="notice notice-problem">
          <span>{state.why}</span>
          <button type="button" onClick={saveFile}>
            Save a file
          </button>
        </p>
      )}
      {said && <Said said={said} />}
    </div>
  );
}

/** Takes away what was said of something done, unless somebody is at it. */
function useLeaving(said: Notice | null, box: RefObject<HTMLDivElement | null>): void {
  useEffect(() => {
    if (said?.kind !== 'done') return;
    const leave = (): void => {
      if (box.current?.matches(':hover, :focus-within')) timer = setTimeout(leave, DONE_STAYS_MS);
      else if (notice.value === said) notice.value = null;
    };
    let timer = setTimeout(leave, DONE_STAYS_MS);
    return () => clearTimeout(timer);
  }, [said]);
}

function Said({ said }: { readonly said: Notice }) {
  return (
    <p class={`notice notice-${said.kind}`}>
      <span>{said.text}</span>
      {said.action && (
        <button
          type="button"
          onClick={() => {
            notice.value = null;
            said.action?.run();
          }}
        >
          {said.action.label}
        </button>
      )}
      <button type="button" class="notice-close" aria-label="Close this message" onClick={() => (notice.value = null)}>
        ×
      </button>
    </p>
  );
}

/** Read by a screen reader, seen by nobody. */
export function LiveRegion() {
  return (
    <p class="unseen" role="status" aria-live="polite">
      {spoken.value}
    </p>
  );
}
