import { signal } from '@preact/signals';
import { dayWords, formatStretch } from '../../../../engine/index.ts';
import './pictures.css';
import type { PathStep, SkyPicture as Sky } from '../../../../engine/index.ts';
import type { DomeSide } from '../../../charts/dome.ts';
import { stretchesOf } from '../../../charts/sun-path.ts';
import { clockWords } from '../../../common/words.ts';
import { isStale } from '../../../state/live.ts';
import { weatherInUse } from '../../../state/weather.ts';
import { shapeName } from '../../parts/quantity-words.ts';
import { timesIn } from '../../parts/times.ts';
import { Dome } from './Dome.tsx';
import { picturedDay } from './pictured.ts';
import type { Pictured } from './pictured.ts';

const side = signal<DomeSide>('map');
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
          <Dome sky={sky} told={nearestPath(sky.paths)} side={side.value} finding={findingOf(sky, place)} />
          <figcaption>
            {findingOf(sky, place)} The middle is straight up, the rim the horizon, true north at the top. Sun paths of
            the 21st of each month: thick where the sun is more often hot than not, unbroken where it reaches {place},
            thin and broken where something hides it; a dot each full hour.
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
  const up = upOf(path.steps);
  const lit = stretchesOf(path.steps).filter((stretch) => stretch.lit);
  if (lit.length === 0) return `On ${dayWords(path.monthDay)} no sun reaches ${place}.`;
  const hidden = stretchesOf(path.steps)
    .filter((stretch) => !stretch.lit)
    .toSorted((a, b) => b.steps.length - a.steps.length)[0];
  const stretches = lit.map(({ steps }) => spanWords(steps, up)).join(', ');
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
function upOf(steps: readonly PathStep[]): { readonly from: string; readonly to: string } {
  const half = steps.length > 1 ? (steps[1].clock - steps[0].clock) / 2 : 0;
  return {
    from: clockWords(steps[0].clock - half, '24'),
    to: clockWords(steps[steps.length - 1].clock + half, '24'),
  };
}

/** @param up the whole path, from sunrise to sunset */
function spanWords(steps: readonly PathStep[], up: ReturnType<typeof upOf>): string {
  return timesIn(formatStretch(upOf(steps), 'metric', up));
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
                <td>{spanWords(stretch.steps, upOf(steps))}</td>
                <td>{stretch.lit ? 'reaches it' : `behind ${stretch.behind.map(shapeName).join(', ')}`}</td>
              </tr>
            )),
          )}
        </tbody>
      </table>
    </details>
  );
}
