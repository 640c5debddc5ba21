import { hullOf } from '../../plan/geometry/hull.ts';
import { pointInRing } from '../../plan/geometry/shapes.ts';
import { cross, dot, plus, type SpacePoint } from '../../plan/geometry/vectors.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { PlanPoint } from '../../plan/types.ts';
import { clothCosine, slantShare } from '../../scene/cloth-sheet.ts';
import type { Crown, Solid } from '../../scene/solids.ts';
import { pointOn, seenAt } from './beam-frame.ts';
import type { BeamFrame, Seen } from './beam-frame.ts';

/** Where a beam runs inside a body, as depths towards the sun. [m] */
type Stretch = readonly [from: number, to: number];

/** One flat face of a body that the sun sees. */
export interface Face {
  readonly ring: readonly Seen[];
  /** A level one is seen from above. */
  readonly level: boolean;
}

/** One piece of a solid, simple enough to be wholly before or behind another. */
export interface Body {
  readonly solid: Solid;
  /** What the sun sees of it, farthest first. */
  readonly faces: readonly Face[];
  stretches(seen: Seen): readonly Stretch[];
}

const ROUND = 48;

/** Pieces of a solid, each ring of a prism or lid by itself. */
export function bodiesOf(solid: Solid, frame: BeamFrame): Body[] {
  switch (solid.kind) {
    case 'prism':
      return solid.rings.map((ring) => ({
        solid,
        faces: prismFaces(ring, solid.height, frame),
        stretches: (seen) => inPrism(ring, solid.height, frame, seen),
      }));
    case 'stand':
      return [
        {
          solid,
          faces: prismFaces(solid.ring, solid.height, frame),
          stretches: (seen) => inPrism(solid.ring, solid.height, frame, seen),
        },
      ];
    case 'lid':
      return solid.rings.map((ring) => ({
        solid,
        faces: [{ ring: ring.map(([x, y]) => seenAt(frame, [x, y, solid.height])), level: true }],
        stretches: (seen) => onLevel(ring, solid.height, frame, seen),
      }));
    case 'cloth': {
      const { corner: c, u, v } = solid;
      const corners: SpacePoint[] = [c, plus(c, u), plus(plus(c, u), v), plus(c, v)];
      return [
        {
          // As thick as this beam meets it.
          solid: { ...solid, share: slantShare(solid.share, clothCosine(solid, frame.sun)) },
          faces: [{ ring: corners.map((corner) => seenAt(frame, corner)), level: false }],
          stretches: (seen) => inCloth(solid, frame, seen),
        },
      ];
    }
    default:
      return [
        {
          solid,
          faces: [{ ring: crownOutline(solid, frame), level: false }],
          stretches: (seen) => inCrown(solid, frame, seen),
        },
      ];
  }
}

function prismFaces(ring: readonly PlanPoint[], height: number, frame: BeamFrame): Face[] {
  const [sx, sy] = frame.sun;
  const sides = ring.flatMap((a, k): { face: Face; depth: number }[] => {
    const b = ring[(k + 1) % ring.length];
    if ((b[1] - a[1]) * sx - (b[0] - a[0]) * sy <= 0) return [];
    const corners: SpacePoint[] = [
      [...a, 0],
      [...b, 0],
      [...b, height],
      [...a, height],
    ];
    return [
      {
        face: { ring: corners.map((corner) => seenAt(frame, corner)), level: false },
        depth: (a[0] + b[0]) * sx + (a[1] + b[1]) * sy,
      },
    ];
  });
  const top: Face = { ring: ring.map(([x, y]) => seenAt(frame, [x, y, height])), level: true };
  return [...sides.toSorted((a, b) => a.depth - b.depth).map(({ face }) => face), top];
}

/** Depths at which the beam comes from one height to another. */
function between(frame: BeamFrame, seen: Seen, low: number, high: number): Stretch {
  const foot = pointOn(frame, seen, 0)[2];
  return [(low - foot) / frame.sun[2], (high - foot) / frame.sun[2]];
}

function inPrism(ring: readonly PlanPoint[], height: number, frame: BeamFrame, seen: Seen): Stretch[] {
  const [from, to] = between(frame, seen, 0, height);
  const [px, py] = pointOn(frame, seen, 0);
  const [dx, dy] = frame.sun;
  const crossings = ring
    .flatMap((a, k): number[] => {
      const b = ring[(k + 1) % ring.length];
      const s = dx * (a[1] - py) - dy * (a[0] - px);
      const t = dx * (b[1] - py) - dy * (b[0] - px);
      if (s > 0 === t > 0) return [];
      const share = s / (s - t);
      const x = a[0] + share * (b[0] - a[0]) - px;
      const y = a[1] + share * (b[1] - a[1]) - py;
      return [(x * dx + y * dy) / (dx * dx + dy * dy)];
    })
    .toSorted((a, b) => a - b);
  return crossings.flatMap((near, k): Stretch[] => (k % 2 === 0 ? clipped(near, crossings[k + 1], from, to) : []));
}

function onLevel(ring: readonly PlanPoint[], height: number, frame: BeamFrame, seen: Seen): Stretch[] {
  const [depth] = between(frame, seen, height, height);
  const [x, y] = pointOn(frame, seen, depth);
  return pointInRing([x, y], ring, 0) ? [[depth, depth]] : [];
}

function inCloth({ corner, u, v }: Extract<Solid, { kind: 'cloth' }>, frame: BeamFrame, seen: Seen): Stretch[] {
  const n = cross(u, v);
  const facing = dot(n, frame.sun);
  if (Math.abs(facing) < ROUNDING) return [];
  const start = pointOn(frame, seen, 0);
  const depth = dot(n, [corner[0] - start[0], corner[1] - start[1], corner[2] - start[2]]) / facing;
  const met = pointOn(frame, seen, depth);
  const from: SpacePoint = [met[0] - corner[0], met[1] - corner[1], met[2] - corner[2]];
  const squared = dot(n, n);
  const s = dot(cross(from, v), n) / squared;
  const t = dot(cross(u, from), n) / squared;
  return s >= 0 && s <= 1 && t >= 0 && t <= 1 ? [[depth, depth]] : [];
}

function crownOutline(crown: Crown, frame: BeamFrame): Seen[] {
  const { kind, x, y, radius, base, top } = crown;
  const angles = Array.from({ length: ROUND }, (_, k) => (k * 2 * Math.PI) / ROUND);
  if (kind === 'round') {
    const [right, up] = seenAt(frame, [x, y, (base + top) / 2]);
    const tall = Math.hypot(radius * Math.hypot(frame.up[0], frame.up[1]), ((top - base) / 2) * frame.up[2]);
    return angles.map((angle): Seen => [right + radius * Math.cos(angle), up + tall * Math.sin(angle)]);
  }
  const circle = (height: number): Seen[] =>
    angles.map((angle) => seenAt(frame, [x + radius * Math.cos(angle), y + radius * Math.sin(angle), height]));
  return hullOf([...circle(base), ...(kind === 'column' ? circle(top) : [seenAt(frame, [x, y, top])])]);
}

/** A x² + 2 B x + C < 0 along the beam, between the crown's foot and its top. */
function inCrown({ kind, x, y, radius, base, top }: Crown, frame: BeamFrame, seen: Seen): Stretch[] {
  const [from, to] = between(frame, seen, base, top);
  const [px, py, pz] = pointOn(frame, seen, 0);
  const [dx, dy, dz] = frame.sun;
  const qx = px - x;
  const qy = py - y;
  // The radius at a height z is wide + slope z; a round body is brought to a sphere first.
  const slope = kind === 'cone' ? -radius / (top - base) : 0;
  const wide = kind === 'cone' ? -slope * top : radius;
  const k = kind === 'round' ? (2 * radius) / (top - base) : 0;
  const qz = k * (pz - (base + top) / 2);
  const r = wide + slope * pz;
  const a = dx * dx + dy * dy + k * k * dz * dz - slope * slope * dz * dz;
  const b = qx * dx + qy * dy + qz * k * dz - r * slope * dz;
  const c = qx * qx + qy * qy + qz * qz - r * r;
  const discriminant = b * b - a * c;
  if (discriminant <= 0) return a < 0 ? clipped(from, to, from, to) : [];
  const root = Math.sqrt(discriminant) / Math.abs(a);
  const middle = -b / a;
  return a > 0 ? clipped(middle - root, middle + root, from, to) : clipped(from, middle - root, from, to);
}

function clipped(near: number, far: number, from: number, to: number): Stretch[] {
  const low = Math.max(near, from);
  const high = Math.min(far, to);
  return high > low ? [[low, high]] : [];
}
