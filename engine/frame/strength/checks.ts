/** Whether a frame passes the checks that its own sheet prints. */

import { tallestPost } from '../layout/model.ts';
import type { FrameModel } from '../layout/model.ts';
import { asFlagpole } from './beam.ts';
import { TAKE_DOWN_GUST } from './storm-words.ts';
import { STEEL } from './tube.ts';
import type { TubeSection } from './tube.ts';
import { bearingGust, bracedStress, LEAN_ON_POST, spansOf } from './wind-plan.ts';

/** Whether a post whose top nothing holds bends for good when somebody leans on it. */
export function needsBraces(model: FrameModel, tube: TubeSection): boolean {
  if (!model.freeTops) return false;
  return asFlagpole(tube, LEAN_ON_POST, tallestPost(model)).stress > STEEL.allowable;
}

/**
 * Whether posts and rails bear who leans on them, rails hold their line, and the tube bears the gust by which the cloth
 * comes off, counted for wind that is caught below: so a roof keeps its tube wherever it is moved to.
 */
export function standsItsChecks(model: FrameModel, tube: TubeSection): boolean {
  return (
    !needsBraces(model, tube) &&
    (model.freeTops || bracedStress(model, tube) <= STEEL.allowable) &&
    spansOf(model, tube).every(
      ({ verdict, leaned }) => verdict === 'holds its line' && leaned.stressMPa * 1e6 <= STEEL.allowable,
    ) &&
    bearingGust(model, tube).blocked >= TAKE_DOWN_GUST
  );
}
