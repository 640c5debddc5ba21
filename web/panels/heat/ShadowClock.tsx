import './pictures.css';
import { DEFAULTS, formatLength } from '../../../engine/index.ts';
import { clockWords, dayWords, sideWords } from '../../app/words.ts';
import { stickMark, stickMarks } from '../../charts/shadow-clock.ts';
import type { StickMark } from '../../charts/shadow-clock.ts';
import { day, sunNow } from '../../state/results.ts';
import { settings } from '../../state/settings.ts';
import { plan, units } from '../../state/yard.ts';
import { picturedDay } from './pictured.ts';

/** A metre on the picture; shadows longer than this many metres stand in the table only. */
const METRE = 30;
const LONGEST = 3.4;
/** Round midday the shadows are short and the hours would stand on each other. [m] */
const NEAREST_HOUR = 0.75;

/** The shadow of a 1 m stick every half hour of the day on the sun bar, turned as the drawing is: to be held against a real stick's. */
export function ShadowClock() {
  const table = day.value.shown?.value;
  if (!table) return null;
  const marks = stickMarks(table);
  const clock = (minutes: number): string => clockWords(minutes, settings.value.clock);
  const shortest = marks.toSorted((a, b) => a.length - b.length)[0];
  const finding = shortest
    ? `On ${dayWords(picturedDay.value)} a stick of 1 m throws its shortest shadow about ${clock(shortest.clock)}: ${formatLength(shortest.length, units.value)} to the ${sideWords(shortest.bearing)}.`
    : `On ${dayWords(picturedDay.value)} the sun does not rise high enough to throw a shadow that could be found.`;
  return (
    <details class="picture">
      <summary>The shadow of a 1 m stick</summary>
      <figure>
        {shortest && <Dial marks={marks} finding={finding} />}
        <figcaption>{finding} Turned as the drawing is. A line each half hour, thicker the hour; the thickest is the time on the sun bar. Rings: 1, 2 and 3 m; longer shadows stand in the table only. Stand a straight stick upright on level ground: if its shadow points elsewhere, north on the plan is wrong.</figcaption>
      </figure>
      <details>
        <summary>The same as a table</summary>
        <table>
          <thead><tr><th scope="col">Time</th><th scope="col">Points to</th><th scope="col">Length</th></tr></thead>
          <tbody>
            {marks.map(({ clock: at, bearing, length }) => <tr key={at}><th scope="row">{clock(at)}</th><td>{sideWords(bearing)}, {bearing.toFixed(0)}°</td><td>{formatLength(length, units.value)}</td></tr>)}
          </tbody>
        </table>
      </details>
    </details>
  );
}

function Dial({ marks, finding }: { readonly marks: readonly StickMark[]; readonly finding: string }) {
  const up = plan.value.site.upBearing ?? DEFAULTS.upBearing;
  const at = (bearing: number, metres: number): readonly [number, number] => {
    const angle = ((bearing - up) * Math.PI) / 180;
    return [metres * METRE * Math.sin(angle), -metres * METRE * Math.cos(angle)];
  };
  const sun = sunNow.value;
  const now = sun && sun.altitude > 0 ? stickMark(sun.clock, sun.azimuth, sun.altitude) : null;
  const drawn = marks.filter(({ length }) => length <= LONGEST);
  const [northX, northY] = at(0, LONGEST + 0.35);
  return (
    <svg class="stick-dial" viewBox="-124 -124 248 248" role="img" aria-label={finding}>
      {[1, 2, 3].map((metres) => (
        <g key={metres}>
          <circle r={metres * METRE} class="dial-ring" />
          <text class="dial-metres" x={at(up + 135, metres)[0]} y={at(up + 135, metres)[1]}>{metres} m</text>
        </g>
      ))}
      <polyline class="dial-tips" points={drawn.map(({ bearing, length }) => at(bearing, length).map((value) => value.toFixed(1)).join(',')).join(' ')} />
      {drawn.map(({ clock, bearing, length }) => {
        const [x, y] = at(bearing, length);
        const [wordX, wordY] = at(bearing, Math.max(NEAREST_HOUR, length + 0.25));
        const full = clock % 60 === 0;
        return (
          <g key={clock}>
            <line class={full ? 'dial-shadow full' : 'dial-shadow'} x2={x} y2={y} />
            {full && <text class="dial-hour" x={wordX} y={wordY + 3}>{clock / 60}</text>}
          </g>
        );
      })}
      {now && now.length <= LONGEST && <line class="dial-now" x2={at(now.bearing, now.length)[0]} y2={at(now.bearing, now.length)[1]} />}
      <circle r="3" class="dial-stick" />
      <text class="dial-north" x={northX} y={northY + 3}>N</text>
    </svg>
  );
}
