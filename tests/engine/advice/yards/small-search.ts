import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest, SiteResult } from '../../../../engine/advice/site/types.ts';
import type { Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';

/** Roofs and screens of one size in coarse steps: enough where a yard asks for cloth or for none. */
export const SMALL: SiteRequest = {
  kinds: ['roof', 'screen'],
  sizes: [{ length: 2, width: 2 }],
  step: 0.5,
  turnStep: 45,
};

export function sited(plan: Plan, request: SiteRequest = {}): SiteResult {
  return valueOf(siteOf(plan, { ...SMALL, ...request }));
}
