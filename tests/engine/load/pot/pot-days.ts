import { type Pot, type PotDay } from '../../../../engine/load/pot/pot-heat.ts';
import { POT_ABSORPTANCE, wallLight } from '../../../../engine/load/pot/root-zone.ts';
import { BEARINGS } from '../../../../engine/load/verdict/plant-points.ts';
import { sunPosition } from '../../../../engine/sun/position.ts';
import { airSunrise, airTemperature } from '../../../../engine/sun/sky/air.ts';
import { clearSky } from '../../../../engine/sun/sky/clear-sky.ts';

/** A black pot as many stand on patios. */
export const pot = (changes: Partial<Pot> = {}): Pot => ({
  width: 0.4,
  height: 0.35,
  absorptance: POT_ABSORPTANCE.dark,
  wind: 1,
  insulation: 0,
  ...changes,
});

export interface Place {
  /** [°], [°], [m] */
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  /** Linke. */
  readonly turbidity: number;
  readonly month: number;
  readonly day: number;
  /** Of the day's air. [°C] */
  readonly high: number;
  readonly low: number;
  /** Of the beam that reaches the pot, by the sun's azimuth. */
  readonly share?: (azimuth: number) => number;
  readonly stepMinutes?: number;
}

export function at(
  latitude: number,
  longitude: number,
  elevation: number,
  turbidity: number,
  month: number,
  day: number,
  high: number,
  low: number,
): Place {
  return { latitude, longitude, elevation, turbidity, month, day, high, low };
}

/** A clear day beside light ground, the glow round the sun stopped with it. */
export function clearDay(place: Place): PotDay {
  const { latitude, longitude, elevation, turbidity, month, day, high, low, share = () => 1, stepMinutes = 10 } = place;
  const midnight = Date.UTC(2025, month - 1, day) - (longitude / 15) * 3.6e6;
  const hour: number[] = [];
  const light: number[] = [];
  for (let minute = stepMinutes / 2; minute < 1440; minute += stepMinutes) {
    const sun = sunPosition(midnight + minute * 60_000, latitude, longitude);
    if (sun.altitude <= 0) continue;
    const sky = clearSky({ altitude: sun.altitude, elevation, turbidity, distanceAu: sun.distanceAu });
    const sine = Math.sin((sun.altitude * Math.PI) / 180);
    const glow = sky.beam / 1361;
    const beam = share(sun.azimuth) * (sky.beam + (glow * sky.diffuse) / Math.max(0.1, sine));
    const diffuse = (1 - glow) * sky.diffuse;
    hour.push(sun.solarHour);
    for (const bearing of BEARINGS)
      light.push(wallLight(bearing, beam, sun.azimuth, sun.altitude, diffuse, beam * sine + diffuse, 0.25));
  }
  const dayOfYear = Math.round((Date.UTC(2025, month - 1, day) - Date.UTC(2025, 0, 0)) / 864e5);
  const sunrise = airSunrise(latitude, dayOfYear);
  return {
    hour: Float64Array.from(hour),
    light: Float64Array.from(light),
    airAt: (h) => airTemperature(h, high, low, sunrise),
  };
}
