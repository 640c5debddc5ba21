/** A frame that stands keeps its posts, tube and braces, whatever sizes the tape then shows. */

import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Cloth, FrameChoice, Plan } from '../../plan/types.ts';
import { formatCut } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { ON_FEET } from '../strength/footings.ts';
import { lengthsInBays, SHRINK } from './bays.ts';
import { briefOf } from './brief.ts';
import { frameOf } from './frame-of.ts';
import type { FrameBrief, FrameModel } from './model.ts';

/**
 * The feature as measured, with whatever its `frame` must say so that it has the posts, tube and braces that were
 * built; and a warning where a bay has come out longer than its tube is good for.
 * @param brief How it was built.  @param model As it was laid out.
 */
export function keptFrame<Thing extends Cloth>(
  feature: Thing,
  brief: FrameBrief,
  model: FrameModel,
  plan: Plan,
  units: Units,
): { readonly feature: Thing; readonly remarks: readonly string[] } {
  const yard = { ...plan, features: plan.features.map((one) => (one.id === feature.id ? feature : one)) };
  const bay = longestBay(feature, brief, model, yard);
  const now = briefOf(feature, yard);
  const changed = !now.ok || now.brief.tube.id !== brief.tube.id || now.brief.braces !== brief.braces;
  const frame: FrameChoice = {
    ...feature.frame,
    ...(bay === null ? {} : { maxBay: bay }),
    ...(changed ? { tube: brief.tube.id, ...(feature.kind === 'canopy' ? { braces: brief.braces } : {}) } : {}),
  };
  const over = bay !== null && bay > brief.maxBay + SHRINK + ROUNDING;
  return {
    feature: Object.keys(frame).length === 0 ? feature : { ...feature, frame },
    remarks: over
      ? [
          `a bay of ${formatCut(bay, units)} is longer than the ${formatCut(brief.maxBay, units)} that its tube is ` +
            `good for: put a post under its middle`,
        ]
      : [],
  };
}

/** The longest bay that gives the posts that stand, to the next millimetre; `null` where the usual one gives them. */
function longestBay(feature: Cloth, brief: FrameBrief, model: FrameModel, plan: Plan): number | null {
  const layOut = (maxBay: number): FrameModel => frameOf(feature, { ...brief, maxBay }, ON_FEET, plan);
  const isAsBuilt = (laid: FrameModel): boolean =>
    laid.posts.length === model.posts.length && laid.posts.every(({ role }, k) => role === model.posts[k].role);
  if (isAsBuilt(layOut(brief.maxBay))) return null;
  // One of the frame's own bays, as measured, is the limit: the others follow from it.
  const spans = [1, 2, 3, 4, 5, 6].flatMap((bays) =>
    lengthsInBays(feature).map((side) => Math.ceil((side / bays) * 1000) / 1000),
  );
  const fits = spans.filter((maxBay) => maxBay >= 0.3 && isAsBuilt(layOut(maxBay)));
  return fits.length === 0 ? null : Math.min(...fits);
}
