import '../parts/advice-card.css';
import './style.css';
import { useEffect } from 'preact/hooks';
import { cheaperHeadline, optionHeadline } from '../../../engine/index.ts';
import { isStale } from '../../state/live.ts';
import type { NextThing } from '../../state/next.ts';
import { heat } from '../../state/results.ts';
import { aside, goToStage } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { StageAnswer } from '../parts/answer/StageAnswer.tsx';
import { cheaper, compared, comparison, keepOpenOption, openOption } from '../parts/tried.ts';
import { CompareTable, CuriousFigures } from './CompareTable.tsx';
import { postsInTheWay } from './faults.ts';
import { FindBest } from './FindBest.tsx';
import { side } from './held.ts';
import { HiddenHeights } from './HiddenHeights.tsx';
import { Ladder } from './Ladder.tsx';
import { layMarks } from './marked.ts';
import { OptionPaper } from './OptionPaper.tsx';
import { OptionTabs } from './OptionTabs.tsx';
import { finding, growing } from './search.ts';
import { SectionPicture } from './SectionPicture.tsx';

/** Cloth on the plan before it is bought: cheaper cures first, options by hand or found, side by side. */
export function TryCard() {
  useEffect(layMarks, []);
  useEffect(keepOpenOption, []);
  const options = plan.value.options ?? [];
  return (
    <div class="advice-card try-card">
      <StageAnswer says={says()} act={nextWords()}>
        {openOption.value === null && <Ladder />}
        <OptionTabs />
      </StageAnswer>
      <OptionPaper />
      {finding.value && <FindBest />}
      {options.length > 0 && (
        <Fold title="Compare">
          <CompareTable />
        </Fold>
      )}
      {openOption.value === null && (
        <Fold title="From the side">
          <SectionPicture />
        </Fold>
      )}
      <Fold title="What stays hidden">
        <HiddenHeights />
      </Fold>
      <Fold title="For the curious">
        <CuriousFigures />
        <button type="button" onClick={() => (aside.value = 'sure')}>
          What hangs on the guesses?
        </button>
      </Fold>
      <Fold title="Cautions">
        <p>Local codes and licensed people come first. Each step in Build it has its cautions.</p>
        <button type="button" onClick={() => goToStage('build')}>
          Build it
        </button>
      </Fold>
    </div>
  );
}

/** The open option's answer, else what to try first. */
function says(): string | null {
  if (growing(plan.value).length === 0) return 'Nothing to shade yet: no plant is drawn.';
  const steps = cheaper.value.shown?.value.steps;
  if (nothingHarmed()) return cheaperHeadline(plan.value, steps ?? []);
  const option = openOption.value;
  const choice = option && compared.value?.choices.find(({ options }) => options[0] === option.id);
  if (choice) return optionHeadline(plan.value, choice);
  if (option !== null) return comparison.value.working ? `What option ${option.id} does is being worked out.` : null;
  if (steps) return cheaperHeadline(plan.value, steps);
  return cheaper.value.working ? 'What moving pots, water and clay would do is being worked out.' : null;
}

function nextWords(): NextThing | null {
  const option = openOption.value;
  if (growing(plan.value).length === 0) return { text: 'Draw the plants first', run: () => goToStage('draw') };
  if (option === null)
    return nothingHarmed() || finding.value ? null : { text: 'Find the best cloth', run: () => (finding.value = true) };
  if (postsInTheWay.value.length > 0)
    return { text: `Move the cloth of option ${option.id}: a post stands in ${postsInTheWay.value[0].by}.` };
  return side.value === 'after'
    ? { text: 'Split the drawing: before, after', run: () => (side.value = 'split') }
    : null;
}

/** By the comparison where there is one, else by the graded yard as it is. */
function nothingHarmed(): boolean {
  if (compared.value && !isStale(comparison.value)) return compared.value.today.harm === 0;
  const shown = heat.value.shown;
  if (!shown || isStale(heat.value) || shown.args.options.length > 0 || shown.args.period.kind !== 'heatwave')
    return false;
  return shown.value.plants.every(({ scorchDose }) => (scorchDose ?? 0) === 0);
}
