/** The frame of a canopy: a flat or sloped grid of rails, a post under every joint, square bays. */
import { canopyCorners, pointInRing } from '../plan/geometry.ts';
import type { SpacePoint } from '../plan/geometry.ts';
import { DEFAULTS } from '../plan/defaults.ts';
import type { Canopy, Drop, Feature, Plan, PlanPoint } from '../plan/types.ts';
import { baysOf } from './bays.ts';
import type { FrameBrief, FrameCloth, FrameJoint, FrameModel, FramePost, FrameRail, FrameTube, StandingCloth } from './model.ts';

/** Square joints take a slope up to this in their sockets' play. [°] */
const PLAY_DEG = 5;
/** A brace runs at 45° from the post to the rail, this far along each at most. [m] */
const BRACE_LEG = 0.8;
/** Tree trunks: radius over height, as everywhere in the plan. */
const TRUNK = 0.03;

export interface CanopyGrid {
  /** Bays along the width and along the length. */
  readonly across: number;
  readonly along: number;
  /** Of the cloth from its back edge to its front edge. [m] */
  readonly slope: number;
  readonly pitchDeg: number;
}

/** How many bays a canopy has. A sloping rail is as long as the slope. */
export function canopyGrid(canopy: Canopy, maxBay: number): CanopyGrid {
  const rise = canopy.rise ?? DEFAULTS.rise;
  const slope = Math.hypot(canopy.length, rise);
  return { across: baysOf(canopy.width, maxBay), along: baysOf(slope, maxBay), slope, pitchDeg: (Math.atan2(Math.abs(rise), canopy.length) * 180) / Math.PI };
}

/** @param sunk How deep posts stand in the ground, 0 for posts on feet. [m]  @param plan What may stand where a middle post would. */
export function canopyFrame(canopy: Canopy, brief: FrameBrief, sunk: number, plan: Plan): FrameModel {
  const grid = canopyGrid(canopy, brief.maxBay);
  const rise = canopy.rise ?? DEFAULTS.rise;
  const { across, along } = grid;
  const adjustable = grid.pitchDeg > PLAY_DEG;
  const toPlan = planAxes(canopy);
  const x = (i: number): number => (canopy.width * i) / across;
  const y = (j: number): number => (canopy.length * j) / along;
  const z = (j: number): number => canopy.height + (rise * j) / along;
  const top = (i: number, j: number): SpacePoint => [x(i), y(j), z(j)];
  const foot = (i: number, j: number): SpacePoint => [x(i), y(j), 0];
  const outer = (i: number, j: number): boolean => i === 0 || i === across || j === 0 || j === along;
  const notes: string[] = [];

  const leftOut = new Set<string>();
  for (let j = 1; j < along; j++) {
    for (let i = 1; i < across; i++) {
      const inTheWay = whatStandsAt(plan, toPlan([x(i), y(j)]));
      if (inTheWay === undefined) continue;
      leftOut.add(`${i},${j}`);
      notes.push(`A post under the middle would stand in ${inTheWay}, so it is left out and the rails cross there without one. They then span two bays, and a screwed joint in mid-span gives like a hinge: better move the frame so that the post can stand.`);
    }
  }

  const tubes: FrameTube[] = [];
  const bay = { across: canopy.width / across, along: grid.slope / along, footprint: canopy.length / along };
  const lengthwise = Math.abs(rise) > 0 ? 'sloping rail' : 'top rail, lengthwise';
  const add = (part: string, kind: FrameTube['kind'], from: SpacePoint, to: SpacePoint, length: number): void => void tubes.push({ part, kind, from, to, length });
  for (let j = 0; j <= along; j++) for (let i = 0; i < across; i++) add('top rail, crosswise', 'top rail', top(i, j), top(i + 1, j), bay.across - 2 * brief.takeOff);
  for (let i = 0; i <= across; i++) for (let j = 0; j < along; j++) add(lengthwise, 'top rail', top(i, j), top(i, j + 1), bay.along - 2 * brief.takeOff);
  if (brief.bottomRails) {
    for (const j of [0, along]) for (let i = 0; i < across; i++) add('bottom rail, crosswise', 'low rail', foot(i, j), foot(i + 1, j), bay.across - 2 * brief.takeOff);
    for (const i of [0, across]) for (let j = 0; j < along; j++) add('bottom rail, lengthwise', 'low rail', foot(i, j), foot(i, j + 1), bay.footprint - 2 * brief.takeOff);
  }

  const posts: FramePost[] = [];
  const joints: FrameJoint[] = [];
  const cells = 4 * across * along;
  let missing = 0;
  for (let j = 0; j <= along; j++) {
    for (let i = 0; i <= across; i++) {
      const corner = (i === 0 || i === across) && (j === 0 || j === along);
      const edge = !corner && outer(i, j);
      const share = (corner ? 1 : edge ? 2 : 4) / cells;
      if (leftOut.has(`${i},${j}`)) {
        joints.push({ kind: 'flat 4-way cross', adjustable, at: top(i, j) });
        missing += share;
        continue;
      }
      const id = `P${posts.length + 1}`;
      posts.push({ id, role: corner ? 'corner' : edge ? 'edge' : 'inner', at: [x(i), y(j)], height: z(j), share });
      joints.push({ kind: corner ? '3-way corner' : edge ? '4-way' : '5-way', adjustable, at: top(i, j) });
      const onRails = brief.bottomRails && outer(i, j);
      if (onRails) joints.push({ kind: corner ? '3-way corner' : '3-way tee', adjustable: false, at: foot(i, j) });
      else if (sunk === 0) joints.push({ kind: 'foot', adjustable: false, at: foot(i, j) });
      const inGround = !onRails && sunk > 0;
      const postName = rise === 0 ? 'post' : `post, ${rowName(j, along, rise)}`;
      add(postName, 'post', foot(i, j), top(i, j), z(j) - (inGround ? 1 : 2) * brief.takeOff + (inGround ? sunk : 0));
    }
  }

  const drops = canopy.drops ?? [];
  for (const brace of bracesFor(drops, across, along, bay.across, bay.footprint, top)) {
    add('brace', 'brace', brace[0], brace[1], Math.hypot(brace[1][0] - brace[0][0], brace[1][1] - brace[0][1], brace[1][2] - brace[0][2]));
    for (const at of brace) joints.push({ kind: 'brace clamp', adjustable: false, at });
  }

  const wholeSpan = leftOut.size > 0 ? 2 : 1;
  const rails: FrameRail[] = [
    { name: 'crosswise', span: bay.across * wholeSpan, tributary: along > 1 ? bay.along : bay.along / 2 },
    { name: 'lengthwise', span: bay.along * wholeSpan, tributary: across > 1 ? bay.across : bay.across / 2 },
  ];
  return {
    kind: 'canopy',
    posts: posts.map((post) => ({ ...post, share: post.share / (1 - missing) })),
    tubes,
    joints,
    inGround: sunk > 0 ? posts.filter((post) => !(brief.bottomRails && post.role !== 'inner')).length : 0,
    rails,
    cloths: clothsOf(canopy, grid.slope, top(0, 0), top(across, 0), top(across, along), top(0, along)),
    standing: drops.map((drop) => standingOf(drop, canopy, across, along)),
    roofArea: grid.slope * canopy.width,
    pitchDeg: grid.pitchDeg,
    braced: drops.length > 0,
    toPlan,
    notes,
  };
}

/** Own axes to the plan: x from the back left corner along the width, y along the length. */
function planAxes(canopy: Canopy): (point: readonly [number, number]) => PlanPoint {
  const [frontLeft, backLeft, backRight] = canopyCorners(canopy);
  const across = [(backRight[0] - backLeft[0]) / canopy.width, (backRight[1] - backLeft[1]) / canopy.width] as const;
  const along = [(frontLeft[0] - backLeft[0]) / canopy.length, (frontLeft[1] - backLeft[1]) / canopy.length] as const;
  return ([x, y]) => [backLeft[0] + x * across[0] + y * along[0], backLeft[1] + x * across[1] + y * along[1]];
}

/** What keeps a post from standing at a point: a no-post area, a trunk, a plant's foot. */
export function whatStandsAt(plan: Plan, point: PlanPoint): string | undefined {
  const found = plan.features.find((feature) => occupies(feature, point));
  return found === undefined ? undefined : (found.name ?? `the ${found.kind} "${found.id}"`);
}

function occupies(feature: Feature, [x, y]: PlanPoint): boolean {
  switch (feature.kind) {
    case 'keepout':
      return feature.blocks.includes('posts') && pointInRing([x, y], feature.outline);
    case 'bed':
    case 'building':
      return pointInRing([x, y], feature.outline);
    case 'tree':
      return Math.hypot(x - feature.at[0], y - feature.at[1]) <= Math.max(0.15, TRUNK * feature.height);
    case 'plant':
      return Math.hypot(x - feature.at[0], y - feature.at[1]) <= Math.max(0.25, (feature.pot?.width ?? 0) / 2);
    default:
      return false;
  }
}

function rowName(row: number, last: number, rise: number): string {
  if (row === 0) return rise > 0 ? 'low side' : 'high side';
  if (row === last) return rise > 0 ? 'high side' : 'low side';
  return `row ${row + 1} from the back`;
}

/** Two braces in each of the two upright faces that stand along the push of a drop. */
function bracesFor(
  drops: readonly Drop[],
  across: number,
  along: number,
  bayAcross: number,
  bayAlong: number,
  top: (i: number, j: number) => SpacePoint,
): [SpacePoint, SpacePoint][] {
  const braces: [SpacePoint, SpacePoint][] = [];
  const brace = (i: number, j: number, dx: number, dy: number, bay: number): void => {
    const [x, y, z] = top(i, j);
    const leg = Math.min(BRACE_LEG, bay / 3, z / 3);
    const share = leg / bay;
    const next = top(i + dx, j + dy);
    braces.push([[x, y, z - leg], [x + dx * leg, y + dy * leg, z + (next[2] - z) * share]]);
  };
  if (drops.some((drop) => drop.side === 'left' || drop.side === 'right')) {
    for (const j of [0, along]) {
      brace(0, j, 1, 0, bayAcross);
      brace(across, j, -1, 0, bayAcross);
    }
  }
  if (drops.some((drop) => drop.side === 'front' || drop.side === 'back')) {
    for (const i of [0, across]) {
      brace(i, 0, 0, 1, bayAlong);
      brace(i, along, 0, -1, bayAlong);
    }
  }
  return braces;
}

function clothsOf(canopy: Canopy, slope: number, backLeft: SpacePoint, backRight: SpacePoint, frontRight: SpacePoint, frontLeft: SpacePoint): FrameCloth[] {
  const edges = { back: [backLeft, backRight], right: [backRight, frontRight], front: [frontRight, frontLeft], left: [frontLeft, backLeft] } as const;
  const roof: FrameCloth = {
    where: 'roof',
    opening: [slope, canopy.width],
    density: canopy.measuredDensity ?? canopy.density,
    corners: [backLeft, backRight, frontRight, frontLeft],
  };
  const drops = (canopy.drops ?? []).map((drop): FrameCloth => {
    const [a, b] = edges[drop.side];
    const under = ([x, y, z]: SpacePoint): SpacePoint => [x, y, z - drop.depth];
    return { where: `drop ${drop.side}`, opening: [Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]), drop.depth], density: drop.density, corners: [a, b, under(b), under(a)] };
  });
  return [roof, ...drops];
}

function standingOf(drop: Drop, canopy: Canopy, across: number, along: number): StandingCloth {
  const rise = canopy.rise ?? DEFAULTS.rise;
  const sideways = drop.side === 'left' || drop.side === 'right';
  const edgeHeight = canopy.height + (sideways ? rise / 2 : drop.side === 'front' ? rise : 0);
  return {
    where: `drop ${drop.side}`,
    area: (sideways ? canopy.length : canopy.width) * drop.depth,
    density: drop.density,
    height: edgeHeight - drop.depth / 2,
    base: sideways ? canopy.width : canopy.length,
    posts: sideways ? along + 1 : across + 1,
  };
}
