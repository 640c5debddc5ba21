import { dayWords, MONTHS } from '../../../../engine/index.ts';
import type { PathStep, SkyPicture as Sky } from '../../../../engine/index.ts';
import './pictures.css';
import { signal } from '@preact/signals';
import { clockWords, hourNumber } from '../../../common/words.ts';
import { domePoint, HORIZON, linePath, loopsPath } from '../../../charts/dome.ts';
import type { DomeSide } from '../../../charts/dome.ts';
import { labelsOf } from '../../../charts/dome-labels.ts';
import type { SkyPoint } from '../../../../engine/index.ts';
import { fullHoursOf, stretchesOf } from '../../../charts/sun-path.ts';
import { isStale } from '../../../state/live.ts';
import { settings } from '../../../state/settings.ts';
import { sunNow } from '../../../state/results.ts';
import { weatherInUse } from '../../../state/weather.ts';
import { picturedDay } from './pictured.ts';
import type { Pictured } from './pictured.ts';
import { shapeName } from '../../parts/quantity-words.ts';

const side = signal<DomeSide>('map');
const QUARTERS = [
  ['North', 0],
  ['East', 90],
  ['South', 180],
  ['West', 270],
] as const;

/** The whole sky over a spot: what stands before it, and how the sun passes behind that through the season. */
export function SkyPicture({ pictured, place }: { readonly pictured: Pictured; readonly place: string }) {
  const live = pictured.sky.value;
  const sky = live.shown?.value;
  return (
    <details class="picture" onToggle={({ currentTarget }) => (pictured.skyOpen.value = currentTarget.open)}>
      <summary>The sky from {place}</summary>
      {live.problems.map(({ message }) => (
        <p key={message} role="alert">
          {message}
        </p>
      ))}
      {!sky && live.working && <p>Looking up…</p>}
      {sky && live.problems.length === 0 && (
        <figure class={isStale(live) ? 'sky-picture out-of-date' : 'sky-picture'}>
          <div class="sky-side">
            <button type="button" aria-pressed={side.value === 'map'} onClick={() => (side.value = 'map')}>
              As on the map, east right
            </button>
            <button type="button" aria-pressed={side.value === 'sky'} onClick={() => (side.value = 'sky')}>
              Looking up, east left
            </button>
          </div>
          <Dome sky={sky} finding={findingOf(sky, place)} />
          <figcaption>
            {findingOf(sky, place)} The middle is straight up, the rim the horizon, true north at the top. Sun paths of
            the 21st of each month: thick where the sun is more often harmful than not, unbroken where it reaches{' '}
            {place}, thin and broken where something hides it; a dot each full hour.
            {weatherInUse.value && ' How often is reckoned after the months of the weather file, not after its hours.'}
          </figcaption>
          <PathTable sky={sky} place={place} />
        </figure>
      )}
    </details>
  );
}

/** One sentence of the day nearest to the one on the sun bar. */
function findingOf({ paths }: Sky, place: string): string {
  const path = nearestPath(paths);
  if (!path) return '';
  const lit = stretchesOf(path.steps).filter((stretch) => stretch.lit);
  if (lit.length === 0) return `On ${dayWords(path.monthDay)} no sun reaches ${place}.`;
  const hidden = stretchesOf(path.steps)
    .filter((stretch) => !stretch.lit)
    .toSorted((a, b) => b.steps.length - a.steps.length)[0];
  const stretches = lit.map(({ steps }) => spanWords(steps)).join(', ');
  return (
    `On ${dayWords(path.monthDay)} the sun reaches ${place} ` +
    `${stretches}${hidden?.behind.length ? `; most of the rest it is behind ${shapeName(hidden.behind[0])}` : ''}.`
  );
}

function nearestPath(paths: Sky['paths']): Sky['paths'][number] | null {
  const dayOfYear = (monthDay: string): number => Number(monthDay.slice(0, 2)) * 30.4 + Number(monthDay.slice(3));
  const away = ({ monthDay }: { readonly monthDay: string }): number => {
    const days = Math.abs(dayOfYear(monthDay) - dayOfYear(picturedDay.value));
    return Math.min(days, 365 - days);
  };
  return paths.toSorted((a, b) => away(a) - away(b))[0] ?? null;
}

/** From where the first step begins to where the last one ends: a step's clock is its middle. */
function spanWords(steps: readonly PathStep[]): string {
  const half = steps.length > 1 ? (steps[1].clock - steps[0].clock) / 2 : 0;
  return (
    `${clockWords(steps[0].clock - half, settings.value.clock)} to ` +
    `${clockWords(steps[steps.length - 1].clock + half, settings.value.clock)}`
  );
}

function Dome({ sky, finding }: { readonly sky: Sky; readonly finding: string }) {
  const sun = sunNow.value;
  const direction = ({ azimuth, altitude }: { readonly azimuth: number; readonly altitude: number }): SkyPoint => [
    azimuth,
    altitude,
  ];
  const told = nearestPath(sky.paths);
  const months = monthLabels(sky.paths);
  const labels = labelsOf(
    sky.silhouettes.map(({ id, parts }) => ({ name: shapeName(id), parts })),
    side.value,
  );
  return (
    <svg class="dome" viewBox="-124 -120 248 240" role="img" aria-label={finding}>
      <defs>
        <pattern id="weave" width="4" height="4" patternUnits="userSpaceOnUse">
          <path d="M0 2H4M2 0V4" class="weave-thread" />
        </pattern>
        <pattern id="stipple" width="4" height="4" patternUnits="userSpaceOnUse">
          <circle cx="1" cy="1" r="0.8" class="stipple-dot" />
          <circle cx="3" cy="3" r="0.8" class="stipple-dot" />
        </pattern>
      </defs>
      <circle r={HORIZON} class="dome-sky" />
      {sky.silhouettes.map(({ id, kind, parts }) => (
        <g key={id} class={`silhouette ${kind}`}>
          {(['outline', 'body'] as const).map((layer) =>
            parts.map((loops, k) => (
              <path key={layer + k} class={layer} d={loopsPath(loops, side.value)} fill-rule="evenodd" />
            )),
          )}
        </g>
      ))}
      {[30, 60].map((altitude) => (
        <circle key={altitude} r={HORIZON * (1 - altitude / 90)} class="dome-ring" />
      ))}
      {sky.paths.map((path) => (
        <g key={path.monthDay}>
          {runsOf(path.steps).map(({ name, points }, k) => (
            <g key={k}>
              <path class="sun-edge" d={linePath(points, side.value)} />
              <path class={`sun-path ${name}`} d={linePath(points, side.value)} />
            </g>
          ))}
          {fullHoursOf(path.steps).map((full) => {
            const [x, y] = domePoint(direction(full), side.value);
            return (
              <g key={full.hour}>
                <circle class="hour-dot" cx={x} cy={y} r={path === told ? 1.8 : 1.1} />
                {path === told && full.hour % 2 === 0 && (
                  <text class="hour-name" x={x} y={y - 5}>
                    {hourNumber(full.hour, settings.value.clock)}
                  </text>
                )}
              </g>
            );
          })}
        </g>
      ))}
      {labels.map(({ name, x, y }) => (
        <text key={name} class="shape-name" x={x} y={y}>
          {name}
        </text>
      ))}
      {sun && sun.altitude > 0 && (
        <circle
          class="sun-disc"
          cx={domePoint(direction(sun), side.value)[0]}
          cy={domePoint(direction(sun), side.value)[1]}
          r="4"
        />
      )}
      <circle r={HORIZON} class="dome-rim" />
      {QUARTERS.map(([word, bearing]) => {
        const [x, y] = domePoint([bearing, -8], side.value);
        const east = Math.abs(x) > 50;
        return (
          <text
            key={word}
            class="quarter"
            x={east ? Math.sign(x) * 111 : x}
            y={y + 3}
            transform={east ? `rotate(${x > 0 ? 90 : -90} ${Math.sign(x) * 111} ${y})` : undefined}
          >
            {word}
          </text>
        );
      })}
      {months.map(({ name, azimuth }) => {
        const [x, y] = domePoint([azimuth, -4], side.value);
        return (
          <text key={name} class="month-name" x={x} y={y + 2} text-anchor={x > 0 ? 'start' : 'end'}>
            {name}
          </text>
        );
      })}
    </svg>
  );
}

/** Runs of a path that look alike, each ending where the next begins. */
function runsOf(steps: readonly PathStep[]): { name: string; points: SkyPoint[] }[] {
  const runs: { name: string; points: SkyPoint[] }[] = [];
  for (const { azimuth, altitude, share, hot } of steps) {
    const name = `${share >= 0.5 ? 'lit' : 'hidden'} ${hot ? 'hot' : ''}`;
    const last = runs.at(-1);
    if (last) last.points.push([azimuth, altitude]);
    if (last?.name !== name) runs.push({ name, points: [[azimuth, altitude]] });
  }
  return runs;
}

/** Months at the rim where their sun rises, those that rise close together in one word. */
function monthLabels(paths: Sky['paths']): { name: string; azimuth: number }[] {
  const rises = paths
    .flatMap(({ monthDay, steps }) =>
      steps.length > 0
        ? [{ name: MONTHS[Number(monthDay.slice(0, 2)) - 1].slice(0, 3), azimuth: steps[0].azimuth }]
        : [],
    )
    .toSorted((a, b) => a.azimuth - b.azimuth);
  const labels: { name: string; azimuth: number; last: number }[] = [];
  for (const { name, azimuth } of rises) {
    const near = labels.at(-1);
    if (near && azimuth - near.last < 5) {
      near.name += ` ${name}`;
      near.last = azimuth;
    } else labels.push({ name, azimuth, last: azimuth });
  }
  return labels;
}

/** The same in words: when the sun reaches the spot, and what hides it in between. */
function PathTable({ sky, place }: { readonly sky: Sky; readonly place: string }) {
  return (
    <details>
      <summary>The same as a table</summary>
      <table>
        <caption class="unseen">When the sun reaches {place} on the 21st of each month, and what hides it</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            <th scope="col">From – to</th>
            <th scope="col">Sun</th>
          </tr>
        </thead>
        <tbody>
          {sky.paths.flatMap(({ monthDay, steps }) =>
            stretchesOf(steps).map((stretch, k) => (
              <tr key={monthDay + k}>
                <th scope="row">{dayWords(monthDay)}</th>
                <td>{spanWords(stretch.steps)}</td>
                <td>{stretch.lit ? 'reaches it' : `behind ${stretch.behind.map(shapeName).join(', ')}`}</td>
              </tr>
            )),
          )}
        </tbody>
      </table>
    </details>
  );
}
