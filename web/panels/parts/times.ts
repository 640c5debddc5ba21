import { clockWords } from '../../common/words.ts';
import { shownClock } from '../../state/clock.ts';

/** What is told with "am" or "pm" already is left. */
const CLOCK_TIME = /\b([01]\d|2[0-3]):([0-5]\d)\b(?! [ap]m)(?! to \d+(?::\d\d)? [ap]m)/g;

/** A sentence of the engine's with its clock times as this machine writes them: "13:30", or "1:30 pm". */
export function timesIn(sentence: string): string {
  const shown = shownClock.value;
  return shown === '24'
    ? sentence
    : sentence.replaceAll(CLOCK_TIME, (_, hour, minute) => clockWords(Number(hour) * 60 + Number(minute), shown));
}
