import { doubtOf } from '../../advice/doubt/doubt.ts';
import type { DoubtBar, DoubtResult } from '../../advice/doubt/types.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { planWithOptionsLeft, type Verb, type VerbResult } from './verb.ts';

/** Characters of the longest bar. */
const LONGEST = 20;

export const doubt: Verb = {
  name: 'doubt',
  summary: 'which one measurement would change the advice most, and which verdicts hang on it',
  plan: 'required',
  common: ['option', 'weather', 'units'],
  options: [],
  examples: ['doubt demo', 'doubt demo:lane --json'],
  run(request): VerbResult {
    const { weather, units, progress } = request;
    const { plan, notes } = planWithOptionsLeft(request);
    const outcome = doubtOf(plan, { weather, units, progress });
    if (!outcome.ok) return outcome;
    return { ok: true, notes, json: outcome.value, text: doubtText(outcome.value, request.page.columns) };
  },
};

function doubtText({ harm, pm, plants, inputs, sentence, notes }: DoubtResult, columns: number): string {
  const most = Math.max(0, ...inputs.map(({ moves }) => moves));
  const bars = table(
    columns,
    ['in doubt', '±', 'moves K·h/day', '', 'may change'],
    inputs.map((bar) => barRow(bar, most)),
    [1, 2],
  );
  const judged = plants.map((plant) => wrapped(`- ${plant.sentence}`, columns)).join('\n');
  const total = wrapped(
    `Heat damage, each plant’s times its worth: ${harm.toFixed(1)} ± ${pm.toFixed(1)} K·h/day, all ` +
      `inputs together.`,
    columns,
    '',
  );
  const remarks = notes.map((note) => wrapped(note, columns, ''));
  const parts = [wrapped(sentence, columns, ''), total, bars, judged, ...remarks].filter((part) => part !== '');
  return `${parts.join('\n\n')}\n`;
}

function barRow({ name, pmText, moves, verdicts, order, first, effect }: DoubtBar, most: number): string[] {
  const changes = [
    ...(verdicts.length === 0 ? [] : [`${verdicts.length} of the verdicts`]),
    ...(first !== null ? ['the best option'] : order !== null ? ['the order'] : []),
    ...(effect === null ? [] : ['its effect']),
  ];
  const bar = '#'.repeat(most > 0 ? Math.round((LONGEST * moves) / most) : 0);
  return [name.replace(/^the /, ''), pmText, moves.toFixed(1), bar, changes.join(', ') || 'nothing'];
}
