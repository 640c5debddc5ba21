import '../parts/boxes/asked.css';
import './style.css';
import { useState } from 'preact/hooks';
import { cautionsFor } from '../../../engine/index.ts';
import type { Problem } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { plan } from '../../state/yard.ts';
import { askEngine } from '../../state/ask.ts';
import { Field } from '../parts/boxes/Field.tsx';
import { siteNow } from '../parts/typed.ts';
import { useAnswer } from '../parts/use-answer.ts';
import { sheetAnswers, sheetDay } from './answers.ts';
import { PaperSheet } from './PaperSheet.tsx';

const DAY_MS = 86_400_000;

/** A sheet to fill in with a pencil, and the form with the same numbers that takes what was written. */
export function FieldSheetCard() {
  const today = siteNow().date;
  const tomorrow = siteNow(new Date(Date.now() + DAY_MS)).date;
  const { underlay: _, ...site } = plan.value.site;
  const { value: sheet, fault } = useAnswer('sheet', { plan: { ...plan.value, site }, dates: [today, tomorrow] });
  const day = sheetDay.value || today;
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const answers = sheetAnswers.value;

  async function take(): Promise<void> {
    const asked = plan.value;
    const result = await askEngine('answerSheet', { plan: asked, answers, date: day });
    if (!result.ok) return;
    const { plan: next, problems: wrong, left } = result.value;
    setProblems(wrong);
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

  if (fault)
    return (
      <p class="box-said fault" role="alert">
        {fault}
      </p>
    );
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
        {cautionsFor(['heat'], plan.value.cautions).map(({ id, text }) => (
          <p key={id} class="quiet">
            {text}
          </p>
        ))}
        <h2>What you wrote</h2>
        {sheet.blanks.length === 0 && <p>Nothing is guessed: every number of the plan is measured.</p>}
        {sheet.blanks.length > 0 && (
          <form
            onSubmit={(event) => {
              event.preventDefault();
              void take();
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
            {sheet.blanks.map(({ id, number, label, now, ways, kind }) =>
              kind === 'sketch' ? (
                <p key={id}>
                  <strong>
                    {number}. <bdi>{label}</bdi>
                  </strong>
                  <br />
                  <span class="quiet">Draw it on the plan.</span>
                </p>
              ) : (
                <div key={id} class="sheet-answer">
                  <Field
                    label={`${number}. ${label}`}
                    value={answers[id] ?? ''}
                    hint={
                      `${now ? `Until now ${now}. ` : ''}By ` +
                      `${ways}${kind === 'height' ? ': 2.40, or shadow 5.2 at 10:00' : ''}.`
                    }
                    onInput={(text) => (sheetAnswers.value = { ...answers, [id]: text })}
                  />
                  {problems
                    .filter(({ pointer }) => pointer === id)
                    .map(({ message }) => (
                      <p key={message} class="box-said fault" role="alert">
                        {message}
                      </p>
                    ))}
                </div>
              ),
            )}
            <button type="submit" class="main">
              Take these answers
            </button>
          </form>
        )}
      </div>
      <PaperSheet sheet={sheet} />
    </>
  );
}
