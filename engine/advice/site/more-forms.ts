import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { type LivingScreen, livingScreen } from './living-screen.ts';
import { type MovedAndCovered, movedAndCovered, type PotMove } from './moved-and-covered.ts';
import { type Progress, stretch } from './progress.ts';
import type { SiteRequest, SiteResult } from './types.ts';

/** Answers that are no single cloth, beside those of a search. */
export interface MoreForms {
  readonly together: MovedAndCovered | null;
  readonly living: LivingScreen | null;
}

/** @param moves what the cheaper cures would carry @param found the search's answers to the same request */
export function moreForms(
  plan: Plan,
  request: SiteRequest,
  moves: readonly PotMove[],
  found: SiteResult,
  progress: Progress = () => undefined,
): Outcome<MoreForms> {
  return {
    ok: true,
    value: {
      together: movedAndCovered(plan, request, moves, found, stretch(progress, 0, 0.5)),
      living: livingScreen(
        plan,
        request,
        found,
        moves.map(({ plant }) => plant),
        stretch(progress, 0.5, 1),
      ),
    },
  };
}
