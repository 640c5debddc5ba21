import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { OPEN_TOP, POT_SOIL, WALL, wallConductance, type PotDay } from '../../../../engine/load/pot/pot-heat.ts';
import {
  doublePotted,
  grouped,
  POT_ABSORPTANCE,
  potShaded,
  rootVerdict,
  rootZone,
  whiteWrapped,
} from '../../../../engine/load/pot/root-zone.ts';
import { BEARINGS } from '../../../../engine/load/verdict/plant-points.ts';
import { at, clearDay, pot } from './pot-days.ts';

const OMEGA = (2 * Math.PI) / 86_400;
const SIDES = BEARINGS.length;

const dark = (airAt: (hour: number) => number): PotDay => ({
  hour: new Float64Array(0),
  light: new Float64Array(0),
  airAt,
});
const wave = dark((hour) => 25 + 10 * Math.sin((2 * Math.PI * hour) / 24));

/**
 * Closed form: a wave of the air's temperature in a half-space behind a surface resistance (Carslaw & Jaeger 1959,
 * §2.6, from memory).
 */
function halfSpace(depth: number, wind: number): { amplitude: number; lagHours: number } {
  const d = Math.sqrt((2 * POT_SOIL.conductivity) / POT_SOIL.heatCapacity / OMEGA);
  const h = 1 / (1 / wallConductance(wind) + WALL);
  const q = POT_SOIL.conductivity / d;
  const amplitude = (10 * h * Math.exp(-depth / d)) / Math.hypot(h + q, q);
  return { amplitude, lagHours: (Math.atan2(q, h + q) + depth / d) / OMEGA / 3600 };
}

describe('closed forms', () => {
  const wall = pot({ width: 20, height: 200 });

  it.each([0.02, 0.05, 0.1])(
    'a wide pot without sun follows the air like a half-space, %s m in: amplitude to one in fifty, lag within 0.1 h',
    (depth) => {
      const { amplitude, lagHours } = halfSpace(depth, wall.wind);
      const zone = rootZone(wave, wall, depth);
      expect(Math.abs((zone.warmest - 25) / amplitude - 1)).toBeLessThan(0.02);
      expect(Math.abs(zone.hour - (6 + lagHours))).toBeLessThan(0.1);
    },
  );

  it('5 cm further in, the wave is e^(−5 cm/√(2α/ω)) of what it was', () => {
    const d = Math.sqrt((2 * POT_SOIL.conductivity) / POT_SOIL.heatCapacity / OMEGA);
    const ratio = (rootZone(wave, wall, 0.1).warmest - 25) / (rootZone(wave, wall, 0.05).warmest - 25);
    expect(Math.abs(ratio / Math.exp(-0.05 / d) - 1)).toBeLessThan(0.02);
  });

  it('at one temperature all day, and without sun, the whole pot has it', () => {
    const zone = rootZone(
      dark(() => 31),
      pot(),
    );
    for (const warmest of [...zone.sides, zone.middle]) expect(warmest).toBeCloseTo(31, 9);
  });

  it('a shallow pot whose wall lets nothing through follows the air over its top as one lump', () => {
    const height = 0.05;
    const perDegree =
      POT_SOIL.heatCapacity * height * ((4 / Math.PI ** 2) * (height / POT_SOIL.conductivity) + 1 / OPEN_TOP);
    const zone = rootZone(wave, pot({ height, insulation: 1e9 }));
    expect((zone.warmest - 25) / 10).toBeCloseTo(1 / Math.hypot(1, OMEGA * perDegree), 2);
    expect(zone.hour).toBeCloseTo(6 + Math.atan(OMEGA * perDegree) / OMEGA / 3600, 0);
  });

  it('lit alike all round and all day, a tall pot stands at the air + absorptance · light / conductance', () => {
    const day: PotDay = { hour: Float64Array.of(0, 24), light: new Float64Array(2 * SIDES).fill(200), airAt: () => 30 };
    const zone = rootZone(day, pot({ height: 200 }));
    const expected = 30 + (POT_ABSORPTANCE.dark * 200) / wallConductance(1);
    expect(zone.middle).toBeCloseTo(expected, 1);
    expect(zone.warmest).toBeCloseTo(expected, 1);
  });
});

const CORDOBA = at(37.9, -4.8, 110, 3.5, 7, 21, 44, 26);
const heatwave = clearDay(CORDOBA);

describe('laws', () => {
  const pots = fc.record({
    width: fc.double({ min: 0.12, max: 0.7, noNaN: true }),
    height: fc.double({ min: 0.12, max: 0.7, noNaN: true }),
    absorptance: fc.double({ min: 0.1, max: 0.95, noNaN: true }),
    wind: fc.double({ min: 0.15, max: 3, noNaN: true }),
    insulation: fc.double({ min: 0, max: 0.3, noNaN: true }),
  });
  const law = { numRuns: 25, seed: 7 };

  it('whiter is never warmer, on no side and not in the middle', () => {
    fc.assert(
      fc.property(pots, fc.double({ min: 0, max: 1, noNaN: true }), (p, part) => {
        const before = rootZone(heatwave, p);
        const after = rootZone(heatwave, { ...p, absorptance: part * p.absorptance });
        after.sides.forEach((side, i) => expect(side).toBeLessThanOrEqual(before.sides[i] + 0.02));
        expect(after.middle).toBeLessThanOrEqual(before.middle + 0.02);
      }),
      law,
    );
  });

  it('shade on the pot, neighbours, a second pot and a white wrap never make the warmest roots warmer', () => {
    fc.assert(
      fc.property(pots, fc.subarray([...BEARINGS]), fc.double({ min: 0, max: 1, noNaN: true }), (p, near, share) => {
        const before = rootZone(heatwave, p).warmest + 0.02;
        expect(rootZone(potShaded(heatwave, share), p).warmest).toBeLessThanOrEqual(before);
        expect(rootZone(grouped(heatwave, near), p).warmest).toBeLessThanOrEqual(before);
        expect(rootZone(heatwave, doublePotted(p)).warmest).toBeLessThanOrEqual(before);
        expect(rootZone(heatwave, whiteWrapped(p)).warmest).toBeLessThanOrEqual(before);
      }),
      law,
    );
  });

  it('the wider the pot, the cooler its middle', () => {
    const middles = [0.15, 0.2, 0.3, 0.4, 0.6, 0.8].map((width) => rootZone(heatwave, pot({ width })).middle);
    for (let i = 1; i < middles.length; i++) expect(middles[i]).toBeLessThan(middles[i - 1]);
  });

  it('twice the light warms twice as much, where the air stays the same', () => {
    const day: PotDay = { ...heatwave, airAt: () => 30 };
    const once = rootZone(day, pot()).warmest - 30;
    const twice = rootZone(potShaded(day, 2), pot()).warmest - 30;
    expect(Math.abs(twice - 2 * once)).toBeLessThan(0.05);
  });

  it('a day seen in a mirror, east for west, warms the sides as in a mirror', () => {
    const light = heatwave.light.map((_, i) => heatwave.light[i - (i % SIDES) + ((SIDES - (i % SIDES)) % SIDES)]);
    const there = rootZone({ ...heatwave, airAt: () => 30 }, pot());
    const mirrored = rootZone({ ...heatwave, light, airAt: () => 30 }, pot());
    there.sides.forEach((side, i) => expect(mirrored.sides[(SIDES - i) % SIDES]).toBeCloseTo(side, 6));
  });

  it('samples of 5 and of 30 minutes say the same within 0.2 K', () => {
    const fine = rootZone(clearDay({ ...CORDOBA, stepMinutes: 5 }), pot());
    const coarse = rootZone(clearDay({ ...CORDOBA, stepMinutes: 30 }), pot());
    expect(Math.abs(fine.warmest - coarse.warmest)).toBeLessThan(0.2);
    expect(Math.abs(fine.hour - coarse.hour)).toBeLessThan(0.3);
  });

  it('says fine below 38, hot roots from 38 on and cooking from 46 on', () => {
    expect([37.99, 38, 45.99, 46].map(rootVerdict)).toEqual(['fine', 'hot roots', 'hot roots', 'cooking']);
  });

  it('refuses a pot without width', () => {
    expect(() => rootZone(heatwave, pot({ width: 0 }))).toThrow(/too small/);
  });
});

/**
 * Martin, C. A., Ingram, D. L. (1993), Container dimension affects rooting medium temperature patterns, HortScience
 * 28:18–19 (abstract seen): black pots of 10 to 70 L in Phoenix and Lexington, computed with their own model.
 */
describe('Martin & Ingram 1993', () => {
  it.each([
    { place: 'Phoenix', latitude: 33.5, longitude: -112, elevation: 340, high: 41, low: 28 },
    { place: 'Lexington', latitude: 38, longitude: -84.4, elevation: 300, high: 31, low: 20 },
  ])(
    '$place: warmest at the east and west walls whatever the volume, cooler in the middle the larger it is',
    (site) => {
      const day = clearDay({ ...site, turbidity: 3.5, month: 6, day: 21 });
      const zones = [0.25, 0.35, 0.48].map((width) => rootZone(day, pot({ width, height: width }), 0.01));
      for (const { sides } of zones) {
        expect(sides[6]).toBe(Math.max(...sides));
        expect(sides[2]).toBeGreaterThan(sides[4]);
      }
      expect(zones[1].middle).toBeLessThan(zones[0].middle);
      expect(zones[2].middle).toBeLessThan(zones[1].middle);
    },
  );
});
