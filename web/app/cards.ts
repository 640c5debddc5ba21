import type { ComponentType } from 'preact';
import { loadPlanChecks } from '../state/plan-checks.ts';
import type { Stage } from '../state/view.ts';

/**
 * The card of each stage, loaded when the stage is first opened. To add one: write `web/panels/<stage>/index.tsx` with
 * a named export, name it in `web/app/later-stages.ts`, and put its line here.
 */
export interface StageCard {
  readonly load: () => Promise<ComponentType>;
}

export const CARDS: Partial<Record<Stage, StageCard>> = {
  draw: { load: () => import('./first-stages.ts').then((part) => part.DrawCard) },
  heat: { load: () => import('./first-picture.ts').then((part) => part.HeatCard) },
  // Its boxes edit at once, so the checks on a plan come with it.
  build: {
    load: () => Promise.all([import('./later-stages.ts'), loadPlanChecks()]).then(([part]) => part.BuildCard),
  },
  place: { load: () => import('./later-stages.ts').then((part) => part.PlaceCard) },
  try: { load: () => import('./later-stages.ts').then((part) => part.TryCard) },
  year: { load: () => import('./later-stages.ts').then((part) => part.YearCard) },
};
