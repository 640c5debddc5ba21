import { harmStep, type LadderStep } from '../cheaper-first/step.ts';
import { sentenceCase } from '../year/words.ts';
import type { Proposal } from './option.ts';

/**
 * The dearest rungs of the ladder of cures: the best screen and the best roof of what was found.
 * @param options with what they spare the plants that count
 * @param harm Σ worth × harm of those as the yard is [K·h/day]
 */
export function clothSteps(options: readonly Proposal[], harm: number): LadderStep[] {
  return (
    [
      ['screen', 'An upright screen', ['screen']],
      ['roof', 'A roof', ['roof', 'roof with drops']],
    ] as const
  ).flatMap(([id, name, kinds]) => {
    const [best] = options
      .filter(({ kind }) => kinds.some((one) => one === kind))
      .toSorted((a, b) => b.spared - a.spared);
    return best
      ? [
          harmStep(
            { id, name, cost: best.cost, sentence: `${sentenceCase(best.where)}. ${best.why}` },
            best.spared,
            harm,
          ),
        ]
      : [];
  });
}
