import { wrapBearing } from '../plan/geometry/angles.ts';
import { LEAST_SKYLINE_POINTS, WIDEST_SKYLINE_GAP, widestGap } from '../plan/geometry/skyline.ts';
import type { Site } from '../plan/types.ts';
import { type Finding, found, refused } from './estimate.ts';

/** Where land, trees or roofs beyond the plan meet the sky, as sighted. */
export interface SkylineSighting {
  /** By the needle. [°] */
  readonly bearing: number;
  /** Above the level. [°] */
  readonly altitude: number;
}

type Skyline = NonNullable<Site['skyline']>;

/** Two looks nearer to each other than a compass can tell are one: the higher stays. Our choice. [°] */
const SAME_WAY = 3;

/**
 * The skyline that a few looks make: true azimuths, rounded to the degree, round the compass; the level where the sky
 * comes down to the ground.
 * @param declination How far the needle's north lies east of true north. [°]
 */
export function skylineFrom(sightings: readonly SkylineSighting[], declination: number): Finding<Skyline> {
  const points: { azimuth: number; altitude: number }[] = [];
  const looks = sightings.map(({ bearing, altitude }) => ({
    azimuth: Math.round(wrapBearing(bearing + declination)) % 360,
    altitude: Math.max(0, Math.round(altitude)),
  }));
  for (const look of looks.toSorted((a, b) => a.azimuth - b.azimuth)) {
    const last = points.at(-1);
    if (last === undefined || look.azimuth - last.azimuth >= SAME_WAY) points.push(look);
    else if (look.altitude > last.altitude) points[points.length - 1] = look;
  }
  if (points.length < LEAST_SKYLINE_POINTS)
    return refused(
      `Look at ${LEAST_SKYLINE_POINTS} places of it at least: what lies between two is taken as straight.`,
    );
  return found(
    points,
    widestGap(points.map(({ azimuth }) => azimuth)) > WIDEST_SKYLINE_GAP
      ? ['More than half of the round is missing: add a look there, 0° where nothing stands.']
      : [],
  );
}
