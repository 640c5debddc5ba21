import type { ComponentType } from 'preact';
import { loadPlanChecks } from '../state/plan-checks.ts';
import type { Stage } from '../state/view.ts';

/**
 * The card of each stage, loaded when the stage is first opened. To add a stage's card: write `web/panels/<stage>/index.tsx`
 * with a named export, and put its line here. `next` gives the one thing worth doing now, or `null` to leave the word to the shell;
 * `state` the few words under the stage's name ("2 burn").
 */
export interface StageCard {
  readonly load: () => Promise<ComponentType>;
}

export const CARDS: Partial<Record<Stage, StageCard>> = {
  draw: { load: () => import('./draw/index.tsx').then((part) => part.DrawCard) },
  heat: { load: () => import('./heat/index.tsx').then((part) => part.HeatCard) },
  // Its boxes edit at once, so the checks on a plan come with it.
  build: { load: () => Promise.all([import('./build/index.tsx'), loadPlanChecks()]).then(([part]) => part.BuildCard) },
  place: { load: () => import('./place/index.tsx').then((part) => part.PlaceCard) },
  try: { load: () => import('./try/index.tsx').then((part) => part.TryCard) },
  year: { load: () => import('./year/index.tsx').then((part) => part.YearCard) },
};
