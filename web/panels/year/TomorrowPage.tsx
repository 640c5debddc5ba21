import { formatTemperature } from '../../../engine/index.ts';
import type { Tomorrow } from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import { units } from '../../state/yard.ts';
import { PaperHead } from '../parts/paper/PaperHead.tsx';
import { printPaper } from '../parts/paper/print-paper.ts';
import { DayList } from './DayList.tsx';
import { today } from './season.ts';
import { dayList, forecast, keepTyped, typed } from './tomorrow.ts';
import { TypedBox } from './TypedBox.tsx';

/** Type tomorrow's high, and get what to do by hour and plant. */
export function TomorrowPage() {
  const asked = forecast.value;
  const { shown, working, problems } = dayList.value;
  const wanted = asked !== null && typeof asked !== 'string' ? asked : null;
  return (
    <section aria-label="Tomorrow">
      <h2 class="unseen">Tomorrow</h2>
      <p>Type what the weather service says of tomorrow, and read what to do, hour by hour.</p>
      <ForecastBoxes />
      {typeof asked === 'string' && <Fault>{asked}</Fault>}
      {problems.map(({ message }) => (
        <Fault key={message}>{message}</Fault>
      ))}
      {wanted && working && !shown && <p aria-live="polite">Working out the day…</p>}
      {wanted && shown && (
        <>
          <div aria-busy={working !== null} aria-live="polite">
            <DayList day={shown.value} />
          </div>
          <button type="button" disabled={working !== null} onClick={() => printDay(shown.value)}>
            Print the list
          </button>
        </>
      )}
    </section>
  );
}

function ForecastBoxes() {
  const { high, low, date } = typed.value;
  return (
    <div class="field-row">
      <TypedBox
        label="Highest, by day"
        type="text"
        keys="decimal"
        usual={formatTemperature(41, units.value)}
        value={high}
        onInput={(text) => keepTyped({ high: text })}
      />
      <TypedBox
        label="Lowest, by night"
        type="text"
        usual="the usual"
        value={low}
        onInput={(text) => keepTyped({ low: text })}
      />
      <TypedBox label="Day" type="date" from={today()} value={date} onInput={(text) => keepTyped({ date: text })} />
    </div>
  );
}

function printDay(day: Tomorrow): void {
  printPaper(
    <article class="day-paper">
      <PaperHead />
      <DayList day={day} />
    </article>,
  );
}
