import { useEffect } from 'preact/hooks';
import { formatPerArea } from '../../../engine/index.ts';
import { calledById } from '../../map/drawing/feature-edits.ts';
import { units } from '../../state/yard.ts';
import { followCloth, rough } from './live-trial.ts';
import { harmWords, percentWords } from '../../common/figures.ts';

/** Less than this is spared nobody. [K·h/day] */
const TELLING = 0.05;

/** What the cloth in hand does where it is now, each number rough until the full answer comes. */
export function RoughEffect() {
  useEffect(followCloth, []);
  const now = rough.value;
  if (now === null) return null;
  const touched = now.plants.filter(({ spared }) => Math.abs(spared) >= TELLING);
  return (
    <p class="rough-effect" aria-busy="true">
      ~ spares {harmWords(now.spared)} a hot day ({percentWords(now.sparedShare)}),{' '}
      {formatPerArea(now.perArea, 'K·h', units.value)} of cloth.
      {touched.map(({ id, verdict }) => ` ${calledById(id)}: ~ ${verdict}.`).join('')}
    </p>
  );
}
