/**
 * Who sees cloth, and how much of it: the one notion that the search, options, map and words ask. What shows of a cloth
 * is what stands higher than the hidden height of its place; an onlooker's line sees it from as much of its length as
 * something shows.
 */

import { canopyCorners } from '../../plan/geometry/cloth-shapes.ts';
import { cleanPath, distance, pathLength } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { countUp, ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Cloth, Eye, Plan } from '../../plan/types.ts';
import { seenAbove, type SightLines, sightLinesOf } from './hidden-height.ts';

/** Points of a cloth's upper edge that are looked at stand at most this far apart. [m] */
const STEP = 0.25;
/** Less than this shows as nothing. [m] */
export const NOTHING = 0.005;

/** Whether points so far from each other along any edge that so many of them make up are all looked at. [m] */
export function isLookedAtEvery(step: number): boolean {
  return Math.abs(step / STEP - Math.round(step / STEP)) < ROUNDING;
}

/** What one onlooker sees of cloth. */
export interface SeenFrom {
  /** Id of the eye. */
  readonly eye: string;
  readonly hidden: boolean;
  /** How much of the highest part shows above what hides it. [m] 0 where hidden. */
  readonly shows: number;
  /** Of the onlooker's line, from which some of it shows, and the whole line. [m] Both 0 where it is one place. */
  readonly from: number;
  readonly line: number;
}

/**
 * Who sees any of the cloth, over what the plan's walls, hedges and buildings hide. One entry an eye of the plan, in
 * the plan's order.
 */
export function seenFrom(plan: Plan, cloths: readonly Cloth[]): SeenFrom[] {
  return cloths.length === 0 ? [] : seenOver(sightLinesOf(plan), plan, cloths);
}

/** The same over sight lines that are laid out. */
export function seenOver(sight: SightLines, plan: Plan, cloths: readonly Cloth[]): SeenFrom[] {
  const points = cloths.flatMap(topEdge);
  return plan.features
    .filter((feature): feature is Eye => feature.kind === 'eye')
    .map(({ id, path }): SeenFrom => {
      let [shows, from] = [0, 0];
      sight.eyes.forEach((eye, k) => {
        if (eye.id !== id) return;
        const most = mostSeen(sight, k, points);
        shows = Math.max(shows, most);
        if (most > NOTHING) from += eye.stretch;
      });
      const hidden = shows <= NOTHING;
      return { eye: id, hidden, shows: hidden ? 0 : shows, from, line: pathLength(cleanPath(path)) };
    });
}

/** Tells whether nobody sees any of a cloth: the same as every entry of `seenFrom` hidden, and sooner told. */
export function createUnseen(sight: SightLines): (cloth: Cloth) => boolean {
  // Cloth is asked about in swarms: who saw the last one is asked first about the next.
  const inTurn = [...sight.eyes.keys()];
  return (cloth) => {
    const points = topEdge(cloth);
    const seenBy = inTurn.findIndex((k) =>
      points.some(([x, y, z]) => seenAbove(sight, k, [x, y], z, NOTHING) > NOTHING),
    );
    if (seenBy > 0) inTurn.unshift(...inTurn.splice(seenBy, 1));
    return seenBy < 0;
  };
}

/**
 * Whether each onlooker sees little of a cloth: some of it from no more than a share of its line, or no more than so
 * much of it. [m]
 */
export function isSeenLittle(sight: SightLines, cloth: Cloth, ofLine: number, most: number): boolean {
  const points = topEdge(cloth);
  const lines = new Map<string, { seen: number; line: number; much: boolean }>();
  for (const { id, stretch } of sight.eyes) {
    const known = lines.get(id);
    if (known) known.line += stretch;
    else lines.set(id, { seen: 0, line: stretch, much: false });
  }
  return sight.eyes.every(({ id, stretch }, k) => {
    const eye = lines.get(id);
    if (!eye) return true;
    const shows = mostSeen(sight, k, points, most);
    if (shows > NOTHING) eye.seen += stretch;
    if (shows > most) eye.much = true;
    return !eye.much || (eye.line > 0 && eye.seen <= ofLine * eye.line);
  });
}

/** @param enough more than this is not told apart */
function mostSeen(
  sight: SightLines,
  eyeIndex: number,
  points: readonly SpacePoint[],
  enough: number = Infinity,
): number {
  let most = 0;
  for (let n = 0; n < points.length && most <= enough; n++) {
    const [x, y, z] = points[n];
    most = Math.max(most, Math.min(z, seenAbove(sight, eyeIndex, [x, y], z, most)));
  }
  return most;
}

/**
 * Points round a canopy's roof, corners among them, or along a screen's upper edge. Of a level roof an eye that sees
 * anything sees some of the edge: lower than what hides, it sees the near edge before the rest; higher, the far one.
 */
export function topEdge(cloth: Cloth): SpacePoint[] {
  const corners: SpacePoint[] =
    cloth.kind === 'screen'
      ? cleanPath(cloth.path).map(([x, y]) => [x, y, cloth.height])
      : [...canopyCorners(cloth), canopyCorners(cloth)[0]];
  return [corners[0], ...corners.slice(1).flatMap((b, k) => between(corners[k], b))];
}

/** Points from a, left out, to b. */
function between(a: SpacePoint, b: SpacePoint): SpacePoint[] {
  const steps = Math.max(1, countUp(distance([a[0], a[1]], [b[0], b[1]]) / STEP));
  return Array.from({ length: steps }, (_, n): SpacePoint => {
    const t = (n + 1) / steps;
    return n === steps - 1 ? b : [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t, a[2] + (b[2] - a[2]) * t];
  });
}
