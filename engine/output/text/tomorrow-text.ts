/** One day's list for people to read on a terminal. */

import type { Tomorrow } from '../../advice/year/tomorrow/types.ts';
import { dueWords } from '../../advice/year/tomorrow/words.ts';
import { dateWords } from '../../plan/dates/dates.ts';
import type { Plan } from '../../plan/types.ts';
import { formatTemperature } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { wrapped } from './plain-text.ts';
import { basisWords } from './season-text.ts';

export function tomorrowText(plan: Plan, day: Tomorrow, units: Units, columns: number): string {
  const { date, high, low, asked, tasks, cautions, notes } = day;
  const head =
    `${plan.name ?? 'The yard'} on ${dateWords(date)}: ${formatTemperature(low, units)} by night, ` +
    `${formatTemperature(high, units)} by day`;
  const list = tasks.map(({ at, advice }) =>
    wrapped(`${dueWords(day, at, units)}  ${advice.text} ${basisWords(advice)}`, columns, '  '),
  );
  const blocks = [
    [head, ...(asked === null ? [] : [asked]), ...notes].map((line) => wrapped(line, columns, '')).join('\n'),
    list.length === 0 ? 'Nothing to do: no plant here is hurt by a day like that.' : list.join('\n'),
    ...(cautions.length === 0
      ? []
      : [`Take care\n${cautions.map(({ text }) => wrapped(`- ${text}`, columns)).join('\n')}`]),
  ];
  return `${blocks.join('\n\n')}\n`;
}
