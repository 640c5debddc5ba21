// The package ships no types; compilers that start from elsewhere than this folder find ours only through this line.
// oxlint-disable-next-line typescript/triple-slash-reference
/// <reference path="./magvar.d.ts" />
import { magvar } from 'magvar';

/** The World Magnetic Model 2025 holds for these years. */
const MODEL_FROM = 2025;
const MODEL_TO = 2030;

/**
 * How far a compass needle points east of true north: true bearing = compass reading + declination.
 * World Magnetic Model 2025, to 0.01°; near steel, cars and reinforced walls a compass is off by far more.
 * @param elevation [m]
 * @param year Decimal year or plain year. Outside 2025 to 2029 the model's nearest end is taken and a note says so.
 * @returns East positive. [°]
 */
export function declinationAt(
  latitude: number,
  longitude: number,
  elevation: number,
  year: number,
): { declination: number; notes: readonly string[] } {
  const held = Math.min(MODEL_TO - 0.01, Math.max(MODEL_FROM, year));
  const notes =
    held === year
      ? []
      : [
          `The magnetic model holds from 2025 to 2029; for ${Math.floor(year)} the declination may be off by some ` +
            `tenths of a degree.`,
        ];
  return { declination: magvar(latitude, longitude, elevation / 1000, held), notes };
}
