import './pictures.css';
import { formatLength, upBearingOf, dayWords, compassWord } from '../../../../engine/index.ts';
import { stickMark, stickMarks } from '../../../charts/shadow-clock.ts';
import { clockWords } from '../../../common/words.ts';
import { shownClock } from '../../../state/clock.ts';
import { day, sunNow } from '../../../state/results.ts';
import { plan, units } from '../../../state/yard.ts';
import { stickOf } from '../../parts/stick.ts';
import { StickDial } from '../../parts/StickDial.tsx';
import { picturedDay } from './pictured.ts';

/**
 * The shadow of a stick every half hour of the day on the sun bar, turned as the drawing is: to be held against a
 * real stick's.
 */
export function ShadowClock() {
  const table = day.value.shown?.value;
  if (!table) return null;
  const marks = stickMarks(table);
  const sun = sunNow.value;
  const now = sun && sun.altitude > 0 ? stickMark(sun.clock, sun.azimuth, sun.altitude) : null;
  const clock = (minutes: number): string => clockWords(minutes, shownClock.value);
  const stick = stickOf(units.value);
  const inUnits = (sticks: number): string => formatLength(sticks * stick.length, units.value);
  const shortest = marks.toSorted((a, b) => a.length - b.length)[0];
  const finding = shortest
    ? `On ${dayWords(picturedDay.value)} a stick of ${stick.words} throws its shortest shadow about ` +
      `${clock(shortest.clock)}: ${inUnits(shortest.length)} to the ${compassWord(shortest.bearing)}.`
    : `On ${dayWords(picturedDay.value)} the sun does not rise high enough to throw a shadow that could be found.`;
  return (
    <details class="picture">
      <summary>The shadow of a {stick.words} stick</summary>
      <figure>
        {shortest && (
          <StickDial
            marks={marks}
            now={now}
            up={upBearingOf(plan.value)}
            clock={shownClock.value}
            rings={stick.rings}
            finding={finding}
          />
        )}
        <figcaption>
          {finding} Turned as the drawing is. A line each half hour, thicker the hour; the thickest is the time on the
          sun bar. Rings: {stick.rings.join(', ')}; longer shadows stand in the table only. Stand a straight stick
          upright on level ground: if its shadow points elsewhere, north on the plan is wrong.
        </figcaption>
      </figure>
      <details>
        <summary>The same as a table</summary>
        <table>
          <thead>
            <tr>
              <th scope="col">Time</th>
              <th scope="col">Points to</th>
              <th scope="col">Length</th>
            </tr>
          </thead>
          <tbody>
            {marks.map(({ clock: at, bearing, length }) => (
              <tr key={at}>
                <th scope="row">{clock(at)}</th>
                <td>
                  {compassWord(bearing)}, {bearing.toFixed(0)}°
                </td>
                <td>{inUnits(length)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </details>
  );
}
