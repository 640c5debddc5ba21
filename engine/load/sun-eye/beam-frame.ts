import { dot, type SpacePoint } from '../../plan/geometry/vectors.ts';
import { planDirection } from '../../scene/direction.ts';

/** A point as the sun sees it: metres to the right, and metres up across the beam. */
export type Seen = readonly [right: number, up: number];

/**
 * Axes of the picture that the sun has of a yard: across the beam, and along it towards the sun. Unit vectors of the
 * plan.
 */
export interface BeamFrame {
  readonly right: SpacePoint;
  readonly up: SpacePoint;
  readonly sun: SpacePoint;
}

/**
 * @param azimuth of the sun, true. [°] @param altitude above 0, below 90. [°]
 * @param upBearing True bearing of the plan's +y axis. [°]
 */
export function beamFrame(azimuth: number, altitude: number, upBearing: number): BeamFrame {
  const sun = planDirection(azimuth, altitude, upBearing);
  const [x, y, z] = sun;
  const level = Math.hypot(x, y);
  return { sun, right: [-y / level, x / level, 0], up: [(-x * z) / level, (-y * z) / level, level] };
}

export function seenAt({ right, up }: BeamFrame, point: SpacePoint): Seen {
  return [dot(right, point), dot(up, point)];
}

/** The point of the beam through a place of the picture that lies `depth` towards the sun. */
export function pointOn({ right, up, sun }: BeamFrame, [r, u]: Seen, depth: number): SpacePoint {
  return [
    r * right[0] + u * up[0] + depth * sun[0],
    r * right[1] + u * up[1] + depth * sun[1],
    r * right[2] + u * up[2] + depth * sun[2],
  ];
}
