import { changesAdvice } from '../../advice/doubt/advice.ts';
import { doubtOf } from '../../advice/doubt/doubt.ts';
import type { DoubtBar, DoubtResult } from '../../advice/doubt/types.ts';
import { movedBy } from '../../advice/doubt/words.ts';
import type { Plan } from '../../plan/types.ts';
import { formatShare } from '../../plan/units/shown.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { planWithOptionsLeft, type Verb, type VerbResult } from './verb.ts';

/** Characters of the longest bar. */
const LONGEST = 10;
/** What moves less of the heat damage, and no advice, is not listed. */
const TOLD_FROM = 0.01;

export const doubt: Verb = {
  name: 'doubt',
  summary: 'which one measurement would change the advice most, and which verdicts hang on it',
  plan: 'required',
  common: ['option', 'weather', 'units', 'sources'],
  options: [],
  examples: ['doubt demo', 'doubt demo:lane --json'],
  run(request): VerbResult {
    const { weather, units, progress } = request;
    const { plan, notes } = planWithOptionsLeft(request);
    const outcome = doubtOf(plan, { weather, units, progress });
    if (!outcome.ok) return outcome;
    const { columns } = request.page;
    return {
      ok: true,
      notes,
      json: outcome.value,
      text: doubtText(plan, outcome.value, columns),
      sources: doubtSources(outcome.value, columns),
    };
  },
};

/** What to measure next, the numbers that move anything, and which verdicts hang on them. */
function doubtText(plan: Plan, { harm, pm, plants, inputs, sentence, notes }: DoubtResult, columns: number): string {
  const most = Math.max(0, ...inputs.map(({ moves }) => moves));
  const told = inputs.filter((bar) => changesAdvice(bar) || bar.moves >= TOLD_FROM * harm);
  const rest = inputs.length - told.length;
  const bars = table(
    columns,
    ['in doubt', '±', 'moves', '', 'may change'],
    told.map((bar) => barRow(plan, bar, harm, most)),
    [2],
  );
  const judged = plants.map((plant) => wrapped(`- ${plant.sentence}`, columns)).join('\n');
  const under = [
    ...(rest === 0 ? [] : [`${rest} more ${rest > 1 ? 'move' : 'moves'} the heat damage by under 1 % and no advice.`]),
    ...(harm > 0 ? [`All together, the heat damage may be ${allTogether(pm / harm)}.`] : []),
  ];
  const parts = [
    wrapped(sentence, columns, ''),
    told.length === 0 ? '' : bars,
    wrapped(under.join(' '), columns, ''),
    judged,
    ...notes.map((note) => wrapped(note, columns, '')),
  ].filter((part) => part !== '');
  return `${parts.join('\n\n')}\n`;
}

/** @param share by which harm may be off */
function allTogether(share: number): string {
  if (share <= 1) return `${formatShare(share)} more or less than told`;
  return `anything from none to ${share < 1.5 ? 'twice' : 'several times'} what is told`;
}

function barRow(plan: Plan, bar: DoubtBar, harm: number, most: number): string[] {
  const { name, pmText, moves, verdicts, order, first, effect } = bar;
  const changes = [
    ...(verdicts.length === 0
      ? []
      : [`verdict on ${listWords(verdicts.map(({ plant }) => namedInside(plan, plant)))}`]),
    ...(first !== null ? ['the best option'] : order !== null ? ['the options’ order'] : []),
    ...(effect === null ? [] : [`what ${effect.option} spares`]),
  ];
  const drawn = '#'.repeat(most > 0 ? Math.round((LONGEST * moves) / most) : 0);
  return [name.replace(/^the /, ''), pmText, movedBy(moves, harm), drawn, changes.join('; ') || 'nothing'];
}

/** The measure behind the shares. */
function doubtSources({ harm, pm, inputs }: DoubtResult, columns: number): string {
  const rows = inputs.map(({ name, pmText, moves }) => [name.replace(/^the /, ''), pmText, moves.toFixed(1)]);
  return [
    wrapped(
      `Heat damage, each plant’s times its worth: ${harm.toFixed(1)} ± ${pm.toFixed(1)} K·h a day, the root of the ` +
        `inputs’ squares; each number alone is put off by its ± and the yard judged again.`,
      columns,
      '',
    ),
    table(columns, ['in doubt', '±', 'moves K·h/day'], rows, [2]),
  ].join('\n\n');
}
