/** The frame of a canopy: a flat or sloped grid of rails, a post under every joint, square bays. */

import { riseOf } from '../../plan/defaults.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Canopy, Drop, Plan } from '../../plan/types.ts';
import type { SunkDepth } from '../strength/footings.ts';
import { bracedBothWays, bracesFor, isCrosswise, isSideways } from './canopy-braces.ts';
import { clothsOf, standingOf } from './canopy-cloths.ts';
import { canopyNodes } from './canopy-grid.ts';
import type { CanopyNodes } from './canopy-grid.ts';
import { slantCut, tenthsOf } from './fittings.ts';
import type { FrameBrief, FrameJoint, FrameModel, FramePost, FrameRail, FrameTube } from './model.ts';
import { postShares } from './post-shares.ts';

/** Square joints take a slope up to this in their sockets' play. [°] */
const PLAY_DEG = 5;

interface Parts {
  readonly tubes: readonly FrameTube[];
  readonly joints: readonly FrameJoint[];
}

/**
 * @param sunk How deep posts stand in the ground.
 * @param plan What may stand where a middle post would.
 */
export function canopyFrame(canopy: Canopy, brief: FrameBrief, sunk: SunkDepth, plan: Plan): FrameModel {
  const nodes = canopyNodes(canopy, brief.maxBay, plan);
  const { across, along, slope, pitchDeg, top } = nodes;
  const drops = canopy.drops ?? [];
  const stood = postsOf(canopy, nodes, brief, sunk);
  const braces = bracesOf(drops, nodes, brief, canopy.onWall === true);
  return {
    kind: 'canopy',
    posts: stood.posts,
    tubes: [...railsOf(canopy, nodes, brief), ...stood.tubes, ...braces.tubes],
    joints: [...stood.joints, ...braces.joints],
    inGround: stood.posts.filter(
      ({ role, onWall }) => onWall !== true && sunk(role) > 0 && !(brief.bottomRails && role !== 'inner'),
    ).length,
    rails: spansOf(drops, nodes),
    cloths: clothsOf(
      canopy,
      slope,
      nodes,
      top(0, 0),
      top(across, 0),
      top(across, along),
      top(0, along),
      stood.posts.filter(({ role }) => role === 'corner').map(({ id }) => id),
    ),
    standing: drops.map((drop) => standingOf(drop, canopy, across, along)),
    roofArea: slope * canopy.width,
    pitchDeg,
    braced: drops.length > 0 || brief.braces,
    freeTops: !brief.braces && !bracedBothWays(drops),
    toPlan: nodes.toPlan,
    notes: stood.inTheWay.length > 0 ? [leftOutNote(stood.inTheWay)] : [],
  };
}

/** Rails of the roof, row by row and then column by column, and those on the ground round its edge. */
function railsOf(canopy: Canopy, { across, along, bay, top, foot }: CanopyNodes, brief: FrameBrief): FrameTube[] {
  const lengthwise = riseOf(canopy) === 0 ? 'top rail, lengthwise' : 'sloping rail';
  const rows = Array.from({ length: along + 1 }, (_, row) => row);
  const columns = Array.from({ length: across + 1 }, (_, column) => column);
  const crosswise = (part: string, kind: FrameTube['kind'], at: typeof top, row: number): FrameTube[] =>
    columns.slice(1).map((column) => {
      const [from, to] = [at(column - 1, row), at(column, row)];
      return { part, kind, from, to, length: bay.across - 2 * brief.takeOff };
    });
  const forward = (part: string, kind: FrameTube['kind'], at: typeof top, column: number, bare: number): FrameTube[] =>
    rows.slice(1).map((row) => {
      const [from, to] = [at(column, row - 1), at(column, row)];
      return { part, kind, from, to, length: bare - 2 * brief.takeOff };
    });
  return [
    ...rows.flatMap((row) => crosswise('top rail, crosswise', 'top rail', top, row)),
    ...columns.flatMap((column) => forward(lengthwise, 'top rail', top, column, bay.along)),
    ...(brief.bottomRails
      ? [
          ...[0, along].flatMap((row) => crosswise('bottom rail, crosswise', 'low rail', foot, row)),
          ...[0, across].flatMap((column) =>
            forward('bottom rail, lengthwise', 'low rail', foot, column, bay.footprint),
          ),
        ]
      : []),
  ];
}

/** Row by row from the back, left to right: each post with the joints on its top and at its foot. */
function postsOf(
  canopy: Canopy,
  nodes: CanopyNodes,
  brief: FrameBrief,
  sunk: SunkDepth,
): Parts & { readonly posts: readonly FramePost[]; readonly inTheWay: readonly string[] } {
  const { across, along, pitchDeg, top, foot, role: roleOf } = nodes;
  const rise = riseOf(canopy);
  const adjustable = pitchDeg > PLAY_DEG;
  const shares = postShares(nodes);
  const posts: FramePost[] = [];
  const tubes: FrameTube[] = [];
  const joints: FrameJoint[] = [];
  const inTheWay: string[] = [];
  for (let row = 0; row <= along; row++) {
    for (let column = 0; column <= across; column++) {
      const [from, to] = [foot(column, row), top(column, row)];
      const barredBy = nodes.inTheWay(column, row);
      if (barredBy !== undefined) {
        inTheWay.push(barredBy);
        joints.push({ kind: 'flat 4-way cross', adjustable, at: to });
        continue;
      }
      const role = roleOf(column, row);
      const height = to[2];
      const share = shares(column, row);
      if (canopy.onWall === true && row === 0) {
        const id = `W${posts.length + 1}`;
        posts.push({ id, role, at: [to[0], to[1]], height, share, onWall: true });
        joints.push({ kind: role === 'corner' ? '2-way corner' : '3-way tee', adjustable, at: to });
        joints.push({ kind: 'wall bracket', adjustable: false, at: to });
        continue;
      }
      posts.push({ id: `P${posts.length + 1}`, role, at: [to[0], to[1]], height, share });
      joints.push({ kind: TOP_JOINTS[role], adjustable, at: to });
      const onRails = brief.bottomRails && role !== 'inner';
      if (onRails) joints.push({ kind: role === 'corner' ? '3-way corner' : '3-way tee', adjustable: false, at: from });
      else if (sunk(role) === 0) joints.push({ kind: 'foot', adjustable: false, at: from });
      const inGround = !onRails && sunk(role) > 0;
      const length = height - (inGround ? 1 : 2) * brief.takeOff + (inGround ? sunk(role) : 0);
      tubes.push({ part: rise === 0 ? 'post' : `post, ${rowName(row, along, rise)}`, kind: 'post', from, to, length });
    }
  }
  return { posts, tubes, joints, inTheWay };
}

const TOP_JOINTS = { corner: '3-way corner', edge: '4-way', inner: '5-way' } as const;

function bracesOf(
  drops: readonly Drop[],
  { across, along, bay, top }: CanopyNodes,
  brief: FrameBrief,
  onWall: boolean,
): Parts {
  const all = bracesFor(drops, brief.braces, across, along, bay.across, bay.footprint, top);
  // A brace begins at a post; where the frame hangs from a wall there is none.
  const braces = onWall ? all.filter(([[, y]]) => y > ROUNDING) : all;
  return {
    tubes: braces.map(([from, to]) => {
      const length = slantCut(from, to);
      const alike = braces.every(([a, b]) => tenthsOf(slantCut(a, b)) === tenthsOf(length));
      const part = alike ? 'brace' : `brace, ${isCrosswise(from, to) ? 'crosswise' : 'lengthwise'}`;
      return { part, kind: 'brace', from, to, length };
    }),
    joints: braces.flatMap((ends) => ends.map((at): FrameJoint => ({ kind: 'brace clamp', adjustable: false, at }))),
  };
}

/** The longest rail each way, and what hangs on it and pulls on it. */
function spansOf(drops: readonly Drop[], { across, along, bay, inTheWay }: CanopyNodes): FrameRail[] {
  const missing = (column: number, row: number): boolean => inTheWay(column, row) !== undefined;
  // Where a post is left out, the rails that reach the next posts sooner carry those that cross them.
  const [over, through] = [
    bay.across * longestSpan(across, along, missing),
    bay.along * longestSpan(along, across, (row, column) => missing(column, row)),
  ];
  return [
    {
      name: 'crosswise',
      span: over <= through + ROUNDING ? over : bay.across,
      tributary: along > 1 ? bay.along : bay.along / 2,
      drop: null,
    },
    {
      name: 'lengthwise',
      span: through <= over + ROUNDING ? through : bay.along,
      tributary: across > 1 ? bay.across : bay.across / 2,
      drop: null,
    },
    ...drops.map(({ side, depth, density }): FrameRail => {
      const lengthwise = isSideways({ side });
      return {
        name: `over the drop ${side}`,
        span: lengthwise ? bay.along : bay.across,
        tributary: (lengthwise ? bay.across : bay.along) / 2,
        drop: { depth, density },
      };
    }),
  ];
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
