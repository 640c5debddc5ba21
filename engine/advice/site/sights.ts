import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { seenFrom } from '../compare/seen.ts';
import { eyeReaches, hiddenHeightAt, sightLinesOf } from '../sight/hidden-height.ts';
import { seenBy } from '../sight/hidden-heights.ts';
import type { Progress } from './progress.ts';
import { siteOf } from './site.ts';
import type { SiteOption, SiteRequest, SiteResult } from './types.ts';

/** What an eye of the plan sees of one proposal. */
export interface Sight {
  readonly eye: string;
  /** How much of the cloth shows, from its top down. [m] 0: unseen */
  readonly shows: number;
  /** How tall a thing may stand unseen from there at the middle of the cloth. [m] */
  readonly hiddenHeight: number;
}

/** What a search found, and who sees what of it. */
export interface SiteSeen {
  readonly result: SiteResult;
  /** One list a proposal, in their order. */
  readonly sights: readonly (readonly Sight[])[];
  /** Eyes that look in over everything: from them nothing can be hidden. */
  readonly overAll: readonly string[];
}

/** `siteOf`, hidden from some of the plan's eyes. @param hideFrom their ids; empty: the cloth may be seen */
export function siteSeen(
  plan: Plan,
  request: SiteRequest,
  hideFrom: readonly string[],
  progress: Progress,
): Outcome<SiteSeen> {
  const bound = { ...plan, features: plan.features.filter(({ id, kind }) => kind !== 'eye' || hideFrom.includes(id)) };
  const found = siteOf(bound, { ...request, hidden: hideFrom.length > 0 }, progress);
  if (!found.ok) return found;
  const overAll = eyeReaches(plan, sightLinesOf(plan)).flatMap((reach) => (reach.overAll ? [reach.id] : []));
  return {
    ok: true,
    value: { result: found.value, sights: found.value.options.map((option) => sightsOf(plan, option)), overAll },
  };
}

function sightsOf(plan: Plan, { features, center }: SiteOption): Sight[] {
  return seenFrom(plan, features).map(({ eye, shows }) => ({
    eye,
    shows,
    hiddenHeight: hiddenHeightAt(sightLinesOf(seenBy(plan, eye)), center).height,
  }));
}
