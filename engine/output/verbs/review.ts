import { READING_PROTOCOL } from '../../advice/review/protocol.ts';
import { reviewOf } from '../../advice/review/review.ts';
import type { ReviewResult } from '../../advice/review/types.ts';
import { reviewHeadline } from '../../advice/words/year-headlines.ts';
import { cautionsFor } from '../../frame/work/cautions.ts';
import { dateWords } from '../../plan/dates/dates.ts';
import type { Plan } from '../../plan/types.ts';
import { nameOf } from '../../plan/words/names.ts';
import { wrapped } from '../text/plain-text.ts';
import { basisWords } from '../text/season-text.ts';
import { planOf, type Verb, type VerbResult } from './verb.ts';

export const review: Verb = {
  name: 'review',
  summary: 'readings and damage against the estimate and against last year, and what to correct',
  plan: 'required',
  common: ['option', 'units'],
  refused: [
    {
      name: 'weather',
      why:
        'A review goes by the air of each reading under a clear sky; a weather file’s year is not the day on ' +
        'which it was taken: leave out --weather.',
    },
  ],
  options: [],
  examples: ['review demo', 'review demo:lane --units imperial', 'review demo --json'],
  run(request): VerbResult {
    const plan = { ...planOf(request), units: request.units };
    const result = reviewOf(plan);
    const { corrections, ...rest } = result;
    const json = { ...rest, corrections: corrections.map((correction) => ({ ...correction, plan: undefined })) };
    return { ok: true, json, text: reviewText(plan, result, request.page.columns), notes: result.notes };
  },
};

function reviewText(plan: Plan, { sentences, damage, years }: ReviewResult, columns: number): string {
  const list = (lines: readonly string[]) => lines.map((line) => wrapped(`- ${line}`, columns)).join('\n');
  const scores = damage.map(
    ({ plant, date, score, words }) => `${nameOf(plan, plant)}, ${dateWords(date)}: ${score} of 5, ${words}.`,
  );
  const told = years.map(({ sentence }) => sentence);
  const rest = years.length > 0 ? [] : ['One plant, one year proves little.'];
  const blocks = [
    wrapped(reviewHeadline(plan, { years, damage }), columns),
    `Readings and years\n${list([...told, ...sentences.filter((each) => !told.includes(each)), ...rest])}`,
    `Damage noted\n${scores.length === 0 ? 'None.' : list(scores)}`,
    `How to take a reading\n${list(READING_PROTOCOL.map((one) => `${one.text} ${basisWords(one)}`))}`,
    `Take care\n${list(cautionsFor(['heat'], plan).map(({ text }) => text))}`,
  ];
  return `${blocks.join('\n\n')}\n`;
}
