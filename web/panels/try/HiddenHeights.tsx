import { useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { formatLength, LEAST_USEFUL, openRing, pointInRing, TALLEST_SAID, formatShare } from '../../../engine/index.ts';
import type { PlanPoint, HiddenHeights } from '../../../engine/index.ts';
import { contoursOf } from '../../charts/contours.ts';
import { softGround } from '../../charts/soft-ground.ts';
import { calledOf, calledById } from '../../map/drawing/feature-edits.ts';
import { barredRings, hiddenHeightLines } from '../../map/laid-on/overlays.ts';
import { plan, units } from '../../state/yard.ts';
import { hiddenAnswer, hiddenFrom, hiddenShown } from '../parts/tried.ts';
import { topMarks } from './marked.ts';

/** Heights that are drawn as lines. [m] */
const LEVELS = [1, 1.5, 1.8, 2, 2.2, 2.5, 3, 4];

/** How tall a thing may stand and stay unseen: lines on the drawing, and what cannot be hidden, said. */
export function HiddenHeights() {
  useEffect(() => () => clear(), []);
  useSignalEffect(draw);
  const eyes = plan.value.features.filter(({ kind }) => kind === 'eye');
  if (eyes.length === 0) return null;
  const answer = hiddenShown.value ? hiddenAnswer.value.shown?.value : undefined;
  return (
    <section aria-label="What stays hidden">
      <label class="tick">
        <input
          type="checkbox"
          checked={hiddenShown.value}
          onChange={(event) => (hiddenShown.value = event.currentTarget.checked)}
        />
        Draw how tall a thing may stand unseen
      </label>{' '}
      <select
        class="word"
        aria-label="Unseen from"
        value={hiddenFrom.value ?? ''}
        onChange={(event) => (hiddenFrom.value = event.currentTarget.value || null)}
      >
        <option value="">from every onlooker</option>
        {eyes.map((eye) => (
          <option key={eye.id} value={eye.id}>
            from: {calledOf(eye)}
          </option>
        ))}
      </select>
      {answer && (
        <p>
          Lines: how tall a thing may stand there and not be seen. Hatched: it cannot be hidden.{' '}
          {shareWords(answer.bare)}
        </p>
      )}
      {answer?.tops.map(({ id, height, hidden }) => (
        <p key={id}>{topWords(calledById(id), height, hidden)}</p>
      ))}
      {eyes.length > 1 &&
        answer?.reaches
          .filter(({ bare }) => bare > 0)
          .map(({ id, bare }) => (
            <p key={id} class="said">
              {calledById(id)}: on {formatShare(bare)} of the ground nothing can be hidden from there.
            </p>
          ))}
    </section>
  );
}

function draw(): void {
  const answer = hiddenAnswer.value.shown?.value;
  if (!answer || !hiddenShown.value) return clear();
  barredRings.value = softGround(bareGround(answer), answer.grid.cell);
  topMarks.value = answer.tops.map(({ at, height, hidden }) => ({
    at,
    label: height > hidden ? '!' : '✓',
  }));
  // Beyond what is said a height is only "over" it; lines need a number.
  const heights = answer.heights.map((height) => Math.min(height, TALLEST_SAID + 1));
  hiddenHeightLines.value = contoursOf(answer.grid, heights, LEVELS).map(({ value, lines }) => ({
    lines,
    label: formatLength(value, units.value),
  }));
}

function clear(): void {
  hiddenHeightLines.value = [];
  barredRings.value = [];
  topMarks.value = [];
}

/** Middles of the cells in the yard where nothing of use can be hidden. */
function bareGround({ grid, heights }: HiddenHeights): PlanPoint[] {
  const boundary = openRing(plan.value.site.boundary);
  const middles: PlanPoint[] = [];
  for (let index = 0; index < heights.length; index++) {
    const at: PlanPoint = [
      grid.x0 + ((index % grid.columns) + 0.5) * grid.cell,
      grid.y0 + (Math.floor(index / grid.columns) + 0.5) * grid.cell,
    ];
    if (heights[index] < LEAST_USEFUL && pointInRing(at, boundary)) middles.push(at);
  }
  return middles;
}

/** "Roof over the lemon: its corner that shows most stands 2.60 m; 1.93 m is hidden there, so 0.67 m shows." */
function topWords(name: string, height: number, hidden: number): string {
  const length = (metres: number): string => formatLength(metres, units.value);
  if (height <= hidden)
    return (
      `${name}: not seen. Its corner nearest to being seen stands ${length(height)}; hidden there ` +
      `${hidden > TALLEST_SAID ? `over ${length(TALLEST_SAID)}` : `up to ${length(hidden)}`}.`
    );
  return (
    `${name}: seen. Its corner that shows most stands ${length(height)}; ` +
    `${hidden < LEAST_USEFUL ? 'nothing can be hidden there' : `only ${length(hidden)} is hidden there`}, so ` +
    `${length(height - hidden)} shows.`
  );
}

function shareWords(bare: number): string {
  if (bare === 1) return 'Nothing can be hidden anywhere in the yard.';
  return bare === 0
    ? 'Everywhere in the yard something of use can be hidden.'
    : `On ${formatShare(bare)} of the ground a thing cannot be hidden.`;
}
