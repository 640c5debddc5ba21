import type { Canopy, Feature, Plan, Screen } from './types.ts';

/** What is hung up: a roof on posts, or an upright screen. */
export type Cloth = Canopy | Screen;

export function isCloth(feature: Feature): feature is Cloth {
  return feature.kind === 'canopy' || feature.kind === 'screen';
}

/** The yard with no cloth in it: itself where there is none. */
export function withoutCloth(plan: Plan): Plan {
  const features = plan.features.filter((feature) => !isCloth(feature));
  return features.length === plan.features.length ? plan : { ...plan, features };
}
