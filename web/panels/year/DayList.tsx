import { formatTemperature, nameOf } from '../../../engine/index.ts';
import type { Tomorrow, TomorrowTask } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';
import { grounds } from './grounds.ts';
import { dayWords } from './lists.ts';
import { tied } from './tied.ts';

/** The day's list by the hour, then plant by plant, then what to mind. */
export function DayList({ day }: { readonly day: Tomorrow }) {
  const hours = [...new Set(day.tasks.map(({ at }) => at))];
  const degrees = (celsius: number): string => formatTemperature(celsius, units.value);
  return (
    <>
      <h3>{dayWords(day.date)}: {degrees(day.high)} by day, {degrees(day.low)} by night</h3>
      {hours.length === 0 && <p>Nothing has to be done for the plants on such a day.</p>}
      <dl class="day-list">
        {hours.map((at) => (
          <div key={at}>
            <dt>{at === 'the evening before' ? 'Evening before' : at}</dt>
            {day.tasks.filter((task) => task.at === at).map(({ advice }: TomorrowTask) => <dd key={advice.text}>{advice.text} <span class="quiet">({grounds(advice)})</span></dd>)}
          </div>
        ))}
      </dl>
      <h3>Plant by plant</h3>
      <div class="sheet-table" tabIndex={0} role="group" aria-label="Plant by plant">
        <table>
          <thead><tr><th scope="col">Plant</th><th scope="col">Verdict</th><th scope="col">When</th><th scope="col">Leaf or fruit, with water and without</th><th scope="col">Its limit</th></tr></thead>
          <tbody>
            {day.plants.map(({ plant, verdict, when, watered, thirsty, limit }) => (
              <tr key={plant}>
                <th scope="row"><bdi>{nameOf(plan.value, plant)}</bdi></th>
                <td>{verdict}</td>
                <td>{when === null ? '–' : `${when.from} to ${when.to}`}</td>
                <td>{tied(watered === thirsty ? degrees(watered) : `${degrees(watered)} to ${degrees(thirsty)}`)}</td>
                <td>{tied(degrees(limit))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {day.notes.map((note) => <p key={note} class="quiet">{note}</p>)}
      <h3>Mind</h3>
      <ul class="year-cautions">{day.cautions.map(({ id, text }) => <li key={id}>{text}</li>)}</ul>
    </>
  );
}
