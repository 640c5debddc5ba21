import './pictures.css';
import { signal } from '@preact/signals';
import { dayWords, formatShare } from '../../../../engine/index.ts';
import type { SunEye } from '../../../../engine/index.ts';
import { clockWords } from '../../../common/words.ts';
import { shownClock } from '../../../state/clock.ts';
import { isStale, liveAnswer } from '../../../state/live.ts';
import { reckonedPlan } from '../../../state/reckoned.ts';
import { day, sunNow } from '../../../state/results.ts';
import { shownOptions, stage } from '../../../state/view.ts';
import { shapeName } from '../../parts/quantity-words.ts';
import { EyePatterns, EyeView, isSeen } from './EyeView.tsx';
import { picturedDay } from './pictured.ts';

const open = signal(false);
const stripOpen = signal(false);

const eye = liveAnswer('sunEyes', () => {
  const sun = open.value && stage.value === 'heat' ? sunNow.value : null;
  return (
    sun && {
      plan: reckonedPlan.value,
      options: shownOptions.value,
      suns: [{ azimuth: sun.azimuth, altitude: sun.altitude }],
      monthDay: picturedDay.value,
    }
  );
});

/**
 * Stills of a day: the last six even hours of the clock at which the sun stands higher than this, since the late ones
 * do the harm. [°]
 */
const STILLS = 6;
const LOWEST = 5;

interface Still {
  readonly clock: number;
  readonly harm: number;
  readonly azimuth: number;
  readonly altitude: number;
}

const strip = liveAnswer('sunEyes', () => {
  const stills = open.value && stripOpen.value && stage.value === 'heat' ? stillsOf() : [];
  return stills.length === 0
    ? null
    : { plan: reckonedPlan.value, options: shownOptions.value, suns: stills, monthDay: picturedDay.value };
});

function stillsOf(): Still[] {
  const table = day.value.shown?.value;
  if (!table) return [];
  const minutes = Array.from(table.clock.keys()).filter(
    (minute) => table.clock[minute] % 120 === 0 && table.altitude[minute] > LOWEST,
  );
  return minutes.slice(-STILLS).map((minute) => ({
    clock: table.clock[minute],
    harm: table.harm[minute],
    azimuth: table.azimuth[minute],
    altitude: table.altitude[minute],
  }));
}

/** The yard looked at along the beam at the time of the sun bar: what shows is lit. */
export function SunEyePicture() {
  const { shown, problems } = eye.value;
  const sun = sunNow.value;
  const [seen] = shown?.value ?? [];
  return (
    <details
      class="picture"
      onToggle={({ currentTarget, target }) => target === currentTarget && (open.value = currentTarget.open)}
    >
      <summary>The yard as the sun sees it</summary>
      {problems.map(({ message }) => (
        <p key={message} role="alert">
          {message}
        </p>
      ))}
      <EyePatterns />
      {sun && seen === null && (
        <p>
          {momentWords(sun.clock)}. The sun does not see the yard now: it is down or behind the land. Move the time on
          the sun bar.
        </p>
      )}
      {sun && seen && (
        <figure class={isStale(eye.value) ? 'out-of-date' : undefined}>
          <EyeView seen={seen} harm={sun.harm} finding={findingOf(seen, sun.clock)} />
          <figcaption>
            {findingOf(seen, sun.clock)} Looked at along the beam there is no shadow: what shows is lit. A plant with a
            thick outline is over its limit on the heatwave day and the sun is hot now; the ground’s colour is how hot,
            {formatShare(sun.harm)} of a full hour.
          </figcaption>
          <LitTable seen={seen} />
        </figure>
      )}
      <Strip />
    </details>
  );
}

/** The day in six stills, small enough for a line of paper. */
function Strip() {
  const { shown } = strip.value;
  const stills = (shown?.args.suns ?? []) as readonly Still[];
  return (
    <details
      onToggle={({ currentTarget, target }) => target === currentTarget && (stripOpen.value = currentTarget.open)}
    >
      <summary>The day in {STILLS} stills, also for paper</summary>
      {!shown && <p>Looking along the beam…</p>}
      <div class={isStale(strip.value) ? 'eye-strip out-of-date' : 'eye-strip'}>
        {stills.map(({ clock, harm }, k) => {
          const seen = shown?.value[k];
          return (
            <figure key={clock}>
              {seen && <EyeView seen={seen} harm={harm} finding={findingOf(seen, clock)} />}
              <figcaption>
                <b>{clockWords(clock, shownClock.value)}</b> {seen ? litWords(seen) : 'The sun is behind the land.'}
              </figcaption>
            </figure>
          );
        })}
      </div>
    </details>
  );
}

function momentWords(clock: number): string {
  return `${clockWords(clock, shownClock.value)}, ${dayWords(picturedDay.value)}`;
}

function findingOf(seen: SunEye, clock: number): string {
  return `${momentWords(clock)}. ${litWords(seen)}`;
}

function litWords({ lit }: SunEye): string {
  const seen = lit.filter(isSeen).length;
  if (lit.length === 0) return 'There is no plant for the sun to see.';
  if (lit.length === 1) return `The sun ${seen === 1 ? 'sees' : 'does not see'} your one plant or bed.`;
  return `The sun sees ${seen === lit.length ? 'all' : seen} of your ${lit.length} plants and beds.`;
}

function LitTable({ seen }: { readonly seen: SunEye }) {
  if (seen.lit.length === 0) return null;
  return (
    <details>
      <summary>The same as a table</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Plant</th>
            <th scope="col">Lit now</th>
          </tr>
        </thead>
        <tbody>
          {seen.lit
            .toSorted((a, b) => b.share - a.share)
            .map(({ id, share }) => (
              <tr key={id}>
                <th scope="row">{shapeName(id)}</th>
                <td>{formatShare(share)}</td>
              </tr>
            ))}
        </tbody>
      </table>
    </details>
  );
}
