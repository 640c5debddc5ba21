import { dayWords, readMonthDay } from '../../../engine/index.ts';
import type { DayTable, MonthDay } from '../../../engine/index.ts';
import { clockWords, readClock } from '../../common/words.ts';
import { TextBox } from '../../panels/parts/boxes/TextBox.tsx';
import { shownClock } from '../../state/clock.ts';
import { sunNow } from '../../state/results.ts';
import { minute, monthDay, periodKind, playing } from '../../state/view.ts';

interface Props {
  readonly date: MonthDay;
  /** `undefined` until the day is known. */
  readonly table: DayTable | undefined;
}

/** The time and the date as they stand, typed as well as dragged. */
export function TypedWhen({ date, table }: Props) {
  const now = sunNow.value;
  return (
    <div class="sun-bar-when">
      <TextBox
        label="Type the time"
        value={now ? clockWords(now.clock, shownClock.value) : ''}
        onChange={(text) => (table ? setTime(text, table) : null)}
      />
      <TextBox label="Type the date" value={dayWords(date)} onChange={setDate} />
    </div>
  );
}

function setTime(text: string, table: DayTable): string | null {
  const typed = readClock(text);
  if (typed === null) return 'A time, such as 17:05 or 5:05 pm.';
  const at = table.clock.indexOf(typed);
  if (at < 0) return 'The clocks leave that minute out on this day.';
  playing.value = false;
  minute.value = at;
  return null;
}

function setDate(text: string): string | null {
  const typed = readMonthDay(text);
  if (typed === null) return 'A day, such as 21 July.';
  monthDay.value = typed;
  periodKind.value = 'day';
  return null;
}
