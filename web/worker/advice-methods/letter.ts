import { featureOf, planPicture, sightCuts } from '../../../engine/index.ts';
import type { Outcome, Plan, SightCut } from '../../../engine/index.ts';

export interface LetterPictures {
  /** The yard from above without its heat, as SVG. */
  readonly yard: string;
  readonly cuts: readonly SightCut[];
}

/** What a letter about a frame shows. @param id Of a canopy or screen among the plan's features. */
export function letter({ plan, id }: { readonly plan: Plan; readonly id: string }): Outcome<LetterPictures> {
  const cloth = featureOf(plan, id);
  if (cloth?.kind !== 'canopy' && cloth?.kind !== 'screen')
    return {
      ok: false,
      problems: [{ pointer: '', message: 'There is no such roof or screen on the plan.', severity: 'error' }],
    };
  return { ok: true, value: { yard: planPicture(plan, null, plan.units ?? 'metric'), cuts: sightCuts(plan, cloth) } };
}
