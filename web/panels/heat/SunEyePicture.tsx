import './pictures.css';
import { signal } from '@preact/signals';
import { clockWords, dayWords } from '../../app/words.ts';
import { HEAT_RAMP } from '../../charts/ramp.ts';
import type { Seen } from '../../charts/beam-frame.ts';
import type { SunEye } from '../../charts/sun-eye.ts';
import { isStale, liveAnswer } from '../../state/live.ts';
import { reckonedPlan } from '../../state/reckoned.ts';
import { heat, sunNow } from '../../state/results.ts';
import { settings } from '../../state/settings.ts';
import { selection, shownOptions, stage } from '../../state/view.ts';
import { picturedDay } from './pictured.ts';
import { shapeName } from './words.ts';

const open = signal(false);

const eye = liveAnswer('sunEyeOf', () => {
  const sun = open.value && stage.value === 'heat' ? sunNow.value : null;
  return sun && { plan: reckonedPlan.value, options: shownOptions.value, azimuth: sun.azimuth, altitude: sun.altitude, monthDay: picturedDay.value };
});

/** Lit less than this, a plant counts as unseen. */
const SEEN = 0.1;
const MARGIN = 0.5;

/** The yard looked at along the beam at the time of the sun bar: what shows is lit. */
export function SunEyePicture() {
  const { shown, problems } = eye.value;
  const sun = sunNow.value;
  return (
    <details class="picture" onToggle={({ currentTarget }) => (open.value = currentTarget.open)}>
      <summary>The yard as the sun sees it</summary>
      {problems.map(({ message }) => <p key={message} role="alert">{message}</p>)}
      {shown && sun && (shown.value === null ? <p>{momentWords(sun.clock)}. The sun does not see the yard now: it is down or behind the land. Move the time on the sun bar.</p> : (
        <figure class={isStale(eye.value) ? 'out-of-date' : undefined}>
          <Picture seen={shown.value} harm={sun.harm} finding={findingOf(shown.value, sun.clock)} />
          <figcaption>{findingOf(shown.value, sun.clock)} Looked at along the beam there is no shadow: what shows is lit. A plant with a thick outline is over its limit on the heatwave day and the sun is harmful now; the ground’s colour is how harmful, {Math.round(sun.harm * 100)} % of a full hour.</figcaption>
          <LitTable seen={shown.value} />
        </figure>
      ))}
    </details>
  );
}

function momentWords(clock: number): string {
  return `${clockWords(clock, settings.value.clock)}, ${dayWords(picturedDay.value)}`;
}

function findingOf({ lit }: SunEye, clock: number): string {
  const seen = lit.filter(({ share }) => share >= SEEN).length;
  const said = lit.length === 0 ? 'There is no plant for the sun to see.' : `The sun sees ${seen === lit.length ? 'all' : seen} of your ${lit.length} ${lit.length === 1 ? 'plant' : 'plants and beds'}.`;
  return `${momentWords(clock)}. ${said}`;
}

function Picture({ seen, harm, finding }: { readonly seen: SunEye; readonly harm: number; readonly finding: string }) {
  const points = [...seen.ground, ...seen.painted.flatMap(({ faces }) => faces.flatMap(({ ring }) => ring))];
  const right = points.map(([x]) => x);
  const up = points.map(([, y]) => y);
  const box = [Math.min(...right) - MARGIN, -Math.max(...up) - MARGIN, Math.max(...right) - Math.min(...right) + 2 * MARGIN, Math.max(...up) - Math.min(...up) + 2 * MARGIN];
  const harmed = new Set((heat.value.shown?.value.plants ?? []).filter(({ verdict }) => harm >= 0.5 && (verdict === 'will burn' || verdict === 'at risk')).map(({ id }) => id));
  const shares = new Map(seen.lit.map(({ id, share }) => [id, share]));
  return (
    <svg class="sun-eye" viewBox={box.map((value) => value.toFixed(2)).join(' ')} role="img" aria-label={finding}>
      <defs>
        <pattern id="eye-weave" width="0.24" height="0.24" patternUnits="userSpaceOnUse"><path d="M0 0.12H0.24M0.12 0V0.24" class="thread" /></pattern>
        <pattern id="eye-leaves" width="0.3" height="0.3" patternUnits="userSpaceOnUse"><circle cx="0.08" cy="0.08" r="0.07" class="leaf" /><circle cx="0.23" cy="0.23" r="0.07" class="leaf" /></pattern>
        <pattern id="eye-hatch" width="0.3" height="0.3" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M0 0V0.3" class="thread" /></pattern>
      </defs>
      <polygon class="eye-ground" points={pointsOf(seen.ground)} style={{ fill: HEAT_RAMP[Math.min(15, Math.floor(harm * 16))] }} />
      {seen.painted.map(({ id, kind, faces, passes }, k) => (
        <g key={k} class={`eye-${kind}${harmed.has(id) && kind === 'plant' && (shares.get(id) ?? 0) >= SEEN ? ' harmed' : ''}${selection.value.includes(id) ? ' chosen' : ''}`}>
          {faces.map(({ ring, level }, face) => (
            <g key={face}>
              <polygon class={level ? 'eye-face level' : 'eye-face'} points={pointsOf(ring)} style={{ fillOpacity: kind === 'cloth' || kind === 'tree' ? 1 - passes : 1 }} />
              <polygon class="eye-texture" points={pointsOf(ring)} />
            </g>
          ))}
          <title>{shapeName(id)}</title>
        </g>
      ))}
    </svg>
  );
}

function pointsOf(ring: readonly Seen[]): string {
  return ring.map(([x, y]) => `${x.toFixed(3)},${(-y).toFixed(3)}`).join(' ');
}

function LitTable({ seen }: { readonly seen: SunEye }) {
  if (seen.lit.length === 0) return null;
  return (
    <details>
      <summary>The same as a table</summary>
      <table>
        <thead><tr><th scope="col">Plant</th><th scope="col">Lit now</th></tr></thead>
        <tbody>
          {seen.lit.toSorted((a, b) => b.share - a.share).map(({ id, share }) => (
            <tr key={id}><th scope="row">{shapeName(id)}</th><td>{Math.round(share * 100)} %</td></tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
