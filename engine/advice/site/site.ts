import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import type { SiteProgress, SiteRequest, SiteResult } from './site-types.ts';

/**
 * Where cloth would spare the plants most: the search as steps, so that a worker can let messages in between them and
 * stop asking. Each step takes a few milliseconds.
 */
export function* siteSteps(plan: Plan, request: SiteRequest = {}): Generator<SiteProgress, Outcome<SiteResult>, void> {
  yield { done: 0, what: `${plan.features.length}${String(request.count)}` };
  return { ok: false, problems: [] };
}

/** The whole search in one go. @param progress called at every step; where it gives false the search stops and says so */
export function siteOf(plan: Plan, request: SiteRequest = {}, progress?: (step: SiteProgress) => boolean | void): Outcome<SiteResult> {
  const steps = siteSteps(plan, request);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (progress?.(step.value) === false) return { ok: false, problems: [{ pointer: '', message: 'The search was stopped.', severity: 'error' }] };
  }
}
