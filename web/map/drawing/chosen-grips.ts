import type { Feature } from '../../../engine/index.ts';
import { selection, stage } from '../../state/view.ts';
import { drawnPlan } from './drawn-plan.ts';
import { YARD_EDGE, edgeGrips, gripsOf } from './grips.ts';
import type { Grip } from './grips.ts';
import { reach, sized } from './in-hand.ts';

/** What can be taken hold of. */
export interface ChosenGrips {
  readonly id: string;
  /** `null`: the yard's own edge. */
  readonly feature: Feature | null;
  readonly grips: readonly Grip[];
}

/**
 * The grips of the one thing that is chosen; none where a sheet is read or the year is looked at: there they lie over
 * what is told of it, and a slip of the finger changes it.
 */
export function chosenGrips(): ChosenGrips | null {
  if (stage.value === 'build' || stage.value === 'year' || selection.value.length !== 1) return null;
  const [id] = selection.value;
  const { features, site } = drawnPlan.value;
  if (id === YARD_EDGE) return { id, feature: null, grips: edgeGrips(site.boundary, reach.value) };
  const feature = features.find((each) => each.id === id);
  return feature ? { id, feature, grips: gripsOf(feature, reach.value, sized.value === id) } : null;
}
