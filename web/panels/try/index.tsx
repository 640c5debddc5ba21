import './style.css';
import { useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { cautionsFor } from '../../../engine/index.ts';
import { cardNext } from '../../state/next.ts';
import type { NextThing } from '../../state/next.ts';
import { heat } from '../../state/results.ts';
import { aside, goToStage, shownOptions, stage } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { CompareTable } from './CompareTable.tsx';
import { FindBest } from './FindBest.tsx';
import { HiddenHeights } from './HiddenHeights.tsx';
import { Ladder } from './Ladder.tsx';
import { OptionPaper } from './OptionPaper.tsx';
import { OptionTabs, toFinding } from './OptionTabs.tsx';
import { SectionPicture } from './SectionPicture.tsx';
import { postsInTheWay } from './faults.ts';
import { side } from './held.ts';
import { layMarks } from './marked.ts';
import { cancelSearch, growing } from './search.ts';
import { compared, openOption } from '../parts/tried.ts';

/** Cloth on the plan before it is bought: cheaper cures first, options by hand or found, side by side. */
export function TryCard() {
  useEffect(layMarks, []);
  useEffect(
    () => () => {
      cancelSearch();
      if (stage.peek() !== 'place') shownOptions.value = [];
    },
    [],
  );
  useSignalEffect(() => {
    cardNext.value = nextWords();
  });
  const options = plan.value.options ?? [];
  return (
    <div class="try-card">
      {growing(plan.value).length === 0 ? (
        <p class="nothing-to-shade">
          Nothing to shade yet: no plant is drawn.{' '}
          <button type="button" onClick={() => goToStage('draw')}>
            Draw the plants first
          </button>
        </p>
      ) : (
        nothingHarmed() && <p class="nothing-to-shade">Nothing to shade: no plant is harmed. You may stop here.</p>
      )}
      <Ladder />
      <OptionTabs />
      <OptionPaper />
      {openOption.value === null && <SectionPicture />}
      {options.length > 0 && <CompareTable />}
      <FindBest />
      <HiddenHeights />
      <section class="how-sure" aria-label="How sure">
        <h2>How sure</h2>
        <p>
          Every answer here rests on what is guessed.{' '}
          <button type="button" onClick={() => (aside.value = 'sure')}>
            What hangs on the guesses?
          </button>
        </p>
      </section>
      <details class="cautions">
        <summary>Before anything is put up or sprayed</summary>
        <ul>
          {cautionsFor(['build', 'wind', 'climb', 'spray']).map(({ id, text }) => (
            <li key={id}>{text}</li>
          ))}
        </ul>
      </details>
    </div>
  );
}

function nextWords(): NextThing | null {
  const option = openOption.value;
  if (option === null)
    return nothingHarmed() ? null : { text: 'Open an option, or let the best be found.', run: toFinding };
  if (postsInTheWay.value.length > 0)
    return { text: `Move the cloth of option ${option.id}: a post stands in ${postsInTheWay.value[0].by}.` };
  return side.value === 'after'
    ? { text: `Hold option ${option.id} against today: split the drawing.`, run: () => (side.value = 'split') }
    : { text: `Read what option ${option.id} spares, side by side.` };
}

/** By the comparison where there is one, else by the graded yard as it is. */
function nothingHarmed(): boolean {
  if (compared.value) return compared.value.today.harm === 0;
  const shown = heat.value.shown;
  if (!shown || shown.args.options.length > 0 || shown.args.period.kind !== 'heatwave') return false;
  return shown.value.plants.every(({ scorchDose }) => (scorchDose ?? 0) === 0);
}
