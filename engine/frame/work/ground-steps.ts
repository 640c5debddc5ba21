/** The steps on the ground: leave, probing, setting out, holes. */

import type { Units } from '../../plan/units/units.ts';
import { isFloor } from '../strength/grounds.ts';
import { foundationSteps } from './anchor-steps.ts';
import { ASK, probeWords, setOutWords, unknownGroundWords } from './step-words.ts';
import { linesOf, step } from './step.ts';
import type { StepInput, Task } from './step.ts';

export function groundSteps(input: StepInput, units: Units): Task[] {
  const { anchors, brief, sunk, cost } = input;
  const onFloor = anchors.ground !== null && isFloor(anchors.ground);
  const feet = linesOf(cost, 'joint').filter(({ joint }) => joint === 'foot');
  return [
    step('ask', ASK, [], ['permission', 'shared-wall', 'overhead-line', 'children', 'engineer']),
    step('probe', probeWords(onFloor), onFloor ? [] : ['rod'], ['buried-lines']),
    step('set-out', setOutWords(input, units), ['tapes', 'pegs', 'marker', 'level'], []),
    ...foundationSteps(anchors, brief, feet, units),
    ...(brief.ground === null ? [step('ground', unknownGroundWords(sunk, units), [], ['anchors'])] : []),
  ];
}
