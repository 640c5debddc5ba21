import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { type Progress, stretch } from './progress.ts';
import { type SiteDone, siteSearch } from './site-search.ts';
import type { SiteRequest, SiteResult } from './types.ts';

/**
 * Where cloth would spare the plants most. Whoever wants to stop it ends the thread that it runs on.
 * @returns the options, or what is wrong with the request or the plan
 */
export function siteOf(
  plan: Plan,
  request: SiteRequest = {},
  progress: Progress = () => undefined,
): Outcome<SiteResult> {
  const search = siteSearch(plan, request, progress);
  if (!search.ok) return search;
  const { next, work } = search.value;
  const steps: SiteDone[][] = [];
  for (;;) {
    const step = next(steps);
    if ('result' in step) return { ok: true, value: step.result };
    const done: SiteDone[] = [];
    for (const [k, task] of step.tasks.entries()) {
      const tell = stretch(stretch(progress, step.from, step.to), k / step.tasks.length, (k + 1) / step.tasks.length);
      done.push(work(task, done, tell));
    }
    steps.push(done);
  }
}
