/** The frame of a screen: posts along its path, a rail along the top and one along the foot of the cloth. */
import { cleanPath, distance, isClosed } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import { bottomOf } from '../../plan/defaults.ts';
import type { PlanPoint, Screen } from '../../plan/types.ts';
import { baysOf } from './bays.ts';
import type {
  FrameBrief,
  FrameCloth,
  FrameJoint,
  FrameModel,
  FramePost,
  FrameRail,
  FrameTube,
  StandingCloth,
} from './model.ts';

/** A corner of the path straighter than this is taken as straight, squarer than this from 90° as square. [°] */
const STRAIGHT_DEG = 5;
/** A stay leans on a post this far up and stands as far away at its foot. */
const STAY_SHARE = 0.6;

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
  const bottom = bottomOf(screen);
  const closed = isClosed(screen.path);
  const places = screenPosts(screen, brief.maxBay);
  const [ox, oy] = places[0].at;
  const own = (at: PlanPoint): readonly [number, number] => [at[0] - ox, at[1] - oy];
  const tubes: FrameTube[] = [];
  const joints: FrameJoint[] = [];
  const bays = closed ? places.length : places.length - 1;
  const lengths: number[] = [];

  for (let k = 0; k < bays; k++) {
    const [ax, ay] = own(places[k].at);
    const [bx, by] = own(places[(k + 1) % places.length].at);
    const length = Math.hypot(bx - ax, by - ay);
    lengths.push(length);
    tubes.push({
      part: 'top rail',
      kind: 'top rail',
      from: [ax, ay, screen.height],
      to: [bx, by, screen.height],
      length: length - 2 * brief.takeOff,
    });
    tubes.push({
      part: 'low rail',
      kind: 'low rail',
      from: [ax, ay, bottom],
      to: [bx, by, bottom],
      length: length - 2 * brief.takeOff,
    });
  }
  const total = lengths.reduce((sum, length) => sum + length, 0);

  const posts = places.map((place, k): FramePost => {
    const [x, y] = own(place.at);
    const before = k > 0 ? lengths[k - 1] : closed ? lengths[bays - 1] : 0;
    const after = k < bays ? lengths[k] : 0;
    const end = !closed && (k === 0 || k === places.length - 1);
    const bent = place.bendDeg > STRAIGHT_DEG;
    const turned = bent && Math.abs(place.bendDeg - 90) > STRAIGHT_DEG;
    joints.push({
      kind: end ? '2-way corner' : bent ? '3-way corner' : '3-way tee',
      adjustable: turned,
      at: [x, y, screen.height],
    });
    const lowRails = end ? 1 : 2;
    const onGround = bottom === 0 && sunk === 0;
    if (onGround)
      joints.push({
        kind: end ? '2-way corner' : bent ? '3-way corner' : '3-way tee',
        adjustable: turned,
        at: [x, y, 0],
      });
    else {
      for (let rail = 0; rail < lowRails; rail++)
        joints.push({ kind: 'side clamp', adjustable: false, at: [x, y, bottom] });
      if (sunk === 0) joints.push({ kind: 'foot', adjustable: false, at: [x, y, 0] });
    }
    tubes.push({
      part: 'post',
      kind: 'post',
      from: [x, y, 0],
      to: [x, y, screen.height],
      length: screen.height - (sunk > 0 ? 1 : 2) * brief.takeOff + sunk,
    });
    if (sunk === 0) addStay(tubes, joints, [x, y], sideOf(places, k, closed), screen.height);
    return {
      id: postId(k),
      role: end ? 'end' : 'edge',
      at: [x, y],
      height: screen.height,
      share: (before + after) / (2 * total),
    };
  });

  const density = screen.measuredDensity ?? screen.density;
  const depth = screen.height - bottom;
  const longest = Math.max(...lengths);
  return {
    kind: 'screen',
    posts,
    tubes,
    joints,
    inGround: sunk > 0 ? posts.length : 0,
    rails: [{ name: 'along the screen', span: longest, tributary: depth / 2, drop: null }] satisfies FrameRail[],
    cloths: stretches(places, closed).map((stretch): FrameCloth =>
      screenCloth(places, stretch, own, bottom, screen.height, density),
    ),
    standing: [
      {
        pushed: 'across the screen',
        area: total * depth,
        density,
        height: (screen.height + bottom) / 2,
        base: sunk > 0 ? 0 : STAY_SHARE * screen.height,
        posts: posts.length,
      } satisfies StandingCloth,
    ],
    roofArea: 0,
    pitchDeg: 0,
    braced: sunk === 0,
    toPlan: ([x, y]) => [x + ox, y + oy],
    notes: [],
  };
}

/** A raking tube on the lee side of a post that only stands on its foot. */
function addStay(
  tubes: FrameTube[],
  joints: FrameJoint[],
  [x, y]: readonly [number, number],
  [nx, ny]: readonly [number, number],
  height: number,
): void {
  const up = STAY_SHARE * height;
  const from: SpacePoint = [x, y, up];
  const to: SpacePoint = [x + nx * up, y + ny * up, 0];
  tubes.push({ part: 'stay', kind: 'stay', from, to, length: up * Math.SQRT2 });
  joints.push({ kind: 'brace clamp', adjustable: false, at: from }, { kind: 'foot', adjustable: true, at: to });
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
function stretches(places: readonly Place[], closed: boolean): (readonly [from: number, to: number])[] {
  const last = closed ? places.length : places.length - 1;
  const bends = places.flatMap(({ bendDeg }, k) => (k > 0 && k < last && bendDeg > STRAIGHT_DEG ? [k] : []));
  return [0, ...bends].map((from, part) => [from, bends[part] ?? last]);
}

function screenCloth(
  places: readonly Place[],
  [from, to]: readonly [number, number],
  own: (at: PlanPoint) => readonly [number, number],
  bottom: number,
  height: number,
  density: number,
): FrameCloth {
  const end = to % places.length;
  const [[ax, ay], [bx, by]] = [own(places[from].at), own(places[end].at)];
  return {
    kind: 'screen',
    where: 'screen',
    opening: [Math.hypot(bx - ax, by - ay), height - bottom],
    density,
    corners: [
      [ax, ay, bottom],
      [bx, by, bottom],
      [bx, by, height],
      [ax, ay, height],
    ],
    between: [postId(from), postId(end)],
  };
}

function postId(place: number): string {
  return `P${place + 1}`;
}

function bendAt(before: PlanPoint, at: PlanPoint, after: PlanPoint): number {
  const turn = Math.atan2(after[1] - at[1], after[0] - at[0]) - Math.atan2(at[1] - before[1], at[0] - before[0]);
  return Math.abs(Math.atan2(Math.sin(turn), Math.cos(turn)) * (180 / Math.PI));
}
