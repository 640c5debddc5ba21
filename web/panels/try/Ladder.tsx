import type { LadderStep } from '../../../engine/index.ts';
import { found } from './search.ts';
import { moneyWords, percentWords } from './words.ts';
import { plan } from '../../state/yard.ts';

const UNWORKED: readonly Pick<LadderStep, 'id' | 'name' | 'sentence'>[] = [
  { id: 'move', name: 'Move the pots', sentence: 'It costs a walk. Place a pot ranks the spots.' },
  { id: 'wrap', name: 'Group and wrap pots', sentence: 'A wrapped pot keeps its roots cooler.' },
  { id: 'water', name: 'Mulch, and water in the morning', sentence: 'A leaf that drinks stays nearer the air’s heat.' },
  { id: 'clay', name: 'Spray clay', sentence: 'A white film throws light back.' },
  { id: 'screen', name: 'A low screen', sentence: 'Stops the low afternoon sun.' },
  { id: 'roof', name: 'A roof of cloth', sentence: 'The dearest: the last thing to try.' },
];

/** What to try first, the cheapest at the top. */
export function Ladder() {
  const worked = found.value?.result.ladder;
  const steps = worked ?? UNWORKED;
  return (
    <section aria-label="Cheaper first">
      <h2>Cheaper first</h2>
      <ol class="ladder">
        {steps.map((step) => <li key={step.id}><strong>{step.name}</strong> {worked && <Effect step={step as LadderStep} />} {step.sentence}</li>)}
      </ol>
      {!worked && <p class="quiet">What each does in this yard is worked out together with “Find it” below.</p>}
    </section>
  );
}

function Effect({ step: { sparedShare, cost } }: { readonly step: LadderStep }) {
  const spares = sparedShare === null ? 'effect not computed' : `spares ${percentWords(sparedShare)}`;
  return <span class="rung-effect">{spares}{cost !== null && `, ${moneyWords(cost, plan.value.stock?.currency ?? '')}`}.</span>;
}
