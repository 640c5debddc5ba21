/** What a person can do for a plant before a frosty night: carry it, wrap it, or neither. */
import type { PlantFeature } from '../../../load/verdict/planted.ts';

/** A fleece is thrown over and weighed down from the ground, without a ladder: no larger than this. Our choice. [m] */
const TALLEST = 2;
const WIDEST = 2.5;

export type FrostHelp = 'carry' | 'wrap' | 'none';

export function frostHelp(feature: PlantFeature): FrostHelp {
  if (feature.kind === 'bed') return feature.plantHeight <= TALLEST ? 'wrap' : 'none';
  if (feature.kind === 'plant' && feature.container === true && feature.move !== 'never') return 'carry';
  const width = feature.kind === 'tree' ? feature.crownWidth : feature.spread;
  return feature.height <= TALLEST && width <= WIDEST ? 'wrap' : 'none';
}
