import { type Bounds, boundsOf } from '../plan/geometry/shapes.ts';
import type { Ring } from './solids.ts';
import { JOIN, TOUCH } from './ties.ts';

/** Numbers a segment takes in an outline: ax, ay, bx, by. [m] */
export const SEGMENT = 4;

/**
 * The true outline of a union of convex, counter-clockwise rings (or of one simple ring): what is left of their edges
 * after the parts inside other rings are cut away. Inside lies to the left of a → b; holes come out clockwise.
 * Ours, not Turf's `union`: it is wanted before the first picture, and rings that touch within `TOUCH` are one here.
 * @returns `SEGMENT` numbers a piece, in no particular order; where one ends another starts, to the bit.
 */
export function unionOutline(rings: readonly Ring[]): Float64Array {
  let outline = known.get(rings);
  if (!outline) known.set(rings, (outline = outlineOf(rings)));
  return outline;
}

/** A solid keeps its rings, and is asked about for every yard that it stands in. */
const known = new WeakMap<readonly Ring[], Float64Array>();

function outlineOf(rings: readonly Ring[]): Float64Array {
  const pieces: number[] = [];
  const boxes = rings.map((ring) => boundsOf(ring));
  rings.forEach((ring, own) => {
    ring.forEach((a, k) => {
      const b = ring[(k + 1) % ring.length];
      let open: [number, number][] = [[0, 1]];
      const along = boundsOf([a, b]);
      rings.forEach((other, index) => {
        if (index !== own && meet(along, boxes[index])) open = without(open, covered(a, b, other, index < own));
      });
      for (const [s, t] of open) {
        pieces.push(
          a[0] + s * (b[0] - a[0]),
          a[1] + s * (b[1] - a[1]),
          a[0] + t * (b[0] - a[0]),
          a[1] + t * (b[1] - a[1]),
        );
      }
    });
  });
  return closed(Float64Array.from(pieces));
}

/**
 * Where two rings cut each other both edges are cut, and rounding puts the two cuts a hair apart: a beam through that
 * corner would slip between them. Each piece is made to end where the next one starts.
 */
function closed(outline: Float64Array): Float64Array {
  for (let e = 0; e < outline.length; e += SEGMENT) {
    let next = -1;
    let nearest = JOIN;
    for (let f = 0; f < outline.length && nearest > 0; f += SEGMENT) {
      const apart = Math.hypot(outline[f] - outline[e + 2], outline[f + 1] - outline[e + 3]);
      if (f === e || apart >= nearest) continue;
      next = f;
      nearest = apart;
    }
    if (next < 0) continue;
    outline[e + 2] = outline[next];
    outline[e + 3] = outline[next + 1];
  }
  return outline;
}

function meet(a: Bounds, b: Bounds): boolean {
  return a.minX <= b.maxX + TOUCH && b.minX <= a.maxX + TOUCH && a.minY <= b.maxY + TOUCH && b.minY <= a.maxY + TOUCH;
}

/**
 * The part of edge a → b inside a convex ring, as shares of its length, or null. Of two edges that lie on each other
 * and face the same way only one may stay (`first` says whether the ring's goes first); two that face each other are
 * the seam between touching rings, and both go.
 */
function covered(
  a: readonly [number, number],
  b: readonly [number, number],
  ring: Ring,
  first: boolean,
): [number, number] | null {
  let from = 0;
  let to = 1;
  for (let k = 0; k < ring.length; k++) {
    const [px, py] = ring[k];
    const [qx, qy] = ring[(k + 1) % ring.length];
    const length = Math.hypot(qx - px, qy - py);
    const ux = (qx - px) / length;
    const uy = (qy - py) / length;
    // Distance outside this side of the ring.
    const da = uy * (a[0] - px) - ux * (a[1] - py);
    const db = uy * (b[0] - px) - ux * (b[1] - py);
    if (Math.abs(da) <= TOUCH && Math.abs(db) <= TOUCH) {
      const sameWay = ux * (b[0] - a[0]) + uy * (b[1] - a[1]) > 0;
      if (sameWay && !first) return null;
    } else if (da > 0 && db > 0) {
      return null;
    } else if (da > 0) {
      from = Math.max(from, da / (da - db));
    } else if (db > 0) {
      to = Math.min(to, da / (da - db));
    }
  }
  return from < to ? [from, to] : null;
}

/** Whether a counter-clockwise ring has no corner that bends the other way. */
export function isConvex(ring: Ring): boolean {
  return ring.every(([bx, by], k) => {
    const [ax, ay] = ring[(k + ring.length - 1) % ring.length];
    const [cx, cy] = ring[(k + 1) % ring.length];
    return (bx - ax) * (cy - by) - (by - ay) * (cx - bx) >= 0;
  });
}

function without(open: readonly [number, number][], cut: [number, number] | null): [number, number][] {
  if (cut === null) return [...open];
  const left: [number, number][] = [];
  for (const [from, to] of open) {
    if (cut[0] > from) left.push([from, Math.min(to, cut[0])]);
    if (cut[1] < to) left.push([Math.max(from, cut[1]), to]);
  }
  return left.filter(([from, to]) => to > from);
}
