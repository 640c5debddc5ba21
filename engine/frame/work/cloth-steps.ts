/** The steps with the cloth: sewing, hanging, and tightening what has given. */

import type { Units } from '../../plan/units/units.ts';
import type { GoodsId } from '../shop/goods.ts';
import { hangWords, RETIGHTEN, sewWords } from './step-words.ts';
import { linesOf, needsLadder, step } from './step.ts';
import type { StepInput, Task } from './step.ts';

export function clothSteps(input: StepInput, units: Units): Task[] {
  const { cloth, cost, model } = input;
  const cloths = linesOf(cost, 'cloth');
  const onList = (goods: GoodsId): boolean => cost.items.some(({ id }) => id === goods);
  const [rods, clips] = [onList('hem-rods'), onList('clips')];
  const rolls = cloth.pieces.filter((piece) => piece.buy === 'from the roll');
  const seams = rolls.some((piece) => piece.seams > 0);
  return [
    ...(rolls.length > 0
      ? [step('sew', sewWords(seams, rods), ['scissors', 'needle', 'thread', 'tapes', ...cloths], [])]
      : []),
    step(
      'hang',
      hangWords(input, clips, rods, units),
      [
        ...cloths,
        'ties',
        ...(clips ? (['clips'] as const) : []),
        ...(rods ? (['hem-rods'] as const) : []),
        ...(needsLadder(model) ? (['ladder'] as const) : []),
      ],
      ['cloth-off', 'ladder', 'fire', 'heat'],
    ),
    step('retighten', RETIGHTEN, ['ties', 'tapes'], []),
  ];
}
