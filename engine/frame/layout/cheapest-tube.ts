/** Which tube a frame is built of, and whether it has braces, where its plan leaves that open. */

import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Cloth, Plan } from '../../plan/types.ts';
import { jointPrice } from '../shop/joint-price.ts';
import { needsBraces, standsItsChecks } from '../strength/checks.ts';
import { HOLE, ON_FEET, screenDepth } from '../strength/footings.ts';
import { frameOf } from './frame-of.ts';
import type { FrameBrief, FrameModel } from './model.ts';

interface Tried {
  readonly brief: FrameBrief;
  readonly model: FrameModel;
}

/**
 * Of several briefs the one whose tube and joints cost least and which passes the sheet's checks; where none does, the
 * first. Only what differs between them is counted, by the metre.
 */
export function cheapestThatStands(thing: Cloth, briefs: readonly FrameBrief[], plan: Plan): FrameBrief {
  const laidOut = layouts(thing, plan);
  const tried = briefs.map((brief) => bracedWhereNeeded(thing, brief, laidOut));
  const stand = tried.filter(
    ({ brief, model }) => isSoldLongEnough(brief, model) && standsItsChecks(model, brief.section),
  );
  const costs = stand.map((one) => costOfSteel(one, plan));
  // Where one tube has no price, all are told apart by their weight.
  const priced = costs.every((cost) => cost !== null);
  const least = stand
    .map((one, k) => ({ brief: one.brief, cost: priced ? Number(costs[k]) : massOf(one) }))
    .reduce<{ brief: FrameBrief; cost: number } | null>(
      (best, one) => (best === null || one.cost < best.cost - ROUNDING ? one : best),
      null,
    );
  return least?.brief ?? tried[0].brief;
}

function bracedWhereNeeded(thing: Cloth, brief: FrameBrief, layOut: (brief: FrameBrief) => FrameModel): Tried {
  const bare = layOut(brief);
  const { tube, braces } = thing.frame ?? {};
  // Who names the tube has chosen; the sheet says when a post of it sways.
  const open = thing.kind === 'canopy' && tube === undefined && braces === undefined;
  if (!open || !needsBraces(bare, brief.section)) return { brief, model: bare };
  const braced = { ...brief, braces: true };
  return { brief: braced, model: layOut(braced) };
}

/** Lays out as briefs say, once for all that differ in their tube alone. */
function layouts(thing: Cloth, plan: Plan): (brief: FrameBrief) => FrameModel {
  const known = new Map<string, FrameModel>();
  return (brief) => {
    const { maxBay, takeOff, bottomRails, braces, anchor } = brief;
    const key = [maxBay, takeOff, bottomRails, braces, anchor].join(' ');
    let model = known.get(key);
    if (model === undefined) known.set(key, (model = layOut(thing, brief, plan)));
    return model;
  };
}

/** As deep in the ground as it usually stands. */
function layOut(thing: Cloth, brief: FrameBrief, plan: Plan): FrameModel {
  if (brief.anchor !== 'sunk') return frameOf(thing, brief, ON_FEET, plan);
  const depth = thing.kind === 'canopy' ? HOLE.garden.depth : screenDepth(thing.height);
  return frameOf(thing, brief, () => depth, plan);
}

function isSoldLongEnough({ lengths }: FrameBrief, { tubes }: FrameModel): boolean {
  const longest = lengths[lengths.length - 1].length;
  return tubes.every(({ length }) => length <= longest + ROUNDING);
}

/** Of tube by the metre, as it is sold cheapest, and of joints; `null` where a price is not known. */
function costOfSteel({ brief, model }: Tried, plan: Plan): number | null {
  const perMetre = Math.min(...brief.lengths.map(({ price, length }) => (price ?? Infinity) / length));
  const joints = model.joints.reduce(
    (sum, { kind, adjustable }) => sum + (jointPrice(plan, kind, adjustable, brief.tube.outside).price ?? 0),
    0,
  );
  return perMetre === Infinity ? null : perMetre * metresOf(model) + joints;
}

/** [kg] */
function massOf({ brief, model }: Tried): number {
  return brief.section.mass * metresOf(model);
}

function metresOf({ tubes }: FrameModel): number {
  return tubes.reduce((sum, { length }) => sum + length, 0);
}
