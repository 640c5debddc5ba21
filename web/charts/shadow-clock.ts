import { radiansOf } from '../../engine/index.ts';

/** Shadow of an upright stick of 1 m on level ground at one reading of the clocks. */
export interface StickMark {
  /** Minutes after midnight by the site's clocks. */
  readonly clock: number;
  /** True bearing towards which it lies, 0 to 360. [°] */
  readonly bearing: number;
  /** [m] */
  readonly length: number;
}

/** A day of the sun, minute by minute. */
interface SunDay {
  /** True. [°] */
  readonly azimuth: Float64Array;
  /** Apparent. [°] */
  readonly altitude: Float64Array;
  /** Minutes after midnight by the clocks. */
  readonly clock: Int16Array;
}

const EVERY_MINUTES = 30;
/** A lower sun throws shadows too long and faint to find. [°] */
const LOWEST = 5;

/** The stick's shadow every half hour of the clock while the sun stands 5° high or more. */
export function stickMarks({ azimuth, altitude, clock }: SunDay): StickMark[] {
  return Array.from(clock.keys())
    .filter((minute) => clock[minute] % EVERY_MINUTES === 0 && altitude[minute] >= LOWEST)
    .map((minute) => stickMark(clock[minute], azimuth[minute], altitude[minute]));
}

/** @param altitude above 0 [°] */
export function stickMark(clock: number, azimuth: number, altitude: number): StickMark {
  return { clock, bearing: (azimuth + 180) % 360, length: 1 / Math.tan(radiansOf(altitude)) };
}
