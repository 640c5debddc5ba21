import { type SightCut, sightCuts } from '../../advice/sight/sight-cut.ts';
import type { Outcome } from '../../load/types.ts';
import { featureOf } from '../../plan/edit/edit-feature.ts';
import { refusal } from '../../plan/problems.ts';
import type { Plan } from '../../plan/types.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { planPicture } from '../report/plan.ts';

export interface LetterPictures {
  /** The yard from above without its heat, as SVG. */
  readonly yard: string;
  readonly cuts: readonly SightCut[];
}

/** What a letter about a frame shows. @param id Of a canopy or screen among the plan's features. */
export function letterPictures(plan: Plan, id: string): Outcome<LetterPictures> {
  const cloth = featureOf(plan, id);
  if (cloth?.kind !== 'canopy' && cloth?.kind !== 'screen')
    return refusal('', 'There is no such roof or screen on the plan.');
  return { ok: true, value: { yard: planPicture(plan, null, unitsOf(plan)), cuts: sightCuts(plan, cloth) } };
}
