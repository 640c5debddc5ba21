import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { hiddenHeightAt, sightLinesOf } from '../sight/hidden-height.ts';
import { seenBy } from '../sight/hidden-heights.ts';
import { type SeenFrom, seenFrom } from '../sight/seen.ts';
import type { Progress } from './progress.ts';
import { siteOf } from './site.ts';
import type { SiteOption, SiteRequest, SiteResult } from './types.ts';

/** What an eye of the plan sees of one proposal. */
export interface Sight extends SeenFrom {
  /** How tall a thing may stand unseen from there at the middle of the cloth. [m] */
  readonly hiddenHeight: number;
}

/** What a search found, and who sees what of it. */
export interface SiteSeen {
  readonly result: SiteResult;
  /** One list a proposal, in their order. */
  readonly sights: readonly (readonly Sight[])[];
}

/** `siteOf`, and what every eye of the plan sees of what it found. */
export function siteSeen(plan: Plan, request: SiteRequest, progress: Progress): Outcome<SiteSeen> {
  const found = siteOf(plan, request, progress);
  if (!found.ok) return found;
  const hiddenFrom = new Map(
    plan.features.filter(({ kind }) => kind === 'eye').map(({ id }) => [id, sightLinesOf(seenBy(plan, [id]))] as const),
  );
  const sightsOf = ({ features, center }: SiteOption): Sight[] =>
    seenFrom(plan, features).map((seen) => {
      const sight = hiddenFrom.get(seen.eye);
      return { ...seen, hiddenHeight: sight ? hiddenHeightAt(sight, center).height : Infinity };
    });
  return { ok: true, value: { result: found.value, sights: found.value.options.map(sightsOf) } };
}
