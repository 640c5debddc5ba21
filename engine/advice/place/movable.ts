import type { Feature, Plant } from '../../plan/types.ts';

export function isPot(feature: Feature): feature is Plant {
  return feature.kind === 'plant' && feature.container === true;
}

export function isMovable(feature: Feature): feature is Plant {
  return isPot(feature) && feature.move !== 'never';
}
