import { sectionOf, withOptions } from '../../../engine/index.ts';
import type { Outcome, Plan, Section, SectionRequest } from '../../../engine/index.ts';

/** A cut through a canopy and a plant of the yard with some options built. */
export function section({
  plan,
  options,
  request,
}: {
  readonly plan: Plan;
  readonly options: readonly string[];
  readonly request: SectionRequest;
}): Outcome<Section> {
  const built = withOptions(plan, options);
  return built.ok ? sectionOf(built.plan, request) : built;
}
