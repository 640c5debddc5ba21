import type { Verdict } from '../../../engine/index.ts';

/** How a plant stands, in its verdict. */
export function Stand({ verdict }: { readonly verdict: Verdict | null }) {
  return <span class={verdict === 'will burn' ? 'stand burns' : 'stand'}>{verdict ?? 'kind not known'}</span>;
}
