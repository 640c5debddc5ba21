import type { Plan } from './types.ts';

/** The yard with no cloth in it, canopies and screens alike: itself where there is none. */
export function withoutCloth(plan: Plan): Plan {
  const features = plan.features.filter(({ kind }) => kind !== 'canopy' && kind !== 'screen');
  return features.length === plan.features.length ? plan : { ...plan, features };
}
