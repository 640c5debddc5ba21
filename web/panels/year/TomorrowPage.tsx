import { useId } from 'preact/hooks';
import { formatTemperature } from '../../../engine/index.ts';
import { units } from '../../state/yard.ts';
import { PaperHead } from '../parts/paper/PaperHead.tsx';
import { printPaper } from '../parts/paper/print-paper.ts';
import { DayList } from './DayList.tsx';
import { today } from './season.ts';
import { dayList, forecast, keepTyped, typed } from './tomorrow.ts';

/** Type tomorrow's high, and get what to do by hour and plant. */
export function TomorrowPage() {
  const id = useId();
  const asked = forecast.value;
  const { shown, working, problems } = dayList.value;
  const example = formatTemperature(41, units.value);
  const wanted = asked !== null && typeof asked !== 'string' ? asked : null;
  return (
    <section aria-label="Tomorrow">
      <h2>Tomorrow</h2>
      <p>Type what the weather service says of tomorrow, and read what to do, hour by hour.</p>
      <div class="field-row">
        <div class="number-box">
          <label for={`${id}-high`}>Highest, by day</label>
          <input
            id={`${id}-high`}
            type="text"
            inputmode="decimal"
            autocomplete="off"
            placeholder={example}
            value={typed.value.high}
            onInput={(event) => keepTyped({ high: event.currentTarget.value })}
          />
        </div>
        <div class="number-box">
          <label for={`${id}-low`}>Lowest, by night</label>
          <input
            id={`${id}-low`}
            type="text"
            inputmode="text"
            autocomplete="off"
            placeholder="the usual"
            value={typed.value.low}
            onInput={(event) => keepTyped({ low: event.currentTarget.value })}
          />
        </div>
        <div class="number-box">
          <label for={`${id}-date`}>Day</label>
          <input
            id={`${id}-date`}
            type="date"
            required
            min={today()}
            value={typed.value.date}
            onInput={(event) => keepTyped({ date: event.currentTarget.value })}
          />
        </div>
      </div>
      {typeof asked === 'string' && (
        <p class="box-said fault" role="alert">
          {asked}
        </p>
      )}
      {problems.map(({ message }) => (
        <p key={message} class="box-said fault" role="alert">
          {message}
        </p>
      ))}
      {wanted && working && !shown && <p aria-live="polite">Working out the day…</p>}
      {wanted && shown && (
        <div aria-busy={working !== null} aria-live="polite">
          <DayList day={shown.value} />
        </div>
      )}
      {wanted && shown && (
        <button
          type="button"
          disabled={working !== null}
          onClick={() =>
            printPaper(
              <article class="day-paper">
                <PaperHead />
                <DayList day={shown.value} />
              </article>,
            )
          }
        >
          Print the list
        </button>
      )}
    </section>
  );
}
