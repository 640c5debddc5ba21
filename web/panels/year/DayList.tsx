import {
  dayWords,
  dueWords,
  formatHeatLimit,
  formatStretch,
  formatTemperature,
  nameOf,
} from '../../../engine/index.ts';
import type { Tomorrow, TomorrowTask } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';
import { timesIn } from '../parts/times.ts';
import { DataTable } from './DataTable.tsx';

/** The day's list by the hour, then plant by plant, then what to mind. */
export function DayList({ day }: { readonly day: Tomorrow }) {
  const hours = [...new Set(day.tasks.map(({ at }) => at))];
  const degrees = (celsius: number): string => formatTemperature(celsius, units.value);
  return (
    <>
      <h3>
        {dayWords(day.date)}: {degrees(day.high)} by day, {degrees(day.low)} by night
      </h3>
      {day.asked !== null && (
        <p class="box-said" role="status">
          {day.asked}
        </p>
      )}
      {hours.length === 0 && <p>Nothing has to be done for the plants on such a day.</p>}
      <dl class="day-list">
        {hours.map((at) => (
          <div key={at}>
            <dt>{timesIn(dueWords(day, at, units.value))}</dt>
            {day.tasks
              .filter((task) => task.at === at)
              .map(({ advice }: TomorrowTask) => (
                <dd key={advice.text}>{timesIn(advice.text)}</dd>
              ))}
          </div>
        ))}
      </dl>
      <h3>Plant by plant</h3>
      <DataTable
        head={['Plant', 'Verdict', 'When', 'Leaf or fruit, with water and without', 'Its limit']}
        rows={day.plants.map(({ plant, verdict, when, watered, thirsty, limit }) => [
          nameOf(plan.value, plant),
          verdict,
          when === null ? '–' : timesIn(formatStretch(when, units.value, day.sunUp)),
          watered === thirsty ? degrees(watered) : `${degrees(watered)} to ${degrees(thirsty)}`,
          formatHeatLimit(limit, units.value),
        ])}
      />
      {day.notes.map((note) => (
        <p key={note} class="quiet">
          {timesIn(note)}
        </p>
      ))}
      <h3>Mind</h3>
      <ul class="year-cautions">
        {day.cautions.map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
    </>
  );
}
