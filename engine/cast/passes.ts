import { planDirection } from '../scene/direction.ts';
import type { Scene } from '../scene/solids.ts';
import { skylineAltitude } from '../sun/sky/skyline.ts';

/** Directions to cast along: the season's samples, or the rays of the sky. One entry a pass in every array. */
export interface Passes {
  readonly count: number;
  /** True bearing. [°] */
  readonly azimuth: Float64Array;
  /** Apparent altitude. [°] */
  readonly altitude: Float64Array;
  /** Yearly state of the scene (`stateOf`): index into `scene.states`. */
  readonly state: Uint16Array;
}

/**
 * Passes as unit vectors of the plan; `dark` is 1 where the skyline hides the direction or it is not above the horizon.
 */
export interface Directions {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Length of the level part, the altitude's cosine. */
  readonly level: Float64Array;
  readonly state: Uint16Array;
  readonly dark: Uint8Array;
}

/** Passes one after the other. */
export function passesInRow(parts: readonly Passes[]): Passes {
  const count = parts.reduce((sum, part) => sum + part.count, 0);
  const all = {
    count,
    azimuth: new Float64Array(count),
    altitude: new Float64Array(count),
    state: new Uint16Array(count),
  };
  let at = 0;
  for (const { azimuth, altitude, state, count: more } of parts) {
    all.azimuth.set(azimuth, at);
    all.altitude.set(altitude, at);
    all.state.set(state, at);
    at += more;
  }
  return all;
}

/** Works out each pass's direction on the plan once, so that no loop over cells meets an angle. */
export function directionsOf(scene: Scene, passes: Passes): Directions {
  const { count, azimuth, altitude, state } = passes;
  const x = new Float64Array(count);
  const y = new Float64Array(count);
  const z = new Float64Array(count);
  const level = new Float64Array(count);
  const dark = new Uint8Array(count);
  for (let k = 0; k < count; k++) {
    [x[k], y[k], z[k]] = planDirection(azimuth[k], altitude[k], scene.upBearing);
    level[k] = Math.hypot(x[k], y[k]);
    dark[k] = isDark(scene, azimuth[k], altitude[k]) ? 1 : 0;
  }
  return { count, x, y, z, level, state, dark };
}

/** Whether no beam comes from here at all: at or below the horizon or the skyline. */
export function isDark(scene: Scene, azimuth: number, altitude: number): boolean {
  if (altitude <= 0) return true;
  return scene.skyline.length > 0 && altitude <= skylineAltitude(scene.skyline, azimuth);
}
