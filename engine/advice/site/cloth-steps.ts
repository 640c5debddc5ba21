import type { Plan } from '../../plan/types.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { harmStep, type LadderStep } from '../cheaper-first/step.ts';
import type { Proposal } from './option.ts';

/** The dearest rungs of the ladder of cures: the best screen and the best roof of what was found. */
export function clothSteps(plan: Plan, options: readonly Proposal[]): LadderStep[] {
  return (
    [
      ['screen', 'An upright screen', ['screen']],
      ['roof', 'A roof', ['roof', 'roof with drops']],
    ] as const
  ).flatMap(([id, name, kinds]) => {
    const [best] = options
      .filter(({ kind }) => kinds.some((one) => one === kind))
      .toSorted((a, b) => b.spared - a.spared);
    if (best === undefined) return [];
    const { cost, served, spared, effect } = best;
    const sentence = `${capital(best.where)}. ${best.why}`;
    return [harmStep(plan, { id, name, cost, sentence }, { serves: served, spared, sparedShare: effect })];
  });
}
