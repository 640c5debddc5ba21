/** A frame worked out: laid out, held down, cut and bought. What every part of the build sheet is made from. */

import { footprintOf } from '../plan/geometry/cloth-shapes.ts';
import { LEAST_BUILT } from '../plan/schema/feature.ts';
import type { Cloth, Plan, Problem } from '../plan/types.ts';
import type { Units } from '../plan/units/units.ts';
import { namedInside } from '../plan/words/names.ts';
import { cutPlanOf } from './cuts/plan.ts';
import type { CutPlan } from './cuts/types.ts';
import { briefOf } from './layout/brief.ts';
import { fittingsOf, piecesOf } from './layout/fittings.ts';
import { frameOf } from './layout/frame-of.ts';
import { refuseFrame } from './layout/model.ts';
import type { FrameBrief, FrameModel } from './layout/model.ts';
import { blockersBelow } from './layout/surroundings.ts';
import type { Fitting, Piece } from './layout/types.ts';
import { CLOTH_MASS, clothPlanOf } from './shop/cloth.ts';
import { currencyOf, priceOf } from './shop/prices.ts';
import { costOfFrame } from './shop/shopping.ts';
import { kerfOf, stockCloth } from './shop/stock.ts';
import type { ClothPlan, Cost } from './shop/types.ts';
import { anchorPlan, ownWeightOf } from './strength/anchors.ts';
import { REFUSED_BELOW } from './strength/beam.ts';
import { ON_FEET, sunkDepth } from './strength/footings.ts';
import type { SunkDepth } from './strength/footings.ts';
import { TAKE_DOWN_GUST } from './strength/storm-words.ts';
import type { AnchorPlan, Span } from './strength/types.ts';
import { spansOf } from './strength/wind-plan.ts';
import { sagMessage, tooLongMessage, tooShortMessage } from './words.ts';

/** A frame as it stands in the ground, and what holds it there. */
interface Held {
  readonly model: FrameModel;
  readonly anchors: AnchorPlan;
  /** How deep its deepest posts stand in the ground. [m] */
  readonly sunk: number;
  /** Of tube and dry cloth. [kg] */
  readonly ownWeight: number;
  /** What catches the wind below it, in words. */
  readonly blockedBy: readonly string[];
}

export interface Design extends Held {
  readonly brief: FrameBrief;
  readonly pieces: readonly Piece[];
  readonly fittings: readonly Fitting[];
  readonly spans: readonly Span[];
  readonly cutting: CutPlan;
  readonly cloth: ClothPlan;
  readonly cost: Cost;
}

interface Refused {
  readonly ok: false;
  readonly problems: readonly Problem[];
}

type Designed = { readonly ok: true; readonly design: Design } | Refused;

/** Holes are first taken to be this deep. [m] */
const FIRST_DEPTH = 0.1;

export function designOf(thing: Cloth, plan: Plan, units: Units): Designed {
  const read = briefOf(thing, plan);
  return read.ok ? designFrom(read.brief, thing, plan, units) : read;
}

/**
 * The same from a brief that was read already.
 * @param cut Finds the cheapest way of cutting; whoever prices many frames hands over one that remembers.
 */
export function designFrom(
  brief: FrameBrief,
  thing: Cloth,
  plan: Plan,
  units: Units,
  cut: typeof cutPlanOf = cutPlanOf,
): Designed {
  const held = heldFrame(thing, brief, plan, units);
  const { model, anchors } = held;

  const spans = spansOf(model, brief.section);
  const saggy = spans.find((span) => span.sagRatio < REFUSED_BELOW);
  if (saggy) return refuseFrame(plan, thing, 'frame/maxBay', sagMessage(thing, brief, saggy, units));
  const pieces = piecesOf(model);
  const tooShort = pieces.find((piece) => piece.length < LEAST_BUILT);
  if (tooShort) return refuseFrame(plan, thing, 'frame/takeOff', tooShortMessage(thing, tooShort, units));
  const cutInto = cut(pieces, brief.lengths, kerfOf(plan));
  if (!cutInto.ok) return refuseFrame(plan, thing, 'frame', tooLongMessage(thing, brief, cutInto.unfit[0], units));

  const cutting = cutInto.plan;
  const frostPrice = { price: priceOf(plan, 'frostCloth').price, currency: currencyOf(plan) };
  const cloth = clothPlanOf(model, stockCloth(plan), TAKE_DOWN_GUST, held.blockedBy.length > 0, frostPrice, units);
  const fittings = fittingsOf(model.joints);
  const cost = costOfFrame({ plan, model, brief, cutting, fittings, cloth, anchors }, units);
  return { ok: true, design: { ...held, brief, pieces, fittings, spans, cutting, cloth, cost } };
}

/**
 * Holes depend on the pull, and the posts' length on the holes; the pull does not depend on what is below the ground.
 */
function heldFrame(thing: Cloth, brief: FrameBrief, plan: Plan, units: Units): Held {
  const layOut = (sunk: SunkDepth): FrameModel => frameOf(thing, brief, sunk, plan);
  const first = layOut(brief.anchor === 'sunk' ? () => FIRST_DEPTH : ON_FEET);
  const ownWeight = ownWeightOf(first, brief.section.mass, clothMassOf(first));
  const blockedBy = [
    ...(thing.kind === 'canopy' && (thing.drops ?? []).length > 0 ? ['its own drops'] : []),
    ...(thing.kind === 'canopy'
      ? blockersBelow(plan, footprintOf(thing), thing.height).map((id) => namedInside(plan, id))
      : []),
  ];
  const anchors = anchorPlan(first, brief, ownWeight, blockedBy.length > 0, units);
  const depth = sunkDepth(first, brief, anchors);
  const sunk = Math.max(...first.posts.map(({ role }) => depth(role)));
  return { model: sunk > 0 ? layOut(depth) : first, anchors, sunk, ownWeight, blockedBy };
}

/** Dry. [kg] */
export function clothMassOf(model: FrameModel): number {
  return CLOTH_MASS * model.cloths.reduce((sum, { opening }) => sum + opening[0] * opening[1], 0);
}
