/** The way of a pot round what stands in the straight one: through the gates drawn and past the ends and corners. */

import { type Gate, gatesOf, PATH_WIDTH } from '../../plan/geometry/gates.ts';
import {
  distance,
  distanceToPath,
  distanceToSegment,
  openRing,
  pathsCross,
  pointInRing,
  closedRing,
} from '../../plan/geometry/shapes.ts';
import { Kept } from '../../plan/kept.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Feature, Plan, PlanPoint } from '../../plan/types.ts';

/** What is lower is stepped over. Our choice. [m] */
const STEPPED_OVER = 0.3;
/** Who carries a pot goes so far off a corner. [m] */
const OFF_CORNER = 0.6;
/** From a wall, and from the property line, a person with a pot keeps half a path. [m] */
const KEPT_CLEAR = PATH_WIDTH / 2;
/** And so far off the ends and corners that are passed, but in a gate. Our choice. [m] */
const PASSED_BY = 0.3;
/** More turning points than this are not gone through: a yard of hedges in steps. */
const MOST_TURNS = 160;

/** What nobody walks through, as a path on the ground. */
interface Barrier {
  readonly id: string;
  readonly path: readonly PlanPoint[];
  /** [m] */
  readonly half: number;
  readonly ring: readonly PlanPoint[] | null;
}

function barrierOf(feature: Feature): Barrier[] {
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
      return feature.height < STEPPED_OVER
        ? []
        : [{ id: feature.id, path: feature.path, half: feature.thickness / 2, ring: null }];
    case 'building': {
      const ring = openRing(feature.outline);
      return [{ id: feature.id, path: closedRing(ring), half: 0, ring }];
    }
    default:
      return [];
  }
}

/** Where one may turn, and how far it is from one such point to another. */
interface Turns {
  readonly points: readonly PlanPoint[];
  /** index = from · count + to; ∞: not on this ground. [m] */
  readonly between: Float64Array;
  /** The point after `from` on the way to `to`, likewise. */
  readonly next: Uint16Array;
}

/** A way as it is walked. */
interface Walk {
  /** [m] */
  readonly metres: number;
  /** The narrowest gate that it goes through; `null`: none. [m] */
  readonly gate: number | null;
}

export interface Walks {
  /** Ids of what stands in the straight way, as they were drawn. */
  inTheWay(from: PlanPoint, to: PlanPoint): string[];
  straight(from: PlanPoint, to: PlanPoint): Walk;
  /** The shortest way round, `null` where none leads there on this property. */
  round(from: PlanPoint, to: PlanPoint): Walk | null;
}

const kept = new Kept<Walks>();

export function walksIn(plan: Plan): Walks {
  return kept.of([plan], 'walks', () => makeWalks(plan));
}

function makeWalks(plan: Plan): Walks {
  const barriers = plan.features.flatMap(barrierOf);
  const gates = gatesOf(plan);
  const middles = gates.map(gateMiddle);
  const isFree = (from: PlanPoint, to: PlanPoint): boolean =>
    !barriers.some(({ path }) => pathsCross([from, to], path)) &&
    (middles.includes(from) || middles.includes(to) || passesWide(barriers, from, to));
  const walkAlong = (way: readonly PlanPoint[], metres: number): Walk => {
    const widths = gates.flatMap(({ ends, width }, k) =>
      way.includes(middles[k]) || pathsCross(way, ends) ? [width] : [],
    );
    return { metres, gate: widths.length === 0 ? null : Math.min(...widths) };
  };
  let turns: Turns | null = null;
  return {
    inTheWay: (from, to) => barriers.flatMap(({ id, path }) => (pathsCross([from, to], path) ? [id] : [])),
    straight: (from, to) => walkAlong([from, to], distance(from, to)),
    round(from, to) {
      turns ??= turnsOf([...middles, ...turningPoints(plan, barriers)].slice(0, MOST_TURNS), isFree);
      const { points, between } = turns;
      const near = (end: PlanPoint): { k: number; metres: number }[] =>
        points.flatMap((point, k) => (isFree(end, point) ? [{ k, metres: distance(end, point) }] : []));
      const [leaving, arriving] = [near(from), near(to)];
      let least = Infinity;
      let ends: readonly [number, number] | null = null;
      for (const first of leaving)
        for (const last of arriving) {
          const metres = first.metres + between[first.k * points.length + last.k] + last.metres;
          if (metres < least) [least, ends] = [metres, [first.k, last.k]];
        }
      return ends === null ? null : walkAlong([from, ...pointsBetween(turns, ...ends), to], least);
    },
  };
}

/** The turning points from one to another, both included. */
function pointsBetween({ points, next }: Turns, first: number, last: number): PlanPoint[] {
  const way = [points[first]];
  for (let k = first; k !== last; way.push(points[k])) k = next[k * points.length + last];
  return way;
}

/** Whether a straight way keeps clear of every end and corner but those that it begins or ends beside. */
function passesWide(barriers: readonly Barrier[], from: PlanPoint, to: PlanPoint): boolean {
  return barriers.every(({ path, half }) =>
    path.every(
      (corner) =>
        distanceToSegment(corner, from, to) >= PASSED_BY + half - ROUNDING ||
        Math.min(distance(corner, from), distance(corner, to)) < PASSED_BY + half,
    ),
  );
}

function gateMiddle({ ends: [[ax, ay], [bx, by]] }: Gate): PlanPoint {
  return [(ax + bx) / 2, (ay + by) / 2];
}

/** Points off every corner and end where a person with a pot has room. */
function turningPoints(plan: Plan, barriers: readonly Barrier[]): PlanPoint[] {
  const boundary = openRing(plan.site.boundary);
  const fence = closedRing(boundary);
  const hasRoom = (point: PlanPoint): boolean =>
    pointInRing(point, boundary) &&
    distanceToPath(point, fence) >= KEPT_CLEAR - ROUNDING &&
    barriers.every(
      ({ path, half, ring }) =>
        !(ring !== null && pointInRing(point, ring)) && distanceToPath(point, path) >= KEPT_CLEAR + half - ROUNDING,
    );
  const off = OFF_CORNER * Math.SQRT1_2;
  return barriers.flatMap(({ path }) =>
    path.flatMap(([x, y]) =>
      [
        [off, off],
        [off, -off],
        [-off, off],
        [-off, -off],
        [OFF_CORNER, 0],
        [-OFF_CORNER, 0],
        [0, OFF_CORNER],
        [0, -OFF_CORNER],
      ]
        .map(([dx, dy]): PlanPoint => [x + dx, y + dy])
        .filter(hasRoom),
    ),
  );
}

/** All shortest ways between turning points (Floyd and Warshall). */
function turnsOf(points: readonly PlanPoint[], isFree: (from: PlanPoint, to: PlanPoint) => boolean): Turns {
  const count = points.length;
  const between = new Float64Array(count * count).fill(Infinity);
  const next = Uint16Array.from({ length: count * count }, (_, index) => index % count);
  for (let a = 0; a < count; a++) {
    between[a * count + a] = 0;
    for (let b = a + 1; b < count; b++)
      if (isFree(points[a], points[b]))
        between[a * count + b] = between[b * count + a] = distance(points[a], points[b]);
  }
  for (let via = 0; via < count; via++)
    for (let a = 0; a < count; a++) {
      const first = between[a * count + via];
      if (first === Infinity) continue;
      for (let b = 0; b < count; b++) {
        const metres = first + between[via * count + b];
        if (metres >= between[a * count + b]) continue;
        between[a * count + b] = metres;
        next[a * count + b] = next[a * count + via];
      }
    }
  return { points, between, next };
}
