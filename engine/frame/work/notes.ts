/** What to mind about a frame before anything else is read, worst first. */

import { riseOf } from '../../plan/defaults.ts';
import { footprintOf } from '../../plan/geometry/cloth-shapes.ts';
import { openRing, pointInRing, distanceToEdge } from '../../plan/geometry/shapes.ts';
import type { Cloth, Plan, PlanPoint, StockTube } from '../../plan/types.ts';
import { formatLength, formatSpeed } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { shownName } from '../../plan/words/shown-name.ts';
import type { Design } from '../design.ts';
import { shrinkOffer } from '../layout/bays.ts';
import { formatForce, formatSlight } from '../layout/lengths.ts';
import { tallestPost } from '../layout/model.ts';
import type { FrameBrief, FrameModel } from '../layout/model.ts';
import { idsNamed } from '../layout/post-names.ts';
import { neighboursOf } from '../layout/surroundings.ts';
import type { PostPlace, SettingOut } from '../layout/types.ts';
import { usualTubes } from '../shop/stock.ts';
import { MOST_ANCHORS } from '../strength/anchors.ts';
import { asFlagpole } from '../strength/beam.ts';
import { needsBraces } from '../strength/checks.ts';
import { TAKE_DOWN_GUST } from '../strength/storm-words.ts';
import { sectionOf, STEEL } from '../strength/tube.ts';
import type { PostStrength } from '../strength/types.ts';
import { bearingGust, LEAN_ON_POST, postGust } from '../strength/wind-plan.ts';
import { ENGINEER_AREA, ENGINEER_HEIGHT } from './cautions.ts';
import {
  largeRoofNote,
  NO_TAKE_OFF,
  outsideNote,
  sagNote,
  shrinkNote,
  tallPostNote,
  tooHeavyNote,
} from './note-words.ts';

/** A frame hangs from a wall that stands this near to its back edge. [m] */
const WALL_REACH = 0.3;

export function notesOf(
  thing: Cloth,
  plan: Plan,
  made: Design,
  placed: SettingOut,
  post: PostStrength,
  units: Units,
): string[] {
  const { model, brief } = made;
  const weak = strengthNotes(made, plan, units);
  // Of a screen both notes would ask for thicker posts, the wind's for the thicker ones.
  const sways = weak.length > 0 && model.kind === 'screen' ? [] : leanNotes(made, plan, post, units);
  return [
    ...inTheWayNotes(placed.posts),
    ...tightHoleNotes(placed.posts),
    ...wallNotes(thing, plan, units),
    ...runsThrough(thing, plan, model, brief),
    ...ruleNotes(plan, model, placed, units),
    ...engineerNotes(model, units),
    ...weightNotes(made),
    ...weak,
    ...sways,
    ...model.notes,
    ...brief.notes,
    ...made.spans.filter(({ verdict }) => verdict === 'sags').map((span) => sagNote(span, units)),
    ...shrinkNotes(thing, brief, units),
    ...sizeNotes(brief, units),
  ];
}

/** A roof or posts so large that somebody with a licence is to be asked. */
function engineerNotes(model: FrameModel, units: Units): string[] {
  const tallest = tallestPost(model);
  return [
    ...(model.roofArea > ENGINEER_AREA ? [largeRoofNote(model.roofArea, units)] : []),
    ...(tallest > ENGINEER_HEIGHT ? [tallPostNote(tallest, units)] : []),
  ];
}

/** Where weights would hold it, but not so many of them. */
function weightNotes({ anchors: { kind, ground, posts, count } }: Design): string[] {
  const heaviest = posts.reduce((a, b) => (b.each > a.each ? b : a), posts[0]);
  if (kind !== 'ballast' || heaviest === undefined || heaviest.each <= MOST_ANCHORS) return [];
  return [tooHeavyNote(count, heaviest.each, heaviest.ids, ground === 'paving')];
}

/** Where a roof a little smaller one way would do with a bay less. */
function shrinkNotes(thing: Cloth, { maxBay }: FrameBrief, units: Units): string[] {
  if (thing.kind !== 'canopy') return [];
  const sides = [
    ['length', Math.hypot(thing.length, riseOf(thing))],
    ['width', thing.width],
  ] as const;
  return sides.flatMap(([what, length]) => {
    const shrink = shrinkOffer(length, maxBay);
    return shrink === null ? [] : [shrinkNote(what, shrink, maxBay, units)];
  });
}

/** How the sizes of the sheet are to be read. */
function sizeNotes({ tube, takeOff }: FrameBrief, units: Units): string[] {
  return [outsideNote(tube, units), ...(takeOff === 0 ? [NO_TAKE_OFF] : [])];
}

/** Posts where something stands already, one sentence for each thing. */
export function inTheWayNotes(posts: readonly Pick<PostPlace, 'id' | 'blockedBy'>[]): string[] {
  const things = [...new Set(posts.flatMap(({ blockedBy }) => (blockedBy === null ? [] : [blockedBy])))];
  return things.map(
    (thing) =>
      `${postsNamed(posts.filter(({ blockedBy }) => blockedBy === thing))} would stand in ${thing}: move the ` +
      `frame, or that, before you build.`,
  );
}

/** Posts that cannot stand where they are drawn for their holes; where each of them is, is told there. */
function tightHoleNotes(posts: readonly PostPlace[]): string[] {
  const tight = posts.filter(({ tightHole }) => tightHole);
  return tight.length === 0
    ? []
    : [
        `${postsNamed(tight)} ${tight.length === 1 ? 'stands' : 'stand'} too near a wall for a hole: before you buy, ` +
          `move the frame, or hold ${tight.length === 1 ? 'it' : 'them'} by weights.`,
      ];
}

/** A back edge on a wall wants one close to it that is tall enough, and that may hold it. */
function wallNotes(thing: Cloth, plan: Plan, units: Units): string[] {
  if (thing.kind !== 'canopy' || thing.onWall !== true) return [];
  const [, left, right] = footprintOf(thing);
  const [wall] = neighboursOf(plan, [left, right], WALL_REACH).filter(({ kind }) => kind !== 'hedge');
  if (wall === undefined)
    return [
      `Its back edge is to hang from a wall, but none stands within ${formatLength(WALL_REACH, units)} of it: move ` +
        `it there, or let it stand on posts all round.`,
    ];
  return [
    ...(wall.height < thing.height
      ? [`${wall.name} is ${formatLength(wall.height, units)} high, lower than the edge that is to hang from it.`]
      : []),
    `It hangs from ${wall.name}: what that bears is not worked out here. Somebody licensed for it decides and ` +
      `fixes it.`,
  ];
}

/**
 * A building, wall or hedge that is taller than the rails and stands inside the frame; with rails on the ground any of
 * them.
 */
function runsThrough(thing: Cloth, plan: Plan, model: FrameModel, brief: FrameBrief): string[] {
  const lowest = Math.min(
    ...model.posts.map(({ height }) => height),
    ...model.cloths.flatMap(({ corners }) => corners.map(([, , z]) => z)),
  );
  const inside = neighboursOf(plan, groundUnder(thing), 0).filter(({ height }) => brief.bottomRails || height > lowest);
  return inside.length === 0
    ? []
    : [
        `It would run through ${inside.map(({ name }) => name).join(' and ')}: move it until it stands clear by a ` +
          `hand’s breadth.`,
      ];
}

/** A roof that hangs from a wall may come up to it. */
function groundUnder(thing: Cloth): readonly PlanPoint[] {
  const ring = footprintOf(thing);
  if (thing.kind !== 'canopy' || thing.onWall !== true) return ring;
  const share = Math.min(0.5, WALL_REACH / thing.length);
  const forward = ([x, y]: PlanPoint, [toX, toY]: PlanPoint): PlanPoint => [
    x + (toX - x) * share,
    y + (toY - y) * share,
  ];
  const [frontLeft, backLeft, backRight, frontRight] = ring;
  return [frontLeft, forward(backLeft, frontLeft), forward(backRight, frontRight), frontRight];
}

/** The property line, the setback from it and the height that the plan's rules allow. */
function ruleNotes({ site }: Plan, model: FrameModel, { posts }: SettingOut, units: Units): string[] {
  const ring = openRing(site.boundary);
  const outside = posts.filter(({ at }) => !pointInRing(at, ring, 1e-6));
  const { setback = 0, maxHeight } = site.rules ?? {};
  const close = posts.filter(
    ({ at }) => !outside.some((post) => post.at === at) && distanceToEdge(at, ring) < setback - 1e-6,
  );
  const tallest = Math.max(...model.posts.map(({ height }) => height));
  return [
    ...(outside.length > 0 ? [`${postsNamed(outside)} would stand outside the property line.`] : []),
    ...(close.length > 0
      ? [
          `${postsNamed(close)} would stand nearer to the property line than the ${formatLength(setback, units)} ` +
            `that your rules ask for.`,
        ]
      : []),
    ...(maxHeight !== undefined && tallest > maxHeight + 1e-6
      ? [`It is ${formatLength(tallest, units)} high; your rules allow ${formatLength(maxHeight, units)}.`]
      : []),
  ];
}

function strengthNotes({ model, brief, blockedBy }: Design, plan: Plan, units: Units): string[] {
  const blocked = blockedBy.length > 0;
  const bears = (outside: number, wall: number): number => {
    const gust = bearingGust(model, sectionOf(outside, wall));
    return blocked ? gust.blocked : gust.clear;
  };
  const now = bears(brief.tube.outside, brief.tube.wall);
  if (now >= TAKE_DOWN_GUST) return [];
  const weak = postGust(model, brief.section) <= now ? 'its posts bend at the ground' : 'its rails bend';
  const thicker = lightestTube(plan, (outside, wall) => bears(outside, wall) >= TAKE_DOWN_GUST);
  const cure =
    thicker === undefined
      ? 'No tube in the stock list bears enough at these bays: make the bays shorter.'
      : `The lightest tube in the stock list that bears ${formatSpeed(TAKE_DOWN_GUST, units)} here is ` +
        `${shownName(thicker.name)}.`;
  return [`With the cloth up, ${weak} in gusts of ${formatSpeed(Math.floor(now), units)} already. ${cure}`];
}

/** Posts without braces, one of which somebody who leans on it alone would bend for good. */
function leanNotes(
  { model, brief: { section } }: Design,
  plan: Plan,
  { height, leaned }: PostStrength,
  units: Units,
): string[] {
  if (!needsBraces(model, section)) return [];
  const thicker = lightestTube(
    plan,
    (outside, wall) => asFlagpole(sectionOf(outside, wall), LEAN_ON_POST, height).stress <= STEEL.allowable,
  );
  const tube =
    thicker === undefined
      ? 'no tube in the stock list is stiff enough alone'
      : `the lightest tube in the stock list that is stiff enough alone is ${shownName(thicker.name)}`;
  const cure =
    model.kind === 'canopy'
      ? `Choose braces in the plan, and this sheet lists them; or thicker tube: ${tube}.`
      : `Take thicker tube: ${tube}.`;
  return [
    `It sways: a push of ${formatForce(LEAN_ON_POST, units)} at the top of one post alone bends it ` +
      `${formatSlight(leaned.sag, units)}, more than the tube bears. ${cure}`,
  ];
}

/** Of those that shops of the place have: the lightest tube that will do. */
function lightestTube(plan: Plan, does: (outside: number, wall: number) => boolean): StockTube | undefined {
  const byMass = (a: StockTube, b: StockTube): number =>
    sectionOf(a.outside, a.wall).mass - sectionOf(b.outside, b.wall).mass;
  return usualTubes(plan)
    .filter((tube) => does(tube.outside, tube.wall))
    .toSorted(byMass)
    .at(0);
}

/** "Post P1", "Posts P1, P2 and P3". */
function postsNamed(posts: readonly { readonly id: string }[]): string {
  return `Post${posts.length === 1 ? '' : 's'} ${idsNamed(posts.map(({ id }) => id))}`;
}
