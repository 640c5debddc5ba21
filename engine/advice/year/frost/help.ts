/** What a person can do for a plant before a frosty night: carry it, wrap it, or neither. */

import { FLEECE_REACH } from '../../../frame/shop/cloth.ts';
import type { PlantFeature } from '../../../load/verdict/planted.ts';

/** As far across as a fleece is thrown from the ground. Our choice. [m] */
const WIDEST = 2.5;

export type FrostHelp = 'carry' | 'wrap' | 'none';

export function frostHelp(feature: PlantFeature): FrostHelp {
  if (feature.kind === 'bed') return feature.plantHeight <= FLEECE_REACH ? 'wrap' : 'none';
  if (feature.kind === 'plant' && feature.container === true && feature.move !== 'never') return 'carry';
  const width = feature.kind === 'tree' ? feature.crownWidth : feature.spread;
  return feature.height <= FLEECE_REACH && width <= WIDEST ? 'wrap' : 'none';
}
