/** The steps from the tubes as bought to a frame that stands and holds. */

import type { Units } from '../../plan/units/units.ts';
import type { CutPlan } from '../cuts/types.ts';
import type { JointKind } from '../layout/types.ts';
import type { Cost } from '../shop/types.ts';
import { castFirst, holdDownSteps } from './anchor-steps.ts';
import {
  braceWords,
  cutWords,
  ENDS,
  joinWords,
  LOW_RAILS,
  measureWords,
  raiseWords,
  squareUpWords,
  waitWords,
  wallWords,
} from './step-words.ts';
import { linesOf, needsLadder, step } from './step.ts';
import type { Bought, StepInput, Task } from './step.ts';

/** Into which bottom rails and posts go together. */
const LOW_JOINTS: readonly JointKind[] = ['3-way corner', '3-way tee', '2-way corner'];

/** Joints of the shopping list by what is done with them. */
interface JointLines {
  readonly all: readonly Bought<'joint'>[];
  readonly clamps: readonly Bought<'joint'>[];
  readonly feet: readonly Bought<'joint'>[];
  /** Those that posts stand on; stays have adjustable ones. */
  readonly postFeet: readonly Bought<'joint'>[];
}

function jointsOf(cost: Cost): JointLines {
  const all = linesOf(cost, 'joint');
  const feet = all.filter(({ joint }) => joint === 'foot');
  return {
    all,
    clamps: all.filter(({ joint }) => joint === 'brace clamp'),
    feet,
    postFeet: feet.filter(({ adjustable }) => !adjustable),
  };
}

/** Measuring, cutting, and laying the frame out on the ground. */
export function tubeSteps({ model, cost, cutting }: StepInput, units: Units): Task[] {
  const tubes = linesOf(cost, 'tube');
  const upper = linesOf(cost, 'joint').filter(
    ({ joint }) => joint !== 'brace clamp' && joint !== 'foot' && joint !== 'wall bracket',
  );
  return [
    step('measure', measureWords(units), ['tapes', ...tubes, ...upper.slice(0, 1)], []),
    cutsAny(cutting)
      ? step(
          'cut',
          cutWords(cutting, units),
          ['tapes', 'marker', 'saw', 'deburr', 'goggles', 'ears', 'gloves', 'zinc-paint', ...tubes],
          ['cutting'],
        )
      : step('ends', ENDS, ['deburr', 'zinc-paint', 'gloves', ...tubes], ['cutting']),
    step('join', joinWords(model), ['gloves', 'screws', ...upper, ...tubes], ['heat']),
  ];
}

function cutsAny({ tubes }: CutPlan): boolean {
  return tubes.some((tube) => tube.pieces.length > 1 || tube.left > 0 || tube.lost > 0);
}

/** Raising it, squaring it, and holding it down. */
export function raiseSteps(input: StepInput, units: Units): Task[] {
  const { model, anchors, brief } = input;
  const joints = jointsOf(input.cost);
  const square = step('square', squareUpWords(model), ['level', 'tapes', 'key', 'screws'], []);
  const bracing = braceSteps(input, joints, units);
  return [
    ...wallSteps(input, joints, units),
    raiseStep(input, joints, units),
    ...lowRailSteps(input, joints),
    // A screen on feet does not stand by itself; a roof is braced once it is square.
    ...(model.kind === 'screen' ? [...bracing, square] : [square, ...bracing]),
    ...holdDownSteps(anchors, brief, joints.feet, units),
    step('wait', waitWords(input, units), [], ['wind-orientation', 'anchors']),
  ];
}

/** Before a frame that hangs from a wall goes up. */
function wallSteps({ model }: StepInput, { all }: JointLines, units: Units): Task[] {
  const brackets = all.filter(({ joint }) => joint === 'wall bracket');
  if (brackets.length === 0) return [];
  const height = model.posts.find(({ onWall }) => onWall === true)?.height ?? 0;
  return [
    step('wall', wallWords(height, units), [...brackets, 'level', 'tapes'], ['shared-wall', 'engineer', 'ladder']),
  ];
}

function raiseStep(input: StepInput, { postFeet }: JointLines, units: Units): Task {
  const { model, anchors, brief, sunk } = input;
  const high = needsLadder(model);
  const how = { onFeet: postFeet.length > 0, bolted: castFirst(anchors, brief), high };
  return step(
    'raise',
    raiseWords(input, how, units),
    [
      ...(high ? (['ladder'] as const) : []),
      'gloves',
      ...(sunk > 0 && anchors.concrete !== null ? (['stones'] as const) : []),
      ...postFeet,
    ],
    ['ladder', 'overhead-line', 'heat'],
  );
}

function lowRailSteps({ model, brief, cost }: StepInput, { all }: JointLines): Task[] {
  if (!brief.bottomRails || model.kind !== 'canopy') return [];
  const low = all.filter(({ joint, adjustable }) => LOW_JOINTS.includes(joint) && !adjustable);
  return [step('low-rails', LOW_RAILS, ['gloves', 'screws', ...low, ...linesOf(cost, 'tube')], [])];
}

function braceSteps(input: StepInput, { clamps, feet }: JointLines, units: Units): Task[] {
  const { model } = input;
  if (!model.braced || clamps.length === 0) return [];
  const drops = model.cloths.some(({ kind }) => kind === 'drop');
  return [step('brace', braceWords(input, drops, units), [...clamps, ...feet, 'screws', 'key', 'tapes'], ['anchors'])];
}
