import type { Plan } from '../../plan/types.ts';
import { hiddenHeightAt, sightLinesOf } from '../sight/hidden-height.ts';
import { seenBy } from '../sight/hidden-heights.ts';
import { type SeenFrom, seenFrom } from '../sight/seen.ts';
import type { SiteOption, SiteResult } from './types.ts';

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

/** What every eye of the plan sees of what a search found. */
export function siteSeen(plan: Plan, result: SiteResult): SiteSeen {
  const hiddenFrom = new Map(
    plan.features.filter(({ kind }) => kind === 'eye').map(({ id }) => [id, sightLinesOf(seenBy(plan, [id]))] as const),
  );
  const sightsOf = ({ features, center }: SiteOption): Sight[] =>
    seenFrom(plan, features).map((seen) => {
      const sight = hiddenFrom.get(seen.eye);
      return { ...seen, hiddenHeight: sight ? hiddenHeightAt(sight, center).height : Infinity };
    });
  return { result, sights: result.options.map(sightsOf) };
}
