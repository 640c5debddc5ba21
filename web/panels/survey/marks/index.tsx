import { useSignalEffect } from '@preact/signals';
import './style.css';
import { useEffect } from 'preact/hooks';
import { dateOfMoment } from '../../../../engine/index.ts';
import type { MarkCheck, MarksTogether } from '../../../../engine/index.ts';
import { shortDayWords } from '../../../common/words.ts';
import { calledOf, calledById } from '../../../map/drawing/feature-edits.ts';
import { askForPoint } from '../../../map/laid-on/ask-point.ts';
import { askedPoint, numberedMarks, shadowRings, studyLine } from '../../../map/laid-on/overlays.ts';
import { WhenFields } from '../../parts/boxes/WhenFields.tsx';
import {
  addMark,
  caster,
  casters,
  checked,
  chooseCaster,
  clockTime,
  correct,
  edge,
  marks,
  takeOut,
  when,
} from './marking.ts';

/** More of its own ± off than this, a number is hardly what is wrong. */
const DOUBTFUL = 5;

/** Where the edge of a shadow really lies, marked on the drawing; what of the plan that corrects. */
export function ShadowMarks() {
  useEffect(
    () => () => {
      shadowRings.value = [];
      numberedMarks.value = [];
      studyLine.value = [];
      askedPoint.value = null;
    },
    [],
  );
  useSignalEffect(() => {
    shadowRings.value = edge.value.shown && edge.value.asked ? edge.value.shown.value : [];
  });
  useSignalEffect(() => {
    const found = checked.value.shown?.value.marks ?? [];
    numberedMarks.value = marks.value.map(({ at }, k) => ({
      at,
      label: String(k + 1),
      chosen: k === marks.value.length - 1,
    }));
    const last = found.at(-1);
    studyLine.value = last?.nearest ? [last.mark.at, last.nearest] : [];
  });
  if (casters.value.length === 0) return <p>Nothing on the plan throws a shadow yet. Draw a wall or a tree first.</p>;
  return (
    <>
      <p>
        Go and look where the edge of a shadow lies on level ground, and when. From one mark you learn what does not
        fit; three or more, at different hours, tell north and heights apart.
      </p>
      <p class="asked-field">
        <label for="shadow-of">Shadow of</label>
        <select id="shadow-of" value={caster.value?.id} onChange={(event) => chooseCaster(event.currentTarget.value)}>
          {casters.value.map((each) => (
            <option key={each.id} value={each.id}>
              {calledOf(each)}
            </option>
          ))}
        </select>
      </p>
      <WhenFields value={when.value} onChange={(next) => (when.value = next)} />
      <Predicted />
      <p>
        <button type="button" class="main" disabled={clockTime.value === null} onClick={mark}>
          Mark its edge on the drawing
        </button>
      </p>
      <Marks />
    </>
  );
}

function mark(): void {
  askForPoint('Where the edge of the shadow really lies: tap there, or type it.', (at) => {
    if (caster.value && clockTime.value) addMark({ feature: caster.value.id, at, when: clockTime.value });
  });
}

/** Whether the drawing shows the shadow as the plan has it. */
function Predicted() {
  const { shown, asked, problems } = edge.value;
  if (problems.length > 0)
    return (
      <p class="said problem" role="alert">
        {problems[0].message}
      </p>
    );
  if (!shown || !asked) return null;
  return (
    <p class="quiet">
      {shown.value.length === 0
        ? 'The sun was down then, or it throws no shadow.'
        : 'The drawing shows that shadow as the plan has it.'}
    </p>
  );
}

function Marks() {
  const { shown, problems, working } = checked.value;
  if (marks.value.length === 0) return null;
  const found = shown?.value;
  return (
    <section class="shadow-marks" aria-label="Marks" aria-live="polite" aria-busy={working !== null}>
      {problems.map(({ message }) => (
        <p key={message} class="said problem" role="alert">
          {message}
        </p>
      ))}
      {found?.together && <Together together={found.together} />}
      <ol>
        {marks.value.map((each, k) => (
          <li key={k}>
            <strong>{calledById(each.feature)}</strong>, {shortDayWords(dateOfMoment(each.when))},{' '}
            {`${each.when.slice(11)} `}
            <button type="button" aria-label={`Take mark ${k + 1} out`} onClick={() => takeOut(each)}>
              ×
            </button>
            {found?.marks[k] && <Finding check={found.marks[k]} alone={!found.together} />}
          </li>
        ))}
      </ol>
    </section>
  );
}

function Finding({
  check: { sentence, cures, residual },
  alone,
}: {
  readonly check: MarkCheck;
  readonly alone: boolean;
}) {
  const [likelier, other] = residual === null || Math.abs(residual) <= 5 ? [] : cures;
  return (
    <>
      <p>{sentence}</p>
      {alone && likelier && (
        <p class="paper-buttons">
          <button
            type="button"
            class={likelier.inPm > DOUBTFUL ? undefined : 'main'}
            onClick={() => correct([likelier])}
          >
            Correct: {likelier.words}
          </button>
          {other && (
            <button type="button" onClick={() => correct([other])}>
              Or correct: {other.words}
            </button>
          )}
        </p>
      )}
    </>
  );
}

function Together({ together: { sentence, worth } }: { readonly together: MarksTogether }) {
  return (
    <>
      <p class="found-number">{sentence}</p>
      {worth.length > 0 && (
        <p>
          <button type="button" class="main" onClick={() => correct(worth)}>
            Correct: {worth.map(({ words }) => words).join(' and ')}
          </button>
        </p>
      )}
    </>
  );
}
