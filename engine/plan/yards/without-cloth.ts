import { isCloth } from '../kinds.ts';
import type { Plan } from '../types.ts';

/** The yard with no cloth in it: itself where there is none. */
export function withoutCloth(plan: Plan): Plan {
  const features = plan.features.filter((feature) => !isCloth(feature));
  return features.length === plan.features.length ? plan : { ...plan, features };
}
