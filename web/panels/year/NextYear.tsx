import { grownQuestions, startNextYear } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { plan } from '../../state/yard.ts';
import { Grown } from './Grown.tsx';

/** Freezes this year beside the plan and opens the next; then asks what grew. */
export function NextYear() {
  const { season, past = [] } = plan.value;
  const questions = grownQuestions(plan.value);
  function start(): void {
    if (!commitEdit(`Start ${season.year + 1}`, startNextYear(plan.value))) return;
    say(`${season.year} is kept as it was. What grew, and what moved? Answer below.`);
  }
  return (
    <section aria-label="Next year">
      <h2 class="unseen">Next year</h2>
      {past.length > 0 && <p>Kept as they were: {past.map(({ year }) => year).join(', ')}.</p>}
      {past.length > 0 && <Grown questions={questions} last={past[past.length - 1].year} />}
      <p>Freezes the yard of {season.year} to compare with, and asks what grew.</p>
      <button type="button" onClick={start}>
        Start {season.year + 1}
      </button>
    </section>
  );
}
