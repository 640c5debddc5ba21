/** Where every post stands: by two tape lengths from two corners that stay put, and the diagonals that must agree. */

import { upBearingOf } from '../../plan/defaults.ts';
import { degreesOf, headingOf, radiansOf } from '../../plan/geometry/angles.ts';
import { boundsOf, distance, openRing, pathsCross, sideOf, lineRound, meanPoint } from '../../plan/geometry/shapes.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Feature, Plan, PlanPoint } from '../../plan/types.ts';
import { formatLength } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import { shownName } from '../../plan/words/shown-name.ts';
import { formatDug, formatTape } from './lengths.ts';
import type { FrameModel, FramePost } from './model.ts';
import { FOOTING_CLEARANCE, HAND_BREADTH, nearestFace, whatStandsAt } from './surroundings.ts';
import type { Diagonal, FixedPoint, PostPlace, SettingOut, Surrounding } from './types.ts';

interface Candidate {
  readonly at: PlanPoint;
  readonly what: string;
  /** Buildings before walls before the property line: what is surest to find again. */
  readonly rank: number;
}

/** A crossing sharper than this counts as this sharp. [°] */
const SHARPEST = 3;
/** Two corners nearer to each other than this are no base to measure from. [m] */
const SHORTEST_BASE = 1;
/** Tapes are taken to be blocked only this far from their ends. [m] */
const END_SLACK = 0.05;

/** @param holes Diameter of the hole under posts of a kind; 0 where none is dug. [m] */
export function settingOut(
  model: FrameModel,
  plan: Plan,
  units: Units,
  holes: (role: FramePost['role']) => number = () => 0,
): SettingOut {
  const places = model.posts.map((post) => model.toPlan(post.at));
  const pair = bestPair(cornersToMeasureFrom(plan, units), places, obstaclesOf(plan));
  const fixed: FixedPoint[] =
    pair === null
      ? []
      : [
          { label: 'A', at: pair[0].at, what: pair[0].what },
          { label: 'B', at: pair[1].at, what: pair[1].what },
        ];
  const posts = model.posts.map((post, i): PostPlace => {
    const at = places[i];
    const side = pair === null ? 0 : sideOf(pair[0].at, pair[1].at, at);
    return {
      id: post.id,
      at,
      height: post.height,
      fromA: pair === null ? 0 : distance(pair[0].at, at),
      fromB: pair === null ? 0 : distance(pair[1].at, at),
      hand: Math.abs(side) < 1e-6 ? 'on the line' : side > 0 ? 'left' : 'right',
      onWall: post.onWall === true,
      blockedBy: blockerOf(post, at, plan),
      tightHole: post.onWall !== true && isTight(plan, at, holes(post.role)),
      notes: post.onWall === true ? [] : notesAt(plan, at, holes(post.role), units),
    };
  });
  const sentence =
    pair === null
      ? 'The plan has no two fixed corners to measure from: draw a building or a wall.'
      : `A is ${pair[0].what}, B is ${pair[1].what}; A to B is ` +
        `${formatTape(distance(pair[0].at, pair[1].at), units)} as drawn: measure that first, and if it does not ` +
        `agree, put the plan right before you go on. Every length is level and to the middle of the post. Left and ` +
        `right as you stand at A and look at B.${backWords(model, plan)}`;
  return {
    fixed,
    posts,
    diagonals: diagonalsOf(model),
    around: surroundingsOf(plan),
    upBearing: upBearingOf(plan),
    sentence,
  };
}

/** What stands already where a post of a frame would; `null`: nothing, or the post is a bracket on a wall. */
export function blockerOf(post: FramePost, at: PlanPoint, plan: Plan): string | null {
  return post.onWall === true ? null : (whatStandsAt(plan, at) ?? null);
}

function surroundingsOf({ features, site }: Plan): Surrounding[] {
  const line: Surrounding = { kind: 'property line', name: null, path: openRing(site.boundary), closed: true };
  return [
    line,
    ...features.flatMap((feature): Surrounding[] => {
      const name = feature.name === undefined ? null : shownName(feature.name);
      if (feature.kind === 'building')
        return [{ kind: 'building', name, path: openRing(feature.outline), closed: true }];
      return feature.kind === 'wall' ? [{ kind: 'wall', name, path: feature.path, closed: false }] : [];
    }),
  ];
}

/** Both diagonals of a canopy's outer posts; of a screen its whole length from end to end. */
function diagonalsOf(model: FrameModel): Diagonal[] {
  const corners = model.posts.filter((post) => post.role === 'corner' || post.role === 'end');
  const length = (a: number, b: number): Diagonal => ({
    from: corners[a].id,
    to: corners[b].id,
    length: Math.hypot(corners[b].at[0] - corners[a].at[0], corners[b].at[1] - corners[a].at[1]),
  });
  if (model.kind === 'screen') return corners.length === 2 ? [length(0, 1)] : [];
  // Posts go row by row from the back, left to right.
  return [length(0, 3), length(1, 2)];
}

/** Which side of a canopy its posts are numbered from. */
function backWords(model: FrameModel, plan: Plan): string {
  if (model.kind === 'screen') return '';
  const [left, right, front] = model.posts.filter(({ role }) => role === 'corner');
  const side = sideWord(
    model.toPlan([(left.at[0] + right.at[0]) / 2, (left.at[1] + front.at[1]) / 2]),
    model.toPlan([(left.at[0] + right.at[0]) / 2, left.at[1]]),
    plan,
  );
  return ` The frame’s back, ${left.id} to ${right.id}, is its ${side} side.`;
}

/** In which direction a point lies from another, in a compass word. */
function sideWord(from: PlanPoint, to: PlanPoint, plan: Plan): string {
  return compassWord(headingOf(from, to) + upBearingOf(plan));
}

/** The corner of a ring, told as if the ring were as long as it is wide: a long house has no west corner. */
function cornerWord(ring: readonly PlanPoint[], at: PlanPoint, plan: Plan): string {
  const { minX, maxX, minY, maxY } = boundsOf(ring);
  const scaled = ([x, y]: PlanPoint): PlanPoint => [(x - minX) / (maxX - minX), (y - minY) / (maxY - minY)];
  return sideWord([0.5, 0.5], scaled(at), plan);
}

function cornersToMeasureFrom(plan: Plan, units: Units): Candidate[] {
  const corners: Candidate[] = [];
  const seen = new Set<string>();
  const add = (at: PlanPoint, what: string, rank: number): void => {
    const key = at.map((value) => value.toFixed(2)).join();
    if (seen.has(key)) return;
    seen.add(key);
    corners.push({ at, what, rank });
  };
  for (const feature of plan.features)
    if (feature.kind === 'building')
      for (const at of openRing(feature.outline))
        add(
          at,
          `the ${cornerWord(openRing(feature.outline), at, plan)} corner of ${title(feature)} (${place(at, units)})`,
          0,
        );
  for (const feature of plan.features) {
    if (feature.kind === 'wall')
      for (const at of feature.path)
        add(
          at,
          `the ${sideWord(meanPoint(feature.path), at, plan)} ` +
            `${feature.path.length === 2 ? 'end' : 'end or corner'} of ${title(feature)} (the middle of its ` +
            `thickness, ${place(at, units)})`,
          1,
        );
  }
  for (const at of openRing(plan.site.boundary))
    add(
      at,
      `the ${cornerWord(openRing(plan.site.boundary), at, plan)} corner of the property line (${place(at, units)})`,
      2,
    );
  return corners;
}

function obstaclesOf(plan: Plan): readonly (readonly PlanPoint[])[] {
  return plan.features.flatMap((feature) => {
    if (feature.kind === 'building') return [lineRound(feature.outline)];
    return feature.kind === 'wall' ? [feature.path] : [];
  });
}

/**
 * The pair from which the worst post is placed best: tapes clear of walls, crossing well, short, from what is surest to
 * find.
 */
function bestPair(
  corners: readonly Candidate[],
  places: readonly PlanPoint[],
  obstacles: readonly (readonly PlanPoint[])[],
): [Candidate, Candidate] | null {
  let best: { pair: [Candidate, Candidate]; score: number } | null = null;
  const hidden = corners.map((corner) => places.filter((place) => isBlocked(corner.at, place, obstacles)).length);
  for (let a = 0; a < corners.length; a++) {
    for (let b = a + 1; b < corners.length; b++) {
      if (distance(corners[a].at, corners[b].at) < SHORTEST_BASE) continue;
      let sharpest = 90;
      let longest = 0;
      for (const place of places) {
        sharpest = Math.min(sharpest, crossing(corners[a].at, corners[b].at, place));
        longest = Math.max(longest, distance(corners[a].at, place), distance(corners[b].at, place));
      }
      // What a tape reads wrong grows with its length and with one over the sine of the crossing.
      const score =
        longest / Math.sin(radiansOf(Math.max(SHARPEST, sharpest))) +
        3 * (corners[a].rank + corners[b].rank) +
        10 * (hidden[a] + hidden[b]);
      if (best === null || score < best.score - ROUNDING) best = { pair: [corners[a], corners[b]], score };
    }
  }
  return best === null ? null : best.pair;
}

/** Angle at which the two tapes cross at a post, 0 to 90°. */
function crossing(a: PlanPoint, b: PlanPoint, place: PlanPoint): number {
  const lengths = distance(a, place) * distance(b, place);
  return lengths === 0 ? 0 : degreesOf(Math.asin(Math.min(1, Math.abs(sideOf(place, a, b)) / lengths)));
}

function isBlocked(from: PlanPoint, to: PlanPoint, obstacles: readonly (readonly PlanPoint[])[]): boolean {
  const length = distance(from, to);
  if (length <= 2 * END_SLACK) return false;
  const along = (metres: number): PlanPoint => [
    from[0] + ((to[0] - from[0]) * metres) / length,
    from[1] + ((to[1] - from[1]) * metres) / length,
  ];
  const tape = [along(END_SLACK), along(length - END_SLACK)];
  return obstacles.some((path) => pathsCross(tape, path));
}

/** Whether a hole's edge would come nearer to a wall than footings keep off. @param hole Its diameter. [m] */
function isTight(plan: Plan, at: PlanPoint, hole: number): boolean {
  const face = hole === 0 ? undefined : nearestFace(plan, at, FOOTING_CLEARANCE + hole / 2);
  return face !== undefined && face.gap - hole / 2 < FOOTING_CLEARANCE - ROUNDING;
}

/** @param hole Its diameter, 0 where none is dug. [m] */
function notesAt(plan: Plan, at: PlanPoint, hole: number, units: Units): string[] {
  const notes: string[] = [];
  const inTheWay = whatStandsAt(plan, at);
  if (inTheWay !== undefined) notes.push(`would stand in ${inTheWay}: move the frame, or that`);
  const face = nearestFace(plan, at, FOOTING_CLEARANCE + hole / 2);
  if (face === undefined) return notes;
  const gap = formatTape(face.gap, units);
  const clear = formatTape(FOOTING_CLEARANCE, units);
  const edge = face.gap - hole / 2;
  if (face.gap < HAND_BREADTH - ROUNDING) notes.push(`only ${gap} from ${face.name}: leave a hand's breadth`);
  if (isTight(plan, at, hole)) {
    const where = edge <= 0 ? 'would reach under' : `would come within ${formatTape(edge, units)} of`;
    notes.push(
      `${gap} from ${face.name}: its hole, ${formatDug(hole, units)} across, ${where} it, nearer than ${clear}. ` +
        `Ask its owner first; move the frame, or hold this post by weights`,
    );
  } else if (hole === 0 && face.gap >= HAND_BREADTH - ROUNDING)
    notes.push(
      `${gap} from ${face.name}: too near for a hole, whose edge keeps ${clear} off. In soil move the frame, or ` +
        `hold this post by weights`,
    );
  return notes;
}

function title(feature: Feature): string {
  return feature.name === undefined ? shownName(`the ${feature.kind} "${feature.id}"`) : `“${shownName(feature.name)}”`;
}

/** A place on the plan as the drawing's edges are numbered. */
function place([x, y]: PlanPoint, units: Units): string {
  return `x ${formatLength(x, units)}, y ${formatLength(y, units)}`;
}
