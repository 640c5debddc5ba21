/** The work in order. Every step names what it takes, and that stands on the shopping list or among the tools. */
import type { Units } from '../../plan/units/units.ts';
import { clothSteps } from './cloth-steps.ts';
import { raiseSteps, tubeSteps } from './frame-steps.ts';
import { groundSteps } from './ground-steps.ts';
import type { StepInput } from './step.ts';
import { toolsOf } from './tools.ts';
import type { Step, Tool } from './types.ts';

/** @returns The steps in order, and every tool that one of them takes. */
export function stepsOf(input: StepInput, units: Units): { steps: readonly Step[]; tools: readonly Tool[] } {
  const steps = [
    ...groundSteps(input, units),
    ...tubeSteps(input, units),
    ...raiseSteps(input, units),
    ...clothSteps(input, units),
  ];
  return { steps, tools: toolsOf(steps, input.settingOut, units) };
}
