import { wrapBearing } from '../../plan/geometry/angles.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { PlanPoint, SkylinePoint } from '../../plan/types.ts';
import type { Crown, Occluder, Solid } from '../../scene/solids.ts';
import { skylineAltitude } from '../../sun/sky/skyline.ts';

/** A point of the sky: true bearing and altitude. [°] */
export type SkyPoint = readonly [azimuth: number, altitude: number];

/** What a feature hides of the sky. */
export interface Silhouette {
  /** Feature id, or `skyline`. */
  readonly id: string;
  /** Cloth lets light through, and so is drawn as a weave. */
  readonly kind: 'solid' | 'crown' | 'cloth';
  /** Of each part, closed outlines of which those inside another are holes; parts may overlap. */
  readonly parts: readonly (readonly (readonly SkyPoint[])[])[];
}

/**
 * A point of an upright half-plane that begins over and under the eye: level distance, and height above the eye. [m]
 */
type Cut = readonly [away: number, up: number];

/** Altitudes between which a body stands on one bearing. [°] */
type Span = readonly [low: number, high: number];

const DEGREES = 180 / Math.PI;
const STEP = 2;
/** How far on either side of a corner the outline is looked at again. [°] */
const BESIDE = 0.01;
/** Points round a rounded body's cut. */
const ROUND = 48;

/**
 * Silhouettes of a yard's solids as seen from a point, in the order of the features; what does not rise above the
 * horizon is left out.
 */
export function silhouettesOf(occluders: readonly Occluder[], upBearing: number, eye: SpacePoint): Silhouette[] {
  return occluders.flatMap(({ id, solids }) => {
    const parts = solids
      .flatMap(partsOf)
      .map((part) => loopsOf(part, upBearing, eye))
      .filter((loops) => loops.length > 0);
    return parts.length > 0 ? [{ id, kind: kindOf(solids[0]), parts }] : [];
  });
}

/** The land's own silhouette, or `null` where the horizon is open. */
export function skylineSilhouette(skyline: readonly SkylinePoint[]): Silhouette | null {
  if (skyline.length === 0) return null;
  const round = Array.from({ length: 360 / STEP }, (_, k) => k * STEP);
  return {
    id: 'skyline',
    kind: 'solid',
    parts: [
      [
        round.map((azimuth): SkyPoint => [azimuth, 0]),
        round.map((azimuth): SkyPoint => [azimuth, Math.max(0, skylineAltitude(skyline, azimuth))]),
      ],
    ],
  };
}

function kindOf(solid: Solid): Silhouette['kind'] {
  if (solid.kind === 'cloth') return 'cloth';
  return solid.kind === 'prism' || solid.kind === 'lid' ? 'solid' : 'crown';
}

/** A lid's rings are outlined one by one: seen from below, there may be sky between two of them. */
function partsOf(solid: Solid): readonly Solid[] {
  return solid.kind === 'lid' ? solid.rings.map((ring) => ({ ...solid, rings: [ring] })) : [solid];
}

function loopsOf(solid: Solid, upBearing: number, eye: SpacePoint): SkyPoint[][] {
  const seen = bearingsFor(solid, eye, upBearing).map((azimuth) => ({
    azimuth,
    span: spanAt(solid, eye, azimuth - upBearing),
  }));
  const start = seen.findIndex(({ span }) => span === null);
  if (start < 0)
    return [
      seen.map(({ azimuth, span }): SkyPoint => [azimuth, span?.[0] ?? 0]),
      seen.map(({ azimuth, span }): SkyPoint => [azimuth, span?.[1] ?? 0]),
    ];
  const loops: SkyPoint[][] = [];
  let low: SkyPoint[] = [];
  let high: SkyPoint[] = [];
  for (const { azimuth, span } of [...seen.slice(start + 1), ...seen.slice(0, start + 1)]) {
    if (span) {
      low.push([azimuth, span[0]]);
      high.push([azimuth, span[1]]);
    } else if (low.length > 0) {
      loops.push([...low, ...high.reverse()]);
      low = [];
      high = [];
    }
  }
  return loops;
}

/** Bearings at which the outline is looked at: evenly round, and on both sides of every corner. [°] */
function bearingsFor(solid: Solid, eye: SpacePoint, upBearing: number): number[] {
  const corners = edgesOf(solid, eye)
    .flatMap((angle) => [angle - BESIDE, angle, angle + BESIDE])
    .map((angle) => wrapBearing(angle + upBearing));
  const even = Array.from({ length: 360 / STEP }, (_, k) => k * STEP);
  return [...new Set([...even, ...corners])].toSorted((a, b) => a - b);
}

/** Clockwise from the plan's +y. [°] */
function edgesOf(solid: Solid, [x, y]: SpacePoint): number[] {
  const angleTo = (px: number, py: number): number => Math.atan2(px - x, py - y) * DEGREES;
  switch (solid.kind) {
    case 'prism':
    case 'lid':
      return solid.rings.flatMap((ring) => ring.map(([px, py]) => angleTo(px, py)));
    case 'stand':
      return solid.ring.map(([px, py]) => angleTo(px, py));
    case 'cloth':
      return cornersOf(solid).map(([px, py]) => angleTo(px, py));
    default: {
      const distance = Math.hypot(solid.x - x, solid.y - y);
      if (distance <= solid.radius) return [];
      const half = Math.asin(solid.radius / distance) * DEGREES;
      return [angleTo(solid.x, solid.y) - half, angleTo(solid.x, solid.y) + half];
    }
  }
}

/** @param turn Bearing of the half-plane, clockwise from the plan's +y. [°] */
function spanAt(solid: Solid, eye: SpacePoint, turn: number): Span | null {
  const direction: PlanPoint = [Math.sin(turn / DEGREES), Math.cos(turn / DEGREES)];
  let low = 90;
  let high = 0;
  for (const cut of cutsOf(solid, eye, direction)) {
    const ahead = clippedAhead(cut);
    if (ahead.length === 0) continue;
    const altitudes = ahead.map(([away, up]) => Math.atan2(up, away) * DEGREES);
    low = Math.min(low, ...altitudes);
    high = Math.max(high, ...altitudes);
  }
  return high > 0 && high > low ? [Math.max(0, low), high] : null;
}

/** Convex cuts of a solid by the upright plane through the eye, as they lie ahead and behind. */
function cutsOf(solid: Solid, [x, y, z]: SpacePoint, [dx, dy]: PlanPoint): Cut[][] {
  const along = (px: number, py: number): number => (px - x) * dx + (py - y) * dy;
  const aside = (px: number, py: number): number => (px - x) * dy - (py - y) * dx;
  switch (solid.kind) {
    case 'prism':
    case 'stand':
    case 'lid': {
      const foot = solid.kind === 'lid' ? solid.height : 0;
      const rings = solid.kind === 'stand' ? [solid.ring] : solid.rings;
      return rings.flatMap((ring) =>
        pairsOf(
          crossings(ring.map(([px, py]): SpacePoint => [along(px, py), aside(px, py), 0])).map(([away]) => away),
        ).map(([from, to]): Cut[] => [
          [from, foot - z],
          [to, foot - z],
          [to, solid.height - z],
          [from, solid.height - z],
        ]),
      );
    }
    case 'cloth':
      return [crossings(cornersOf(solid).map(([px, py, pz]): SpacePoint => [along(px, py), aside(px, py), pz - z]))];
    default:
      return [crownCut(solid, along(solid.x, solid.y), aside(solid.x, solid.y), z)];
  }
}

/** Where the edges of a ring cross the plane, as points of the plane. @param ring along, aside, up a corner */
function crossings(ring: readonly SpacePoint[]): Cut[] {
  return ring.flatMap(([a, s, u], k): Cut[] => {
    const [b, t, w] = ring[(k + 1) % ring.length];
    if (s > 0 === t > 0) return [];
    const share = s / (s - t);
    return [[a + share * (b - a), u + share * (w - u)]];
  });
}

function pairsOf(values: readonly number[]): [number, number][] {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted.flatMap((from, k): [number, number][] =>
    k % 2 === 0 && k + 1 < sorted.length ? [[from, sorted[k + 1]]] : [],
  );
}

function crownCut(crown: Crown, along: number, aside: number, z: number): Cut[] {
  const { kind, radius, base, top } = crown;
  if (Math.abs(aside) >= radius) return [];
  const half = (at: number): number => Math.sqrt(Math.max(0, at * at - aside * aside));
  if (kind === 'column')
    return [
      [along - half(radius), base - z],
      [along + half(radius), base - z],
      [along + half(radius), top - z],
      [along - half(radius), top - z],
    ];
  if (kind === 'round') {
    const middle = (base + top) / 2 - z;
    const tall = ((top - base) / 2) * (half(radius) / radius);
    return Array.from({ length: ROUND }, (_, k): Cut => [
      along + half(radius) * Math.cos((k * 2 * Math.PI) / ROUND),
      middle + tall * Math.sin((k * 2 * Math.PI) / ROUND),
    ]);
  }
  // A cone narrows until its radius is what the plane passes it by.
  const highest = top - (Math.abs(aside) / radius) * (top - base);
  return Array.from({ length: ROUND }, (_, k): Cut[] => {
    const up = base + (k / (ROUND - 1)) * (highest - base);
    const wide = half((radius * (top - up)) / (top - base));
    return [
      [along - wide, up - z],
      [along + wide, up - z],
    ];
  }).flat();
}

/** The part of a cut ahead of the eye, and where it passes over or under it. */
function clippedAhead(cut: readonly Cut[]): Cut[] {
  const ahead = cut.filter(([away]) => away >= 0);
  const behind = cut.filter(([away]) => away < 0);
  const overhead = ahead.flatMap(([a, u]) => behind.map(([b, w]): Cut => [0, u + (a / (a - b)) * (w - u)]));
  return [...ahead, ...overhead];
}

function cornersOf({ corner: [x, y, z], u, v }: Extract<Solid, { kind: 'cloth' }>): SpacePoint[] {
  return [
    [x, y, z],
    [x + u[0], y + u[1], z + u[2]],
    [x + u[0] + v[0], y + u[1] + v[1], z + u[2] + v[2]],
    [x + v[0], y + v[1], z + v[2]],
  ];
}
