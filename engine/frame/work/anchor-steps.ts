/** The steps that hold the frame down: what is cast before it stands, and what is fastened once it does. */

import type { Units } from '../../plan/units/units.ts';
import { formatMark } from '../layout/lengths.ts';
import type { FrameBrief } from '../layout/model.ts';
import type { CostItem } from '../shop/types.ts';
import { holesByPost } from '../strength/anchor-words.ts';
import { UNDER_POST } from '../strength/footings.ts';
import type { AnchorPlan } from '../strength/types.ts';
import { step } from './step.ts';
import type { Task } from './step.ts';

/**
 * Whether footings are cast before the frame stands: a foot cannot stand over an open hole, a bottom rail lies across
 * it and a sunk post goes into it.
 */
export function castFirst({ ground, kind, concrete }: AnchorPlan, brief: FrameBrief): boolean {
  return ground !== null && concrete !== null && kind === 'footing' && !brief.bottomRails;
}

/** Holes, and footings that must harden first. @param feet Of the shopping list. */
export function foundationSteps(
  anchors: AnchorPlan,
  brief: FrameBrief,
  feet: readonly CostItem[],
  units: Units,
): Task[] {
  const { ground, concrete } = anchors;
  if (ground === null || concrete === null) return [];
  const holes = holesByPost(anchors.posts, units);
  const sizes = holes.length === 1 ? holes[0].hole : holes.map(({ who, hole }) => `${who} ${hole}`).join('; ');
  const dig = step(
    'dig',
    `Dig the holes by hand, middle under the peg: ${sizes}.`,
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
    ['cement'],
  );
  return [dig, cast];
}

/** @param feet Of the shopping list. */
export function holdDownSteps(anchors: AnchorPlan, brief: FrameBrief, feet: readonly CostItem[], units: Units): Task[] {
  const { ground, kind, concrete } = anchors;
  if (ground === null) return [];
  if (castFirst(anchors, brief)) return [boltStep()];
  if (concrete !== null) return [kind === 'sunk' ? sunkStep(anchors, units) : railStep(feet.length > 0)];
  return [kind === 'stakes' ? stakeStep() : kind === 'augers' ? augerStep() : ballastStep(feet)];
}

function boltStep(): Task {
  return step(
    'bolt',
    'Put washers and nuts on the bent bolts of every foot and tighten them with the spanner.',
    ['hold-downs', 'key'],
    [],
  );
}

function sunkStep({ posts }: AnchorPlan, units: Units): Task {
  const holes = holesByPost(posts, units);
  const deep = ({ depth }: { readonly depth: number }): string => formatMark(depth - UNDER_POST, units);
  const depths = [...new Set(holes.map(deep))];
  const each =
    depths.length === 1
      ? `each post ${depths[0]} deep`
      : holes.map((hole) => `${hole.who} ${deep(hole)} deep`).join(', ');
  return step(
    'concrete',
    `Mix the concrete and fill the holes round the posts, ${each}; slope its top away with the trowel so ` +
      `that water runs off; check with the spirit level. Leave it a week before the cloth goes up.`,
    ['barrow', 'concrete', 'level', 'gloves'],
    ['cement'],
  );
}

/** @param feet Whether inner posts stand on feet of their own. */
function railStep(feet: boolean): Task {
  const inner = feet ? ', and two bent bolts through each foot' : '';
  return step(
    'concrete',
    `Mix the concrete, fill the holes to the ground and set two U-bolts over the bottom rail at each outer ` +
      `post${inner}; smooth it with the trowel. Leave it a week, then tighten.`,
    ['barrow', 'concrete', 'gloves', 'key', 'u-bolts', ...(feet ? (['hold-downs'] as const) : [])],
    ['cement'],
  );
}

function stakeStep(): Task {
  return step(
    'stakes',
    'Drive the rebar stakes with a heavy hammer, leaning away from the frame, caps on. Close a strap clamp low on ' +
      'every post and strap the post to its stakes above it, so that the strap cannot slide down.',
    ['hammer', 'stakes', 'straps', 'strap-clamps', 'gloves', 'goggles'],
    ['anchors', 'buried-lines'],
  );
}

function augerStep(): Task {
  return step(
    'augers',
    'Turn the augers in to the eye with a strong bar. Close a strap clamp low on every post and strap the post to ' +
      'its augers above it, so that the strap cannot slide down.',
    ['bar', 'augers', 'straps', 'strap-clamps', 'gloves'],
    ['anchors', 'buried-lines'],
  );
}

function ballastStep(feet: readonly CostItem[]): Task {
  const where = feet.length > 0 ? 'on and round the foot plates' : 'over the bottom rails';
  return step(
    'ballast',
    `Set the cans ${where}, as close to the post as they go, and fill them from the hose; close their lids. Close a ` +
      'strap clamp low on the post and strap the cans to the post above it, so that the strap cannot slide down when ' +
      'the wind lifts the post.',
    ['water-cans', 'straps', 'strap-clamps', 'hose', ...feet],
    ['anchors'],
  );
}
