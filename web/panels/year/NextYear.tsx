import { startNextYear } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { goToStage } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';

/** Freezes this year beside the plan and opens the next; asks what grew. */
export function NextYear() {
  const { season, past = [] } = plan.value;
  function start(): void {
    if (!commitEdit(`Start ${season.year + 1}`, startNextYear(plan.value))) return;
    say(`${season.year} is kept as it was. Now: how tall are the trees, did pots move, has the cloth faded?`, 'done', { label: 'Measure again', run: () => goToStage('draw') });
  }
  return (
    <section aria-label="Next year">
      <h2>Next year</h2>
      {past.length > 0 && <p>Kept as they were: {past.map(({ year }) => year).join(', ')}.</p>}
      <p>Freezes the yard of {season.year} to compare with, and asks what grew.</p>
      <button type="button" onClick={start}>Start {season.year + 1}</button>
    </section>
  );
}
