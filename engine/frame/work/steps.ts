/** The work in order. Every step names what it takes, and that stands on the shopping list or among the tools. */

import type { Units } from '../../plan/units/units.ts';
import { clothSteps } from './cloth-steps.ts';
import { raiseSteps, tubeSteps } from './frame-steps.ts';
import { groundSteps } from './ground-steps.ts';
import type { StepInput, Task } from './step.ts';
import { toolsOf } from './tools.ts';
import type { Step, Tool, Work } from './types.ts';

/** @returns The steps in order, and every tool that one of them takes. */
export function stepsOf(input: StepInput, units: Units): { steps: readonly Step[]; tools: readonly Tool[] } {
  const steps = [
    ...stepsIn('ground', groundSteps(input, units)),
    ...stepsIn('tubes', tubeSteps(input, units)),
    ...stepsIn('frame', raiseSteps(input, units)),
    ...stepsIn('cloth', clothSteps(input, units)),
  ];
  return { steps, tools: toolsOf(steps, input.settingOut, units) };
}

function stepsIn(work: Work, tasks: readonly Task[]): Step[] {
  return tasks.map((task) => ({ ...task, work }));
}
