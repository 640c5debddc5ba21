import { describe, expect, test } from 'vitest';
import { castGrid } from '../../../../engine/cast/grids/cast-grid.ts';
import type { GridSpec } from '../../../../engine/cast/grids/grid-spec.ts';
import type { Passes } from '../../../../engine/cast/passes.ts';
import { castRay } from '../../../../engine/cast/points/ray.ts';
import type { Feature } from '../../../../engine/plan/types.ts';
import { buildScene, stateOf } from '../../../../engine/scene/build.ts';
import type { Scene } from '../../../../engine/scene/solids.ts';
import { randomFrom } from '../../../parts/random.ts';
import { emptyPlan, randomPlan } from '../random-plans.ts';

const DAYS = ['01-10', '05-01', '07-01', '08-20', '12-01'];
const PASSES = 24;

interface Comparison {
  cellSamples: number;
  /** Differences at which `castRay` itself changes within a millionth of a metre of the cell's centre. */
  ties: number;
  /** Cell-samples open, partly shaded and dark, so that a run that met only open sky is seen. */
  open: number;
  partial: number;
  dark: number;
  wrong: string[];
}

/** Holds every single cell-sample of `castGrid` against `castRay`: each pass has a channel of its own. */
function compare(seed: number, gridOf: (random: () => number) => GridSpec, into: Comparison): void {
  const random = randomFrom(seed + 5000);
  const scene = buildScene(randomPlan(seed));
  const grid = gridOf(random);
  const monthDays = Array.from({ length: PASSES }, (_, k) => DAYS[k % DAYS.length]);
  const passes: Passes = {
    count: PASSES,
    azimuth: Float64Array.from(monthDays, () => random() * 360),
    // One in four low: below 8°, down to a hundredth of a degree.
    altitude: Float64Array.from(monthDays, (_, k) => (k % 4 === 0 ? 0.01 + 8 * random() ** 3 : 90 * random())),
    state: Uint16Array.from(monthDays, (monthDay) => stateOf(scene, monthDay)),
  };
  const channels = monthDays.map((_, k) => Float64Array.from(monthDays, (__, at) => (at === k ? 1 : 0)));
  const sums = castGrid(scene, grid, passes, channels);
  for (let k = 0; k < PASSES; k++) {
    for (let index = 0; index < grid.columns * grid.rows; index++) {
      const x = grid.x0 + ((index % grid.columns) + 0.5) * grid.cell;
      const y = grid.y0 + (Math.floor(index / grid.columns) + 0.5) * grid.cell;
      const shareAt = (dx: number, dy: number) =>
        castRay(scene, [x + dx, y + dy, grid.height], passes.azimuth[k], passes.altitude[k], monthDays[k]).share;
      const share = shareAt(0, 0);
      into.cellSamples++;
      if (share > 1 - 1e-9) into.open++;
      else if (share > 1e-9) into.partial++;
      else into.dark++;
      const off = Math.abs(share - sums[k][index]);
      if (off <= 1e-9) continue;
      const near = [
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
        [0.7, 0.7],
        [-0.7, 0.7],
        [0.7, -0.7],
        [-0.7, -0.7],
      ].map(([dx, dy]) => shareAt(dx * 1e-6, dy * 1e-6));
      if (Math.max(...near) - Math.min(...near) > off / 2) into.ties++;
      else
        into.wrong.push(
          `plan ${seed}, (${x}, ${y}, ${grid.height}), azimuth ${passes.azimuth[k]}, altitude ` +
            `${passes.altitude[k]}, ${monthDays[k]}: ray ${share}, grid ${sums[k][index]}`,
        );
    }
  }
}

function compared(seeds: readonly number[], gridOf: (random: () => number) => GridSpec): Comparison {
  const result: Comparison = { cellSamples: 0, ties: 0, open: 0, partial: 0, dark: 0, wrong: [] };
  for (const seed of seeds) compare(seed, gridOf, result);
  return result;
}

const seedsFrom = (first: number, count: number) => Array.from({ length: count }, (_, k) => first + k);

describe('castGrid gives every cell what castRay gives its centre', () => {
  test('whole yards, planes at any height (random plans 1 to 85)', () => {
    const result = compared(seedsFrom(1, 85), (random) => ({
      x0: -9,
      y0: -7,
      cell: 0.7,
      columns: 26,
      rows: 20,
      height: 3 * random(),
    }));
    expect(result.wrong).toEqual([]);
    expect(result.cellSamples).toBeGreaterThanOrEqual(1_060_000);
    expect(result.ties).toBeLessThanOrEqual(20);
    expect(Math.min(result.open, result.partial, result.dark)).toBeGreaterThan(60_000);
  });

  test('close windows on the 0.1 m lattice, planes on tops and on the ground (random plans 201 to 225)', () => {
    const result = compared(seedsFrom(201, 25), (random) => ({
      x0: Math.round(random() * 8 - 6),
      y0: Math.round(random() * 6 - 5),
      cell: 0.1,
      columns: 31,
      rows: 23,
      height: Math.round(random() * 20) / 10,
    }));
    expect(result.wrong).toEqual([]);
    expect(result.cellSamples).toBe(25 * 24 * 31 * 23);
    expect(result.ties).toBeLessThanOrEqual(20);
  });
});

const NOON: Passes = {
  count: 1,
  azimuth: Float64Array.of(180),
  altitude: Float64Array.of(40),
  state: Uint16Array.of(0),
};

function sceneOf(...features: Feature[]): Scene {
  return buildScene(emptyPlan(features));
}

const constantly = (value: number) => Array.from({ length: 36 }, () => value);

describe('castGrid', () => {
  const grid: GridSpec = { x0: -1.3, y0: 0.4, cell: 0.2, columns: 9, rows: 4, height: 0.6 };

  test('adds share times weight, a channel each, and leaves out passes behind the skyline', () => {
    const passes: Passes = {
      count: 3,
      azimuth: Float64Array.of(90, 180, 270),
      altitude: Float64Array.of(30, 40, 4),
      state: new Uint16Array(3),
    };
    const plan = emptyPlan([
      { id: 'roof', kind: 'canopy', center: [0, 0], length: 60, width: 60, height: 2, density: 0.7 },
    ]);
    const scene = buildScene({ ...plan, site: { ...plan.site, skyline: [{ azimuth: 0, altitude: 5 }] } });
    const [hours, dose] = castGrid(scene, grid, passes, [Float64Array.of(0.5, 0.25, 8), Float64Array.of(3, 7, 100)]);
    expect(hours).toHaveLength(36);
    // A level cloth under suns of 30° and 40°: thicker along the beam by one over the sine of the altitude.
    const low = 0.3 ** (1 / Math.sin((30 * Math.PI) / 180));
    const high = 0.3 ** (1 / Math.sin((40 * Math.PI) / 180));
    for (const value of hours) expect(value).toBeCloseTo(low * 0.5 + high * 0.25, 12);
    for (const value of dose) expect(value).toBeCloseTo(low * 3 + high * 7, 12);
  });

  test('numbers cells along x, then up y', () => {
    // A tall opaque screen facing the sun, over column 6 alone (x from −0.1 to 0.1).
    const scene = sceneOf({
      id: 's',
      kind: 'screen',
      path: [
        [-0.1, 0.2],
        [0.1, 0.2],
      ],
      height: 30,
      density: 1,
    });
    const [sun] = castGrid(scene, grid, NOON, [Float64Array.of(1)]);
    const dark = [...sun.keys()].filter((index) => sun[index] < 0.5);
    expect(dark).toEqual([6, 15, 24, 33]);
  });

  test('a plane exactly at a top is above it: wall, house, eaves and level cloth take nothing', () => {
    const scene = sceneOf(
      {
        id: 'w',
        kind: 'wall',
        path: [
          [-2, 0.6],
          [2, 0.6],
        ],
        height: 0.6,
        thickness: 0.3,
      },
      {
        id: 'b',
        kind: 'building',
        outline: [
          [-1, 0.3],
          [0.2, 0.3],
          [0.2, 2],
          [-1, 2],
        ],
        height: 0.6,
        eaves: 0.4,
      },
      { id: 'c', kind: 'canopy', center: [0, 0.7], length: 3, width: 2, height: 0.6, density: 0.8 },
    );
    const [sun] = castGrid(scene, grid, NOON, [Float64Array.of(1)]);
    expect([...sun]).toEqual(constantly(1));
  });

  test('in full shade nothing is left, not even a rounding below zero', () => {
    const passes: Passes = {
      count: 400,
      azimuth: Float64Array.from({ length: 400 }, (_, k) => 60 + 0.6 * k),
      altitude: Float64Array.from({ length: 400 }, (_, k) => 20 + 0.1 * k),
      state: new Uint16Array(400),
    };
    const scene = sceneOf(
      {
        id: 'b',
        kind: 'building',
        outline: [
          [-1.31, 0.3],
          [0.5, 0.3],
          [0.5, 1.5],
          [-1.31, 1.5],
        ],
        height: 4,
      },
      {
        id: 'h',
        kind: 'hedge',
        path: [
          [0.5, 0.2],
          [0.5, 2],
        ],
        height: 2,
        thickness: 0.4,
        openness: 0.37,
      },
    );
    const [sun] = castGrid(scene, grid, passes, [Float64Array.from({ length: 400 }, (_, k) => 0.1 + k / 7)]);
    expect(Math.min(...sun)).toBe(0);
  });

  test('no feature, no shade; no pass, no sun', () => {
    expect([...castGrid(sceneOf(), grid, NOON, [Float64Array.of(2.5)])[0]]).toEqual(constantly(2.5));
    const none: Passes = {
      count: 0,
      azimuth: new Float64Array(0),
      altitude: new Float64Array(0),
      state: new Uint16Array(0),
    };
    expect([...castGrid(sceneOf(), grid, none, [new Float64Array(0)])[0]]).toEqual(constantly(0));
  });
});
