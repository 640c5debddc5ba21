import { useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { formatLength, LEAST_USEFUL, TALLEST_SAID } from '../../../engine/index.ts';
import { contoursOf } from '../../charts/contours.ts';
import { calledOf, nameOf } from '../../map/feature-edits.ts';
import { hiddenHeightLines } from '../../map/overlays.ts';
import { plan, units } from '../../state/yard.ts';
import { hiddenAnswer, hiddenFrom, hiddenShown } from './tried.ts';
import { percentWords } from './words.ts';

/** Heights that are drawn as lines. [m] */
const LEVELS = [1, 1.5, 1.8, 2, 2.2, 2.5, 3, 4];

/** How tall a thing may stand and stay unseen: lines on the drawing, and what cannot be hidden, said. */
export function HiddenHeights() {
  useEffect(() => () => {
    hiddenHeightLines.value = [];
  }, []);
  useSignalEffect(() => {
    const answer = hiddenAnswer.value.shown?.value;
    if (!answer || !hiddenShown.value) {
      hiddenHeightLines.value = [];
      return;
    }
    // Beyond what is said a height is only "over" it; lines need a number.
    const heights = answer.heights.map((height) => Math.min(height, TALLEST_SAID + 1));
    hiddenHeightLines.value = contoursOf(answer.grid, heights, LEVELS).map(({ value, lines }) => ({ lines, label: formatLength(value, units.value) }));
  });
  const eyes = plan.value.features.filter(({ kind }) => kind === 'eye');
  if (eyes.length === 0) return null;
  const answer = hiddenShown.value ? hiddenAnswer.value.shown?.value : undefined;
  return (
    <section aria-label="What stays hidden">
      <h2>What stays hidden</h2>
      <label class="tick"><input type="checkbox" checked={hiddenShown.value} onChange={(event) => (hiddenShown.value = event.currentTarget.checked)} />Draw how tall a thing may stand unseen</label>{' '}
      <select class="word" aria-label="Unseen from" value={hiddenFrom.value ?? ''} onChange={(event) => (hiddenFrom.value = event.currentTarget.value || null)}>
        <option value="">from every onlooker</option>
        {eyes.map((eye) => <option key={eye.id} value={eye.id}>from: {calledOf(eye)}</option>)}
      </select>
      {answer && <p>{shareWords(answer.heights)}</p>}
      {answer?.reaches.filter(({ overAll }) => overAll).map(({ id }) => (
        <p key={id} class="said">{nameOf(id)}: looks in over every wall and roof between. Almost nothing can be hidden from there: a screen does not help, only a tree or a house.</p>
      ))}
    </section>
  );
}

function shareWords(heights: Float64Array): string {
  const bare = heights.filter((height) => height < LEAST_USEFUL).length / heights.length;
  if (bare === 1) return 'Nothing can be hidden anywhere in the yard.';
  return bare === 0 ? 'Everywhere in the yard something of use can be hidden.' : `On ${percentWords(bare)} of the ground a thing cannot be hidden.`;
}
