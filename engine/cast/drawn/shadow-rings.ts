import { hullOf } from '../../plan/geometry/hull.ts';
import type { PlanPoint } from '../../plan/types.ts';
import { planDirection } from '../../scene/direction.ts';
import type { Occluder, Solid } from '../../scene/solids.ts';

/** Corners of a round shadow, as a picture wants it: its outline is right to half a hundredth of the radius. */
const ROUND = 32;

/** Below this the shadows are longer than any yard and the picture is all shade. [°] */
const LOWEST = 1;

/**
 * Outlines of the shadows that solids throw on the level plane at a height, as closed rings that overlap freely: their
 * union is the shadow. A crown or a cloth that lets light through is outlined like any other.
 * @param azimuth true [°] @param altitude apparent [°] @param height of the plane [m] @param round corners of a round
 *   shadow
 * @returns nothing while the sun is down
 */
export function shadowRingsOf(
  occluders: readonly Occluder[],
  azimuth: number,
  altitude: number,
  upBearing: number,
  height: number,
  round = ROUND,
): PlanPoint[][] {
  if (altitude < LOWEST) return [];
  const [sx, sy, sz] = planDirection(azimuth, altitude, upBearing);
  const away: PlanPoint = [-sx / sz, -sy / sz];
  return occluders
    .flatMap(({ solids }) => solids.flatMap((solid) => ringsOf(solid, away, height, round)))
    .filter(({ length }) => length > 2);
}

/** A part that lies below the plane leaves a ring of no corners. @param away Way of a shadow per metre of height. */
function ringsOf(solid: Solid, away: PlanPoint, height: number, round: number): PlanPoint[][] {
  switch (solid.kind) {
    case 'prism':
      return solid.height <= height ? [] : solid.rings.flatMap((ring) => swept(ring, away, solid.height - height));
    case 'stand':
      return solid.height <= height ? [] : swept(solid.ring, away, solid.height - height);
    case 'lid':
      return solid.height <= height ? [] : solid.rings.map((ring) => moved(ring, away, solid.height - height));
    case 'cloth': {
      const { corner, u, v } = solid;
      const corners = [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ].map(([s, t]) => corner.map((from, axis) => from + s * u[axis] + t * v[axis]));
      if (corners.some(([, , z]) => z < height))
        return [hullOf(clipped(corners, height).map((point) => landed(point, away, height)))];
      return [hullOf(corners.map((point) => landed(point, away, height)))];
    }
    case 'round': {
      const { x, y, radius, base, top } = solid;
      if (top <= height) return [];
      const half = (top - base) / 2;
      const middle = (base + top) / 2;
      const cut = radius * Math.sqrt(Math.max(0, 1 - ((height - middle) / half) ** 2));
      const section = cut > 0 ? circle(round, (cos, sin) => [x + cut * cos, y + cut * sin]) : [];
      const rim = silhouette(away, radius, half, round).map(([dx, dy, dz]) => [x + dx, y + dy, middle + dz]);
      return [
        hullOf([...section, ...rim.filter(([, , z]) => z >= height).map((point) => landed(point, away, height))]),
      ];
    }
    case 'cone':
    case 'column': {
      const { x, y, radius, base, top } = solid;
      if (top <= height) return [];
      const from = Math.max(base, height);
      const wide = solid.kind === 'cone' ? (radius * (top - from)) / (top - base) : radius;
      const foot = circle(round, (cos, sin) => landed([x + wide * cos, y + wide * sin, from], away, height));
      const tip =
        solid.kind === 'cone'
          ? [landed([x, y, top], away, height)]
          : foot.map((point): PlanPoint => [point[0] + away[0] * (top - from), point[1] + away[1] * (top - from)]);
      return [hullOf([...foot, ...tip])];
    }
  }
}

/**
 * Where beams graze an ellipsoid about the origin: the circle across the beam on the sphere that its height, stretched
 * to `radius`, makes of it.
 */
function silhouette(away: PlanPoint, radius: number, half: number, round: number): number[][] {
  const reach = Math.hypot(away[0], away[1]) || 1e-9;
  const [ux, uy] = [away[0] / reach, away[1] / reach];
  const steep = Math.atan2(radius / half, reach);
  return Array.from({ length: round }, (_, k) => {
    const across = radius * Math.cos((k / round) * 2 * Math.PI);
    const along = Math.sin((k / round) * 2 * Math.PI);
    return [
      ux * radius * along * Math.sin(steep) - uy * across,
      uy * radius * along * Math.sin(steep) + ux * across,
      half * along * Math.cos(steep),
    ];
  });
}

function landed([x, y, z]: readonly number[], away: PlanPoint, height: number): PlanPoint {
  return [x + away[0] * (z - height), y + away[1] * (z - height)];
}

function moved(ring: readonly PlanPoint[], away: PlanPoint, by: number): PlanPoint[] {
  return ring.map(([x, y]) => [x + away[0] * by, y + away[1] * by]);
}

/** A ring, itself moved, and the way of each of its edges. */
function swept(ring: readonly PlanPoint[], away: PlanPoint, by: number): PlanPoint[][] {
  const far = moved(ring, away, by);
  return [
    [...ring],
    far,
    ...ring.map((from, at) => hullOf([from, ring[(at + 1) % ring.length], far[(at + 1) % ring.length], far[at]])),
  ];
}

function circle(round: number, at: (cos: number, sin: number) => PlanPoint): PlanPoint[] {
  return Array.from({ length: round }, (_, k) =>
    at(Math.cos((k / round) * 2 * Math.PI), Math.sin((k / round) * 2 * Math.PI)),
  );
}

/** What of a flat polygon lies at or above a height. */
function clipped(corners: readonly (readonly number[])[], height: number): number[][] {
  return corners.flatMap((from, at) => {
    const to = corners[(at + 1) % corners.length];
    const kept = from[2] >= height ? [[...from]] : [];
    if (from[2] >= height !== to[2] >= height) {
      const t = (height - from[2]) / (to[2] - from[2]);
      kept.push(from.map((value, axis) => value + t * (to[axis] - value)));
    }
    return kept;
  });
}
