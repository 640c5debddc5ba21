/** The steps that hold the frame down: what is cast before it stands, and what is fastened once it does. */
import { formatCut } from '../../plan/units.ts';
import type { Units } from '../../plan/units.ts';
import type { FrameBrief } from '../layout/model.ts';
import type { CostItem } from '../shop/types.ts';
import { UNDER_POST } from '../strength/footings.ts';
import type { AnchorPlan } from '../strength/types.ts';
import { step } from './step.ts';
import type { Step } from './types.ts';

/**
 * Whether footings are cast before the frame stands: a foot cannot stand over an open hole, a bottom rail lies across
 * it and a sunk post goes into it.
 */
export function castFirst({ ground, kind, footing }: AnchorPlan, brief: FrameBrief): boolean {
  return ground !== null && footing !== null && kind === 'footing' && !brief.bottomRails;
}

/** Holes, and footings that must harden first. @param feet Of the shopping list. */
export function foundationSteps(
  anchors: AnchorPlan,
  brief: FrameBrief,
  feet: readonly CostItem[],
  units: Units,
): Step[] {
  const { ground, footing } = anchors;
  if (ground === null || footing === null) return [];
  const dig = step(
    'dig',
    `Dig the holes by hand, ${formatCut(footing.diameter, units)} across and ${formatCut(footing.depth, units)} ` +
      `deep, middle under the peg.`,
    ['spade', 'pegs', 'gloves'],
    ['buried-lines', 'heat'],
  );
  if (!castFirst(anchors, brief)) return [dig];
  const cast = step(
    'concrete',
    'Mix the concrete and fill the holes to the ground. Set two bent bolts upright in each, nut ends up, with a ' +
      'foot plate slipped over them as a gauge: its middle where the post’s is to be, level by the spirit level. ' +
      'Smooth the top with the trowel, measure between the bolts of all holes again, and leave it a week.',
    ['barrow', 'concrete', 'hold-downs', 'level', 'tapes', 'gloves', ...feet],
    [],
  );
  return [dig, cast];
}

/** @param feet Whether any post or stay stands on a foot. */
export function holdDownSteps(anchors: AnchorPlan, brief: FrameBrief, feet: boolean, units: Units): Step[] {
  const { ground, kind, footing } = anchors;
  if (ground === null) return [];
  if (castFirst(anchors, brief)) return [boltStep()];
  if (footing !== null) return [kind === 'sunk' ? sunkStep(footing.depth, units) : railStep(feet)];
  return [kind === 'stakes' ? stakeStep() : kind === 'augers' ? augerStep() : ballastStep()];
}

function boltStep(): Step {
  return step(
    'bolt',
    'Put washers and nuts on the bent bolts of every foot and tighten them with the spanner.',
    ['hold-downs', 'key'],
    [],
  );
}

/** @param depth Of the holes. [m] */
function sunkStep(depth: number, units: Units): Step {
  return step(
    'concrete',
    `Mix the concrete and fill the holes round the posts, each post ` +
      `${formatCut(depth - UNDER_POST, units)} deep; slope its top away with the trowel so ` +
      `that water runs off; check with the spirit level. Leave it a week before the cloth goes up.`,
    ['barrow', 'concrete', 'level', 'gloves'],
    [],
  );
}

/** @param feet Whether inner posts stand on feet of their own. */
function railStep(feet: boolean): Step {
  const inner = feet ? ', and two bent bolts through each foot' : '';
  return step(
    'concrete',
    `Mix the concrete, fill the holes to the ground and set two U-bolts over the bottom rail at each outer ` +
      `post${inner}; smooth it with the trowel. Leave it a week, then tighten.`,
    ['barrow', 'concrete', 'gloves', 'key', 'u-bolts', ...(feet ? (['hold-downs'] as const) : [])],
    [],
  );
}

function stakeStep(): Step {
  return step(
    'stakes',
    'Drive the rebar stakes with a heavy hammer, leaning away from the frame, caps on, and strap every post ' +
      'low down to its stakes with a strap.',
    ['hammer', 'stakes', 'straps', 'gloves', 'goggles'],
    ['anchors', 'buried-lines'],
  );
}

function augerStep(): Step {
  return step(
    'augers',
    'Turn the augers in to the eye with a strong bar and strap every post to its augers with a strap.',
    ['bar', 'augers', 'straps', 'gloves'],
    ['anchors', 'buried-lines'],
  );
}

function ballastStep(): Step {
  return step(
    'ballast',
    'Fill the cans from the hose, close their lids, set them at the posts and tie them to the posts low down ' +
      'with the straps.',
    ['water-cans', 'straps', 'hose'],
    ['anchors'],
  );
}
