/** The cheapest frame for a cloth that passes the sheet's own checks, and what all of it costs. */

import type { Cloth, Plan } from '../plan/types.ts';
import { unitsOf } from '../plan/units/units.ts';
import { cutPlanOf } from './cuts/plan.ts';
import { designFrom } from './design.ts';
import { lengthsInBays } from './layout/bays.ts';
import { briefOf } from './layout/brief.ts';
import { standsItsChecks } from './strength/checks.ts';
import type { GroundKind } from './strength/types.ts';

type Frame = NonNullable<Cloth['frame']>;

/** A cloth with the frame that it is built with. */
export interface Fitted {
  readonly cloth: Cloth;
  /** Anchors, braces and all, in the plan's currency; `null`: no price is known. */
  readonly cost: number | null;
}

/** What holds for every frame of a yard, asked once. */
export interface Footing {
  readonly soil: GroundKind;
  /** [m/s] Absent: the plan's own. */
  readonly gust?: number;
}

/**
 * Fits frames to cloth in a yard: tube and braces are the brief's choice, bays as long as usual, or as long as a side
 * and a post fewer, whichever is cheaper. `null`: the shop's tube cannot make it.
 */
export function frameFitter(plan: Plan, footing: Footing): (cloth: Cloth) => Fitted | null {
  const cut = rememberedCuts();
  const designed = ({ tried, read }: Briefed): (Fitted & { readonly stands: boolean })[] => {
    const made = read.ok ? designFrom(read.brief, tried, plan, unitsOf(plan), cut) : read;
    if (!made.ok) return [];
    const { model, brief, cost } = made.design;
    return [{ cloth: tried, cost: cost.total, stands: standsItsChecks(model, brief.section) }];
  };
  return (cloth) => {
    const fitted = briefsFor(cloth, plan, footing).flatMap(designed);
    const [best] = fitted.toSorted((a, b) => Number(b.stands) - Number(a.stands) || (a.cost ?? 0) - (b.cost ?? 0));
    return best ? { cloth: best.cloth, cost: best.cost } : null;
  };
}

/** A cloth with a frame, and how that is to be built. */
interface Briefed {
  readonly tried: Cloth;
  readonly read: ReturnType<typeof briefOf>;
}

function briefsFor(cloth: Cloth, plan: Plan, { soil, gust }: Footing): Briefed[] {
  // What the yard itself says needs no saying, and changes with it.
  const common: Frame = { ...(soil === plan.site.soil ? {} : { soil }), ...(gust === undefined ? {} : { gust }) };
  const briefed = (frame: Frame): Briefed => {
    const tried = { ...cloth, frame };
    return { tried, read: briefOf(tried, plan) };
  };
  const usual = briefed(common);
  const side = Math.max(...lengthsInBays(cloth));
  return usual.read.ok && side > usual.read.brief.maxBay ? [usual, briefed({ ...common, maxBay: side })] : [usual];
}

/** What cutting costs. Frames of one form are cut alike whatever their cloth and holes. */
function rememberedCuts(): typeof cutPlanOf {
  const known = new Map<string, ReturnType<typeof cutPlanOf>>();
  return (pieces, lengths, kerf) => {
    const sizes = pieces.map(({ length, count }) => `${length}×${count}`);
    const key = [...lengths.map(({ id }) => id), kerf, ...sizes].join(' ');
    let plan = known.get(key);
    if (plan === undefined) known.set(key, (plan = cutPlanOf(pieces, lengths, kerf, 'cost')));
    return plan;
  };
}
