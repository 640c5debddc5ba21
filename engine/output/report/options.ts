/** What was tried: the options side by side, the one that is drawn first. */

import type { ComparedChoice, CompareResult } from '../../advice/compare/types.ts';
import { effectCell, servedWords } from '../../advice/compare/words.ts';
import { hoursWords } from '../../frame/work/work-words.ts';
import type { Plan } from '../../plan/types.ts';
import { formatShare } from '../../plan/units/shown.ts';
import { nameOf } from '../../plan/words/names.ts';
import { shownName } from '../../plan/words/shown-name.ts';
import { escaped, htmlTable, paragraph, section } from '../sheet/markup.ts';

/** The options of a yard held against today, and those that the report draws as if they were built. */
export interface Tried {
  /** As it is drawn, without any option. */
  readonly plan: Plan;
  readonly compared: CompareResult;
  /** Ids of the options chosen. */
  readonly chosen: readonly string[];
}

export function optionsSection({ plan, compared, chosen }: Tried): string {
  const isChosen = ({ options }: ComparedChoice): boolean => options.every((id) => chosen.includes(id));
  const ordered = compared.choices.toSorted((a, b) => Number(isChosen(b)) - Number(isChosen(a)));
  const picked = ordered.filter(isChosen);
  const several = compared.served.length > 1;
  const whose = servedWords(plan, compared.served);
  return section('options', 'What was tried', [
    ...(picked.length === 0
      ? [paragraph('None of it is chosen yet: the plan and the numbers are of the yard as it is.')]
      : picked.map((choice) => `<p><strong>Chosen, and drawn here: ${escaped(nameIn(plan, choice))}.</strong></p>`)),
    htmlTable(
      ['option', 'less damage', ...(several ? ['in all'] : []), '±', 'cost', 'hours of work', 'seen'],
      ordered.map((choice) => rowOf(plan, choice, compared.served, isChosen(choice))),
      several ? [2, 3, 4] : [1, 2, 3],
    ),
    ...(whose === '' ? [] : [paragraph(whose)]),
  ]);
}

/** "A: A roof over the lemon" */
function nameIn(plan: Plan, { options }: ComparedChoice): string {
  const names = options.map((id) => {
    const name = plan.options?.find((option) => option.id === id)?.name;
    return name === undefined ? id : `${id}: ${shownName(name)}`;
  });
  return names.join(' + ');
}

function rowOf(plan: Plan, choice: ComparedChoice, served: readonly string[], isChosen: boolean): string[] {
  const { together, clothArea, cost, seenFrom } = choice;
  const seeing = seenFrom.filter(({ hidden }) => !hidden).map(({ eye }) => nameOf(plan, eye));
  return [
    `${isChosen ? '▶ ' : ''}${nameIn(plan, choice)}`,
    effectCell(choice, served),
    ...(served.length > 1 ? [together === null ? '–' : formatShare(together.share)] : []),
    together === null ? '' : formatShare(together.pm),
    cost.total === null ? 'not known' : `${cost.total.toFixed(0)} ${cost.currency}`,
    clothArea === 0 ? '–' : hoursWords(cost.hours),
    seeing.length === 0 ? 'by nobody' : `from: ${seeing.join(', ')}`,
  ];
}
