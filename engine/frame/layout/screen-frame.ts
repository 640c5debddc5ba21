/** The frame of a screen: posts along its path, a rail along the top and one along the foot of the cloth. */

import { bottomOf } from '../../plan/defaults.ts';
import { degreesOf } from '../../plan/geometry/angles.ts';
import { cleanPath, distance, isClosed } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { PlanPoint, Screen } from '../../plan/types.ts';
import { baysOf } from './bays.ts';
import { slantCut } from './fittings.ts';
import type { FrameBrief, FrameCloth, FrameJoint, FrameModel, FramePost, FrameTube } from './model.ts';

/** A corner of the path straighter than this is taken as straight, squarer than this from 90° as square. [°] */
const STRAIGHT_DEG = 5;
/** A stay leans on a post this far up and stands as far away at its foot. */
const STAY_SHARE = 0.6;
const STAY_STEP = 0.05;

/** A post's place on the plan and how far the path turns there. */
interface Place {
  readonly at: PlanPoint;
  readonly bendDeg: number;
}

/**
 * Where a screen's posts stand on the plan: every corner of its path, and between them where a bay would be too long.
 */
export function screenPosts(screen: Screen, maxBay: number): Place[] {
  const path = cleanPath(screen.path);
  const posts: Place[] = [];
  for (let k = 1; k < path.length; k++) {
    const [a, b] = [path[k - 1], path[k]];
    const bays = baysOf(distance(a, b), maxBay);
    for (let i = 0; i < bays; i++) {
      const bendDeg = i > 0 || k === 1 ? 0 : bendAt(path[k - 2], a, b);
      posts.push({ at: [a[0] + ((b[0] - a[0]) * i) / bays, a[1] + ((b[1] - a[1]) * i) / bays], bendDeg });
    }
  }
  const last = path[path.length - 1];
  if (isClosed(path)) posts[0] = { at: posts[0].at, bendDeg: bendAt(path[path.length - 2], path[0], path[1]) };
  else posts.push({ at: last, bendDeg: 0 });
  return posts;
}

/** @param sunk How deep posts stand in the ground, 0 for posts on feet, which then need stays. [m] */
export function screenFrame(screen: Screen, brief: FrameBrief, sunk: number): FrameModel {
  const path = pathOf(screen, brief);
  const stood = postsOf(path, brief, sunk);
  const [ox, oy] = path.places[0].at;
  const { bottom, height, lengths, total, density } = path;
  return {
    kind: 'screen',
    posts: stood.posts,
    tubes: [...railsOf(path, brief), ...stood.tubes],
    joints: stood.joints,
    inGround: sunk > 0 ? stood.posts.length : 0,
    rails: [{ name: 'along the screen', span: Math.max(...lengths), tributary: (height - bottom) / 2, drop: null }],
    cloths: stretches(path).map((stretch) => clothOf(path, stretch)),
    standing: [
      {
        pushed: 'across the screen',
        area: total * (height - bottom),
        density,
        height: (height + bottom) / 2,
        base: sunk > 0 ? 0 : stayReach(height),
        posts: stood.posts.length,
      },
    ],
    roofArea: 0,
    pitchDeg: 0,
    braced: sunk === 0,
    freeTops: sunk > 0,
    toPlan: ([x, y]) => [x + ox, y + oy],
    notes: [],
  };
}

/** A screen's line in the frame's own axes, from which everything on it is laid out. */
interface ScreenPath {
  readonly places: readonly Place[];
  readonly closed: boolean;
  /** Own axes of a post: the first one's foot is the origin. */
  readonly own: (place: number) => readonly [x: number, y: number];
  /** Of each bay from post to post, and of all. [m] */
  readonly lengths: readonly number[];
  readonly total: number;
  /** Of the cloth. [m] */
  readonly bottom: number;
  readonly height: number;
  readonly density: number;
}

function pathOf(screen: Screen, brief: FrameBrief): ScreenPath {
  const closed = isClosed(screen.path);
  const places = screenPosts(screen, brief.maxBay);
  const [ox, oy] = places[0].at;
  const own = (place: number): readonly [number, number] => {
    const [x, y] = places[place % places.length].at;
    return [x - ox, y - oy];
  };
  const bays = closed ? places.length : places.length - 1;
  const lengths = Array.from({ length: bays }, (_, k) => {
    const [[ax, ay], [bx, by]] = [own(k), own(k + 1)];
    return Math.hypot(bx - ax, by - ay);
  });
  return {
    places,
    closed,
    own,
    lengths,
    total: lengths.reduce((sum, length) => sum + length, 0),
    bottom: bottomOf(screen),
    height: screen.height,
    density: screen.measuredDensity ?? screen.density,
  };
}

/** In every bay a rail along the top and one along the foot of the cloth. */
function railsOf({ own, lengths, bottom, height }: ScreenPath, { takeOff }: FrameBrief): FrameTube[] {
  return lengths.flatMap((bay, k) =>
    (
      [
        ['top rail', height],
        ['low rail', bottom],
      ] as const
    ).map(([kind, z]): FrameTube => {
      const length = bay - 2 * takeOff;
      return { part: kind, kind, from: [...own(k), z], to: [...own(k + 1), z], length };
    }),
  );
}

interface Stood {
  readonly posts: readonly FramePost[];
  readonly tubes: readonly FrameTube[];
  readonly joints: readonly FrameJoint[];
}

/** Along the path: each post with its joints, and the stay that holds one on a foot. */
function postsOf(path: ScreenPath, brief: FrameBrief, sunk: number): Stood {
  const { places, closed, own, lengths, total, height } = path;
  const last = places.length - 1;
  const stands = places.map((_, k) => {
    const [x, y] = own(k);
    const end = !closed && (k === 0 || k === last);
    const before = k > 0 ? lengths[k - 1] : closed ? lengths[last] : 0;
    const after = k < lengths.length ? lengths[k] : 0;
    const post: FramePost = {
      id: postId(k),
      role: end ? 'end' : 'edge',
      at: [x, y],
      height,
      share: (before + after) / (2 * total),
    };
    const tube: FrameTube = {
      part: 'post',
      kind: 'post',
      from: [x, y, 0],
      to: [x, y, height],
      length: height - (sunk > 0 ? 1 : 2) * brief.takeOff + sunk,
    };
    const stay = sunk === 0 ? stayOf([x, y], sideOf(places, k, closed), height) : { tubes: [], joints: [] };
    return {
      post,
      tubes: [tube, ...stay.tubes],
      joints: [...jointsOf(path, k, end, sunk), ...stay.joints],
    };
  });
  return {
    posts: stands.map(({ post }) => post),
    tubes: stands.flatMap(({ tubes }) => tubes),
    joints: stands.flatMap(({ joints }) => joints),
  };
}

/** What holds the rails to a post, and the post to the ground. @param end Whether one rail ends there, not two. */
function jointsOf({ places, own, bottom, height }: ScreenPath, k: number, end: boolean, sunk: number): FrameJoint[] {
  const { bendDeg } = places[k];
  const [x, y] = own(k);
  const bent = bendDeg > STRAIGHT_DEG;
  const kind = end ? '2-way corner' : bent ? '3-way corner' : '3-way tee';
  const adjustable = bent && Math.abs(bendDeg - 90) > STRAIGHT_DEG;
  const top: FrameJoint = { kind, adjustable, at: [x, y, height] };
  const clamp: FrameJoint = { kind: 'side clamp', adjustable: false, at: [x, y, bottom] };
  const foot: FrameJoint = { kind: 'foot', adjustable: false, at: [x, y, 0] };
  return [top, clamp, ...(end ? [] : [clamp]), ...(sunk === 0 ? [foot] : [])];
}

/** A raking tube on the lee side of a post that only stands on its foot. */
function stayOf(
  [x, y]: readonly [number, number],
  [nx, ny]: readonly [number, number],
  height: number,
): Omit<Stood, 'posts'> {
  const up = stayReach(height);
  const from: SpacePoint = [x, y, up];
  const to: SpacePoint = [x + nx * up, y + ny * up, 0];
  return {
    tubes: [{ part: 'stay', kind: 'stay', from, to, length: slantCut(from, to) }],
    joints: [
      { kind: 'brace clamp', adjustable: false, at: from },
      { kind: 'foot', adjustable: true, at: to },
    ],
  };
}

/** In steps that a tape shows. [m] */
function stayReach(height: number): number {
  return Math.round((STAY_SHARE * height) / STAY_STEP) * STAY_STEP;
}

/** Unit vector square to the path at a post. */
function sideOf(places: readonly Place[], k: number, closed: boolean): readonly [number, number] {
  const count = places.length;
  const before = places[k > 0 ? k - 1 : closed ? count - 1 : 0].at;
  const after = places[k < count - 1 ? k + 1 : closed ? 0 : k].at;
  const length = distance(before, after);
  return length === 0 ? [1, 0] : [(after[1] - before[1]) / length, -(after[0] - before[0]) / length];
}

/** The path parted at its bends, by the numbers of its posts: each straight stretch gets a cloth of its own. */
function stretches({ places, closed }: ScreenPath): (readonly [from: number, to: number])[] {
  const last = closed ? places.length : places.length - 1;
  const bends = places.flatMap(({ bendDeg }, k) => (k > 0 && k < last && bendDeg > STRAIGHT_DEG ? [k] : []));
  return [0, ...bends].map((from, part) => [from, bends[part] ?? last]);
}

function clothOf(
  { places, own, bottom, height, density }: ScreenPath,
  [from, to]: readonly [number, number],
): FrameCloth {
  const [[ax, ay], [bx, by]] = [own(from), own(to)];
  return {
    kind: 'screen',
    where: 'screen',
    opening: [Math.hypot(bx - ax, by - ay), height - bottom],
    bays: [to - from, 1],
    density,
    corners: [
      [ax, ay, bottom],
      [bx, by, bottom],
      [bx, by, height],
      [ax, ay, height],
    ],
    between: [postId(from), postId(to % places.length)],
  };
}

function postId(place: number): string {
  return `P${place + 1}`;
}

function bendAt(before: PlanPoint, at: PlanPoint, after: PlanPoint): number {
  const turn = Math.atan2(after[1] - at[1], after[0] - at[0]) - Math.atan2(at[1] - before[1], at[0] - before[0]);
  return degreesOf(Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn))));
}
