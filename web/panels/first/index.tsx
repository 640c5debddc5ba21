import '../parts/boxes/asked.css';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { Fault } from '../../common/Fault.tsx';
import { addYard } from '../../state/shelf.ts';
import { aside, goToStage, periodKind, selection } from '../../state/view.ts';
import { plan, preview } from '../../state/yard.ts';
import { StageAnswer } from '../parts/answer/StageAnswer.tsx';
import { type Answers, NOTHING_YET, answer, answers, stepsOf } from './answers.ts';
import { QUESTIONS } from './questions/index.ts';
import { type Built, yardOf } from './yard-of.ts';

/** From the first answer on, the map shows the yard that the answers make, and no longer the one that is open. */
function useOwnYard(given: Answers): void {
  useEffect(() => {
    if (given.step === 0) return undefined;
    let wanted = true;
    void yardOf(given, plan.value, new Date().toLocaleDateString('sv')).then((built) => {
      if (wanted && built.ok) preview.value = built.plan;
    });
    return () => (wanted = false);
  }, [given]);
  useEffect(() => () => (preview.value = null), []);
}

/**
 * From "my plant burnt" to one's own graded yard: one question at a time, each may be passed over, each kept as it is
 * typed.
 */
export function HappenedCard() {
  const given = answers.value;
  const steps = stepsOf(given);
  const at = Math.min(given.step, steps.length - 1);
  const step = steps[at];
  const { title, skip, Body } = QUESTIONS[step];
  const [fault, setFault] = useState<string | null>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => answer({ open: true, units: given.units || unitsOfBrowser() }), []);
  useOwnYard(given);
  useLayoutEffect(() => heading.current?.focus(), [step]);

  async function goOn(passed: boolean): Promise<void> {
    const rest = given.skipped.filter((name) => name !== step);
    const next = { ...given, skipped: passed ? [...rest, step] : rest };
    const built = await yardOf(next, plan.value, new Date().toLocaleDateString('sv'));
    if (!built.ok && steps.indexOf(built.step) <= at) {
      setFault(built.message);
      return answer({ ...next, step: steps.indexOf(built.step) });
    }
    setFault(null);
    if (at < steps.length - 1) return answer({ ...next, step: at + 1 });
    if (built.ok) await openBuilt(built);
  }

  return (
    <form
      class="asked"
      onSubmit={(event) => {
        event.preventDefault();
        void goOn(false);
      }}
    >
      <StageAnswer says={`Question ${at + 1} of ${steps.length}: each may be skipped.`} act={null} />
      <h2 ref={heading} tabIndex={-1}>
        {title}
      </h2>
      <Fault>{fault}</Fault>
      <Body />
      <div class="asked-buttons">
        <button type="submit" class="main">
          {at === steps.length - 1 ? 'Show me my yard' : 'Go on'}
        </button>
        <button type="button" onClick={() => void goOn(true)}>
          Skip: {skip()}
          {step === 'damage' || step === 'place' ? '' : ', marked guessed'}
        </button>
        {at > 0 && (
          <button type="button" onClick={() => answer({ step: at - 1 })}>
            Back one question
          </button>
        )}
      </div>
      {at === 0 && <PlanningAhead ahead={given.ahead} />}
    </form>
  );
}

/** Feet and °F where the browser's language is that of a country that measures so; else as the open yard has it. */
function unitsOfBrowser(): Answers['units'] {
  return /-(US|LR)\b/.test(navigator.language) ? 'imperial' : '';
}

function PlanningAhead({ ahead }: Pick<Answers, 'ahead'>) {
  return (
    <label class="choice">
      <input type="checkbox" checked={ahead} onChange={(event) => answer({ ahead: event.currentTarget.checked })} />
      Nothing burnt yet: I'm planning ahead
    </label>
  );
}

/** The yard that the answers made becomes the open one, at its heat, and at why where something burnt. */
async function openBuilt(built: Extract<Built, { ok: true }>): Promise<void> {
  if (!(await addYard(built.plan, 'Answer what happened'))) return;
  preview.value = null;
  answers.value = NOTHING_YET;
  periodKind.value = 'heatwave';
  goToStage('heat');
  selection.value = [built.plant];
  if (built.plan.journal) aside.value = 'why';
}
