import { radiansOf } from '../plan/geometry/angles.ts';
import type { SpacePoint } from '../plan/geometry/vectors.ts';
import type { MonthDay } from '../plan/types.ts';
import { stateOf } from '../scene/build.ts';
import type { OwnCrown, Scene } from '../scene/solids.ts';
import { castGrid } from './grids/cast-grid.ts';
import type { GridSpec } from './grids/grid-spec.ts';
import type { Passes } from './passes.ts';
import { createPointCaster } from './points/point-caster.ts';

/**
 * Patches a band of 12°, from the horizon up; the cap from 84° is one more. Layout: Tregenza P.R. (1987), Subdivision
 * of the sky hemisphere for luminance measurements, Lighting Research & Technology 19(1), 13–14.
 */
const PATCHES_IN_BAND = [30, 30, 24, 24, 18, 12, 6];
const BAND = 12;

/** The rays of the isotropic sky and what each weighs in a level surface's irradiance; weights add up to 1. */
export interface SkyRays {
  readonly count: number;
  /** True bearing, patch 0 of a band centred on north. [°] */
  readonly azimuth: Float64Array;
  /** [°] */
  readonly altitude: Float64Array;
  readonly weight: Float64Array;
}

/**
 * Each patch but the cap split in four: a quarter of its width to either side of its centre, 3° and 9° above its foot.
 * Worked out once: change nothing in it.
 */
export function skyRays(): SkyRays {
  return RAYS;
}

function laidOut(): SkyRays {
  const rays: { azimuth: number; altitude: number; weight: number }[] = [];
  PATCHES_IN_BAND.forEach((patches, band) => {
    for (const foot of [BAND * band, BAND * band + BAND / 2]) {
      const weight = (sinSquared(foot + BAND / 2) - sinSquared(foot)) / (2 * patches);
      for (let patch = 0; patch < patches; patch++) {
        for (const quarter of [-0.25, 0.25]) {
          rays.push({ azimuth: (((patch + quarter) * 360) / patches + 360) % 360, altitude: foot + BAND / 4, weight });
        }
      }
    }
  });
  rays.push({ azimuth: 0, altitude: 90, weight: 1 - sinSquared(BAND * PATCHES_IN_BAND.length) });
  return {
    count: rays.length,
    azimuth: Float64Array.from(rays, (ray) => ray.azimuth),
    altitude: Float64Array.from(rays, (ray) => ray.altitude),
    weight: Float64Array.from(rays, (ray) => ray.weight),
  };
}

const RAYS = laidOut();

/** The sky's rays as passes, all in one yearly state. */
export function skyPasses(state: number): Passes {
  const { count, azimuth, altitude } = skyRays();
  return { count, azimuth, altitude, state: new Uint16Array(count).fill(state) };
}

/**
 * Share of the isotropic sky's horizontal irradiance that reaches a point on a day. [1]
 * @param own A further crown, in the way for this point alone.
 */
export function skyView(scene: Scene, point: SpacePoint, monthDay: MonthDay, own?: OwnCrown): number {
  const shares = createPointCaster(scene, skyPasses(stateOf(scene, monthDay))).sharesAt(point, own);
  return skyRays().weight.reduce((sum, weight, k) => sum + weight * shares[k], 0);
}

/** `skyView` of every cell on a day, index = j·columns + i. [1] */
export function skyViewGrid(scene: Scene, grid: GridSpec, monthDay: MonthDay): Float64Array {
  return castGrid(scene, grid, skyPasses(stateOf(scene, monthDay)), [skyRays().weight])[0];
}

function sinSquared(altitude: number): number {
  return Math.sin(radiansOf(altitude)) ** 2;
}
