import './style.css';
import { useState } from 'preact/hooks';
import { tool } from '../../../state/view.ts';
import { takeUp } from '../../drawing/drawing.ts';
import { TOOLS } from '../../drawing/tools.ts';
import { ToolIcon } from '../ToolIcon.tsx';

/** The drawing tools, words under icons, each with the letter that takes it up. The hand that chooses comes first.
 *  On a phone they fold behind one button, so that none has to be dragged into sight. */
export function ToolRow() {
  const [open, setOpen] = useState(false);
  const inHand = tool.value;
  return (
    <div class={open ? 'tool-row open' : 'tool-row'} role="group" aria-label="Drawing tools">
      <button
        type="button"
        class="tool"
        aria-pressed={inHand === null}
        aria-keyshortcuts="Escape"
        onClick={() => (tool.value = null)}
      >
        <ToolIcon id="choose" />
        <span>Choose</span>
        <kbd>Esc</kbd>
      </button>
      <button type="button" class="tool more-tools" aria-expanded={open} onClick={() => setOpen(!open)}>
        <ToolIcon id="add" />
        <span>Add</span>
      </button>
      {TOOLS.map(({ id, button, letter }) => (
        <button
          key={id}
          type="button"
          class={id === inHand ? 'tool' : 'tool folds'}
          aria-pressed={inHand === id}
          aria-keyshortcuts={letter}
          onClick={(event) => {
            setOpen(false);
            takeUp(id, event.detail === 0);
          }}
        >
          <ToolIcon id={id} />
          <span>{button}</span>
          <kbd>{letter}</kbd>
        </button>
      ))}
    </div>
  );
}
