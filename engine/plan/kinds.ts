/** Kinds of things that are asked for together. */

import type { Cloth, Feature, Plant } from './types.ts';

export function isCloth(feature: Feature): feature is Cloth {
  return feature.kind === 'canopy' || feature.kind === 'screen';
}

export function isPot(feature: Feature): feature is Plant {
  return feature.kind === 'plant' && feature.container === true;
}

/** A pot that somebody is ready to carry. */
export function isMovable(feature: Feature): feature is Plant {
  return isPot(feature) && feature.move !== 'never';
}
