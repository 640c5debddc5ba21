import '../parts/feature/style.css';
import '../parts/paper/pages.css';
import './style.css';
import { useEffect } from 'preact/hooks';
import type { SheetResult } from '../../../engine/index.ts';
import { goToStage, shownOptions } from '../../state/view.ts';
import { units } from '../../state/yard.ts';
import { StageAnswer } from '../parts/answer/StageAnswer.tsx';
import { ChoiceBox } from '../parts/boxes/ChoiceBox.tsx';
import { CautionsOnPaper, openStops } from './Cautions.tsx';
import { buildables, builtPlan, chooseFrame, chosen, pick, sheet, unknowns } from './chosen.ts';
import { curesOf } from './cures.ts';
import { layFrameMarks } from './frame-marks.ts';
import { FrameFields } from './FrameFields.tsx';
import { page, Sheet } from './Sheet.tsx';

/** The card of the fifth stage: from a chosen canopy or screen to a sheet to build from. */
export function BuildCard() {
  const current = chosen.value;
  const result = sheet.value;
  const optionId = current?.optionId ?? null;
  useEffect(layFrameMarks, []);
  useEffect(() => {
    // What is to be built stands on the drawing, also when only an option adds it; in the other stages only what
    // somebody has opened there.
    const before = shownOptions.peek();
    if (optionId === null || before.includes(optionId)) return;
    shownOptions.value = [optionId];
    return () => {
      if (shownOptions.peek()[0] === optionId) shownOptions.value = before;
    };
  }, [optionId]);
  if (!current || !result) {
    return (
      <div class="build-card">
        <StageAnswer
          says="Nothing to build yet: there is no roof and no screen on the plan."
          act={{ text: 'Try a canopy', run: () => goToStage('try') }}
        />
        <p>
          <button type="button" onClick={() => goToStage('draw')}>
            Draw one by hand
          </button>
        </p>
      </div>
    );
  }
  return (
    <div class="build-card">
      <StageAnswer says={headlineOf(result)} act={null} />
      {(page.value === 0 || !result.ok) && <Choices />}
      {result.ok ? <Sheet key={current.thing.id} sheet={result.sheet} /> : <CannotBuild />}
      <CautionsOnPaper sheet={result.ok ? result.sheet : null} />
    </div>
  );
}

/** What is to be built, and how. */
function Choices() {
  return (
    <div class="screen-only">
      <ChoiceBox
        label="To build"
        value={chosen.value?.thing.id}
        choices={Object.fromEntries(buildables.value.map(({ thing, title }) => [thing.id, title]))}
        onChange={(id) => id !== undefined && pick(id)}
      />
      <FrameFields />
    </div>
  );
}

function CannotBuild() {
  const result = sheet.value;
  const thing = chosen.value?.thing;
  if (!thing || !result || result.ok) return null;
  return (
    <div class="cannot-build" role="alert">
      <p>
        <strong>It cannot be built like that.</strong>
      </p>
      {result.problems.map(({ message }) => (
        <p key={message}>{message}</p>
      ))}
      <div class="editor-buttons">
        {curesOf(thing, builtPlan.value, units.value).map(({ label, frame }) => (
          <button key={label} type="button" onClick={() => chooseFrame(frame)}>
            {label}
          </button>
        ))}
      </div>
    </div>
  );
}

/** What it takes, and what is to be done first. */
function headlineOf(result: SheetResult): string {
  if (!result.ok) return 'Take one of the cures, or change the frame.';
  const { cost } = result.sheet;
  const price = cost.total === null ? 'No price is known' : `About ${cost.total.toFixed(0)} ${cost.currency}`;
  if (unknowns.value.includes('ground')) return `${price}, plus anchors: say first what ground it stands on.`;
  if (unknowns.value.length > 0) return `${price}. Say the strongest gust: your building code has a map.`;
  const stops = openStops(result.sheet).length;
  return stops > 0
    ? `${price}. Answer the ${stops === 1 ? 'stop' : `${stops} stops`}, then print and buy.`
    : `${price}. Print the sheet, and buy.`;
}
