import { siteOf } from '../../../engine/index.ts';
import type { Outcome, Plan, SiteRequest, SiteResult } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

/** `site --json`. The search is called off by ending the worker. */
export function site({ plan, request }: { readonly plan: Plan; readonly request: SiteRequest }, task: Task): Outcome<SiteResult> {
  return siteOf(plan, request, ({ done, what }) => task.progress(done, what));
}
