/** The shopping list with its cost: every line by aisle, in whole packs. */

import type { Plan } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import type { CutPlan } from '../cuts/types.ts';
import { socketsOf } from '../layout/fittings.ts';
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import type { Fitting } from '../layout/types.ts';
import type { AnchorPlan } from '../strength/types.ts';
import { clothLines } from './cloth-lines.ts';
import { goodsLines } from './goods.ts';
import { jointPrice } from './joint-price.ts';
import { cents, line } from './line.ts';
import { currencyOf } from './prices.ts';
import type { ClothPlan, Cost, CostItem } from './types.ts';

export interface ShoppingInput {
  readonly plan: Plan;
  readonly model: FrameModel;
  readonly brief: FrameBrief;
  readonly cutting: CutPlan;
  readonly fittings: readonly Fitting[];
  readonly cloth: ClothPlan;
  readonly anchors: AnchorPlan;
}

export function costOfFrame(input: ShoppingInput, units: Units): Cost {
  const { plan, model, cloth, anchors } = input;
  const items = [
    ...tubeLines(input),
    ...jointLines(input),
    ...clothLines(plan, cloth, model, units),
    ...anchorLines(input),
  ];
  const known = items.filter((item) => item.amount !== null);
  const missing = items.filter((item) => item.amount === null).map((item) => item.name);
  if (anchors.ground === null) missing.push('anchors (the ground is not known)');
  if (model.posts.some(({ onWall }) => onWall === true))
    missing.push('plugs and screws in the wall, and who sets them');
  return {
    currency: currencyOf(plan),
    total: known.length === 0 ? null : cents(known.reduce((sum, item) => sum + (item.amount ?? 0), 0)),
    items,
    missing,
    note: `${pricesFrom(known)}${missing.length > 0 ? ` Not in the total: ${missing.join(', ')}.` : ''}`,
  };
}

function pricesFrom(known: readonly CostItem[]): string {
  if (known.some((item) => item.priceFrom === 'example'))
    return 'Example prices, rough: check your shop and type yours.';
  return known.length > 0 ? 'Your own prices.' : 'No prices yet: type yours.';
}

function tubeLines({ plan, cutting, brief }: ShoppingInput): CostItem[] {
  return brief.lengths.flatMap(({ id, name, length, price }) => {
    const count = cutting.tubes.filter((cut) => cut.tube === id).length;
    if (count === 0) return [];
    const own = brief.ownTubes || plan.stock?.prices?.[id] !== undefined;
    const from = price === undefined ? 'none' : own ? 'yours' : 'example';
    return [
      line(
        { id: `tube-${id}`, aisle: 'tube', name, unit: 'tube' },
        count,
        // A shop's own list holds its prices; the price of a usual tube is remembered by the tube's id.
        { key: brief.ownTubes ? null : id, price: price ?? null, from },
        { of: 'tube', tube: id, length },
      ),
    ];
  });
}

function jointLines({ plan, model, fittings, brief }: ShoppingInput): CostItem[] {
  const joints = fittings.map(({ kind: name, joint, adjustable, count }) => {
    const price = jointPrice(plan, joint, adjustable, brief.tube.outside);
    const bought = { of: 'joint', joint, adjustable } as const;
    return line({ id: `joint-${name}`, aisle: 'joints', name, unit: 'piece' }, count, price, bought);
  });
  // A clamp closes round its own tube with its own bolt.
  const screws = model.joints.reduce((sum, joint) => sum + socketsOf(joint.kind), 0);
  return [...joints, ...goodsLines(plan, 'screws', screws), ...goodsLines(plan, 'zinc-paint', 1)];
}

function anchorLines({ plan, model, anchors, brief }: ShoppingInput): CostItem[] {
  if (anchors.ground === null) return [];
  if (anchors.concrete !== null) {
    const feet = model.joints.filter((joint) => joint.kind === 'foot').length;
    const onRails = brief.bottomRails ? model.posts.filter((post) => post.role !== 'inner').length : 0;
    return [
      ...goodsLines(plan, 'concrete', anchors.concrete.bags),
      ...goodsLines(plan, 'hold-downs', anchors.kind === 'sunk' ? 0 : 2 * feet),
      ...goodsLines(plan, 'u-bolts', 2 * onRails),
    ];
  }
  const held = anchors.kind === 'stakes' ? 'stakes' : anchors.kind === 'augers' ? 'augers' : 'water-cans';
  const feet = model.posts.length + model.tubes.filter((tube) => tube.kind === 'stay').length;
  return [
    ...goodsLines(plan, held, anchors.count),
    ...goodsLines(plan, 'strap-clamps', feet),
    ...goodsLines(plan, 'straps', feet),
  ];
}
