import './style.css';
import { tool } from '../../state/view.ts';
import { takeUp } from '../drawing.ts';
import { TOOLS } from '../tools.ts';
import { ToolIcon } from '../ToolIcon.tsx';

/** The drawing tools, words under icons, each with the letter that takes it up. The hand that chooses comes first. */
export function ToolRow() {
  return (
    <div class="tool-row" role="toolbar" aria-label="Drawing tools">
      <button type="button" class="tool" aria-pressed={tool.value === null} aria-keyshortcuts="Escape" onClick={() => (tool.value = null)}>
        <ToolIcon id="choose" />
        <span>Choose</span>
        <kbd>Esc</kbd>
      </button>
      {TOOLS.map(({ id, button, letter }) => (
        <button key={id} type="button" class="tool" aria-pressed={tool.value === id} aria-keyshortcuts={letter} onClick={(event) => takeUp(id, event.detail === 0)}>
          <ToolIcon id={id} />
          <span>{button}</span>
          <kbd>{letter}</kbd>
        </button>
      ))}
    </div>
  );
}
