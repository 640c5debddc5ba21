import { reportHtml, reportOf, withOptions } from '../../../engine/index.ts';
import type { CivilDate, Outcome, Plan } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';

export interface ReportArgs {
  /** Brings its name and journal. */
  readonly plan: Plan;
  /** Options as built. */
  readonly options: readonly string[];
  readonly made: CivilDate;
  readonly withPlace: boolean;
}

/** The report as one HTML page that needs nothing else. */
export function report({ plan, options, made, withPlace }: ReportArgs, { progress, weather }: Task): Outcome<string> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  const found = reportOf(built.plan, { units: plan.units ?? 'metric', weather, made, withPlace, progress });
  return found.ok ? { ok: true, value: reportHtml(found.value) } : found;
}
