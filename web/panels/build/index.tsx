import '../draw/style.css';
import './style.css';
import { goToStage } from '../../state/view.ts';
import { units } from '../../state/yard.ts';
import { ChoiceBox } from '../draw/ChoiceBox.tsx';
import { buildables, builtPlan, changeFrame, chosen, pick, sheet } from './chosen.ts';
import { curesOf } from './cures.ts';
import { FrameFields } from './FrameFields.tsx';
import { Sheet } from './Sheet.tsx';

/** The card of the fifth stage: from a chosen canopy or screen to a sheet to build from. */
export function BuildCard() {
  const current = chosen.value;
  const result = sheet.value;
  if (!current || !result) {
    return (
      <div class="build-card">
        <p>Nothing to build yet: there is no roof and no screen on the plan. The cheapest shade may be to move a pot.</p>
        <div class="editor-buttons">
          <button type="button" class="main" onClick={() => goToStage('try')}>Try a canopy</button>
          <button type="button" onClick={() => goToStage('draw')}>Draw one by hand</button>
        </div>
      </div>
    );
  }
  return (
    <div class="build-card">
      <div class="screen-only">
        <ChoiceBox label="To build" value={current.thing.id} choices={Object.fromEntries(buildables.value.map(({ thing, title }) => [thing.id, title]))} onChange={(id) => id !== undefined && pick(id)} />
        <FrameFields />
      </div>
      {result.ok ? <Sheet key={current.thing.id} sheet={result.sheet} /> : <CannotBuild />}
    </div>
  );
}

function CannotBuild() {
  const result = sheet.value;
  const thing = chosen.value?.thing;
  if (!thing || !result || result.ok) return null;
  return (
    <div class="cannot-build" role="alert">
      <p><strong>It cannot be built like that.</strong></p>
      {result.problems.map(({ message }) => <p key={message}>{message}</p>)}
      <div class="editor-buttons">
        {curesOf(thing, builtPlan.value, units.value).map(({ label, frame }) => <button key={label} type="button" onClick={() => changeFrame(frame)}>{label}</button>)}
      </div>
    </div>
  );
}
