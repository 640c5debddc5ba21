import { shownName } from '../../../engine/index.ts';
import { commitEdit, redo, redoLabel, undo, undoLabel } from '../../state/edit.ts';
import { saveState } from '../../state/saving.ts';
import { aside, stage } from '../../state/view.ts';
import type { Aside } from '../../state/view.ts';
import { openYard, plan, units } from '../../state/yard.ts';
import { STAGE_NAMES } from '../stage-names.ts';
import './style.css';

/** The yard's name and state, and what concerns all stages. */
export function TopBar() {
  const otherUnits = units.value === 'metric' ? 'imperial' : 'metric';
  return (
    <header class="top-bar">
      <button
        type="button"
        class="top-bar-yard"
        aria-expanded={aside.value === 'files'}
        onClick={() => toggle('files')}
      >
        <span class="unseen">Yard and files: </span>
        <span class="top-bar-stage">{STAGE_NAMES[stage.value].full}</span>
        <bdi class="top-bar-name">{shownName(plan.value.name ?? 'Unnamed yard')}</bdi>
      </button>
      <SavedMark />
      <span class="top-bar-gap" />
      <HistoryButton mark="↶" word="Undo" label={undoLabel.value} onPress={undo} />
      <HistoryButton mark="↷" word="Redo" label={redoLabel.value} onPress={redo} />
      <button
        type="button"
        class="top-bar-wide"
        onClick={() =>
          commitEdit(otherUnits === 'metric' ? 'Show metres' : 'Show feet and inches', {
            ...plan.value,
            units: otherUnits,
          })
        }
      >
        <span class="unseen">Units: </span>
        {units.value === 'metric' ? 'm · °C' : 'ft · °F'}
        <span class="unseen">, change to {otherUnits}</span>
      </button>
      <button type="button" class="top-bar-wide" onClick={() => print()}>
        Print
      </button>
      <button type="button" aria-expanded={aside.value === 'settings'} onClick={() => toggle('settings')}>
        Settings
      </button>
    </header>
  );
}

function toggle(which: Aside): void {
  aside.value = aside.value === which ? null : which;
}

interface HistoryButtonProps {
  readonly mark: string;
  readonly word: string;
  /** The step it would take, `null` when there is none. */
  readonly label: string | null;
  readonly onPress: () => void;
}

function HistoryButton({ mark, word, label, onPress }: HistoryButtonProps) {
  const name = label === null ? word : `${word}: ${label}`;
  return (
    // Not disabled, for that takes the focus from who goes back step by step.
    <button
      type="button"
      class="top-bar-history"
      aria-label={name}
      title={name}
      aria-disabled={label === null || openYard.value.readOnly !== null}
      onClick={onPress}
    >
      <span aria-hidden="true">{mark}</span>
    </button>
  );
}

function SavedMark() {
  const state = saveState.value;
  if (openYard.value.readOnly !== null) return <span class="saved-mark saved-mark-no">look only</span>;
  if (state.kind === 'saved') return <span class="saved-mark">saved</span>;
  return state.kind === 'saving' ? (
    <span class="saved-mark">saving…</span>
  ) : (
    <span class="saved-mark saved-mark-no">not saved</span>
  );
}
