import { dayWords, monthWord } from '../../plan/dates/dates.ts';
import type { CivilDate, Plan } from '../../plan/types.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';

/** "14 May 2026" */
export function dateWords(date: CivilDate): string {
  return `${dayWords(date)} ${date.slice(0, 4)}`;
}

/** Days of one year with each month named once: "13 and 31 May, 18 June". */
export function daysFolded(dates: readonly CivilDate[]): string {
  const months = [...new Set(dates.map((date) => date.slice(0, 7)))];
  return months
    .map((month) => {
      const days = dates.filter((date) => date.startsWith(month)).map((date) => String(Number(date.slice(8, 10))));
      return `${listWords(days)} ${monthWord(Number(month.slice(5, 7)))}`;
    })
    .join(', ');
}

/** "the lemon pot, the hydrangea and the fig" */
export function namesInside(plan: Plan, ids: readonly string[]): string {
  return listWords(ids.map((id) => namedInside(plan, id)));
}

/** At most three by name: "the lemon pot, the hydrangea and 3 more". */
export function fewNames(plan: Plan, ids: readonly string[]): string {
  return ids.length <= 3
    ? namesInside(plan, ids)
    : listWords([...ids.slice(0, 2).map((id) => namedInside(plan, id)), `${ids.length - 2} more`]);
}

/** First letter upper case: a sentence that begins with a thing inside it. */
export function sentenceCase(text: string): string {
  return text === '' ? '' : text[0].toUpperCase() + text.slice(1);
}
