import '../parts/boxes/asked.css';
import './style.css';
import { useState } from 'preact/hooks';
import { cautionsFor, MS_PER_DAY } from '../../../engine/index.ts';
import type { CivilDate, FieldSheet, Problem } from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import { askEngine } from '../../state/ask.ts';
import { bareSite } from '../../state/bare-site.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { plan } from '../../state/yard.ts';
import { Field } from '../parts/boxes/Field.tsx';
import { siteNow } from '../parts/typed.ts';
import { useAnswer } from '../parts/use-answer.ts';
import { sheetAnswers, sheetDay } from './answers.ts';
import { PaperSheet } from './PaperSheet.tsx';

/** A sheet to fill in with a pencil, and the form with the same numbers that takes what was written. */
export function FieldSheetCard() {
  const today = siteNow().date;
  const tomorrow = siteNow(new Date(Date.now() + MS_PER_DAY)).date;
  const asked = { ...plan.value, site: bareSite(plan.value.site) };
  const { value: sheet, fault } = useAnswer('sheet', { plan: asked, dates: [today, tomorrow] });

  if (fault) return <Fault>{fault}</Fault>;
  if (!sheet) return <p>The sheet is being ruled…</p>;
  return (
    <>
      <div class="screen-only sheet-form">
        <p>
          Print it, take it into the yard with a pencil, and type here what you wrote. Shadow tables are for today and
          tomorrow.
        </p>
        <button type="button" class="main" onClick={() => print()}>
          Print the field sheet
        </button>
        {cautionsFor(['heat'], plan.value).map(({ id, text }) => (
          <p key={id} class="quiet">
            {text}
          </p>
        ))}
        <h2>What you wrote</h2>
        {sheet.blanks.length === 0 ? (
          <p>Nothing is guessed: every number of the plan is measured.</p>
        ) : (
          <WrittenForm blanks={sheet.blanks} today={today} />
        )}
      </div>
      <PaperSheet sheet={sheet} />
    </>
  );
}

function WrittenForm({ blanks, today }: Pick<FieldSheet, 'blanks'> & { readonly today: CivilDate }) {
  const day = sheetDay.value || today;
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void take(day, setProblems);
      }}
    >
      <p class="asked-field">
        <label for="sheet-day">Day you were out</label>
        <input
          id="sheet-day"
          type="date"
          value={day}
          onInput={(event) => (sheetDay.value = event.currentTarget.value)}
        />
      </p>
      {blanks.map((blank) =>
        blank.kind === 'sketch' ? (
          <p key={blank.id}>
            <strong>
              {blank.number}. <bdi>{blank.label}</bdi>
            </strong>
            <br />
            <span class="quiet">Draw it on the plan.</span>
          </p>
        ) : (
          <AnswerField key={blank.id} blank={blank} problems={problems} />
        ),
      )}
      <button type="submit" class="main">
        Take these answers
      </button>
    </form>
  );
}

function AnswerField({
  blank: { id, number, label, now, ways, kind },
  problems,
}: {
  readonly blank: FieldSheet['blanks'][number];
  readonly problems: readonly Problem[];
}) {
  const answers = sheetAnswers.value;
  const example = kind === 'height' ? ': 2.40, or shadow 5.2 at 10:00' : '';
  return (
    <div class="sheet-answer">
      <Field
        label={`${number}. ${label}`}
        value={answers[id] ?? ''}
        hint={`${now ? `Until now ${now}. ` : ''}By ${ways}${example}.`}
        onInput={(text) => (sheetAnswers.value = { ...answers, [id]: text })}
      />
      {problems
        .filter(({ pointer }) => pointer === id)
        .map(({ message }) => (
          <Fault key={message}>{message}</Fault>
        ))}
    </div>
  );
}

/** Takes what was written into the plan; what could not be read stays in its box, and why is told. */
async function take(date: CivilDate, tell: (problems: readonly Problem[]) => void): Promise<void> {
  const asked = plan.value;
  const answers = sheetAnswers.value;
  const result = await askEngine('answerSheet', { plan: asked, answers, date });
  if (!result.ok) return;
  const { plan: next, problems: wrong, left } = result.value;
  tell(wrong);
  if (plan.value !== asked || (wrong.length > 0 && next === asked)) return;
  if (!commitEdit('Take the field sheet', next)) return;
  sheetAnswers.value = Object.fromEntries(
    Object.entries(answers).filter(([id]) => wrong.some(({ pointer }) => pointer === id)),
  );
  say(
    left.length === 0
      ? 'Everything is measured now.'
      : `Taken. ${left.length} ${left.length === 1 ? 'blank is' : 'blanks are'} still open.`,
  );
}
