import { stageNotes } from '../../state/next.ts';
import { STAGES, aside, goToStage, stage } from '../../state/view.ts';
import type { Stage } from '../../state/view.ts';
import { STAGE_NAMES } from '../stage-names.ts';
import './style.css';

/** Marks of our own, one stroke each, 24 × 24. */
const MARKS: Readonly<Record<Stage, string>> = {
  draw: 'M4 19V6h11M4 19h15v-8M15 6l5-2-2 5',
  heat: 'M4 18h16M7 18a5 5 0 0 1 10 0M12 4v4M5 8l2.5 2.5M19 8l-2.5 2.5',
  place: 'M7 13h10l-1.5 7h-7zM12 13V6M12 8c-3 0-4-2-4-4 3 0 4 2 4 4zm0 2c3 0 4-2 4-4-3 0-4 2-4 4z',
  try: 'M3 9l9-4 9 4-9 3zM5 10v10M19 10v10M12 12v8',
  build: 'M4 20L16 8M14 4l6 6-3 2-5-5zM4 7h6M7 4v6',
  year: 'M4 12a8 8 0 1 1 3 6M4 20v-4h4M12 8v4l3 2',
};

/** The six stages, with how each stands. */
export function StageTabs() {
  return (
    <nav class="stage-tabs" aria-label="Stages">
      {STAGES.map((one) => (
        <button
          key={one}
          type="button"
          class="stage-tab"
          aria-current={stage.value === one && aside.value === null ? 'step' : undefined}
          onClick={() => goToStage(one)}
        >
          <svg viewBox="0 0 24 24" aria-hidden="true">
            <path d={MARKS[one]} />
          </svg>
          <span class="stage-tab-full">{STAGE_NAMES[one].full}</span>
          <span class="stage-tab-short" aria-hidden="true">
            {STAGE_NAMES[one].short}
          </span>
          <span class="stage-tab-note">{stageNotes.value[one]}</span>
        </button>
      ))}
    </nav>
  );
}
