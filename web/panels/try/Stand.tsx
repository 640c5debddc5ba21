import type { Verdict } from '../../../engine/index.ts';
import { harmWords } from '../../common/figures.ts';

interface Props {
  readonly verdict: Verdict | null;
  readonly harm: number | null;
}

/** How a plant stands: its verdict and its heat over the limit. */
export function Stand({ verdict, harm }: Props) {
  return (
    <>
      <span class={verdict === 'will burn' ? 'stand burns' : 'stand'}>{verdict ?? 'kind not known'}</span>{' '}
      <span class="quiet">{harmWords(harm)}</span>
    </>
  );
}
