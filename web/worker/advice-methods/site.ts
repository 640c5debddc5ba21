import { eyeReaches, hiddenHeightAt, seenFrom, sightLinesOf, siteOf } from '../../../engine/index.ts';
import type { Outcome, Plan, SiteOption, SiteRequest, SiteResult } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

export interface SiteArgs {
  readonly plan: Plan;
  readonly request: SiteRequest;
  /** Ids of the eyes that the cloth must be hidden from; empty: it may be seen. */
  readonly hideFrom: readonly string[];
}

/** What an eye of the plan sees of one proposal. */
export interface Sight {
  readonly eye: string;
  /** How much of the cloth shows, from its top down. [m] 0: unseen */
  readonly shows: number;
  /** How tall a thing may stand unseen from there at the middle of the cloth. [m] */
  readonly hiddenHeight: number;
}

/** `site --json`, and who sees what of it. */
export interface SiteAnswer {
  readonly result: SiteResult;
  /** One list a proposal, in their order. */
  readonly sights: readonly (readonly Sight[])[];
  /** Eyes that look in over everything: from them nothing can be hidden. */
  readonly overAll: readonly string[];
}

/** The search is called off by ending the worker. */
export function site({ plan, request, hideFrom }: SiteArgs, task: Task): Outcome<SiteAnswer> {
  const bound = { ...plan, features: plan.features.filter(({ id, kind }) => kind !== 'eye' || hideFrom.includes(id)) };
  const found = siteOf(bound, { ...request, hidden: hideFrom.length > 0, weather: task.weather }, (done, what) =>
    task.progress(done, what),
  );
  if (!found.ok) return found;
  const overAll = eyeReaches(plan, sightLinesOf(plan))
    .filter((reach) => reach.overAll)
    .map(({ id }) => id);
  return {
    ok: true,
    value: { result: found.value, sights: found.value.options.map((option) => sightsOf(plan, option)), overAll },
  };
}

function sightsOf(plan: Plan, { features, center }: SiteOption): Sight[] {
  return seenFrom(plan, features).map(({ eye, shows }) => {
    const alone = { ...plan, features: plan.features.filter(({ id, kind }) => kind !== 'eye' || id === eye) };
    return { eye, shows, hiddenHeight: hiddenHeightAt(sightLinesOf(alone), center).height };
  });
}
