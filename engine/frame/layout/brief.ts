/** How a canopy or a screen is to be built, or why it cannot be: what its `frame` says, else the defaults. */

import { cleanPath, distance } from '../../plan/geometry/shapes.ts';
import type { Cloth, Plan, Problem } from '../../plan/types.ts';
import { concreteBag, tubeChoice, tubeChoices } from '../shop/stock.ts';
import type { TubeChoice } from '../shop/stock.ts';
import { ANCHOR_KINDS, GROUND_KINDS, groundName } from '../strength/grounds.ts';
import { sectionOf } from '../strength/tube.ts';
import { baysOf, MAX_BAY } from './bays.ts';
import { canopyGrid } from './canopy-grid.ts';
import { cheapestThatStands } from './cheapest-tube.ts';
import { frameName, refuseFrame } from './model.ts';
import type { FrameBrief } from './model.ts';

/** Gust to anchor for where nobody named one: 72 km/h, this project's own. [m/s] */
export const DEFAULT_GUST = 20;
/** A frame of more posts than this is no work for hands, and not worked out. */
const MOST_POSTS = 1000;

type BriefResult =
  | { readonly ok: true; readonly brief: FrameBrief }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads a canopy's or screen's `frame`, or says why it cannot be built. Where it names no tube, the cheapest that
 * passes the sheet's own checks is taken, with braces where a lone post would bend.
 */
export function briefOf(thing: Cloth, plan: Plan): BriefResult {
  const { tube } = thing.frame ?? {};
  const named = tube === undefined ? null : tubeChoice(plan, tube);
  const choices = tube === undefined ? tubeChoices(plan) : named === null ? [] : [named];
  if (choices.length === 0) {
    const message =
      tube === undefined
        ? 'The stock list has no tube to build with.'
        : `${frameName(thing)} is to be built of tube "${tube}", but the stock list has none of that name.`;
    return refuseFrame(plan, thing, 'frame/tube', message);
  }
  const briefs = choices.map((choice) => briefWith(thing, plan, choice));
  const hands = briefs.filter(({ maxBay }) => postCount(thing, maxBay) <= MOST_POSTS);
  if (hands.length === 0)
    return refuseFrame(
      plan,
      thing,
      'frame/maxBay',
      `${frameName(thing)}: it would take ${postCount(thing, briefs[0].maxBay)} posts; frames of up to ${MOST_POSTS} ` +
        `are worked out. Two cures: a smaller frame, or longer bays.`,
    );
  return { ok: true, brief: cheapestThatStands(thing, hands, plan) };
}

function briefWith(thing: Cloth, plan: Plan, { tube, lengths, own }: TubeChoice): FrameBrief {
  const frame = thing.frame ?? {};
  const takeOff = frame.takeOff ?? 0;
  const longest = lengths[lengths.length - 1].length;
  return {
    tube,
    section: sectionOf(tube.outside, tube.wall),
    lengths,
    ownTubes: own,
    maxBay: frame.maxBay ?? Math.min(MAX_BAY, longest + 2 * takeOff),
    takeOff,
    // Where it hangs from a wall there is no post for a rail along the ground to end at.
    bottomRails: thing.kind === 'canopy' && thing.onWall !== true && (frame.bottomRails ?? false),
    braces: thing.kind === 'canopy' && (frame.braces ?? false),
    bag: concreteBag(plan).mass,
    gust: frame.gust ?? plan.climate.gust ?? DEFAULT_GUST,
    ...heldBy(thing, plan),
  };
}

/** What the posts stand on, what holds them there, and what of the plan's wish had to give way. */
function heldBy(thing: Cloth, { site: { soil } }: Plan): Pick<FrameBrief, 'ground' | 'anchor' | 'notes'> {
  const frame = thing.frame ?? {};
  const ground = GROUND_KINDS.find((kind) => kind === frame.soil) ?? (frame.soil === undefined ? (soil ?? null) : null);
  const onGround = ground === 'paving' || ground === 'wheels';
  const asked = ANCHOR_KINDS.find((kind) => kind === frame.anchor);
  const anchor = asked ?? (onGround ? 'ballast' : thing.kind === 'screen' ? 'sunk' : 'footing');
  const onRails = thing.kind === 'canopy' && (frame.bottomRails ?? false) && asked === 'sunk';
  const cannotDig = onGround && anchor !== 'ballast';
  const notes: string[] = [];
  if (frame.soil !== undefined && ground === null)
    notes.push(
      `The ground is noted as "${frame.soil}", which says too little about what holds in it: choose one of the ` +
        `kinds of ground.`,
    );
  if (frame.anchor !== undefined && asked === undefined)
    notes.push(
      `"${frame.anchor}" is not a way of anchoring that this sheet can work out; it shows the usual one for ` +
        `the ground.`,
    );
  if (onRails && !cannotDig)
    notes.push('Posts on bottom rails cannot stand in the ground: the rails are bolted down to footings.');
  if (cannotDig)
    notes.push(`Nothing can be dug or driven into ${groundName(ground)}, so the posts are held down by weight.`);
  return { ground, anchor: cannotDig ? 'ballast' : onRails ? 'footing' : anchor, notes };
}

/** How many posts a frame has at most, told before it is laid out. */
function postCount(thing: Cloth, maxBay: number): number {
  if (thing.kind === 'canopy') {
    const { across, along } = canopyGrid(thing, maxBay);
    return (across + 1) * (along + 1);
  }
  const path = cleanPath(thing.path);
  return path.reduce((sum, point, k) => (k === 0 ? 1 : sum + baysOf(distance(path[k - 1], point), maxBay)), 0);
}
