import type { Verdict } from '../../load/types.ts';

/** Why a plant gains nothing by shade. */
export type NoNeed = 'no shade needed' | 'too dark';

/** Why a plant gains nothing by shade; `null`: it may gain. */
export function noNeedOf(verdict: Verdict | null): NoNeed | null {
  if (verdict === 'too dark') return 'too dark';
  return verdict === 'no shade needed' || verdict === 'fine once established' ? 'no shade needed' : null;
}
