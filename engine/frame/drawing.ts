import type { Canopy, Screen } from '../plan/types.ts';
import type { FrameDrawing } from './types.ts';

/** The frame as lines with dimensions, for a page to draw from any side. Bays by the canopy's own `frame`. */
export function frameDrawing(thing: Canopy | Screen): FrameDrawing {
  throw new Error(`No drawing yet for ${thing.id}.`);
}
