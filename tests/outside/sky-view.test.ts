/** The sky's patches and the sky view against published tables and closed forms of view-factor catalogues. */

import { describe, expect, test } from 'vitest';
import { skyRays, skyView } from '../../engine/cast/sky.ts';
import type { Feature } from '../../engine/plan/types.ts';
import { buildScene } from '../../engine/scene/build.ts';
import { emptyPlan } from '../engine/cast/random-plans.ts';

const DAY = '07-01';

/**
 * Tregenza P.R. (1987), Subdivision of the sky hemisphere for luminance measurements, Lighting Research & Technology
 * 19(1), 13–14 (pages from memory); layout as in Radiance's tregsrc.cal (G. Ward, 2005): 30, 30, 24, 24, 18, 12, 6
 * patches and a cap, first patch due north. Weights are (sin² top − sin² bottom)/n, computed from that.
 */
const BANDS: [foot: number, patches: number, patch: number, band: number][] = [
  [0, 30, 0.0014409, 0.043227],
  [12, 30, 0.0040736, 0.122207],
  [24, 24, 0.0075024, 0.180057],
  [36, 24, 0.0086155, 0.206773],
  [48, 18, 0.0109853, 0.197736],
  [60, 12, 0.0128757, 0.154508],
  [72, 6, 0.0140942, 0.084565],
  [84, 1, 0.0109262, 0.010926],
];

describe('the 145 patches', () => {
  const { count, azimuth, altitude, weight } = skyRays();

  test.each(BANDS)('band from %d°: %d patches of weight %d, %d together', (foot, patches, patchWeight, bandWeight) => {
    const rays = Array.from({ length: count }, (_, k) => k).filter(
      (k) => altitude[k] > foot && altitude[k] <= foot + 12,
    );
    const sum = rays.reduce((total, k) => total + weight[k], 0);
    expect(sum).toBeCloseTo(bandWeight, 6);
    expect(sum / patches).toBeCloseTo(patchWeight, 7);
    // The first patch is due north: one ray in it to either side, as far.
    const north = rays.filter((k) => Math.abs(((azimuth[k] + 180) % 360) - 180) <= 180 / patches);
    expect(north).toHaveLength(foot === 84 ? 1 : 4);
  });

  test('weights add up to 1', () => {
    expect(Math.abs(weight.reduce((sum, each) => sum + each) - 1)).toBeLessThan(1e-12);
  });
});

const opaque = { density: 1 } as const;

/** Sky view at the origin, 0.5 m up, worst and best over sixteen bearings of the same scene. */
function overBearings(features: readonly Feature[]): { least: number; most: number } {
  const views = Array.from({ length: 16 }, (_, k) =>
    skyView(buildScene(emptyPlan(features, 22.5 * k + 1.3)), [0, 0, 0.5], DAY),
  );
  return { least: Math.min(...views), most: Math.max(...views) };
}

function expectWithin({ least, most }: { least: number; most: number }, value: number, tolerance: number): void {
  expect(Math.abs(least - value)).toBeLessThan(tolerance);
  expect(Math.abs(most - value)).toBeLessThan(tolerance);
}

/** A screen across the plan's +y side of the point whose top stands β above it, as good as endless. */
function endless(beta: number, side: 1 | -1): Feature {
  return {
    id: `w${side}`,
    kind: 'screen',
    path: [
      [-4000, 3 * side],
      [4000, 3 * side],
    ],
    height: 0.5 + 3 * Math.tan((beta * Math.PI) / 180),
    ...opaque,
  };
}

/**
 * Horizontal receiver, isotropic sky, cosine-weighted: an endless wall whose top stands β above leaves (1 + cos β)/2
 * (Oke T.R. (1987), Boundary Layer Climates, 2nd ed., app. A1 (from memory); also Bendix J. (2004),
 * Geländeklimatologie, eq. 3.15, p. 63); between two walls (cos β1 + cos β2)/2. Tolerance: what 577 rays can tell.
 */
describe('walls', () => {
  test.each([
    [10, 0.9924],
    [20, 0.96985],
    [30, 0.93301],
    [45, 0.85355],
    [60, 0.75],
    [75, 0.62941],
  ])('endless, top %d° up: %d', (beta, view) => {
    expectWithin(overBearings([endless(beta, 1)]), view, 0.025);
  });

  test('on both sides, 45° up: 0.70711', () => {
    expectWithin(overBearings([endless(45, 1), endless(45, -1)]), 0.70711, 0.04);
  });

  /**
   * Loss to a wall of height a from the foot of the point's normal to b: Howell J.R., catalogue of configuration
   * factors, B-5 (from memory); Tregenza & Sharples, Daylight Algorithms (1993), 3.15.
   */
  test.each([
    [1, 0.24775],
    [2, 0.11416],
  ])('1.8 m over the point, 3 m to either side, %d m away: %d lost', (away, lost) => {
    const wall: Feature = {
      id: 'w',
      kind: 'screen',
      path: [
        [-3, away],
        [3, away],
      ],
      height: 0.5 + 1.8,
      ...opaque,
    };
    const half = (a: number, b: number, c: number) =>
      (Math.atan(b / c) - (c / Math.hypot(a, c)) * Math.atan(b / Math.hypot(a, c))) / (2 * Math.PI);
    expect(2 * half(1.8, 3, away)).toBeCloseTo(lost, 5);
    expectWithin(overBearings([wall]), 1 - lost, 0.025);
  });
});

/**
 * A uniform skyline of h leaves cos² h (closed form); rays stand 6° apart, so a skyline between two counts as one of
 * them.
 */
test.each([
  [3, 0.99726],
  [9, 0.97553],
  [15, 0.93301],
  [20, 0.88302],
  [40, 0.58682],
  [60, 0.25],
])('basin with its rim at %d°: %d', (height, view) => {
  const plan = emptyPlan();
  const scene = buildScene({ ...plan, site: { ...plan.site, skyline: [{ azimuth: 0, altitude: height }] } });
  expect(Math.cos((height * Math.PI) / 180) ** 2).toBeCloseTo(view, 5);
  expect(Math.abs(skyView(scene, [0, 0, 0.5], DAY) - view)).toBeLessThan(0.1);
});

/**
 * A rectangle overhead hides F = (1/2π)·[X/√(1 + X²)·atan(Y/√(1 + X²)) + Y/√(1 + Y²)·atan(X/√(1 + Y²))] of the sky of a
 * point under one corner, X = a/h, Y = b/h (Siegel & Howell; Howell's catalogue B-4, number from memory).
 */
function underCorner(a: number, b: number, h: number): number {
  const [x, y] = [a / h, b / h];
  const part = (p: number, q: number) => (p / Math.sqrt(1 + p * p)) * Math.atan(q / Math.sqrt(1 + p * p));
  return (part(x, y) + part(y, x)) / (2 * Math.PI);
}

describe('canopies', () => {
  const roof = (size: number, height: number, center: [number, number], density = 1): Feature => ({
    id: 'c',
    kind: 'canopy',
    center,
    length: size,
    width: size,
    height: 0.5 + height,
    density,
  });

  test.each([
    [3, 2.2, 0.36797],
    [2, 2, 0.23946],
  ])('%d m square, %d m over its middle: %d hidden', (size, height, hidden) => {
    expect(4 * underCorner(size / 2, size / 2, height)).toBeCloseTo(hidden, 5);
    expectWithin(overBearings([roof(size, height, [0, 0])]), 1 - hidden, 0.045);
  });

  test('3 m square, 2.2 m over the middle of an edge: 0.24988 hidden', () => {
    expect(2 * underCorner(3, 1.5, 2.2)).toBeCloseTo(0.24988, 5);
    expectWithin(overBearings([roof(3, 2.2, [0, 1.5])]), 1 - 0.24988, 0.045);
  });

  test('cloth of 60 % hides 60 % of what opaque cloth does', () => {
    expectWithin(overBearings([roof(3, 2.2, [0, 0], 0.6)]), 1 - 0.6 * 0.36797, 0.045);
  });

  /**
   * An endless half-plane roof with its edge at elevation β: over the point (1 − cos β)/2 is left, beside it (1 + cos
   * β)/2 (closed form).
   */
  test.each([
    [60, true, 0.25],
    [45, true, 0.14645],
    [30, false, 0.93301],
  ])('half-plane, edge %d° up, over the point %s: %d', (beta, over, view) => {
    const height = 2;
    const edge = height / Math.tan((beta * Math.PI) / 180);
    const center: [number, number] = [0, over ? edge - 3000 : edge + 3000];
    const wide: Feature = {
      id: 'c',
      kind: 'canopy',
      center,
      length: 6000,
      width: 6000,
      height: 0.5 + height,
      density: 1,
    };
    expectWithin(overBearings([wide]), view, 0.025);
  });
});
