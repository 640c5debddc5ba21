/** The frame of a canopy: a flat or sloped grid of rails, a post under every joint, square bays. */
import { canopyCorners } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import { DEFAULTS } from '../../plan/defaults.ts';
import type { Canopy, Plan, PlanPoint } from '../../plan/types.ts';
import { baysOf } from './bays.ts';
import { bracesFor } from './canopy-braces.ts';
import { clothsOf, standingOf } from './canopy-cloths.ts';
import type { FrameBrief, FrameJoint, FrameModel, FramePost, FrameRail, FrameTube } from './model.ts';
import { whatStandsAt } from './surroundings.ts';

/** Square joints take a slope up to this in their sockets' play. [°] */
const PLAY_DEG = 5;

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
  return {
    across: baysOf(canopy.width, maxBay),
    along: baysOf(slope, maxBay),
    slope,
    pitchDeg: (Math.atan2(Math.abs(rise), canopy.length) * 180) / Math.PI,
  };
}

/**
 * @param sunk How deep posts stand in the ground, 0 for posts on feet. [m]
 * @param plan What may stand where a middle post would.
 */
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

  const leftOut = new Map<string, string>();
  for (let j = 1; j < along; j++) {
    for (let i = 1; i < across; i++) {
      const inTheWay = whatStandsAt(plan, toPlan([x(i), y(j)]));
      if (inTheWay !== undefined) leftOut.set(`${i},${j}`, inTheWay);
    }
  }
  if (leftOut.size > 0) notes.push(leftOutNote([...leftOut.values()]));

  const tubes: FrameTube[] = [];
  const bay = { across: canopy.width / across, along: grid.slope / along, footprint: canopy.length / along };
  const lengthwise = Math.abs(rise) > 0 ? 'sloping rail' : 'top rail, lengthwise';
  const add = (part: string, kind: FrameTube['kind'], from: SpacePoint, to: SpacePoint, length: number): void =>
    void tubes.push({ part, kind, from, to, length });
  for (let j = 0; j <= along; j++)
    for (let i = 0; i < across; i++)
      add('top rail, crosswise', 'top rail', top(i, j), top(i + 1, j), bay.across - 2 * brief.takeOff);
  for (let i = 0; i <= across; i++)
    for (let j = 0; j < along; j++)
      add(lengthwise, 'top rail', top(i, j), top(i, j + 1), bay.along - 2 * brief.takeOff);
  if (brief.bottomRails) {
    for (const j of [0, along])
      for (let i = 0; i < across; i++)
        add('bottom rail, crosswise', 'low rail', foot(i, j), foot(i + 1, j), bay.across - 2 * brief.takeOff);
    for (const i of [0, across])
      for (let j = 0; j < along; j++)
        add('bottom rail, lengthwise', 'low rail', foot(i, j), foot(i, j + 1), bay.footprint - 2 * brief.takeOff);
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
  for (const brace of bracesFor(drops, brief.braces, across, along, bay.across, bay.footprint, top)) {
    add(
      'brace',
      'brace',
      brace[0],
      brace[1],
      Math.hypot(brace[1][0] - brace[0][0], brace[1][1] - brace[0][1], brace[1][2] - brace[0][2]),
    );
    for (const at of brace) joints.push({ kind: 'brace clamp', adjustable: false, at });
  }

  const missingAt = (i: number, j: number): boolean => leftOut.has(`${i},${j}`);
  // Where a post is left out, the rails that reach the next posts sooner carry those that cross them.
  const [over, through] = [
    bay.across * longestSpan(across, along, missingAt),
    bay.along * longestSpan(along, across, (j, i) => missingAt(i, j)),
  ];
  const rails: FrameRail[] = [
    {
      name: 'crosswise',
      span: over <= through + 1e-9 ? over : bay.across,
      tributary: along > 1 ? bay.along : bay.along / 2,
      drop: null,
    },
    {
      name: 'lengthwise',
      span: through <= over + 1e-9 ? through : bay.along,
      tributary: across > 1 ? bay.across : bay.across / 2,
      drop: null,
    },
    ...drops.map(({ side, depth, density }): FrameRail => {
      const crosswise = side === 'front' || side === 'back';
      return {
        name: `over the drop ${side}`,
        span: crosswise ? bay.across : bay.along,
        tributary: (crosswise ? bay.along : bay.across) / 2,
        drop: { depth, density },
      };
    }),
  ];
  return {
    kind: 'canopy',
    posts: posts.map((post) => ({ ...post, share: post.share / (1 - missing) })),
    tubes,
    joints,
    inGround: sunk > 0 ? posts.filter((post) => !(brief.bottomRails && post.role !== 'inner')).length : 0,
    rails,
    cloths: clothsOf(
      canopy,
      grid.slope,
      top(0, 0),
      top(across, 0),
      top(across, along),
      top(0, along),
      posts.filter(({ role }) => role === 'corner').map(({ id }) => id),
    ),
    standing: drops.map((drop) => standingOf(drop, canopy, across, along)),
    roofArea: grid.slope * canopy.width,
    pitchDeg: grid.pitchDeg,
    braced: drops.length > 0 || brief.braces,
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

/**
 * In bays: the most that a rail of one row crosses between two posts.
 * @param missing Whether the post at a place along a row is left out.
 */
function longestSpan(bays: number, rows: number, missing: (along: number, row: number) => boolean): number {
  let longest = 1;
  for (let row = 0; row <= rows; row++) {
    let span = 0;
    for (let i = 1; i <= bays; i++) {
      span += 1;
      longest = Math.max(longest, span);
      if (!missing(i, row)) span = 0;
    }
  }
  return longest;
}

function leftOutNote(inTheWay: readonly string[]): string {
  const names = [...new Set(inTheWay)].join(', ');
  const [posts, they] =
    inTheWay.length === 1
      ? ['A post under the middle', 'it is']
      : [`${inTheWay.length} posts under the middle`, 'they are'];
  return (
    `${posts} would stand in ${names}, so ${they} left out and the rails cross there without one. They then ` +
    `span further, and a screwed joint in mid-span gives like a hinge: better move the frame so that every ` +
    `post can stand.`
  );
}

function rowName(row: number, last: number, rise: number): string {
  if (row === 0) return rise > 0 ? 'low side' : 'high side';
  if (row === last) return rise > 0 ? 'high side' : 'low side';
  return `row ${row + 1} from the back`;
}
