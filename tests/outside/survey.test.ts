import { describe, expect, test } from 'vitest';
import { heightOfEdge } from '../../engine/survey/height/height.ts';
import { shadowLength } from '../../engine/survey/height/shadow-table.ts';
import { declinationAt } from '../../engine/survey/north/declination.ts';
import { COTANGENTS } from './cotangents.ts';

/**
 * Shade height per metre of overhang, tan of the vertical shadow angle: tan VSA = tan(altitude)/cos(azimuth − normal).
 * Definitions: IES, "vertical shadow angle"; ASHRAE Fundamentals, Fenestration, S_H = P_H·tan VSA (the latter from
 * memory). Values computed.
 */
const SHADOW_ANGLES: readonly { altitude: number; azimuth: number; faces: number; perMetre: number }[] = [
  { altitude: 60, azimuth: 230, faces: 180, perMetre: 2.6946 },
  { altitude: 45, azimuth: 210, faces: 180, perMetre: 1.1547 },
  { altitude: 35, azimuth: 270, faces: 225, perMetre: 0.9902 },
  { altitude: 70, azimuth: 180, faces: 180, perMetre: 2.7475 },
  { altitude: 40, azimuth: 330, faces: 0, perMetre: 0.9689 },
];

/**
 * World Magnetic Model 2025, published test values at sea level for 2025.0. From memory: the report itself was not
 * seen.
 */
const DECLINATIONS: readonly { latitude: number; longitude: number; declination: number }[] = [
  { latitude: 80, longitude: 0, declination: 1.28 },
  { latitude: 0, longitude: 120, declination: -0.16 },
  { latitude: -80, longitude: 240, declination: 68.78 },
];

describe('against values from outside the project', () => {
  test.each(COTANGENTS)('at %f° a metre throws %f m', (altitude, length) => {
    expect(Math.abs(shadowLength(1, altitude) - length)).toBeLessThan(1e-4);
  });

  test.each(SHADOW_ANGLES)(
    'a wall facing $faces° with the sun at $azimuth°, $altitude°: $perMetre m of height per metre of shadow depth',
    ({ altitude, azimuth, faces, perMetre }) => {
      // The edge of a roof over a sunlit wall and the shadow of an edge on the ground are one triangle: the shadow
      // falls on the far side.
      const slope = { tangent: { value: Math.tan((altitude * Math.PI) / 180), pm: 0 }, azimuth };
      const height = heightOfEdge(slope, { value: 1, pm: 0 }, faces + 180);
      expect(height.ok && Math.abs(height.value.value - perMetre)).toBeLessThan(1e-4);
    },
  );

  test.each(DECLINATIONS)(
    'at $latitude°, $longitude° the needle stands $declination° east of north',
    ({ latitude, longitude, declination }) => {
      expect(declinationAt(latitude, longitude, 0, 2025).declination).toBeCloseTo(declination, 2);
    },
  );
});
