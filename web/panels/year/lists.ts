import { type Feature, type Plan, isCloth, drawnAnywhere } from '../../../engine/index.ts';
import { calledOf } from '../../map/drawing/feature-edits.ts';

export function plantsOf({ features }: Plan): readonly Feature[] {
  return features.filter(({ kind }) => kind === 'plant' || kind === 'tree' || kind === 'bed');
}

/** Canopies and screens of the yard and of every option. */
export function clothsOf(plan: Plan): readonly Feature[] {
  return drawnAnywhere(plan).filter(isCloth);
}

export function namesById(features: readonly Feature[]): Record<string, string> {
  return Object.fromEntries(features.map((feature) => [feature.id, calledOf(feature)]));
}
