import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { castGrid } from '../../../engine/cast/grids/cast-grid.ts';
import type { Passes } from '../../../engine/cast/passes.ts';
import { castRay } from '../../../engine/cast/points/ray.ts';
import type { Feature, Plan } from '../../../engine/plan/types.ts';
import { buildScene, stateOf } from '../../../engine/scene/build.ts';
import { mirroredPlan, turnedPlan, turnedPoint } from './plans-moved.ts';
import { emptyPlan, randomPlan } from './random-plans.ts';

const RUNS = { seed: 20260621, numRuns: 250 };
const plans = fc.integer({ min: 1, max: 1_000_000 }).map(randomPlan);
const suns = fc.record({
  azimuth: fc.double({ min: 0, max: 359.99, noNaN: true }),
  altitude: fc.double({ min: 0.05, max: 89.5, noNaN: true }),
  monthDay: fc.constantFrom('01-10', '05-01', '07-01', '12-01'),
});
const points = fc.tuple(
  fc.double({ min: -9, max: 9, noNaN: true }),
  fc.double({ min: -7, max: 7, noNaN: true }),
  fc.double({ min: 0, max: 3, noNaN: true }),
);

const GRID = { x0: -8.37, y0: -6.21, cell: 0.61, columns: 27, rows: 20, height: 0.43 };
const PASSES: Passes = {
  count: 12,
  azimuth: Float64Array.from({ length: 12 }, (_, k) => 11 + 29.7 * k),
  altitude: Float64Array.from({ length: 12 }, (_, k) => 3 + 6.9 * k),
  state: new Uint16Array(12),
};
const WEIGHTS = [Float64Array.from({ length: 12 }, (_, k) => 0.2 + k / 9)];

function sunOf(plan: Plan): Float64Array {
  const scene = buildScene(plan);
  return castGrid(scene, GRID, { ...PASSES, state: new Uint16Array(12).fill(stateOf(scene, '07-01')) }, WEIGHTS)[0];
}

function withFeatures(plan: Plan, features: readonly Feature[]): Plan {
  return { ...plan, features };
}

describe('laws of shade', () => {
  test('a share lies between 0 and 1 and is the product of what its blockers transmit', () => {
    fc.assert(
      fc.property(plans, points, suns, (plan, point, { azimuth, altitude, monthDay }) => {
        const { share, blockers } = castRay(buildScene(plan), point, azimuth, altitude, monthDay);
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
        expect(share).toBe(blockers.reduce((product, { transmittance }) => product * transmittance, 1));
      }),
      RUNS,
    );
  });

  test('an added feature never raises the sun of a cell', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const before = sunOf(withFeatures(plan, plan.features.slice(1)));
        const after = sunOf(plan);
        after.forEach((sun, index) => expect(sun).toBeLessThanOrEqual(before[index] + 1e-9));
      }),
      { ...RUNS, numRuns: 120 },
    );
  });

  test('a taller wall lights no cell', () => {
    fc.assert(
      fc.property(plans, fc.double({ min: 0.01, max: 2, noNaN: true }), (plan, more) => {
        const taller = plan.features.map((feature) =>
          feature.kind === 'wall' ? { ...feature, height: feature.height + more } : feature,
        );
        const before = sunOf(plan);
        sunOf(withFeatures(plan, taller)).forEach((sun, index) =>
          expect(sun).toBeLessThanOrEqual(before[index] + 1e-9),
        );
      }),
      { ...RUNS, numRuns: 80 },
    );
  });

  test('turning the yard clockwise and lowering upBearing by as much changes no share', () => {
    let changed = 0;
    fc.assert(
      fc.property(
        plans,
        points,
        suns,
        fc.double({ min: -180, max: 180, noNaN: true }),
        (plan, [x, y, z], { azimuth, altitude, monthDay }, turn) => {
          const [tx, ty] = turnedPoint([x, y], turn);
          const before = castRay(buildScene(plan), [x, y, z], azimuth, altitude, monthDay);
          const after = castRay(buildScene(turnedPlan(plan, turn)), [tx, ty, z], azimuth, altitude, monthDay);
          expect(after.share).toBeCloseTo(before.share, 9);
          if (before.share < 1) changed++;
        },
      ),
      RUNS,
    );
    expect(changed).toBeGreaterThan(100);
  });

  test('north and south changed about changes no share', () => {
    fc.assert(
      fc.property(plans, points, suns, (plan, [x, y, z], { azimuth, altitude, monthDay }) => {
        const before = castRay(buildScene(plan), [x, y, z], azimuth, altitude, monthDay);
        const after = castRay(buildScene(mirroredPlan(plan)), [x, -y, z], (540 - azimuth) % 360, altitude, monthDay);
        expect(after.share).toBeCloseTo(before.share, 9);
      }),
      RUNS,
    );
  });

  test('cloth of density 0, crowns and hedges that let all through, change nothing', () => {
    const nothing: Feature[] = [
      {
        id: 'roof',
        kind: 'canopy',
        center: [0.4, 1],
        length: 6,
        width: 8,
        turn: 20,
        height: 2.4,
        rise: 0.3,
        density: 0,
        drops: [{ side: 'right', depth: 1, density: 0 }],
      },
      {
        id: 'cloth',
        kind: 'screen',
        path: [
          [-4, -3],
          [3, -2.5],
        ],
        height: 2,
        density: 0,
      },
      { id: 'bare', kind: 'tree', at: [2, -1], height: 5, crownWidth: 4, crownBase: 0, openness: 1 },
      {
        id: 'gaps',
        kind: 'hedge',
        path: [
          [-6, 2],
          [5, 3],
        ],
        height: 2,
        thickness: 0.6,
        openness: 1,
      },
    ];
    fc.assert(
      fc.property(plans, (plan) => {
        expect([...sunOf(withFeatures(plan, [...plan.features, ...nothing]))]).toEqual([...sunOf(plan)]);
      }),
      { ...RUNS, numRuns: 60 },
    );
  });

  test('two features on one spot multiply', () => {
    const screen = (id: string, density: number): Feature => ({
      id,
      kind: 'screen',
      path: [
        [-3, -1.2],
        [3, -1.2],
      ],
      height: 2.3,
      density,
    });
    const { share } = castRay(
      buildScene(emptyPlan([screen('a', 0.3), screen('b', 0.6)])),
      [0.2, 0, 0.4],
      180,
      35,
      '07-01',
    );
    // The cloth stands square to the sun’s bearing: the beam meets it at 35° from its normal.
    const cosine = Math.cos((35 * Math.PI) / 180);
    expect(share).toBeCloseTo((0.7 * 0.4) ** (1 / cosine), 12);
  });
});
