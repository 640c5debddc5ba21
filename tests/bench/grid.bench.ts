import { castGrid } from '../../engine/cast/grids/cast-grid.ts';
import type { GridSpec } from '../../engine/cast/grids/grid-spec.ts';
import { createTrialCaster } from '../../engine/cast/grids/trial/trial-caster.ts';
import type { Passes } from '../../engine/cast/passes.ts';
import { createPointCaster } from '../../engine/cast/points/point-caster.ts';
import { castRay } from '../../engine/cast/points/ray.ts';
import type { Canopy } from '../../engine/plan/types.ts';
import { buildScene, clothSheets } from '../../engine/scene/build.ts';
import type { BenchCase } from './harness.ts';
import { HECTARE, seasonOf, YARD } from './yard.ts';
import type { SeasonCase } from './yard.ts';

const yard = seasonOf(YARD);
/** Passes of which the plain loop knows the shadowed cells: one in so many, gone over as often. */
const EVERY = 20;
const PLAIN = 'plain loop over shadowed cells';

export function casesOf(): BenchCase[] {
  return [
    seasonGrid('season grid 0.25 m', 0.25, yard.channels),
    seasonGrid('season grid 0.1 m', 0.1, yard.channels),
    seasonGrid('season grid 0.1 m, one channel', 0.1, yard.channels.slice(3, 4), false),
    hectare(),
    points(),
    trial('trial canopy, moved', yard.passes, yard.channels),
    trial('trial canopy, moved, one channel', yard.passes, yard.channels.slice(4, 5)),
  ];
}

function gridOver(cell: number, width: number, depth: number): GridSpec {
  return {
    x0: 0,
    y0: 0,
    cell,
    columns: Math.ceil(width / cell - 1e-9),
    rows: Math.ceil(depth / cell - 1e-9),
    height: 0.5,
  };
}

function seasonGrid(name: string, cell: number, channels: readonly Float64Array[], withRays = true): BenchCase {
  const grid = gridOver(cell, 18, 12);
  const cells = grid.columns * grid.rows;
  // At least one cell in a hundred, spread over the yard.
  const rays = Math.ceil(cells / 100);
  const shadowed = shadowedCells(yard, grid);
  return {
    name,
    note:
      `${grid.columns} × ${grid.rows} cells, ${yard.passes.count} samples, ${channels.length} ` +
      `channel${channels.length > 1 ? 's' : ''}`,
    variants: [
      { name: 'castGrid', run: () => castGrid(yard.scene, grid, yard.passes, channels)[0][cells >> 1] },
      { name: PLAIN, scale: EVERY, run: () => plainLoop(shadowed, cells, channels) },
      ...(withRays
        ? [
            {
              name: `castRay (on ${rays} cells)`,
              scale: cells / rays,
              run: () => rayCells(yard, grid, channels, rays),
              warmUp: () => rayCells(yard, grid, channels, 2),
            },
            {
              name: `sharesAt (on ${rays} cells)`,
              scale: cells / rays,
              run: () => pointCells(yard, grid, channels, rays),
            },
          ]
        : []),
    ],
    ratios: [
      { of: 'castGrid', to: PLAIN, target: 'at most 1.6' },
      ...(withRays
        ? [
            { of: 'castGrid', to: `castRay (on ${rays} cells)`, target: 'at most 1/90' },
            { of: 'castGrid', to: `sharesAt (on ${rays} cells)` },
          ]
        : []),
    ],
  };
}

/** The point caster, cell by cell: what the quickest single rays would take. */
function pointCells(
  { scene, passes }: SeasonCase,
  grid: GridSpec,
  channels: readonly Float64Array[],
  count: number,
): number {
  const caster = createPointCaster(scene, passes);
  const shares = new Float64Array(passes.count);
  let sum = 0;
  for (let n = 0; n < count; n++) {
    const index = (n * 7919) % (grid.columns * grid.rows);
    caster.sharesAt(
      [
        grid.x0 + ((index % grid.columns) + 0.5) * grid.cell,
        grid.y0 + (Math.floor(index / grid.columns) + 0.5) * grid.cell,
        grid.height,
      ],
      undefined,
      shares,
    );
    for (const weights of channels) for (let k = 0; k < passes.count; k++) sum += shares[k] * weights[k];
  }
  return sum;
}

function rayCells(
  { scene, passes, monthDays }: SeasonCase,
  grid: GridSpec,
  channels: readonly Float64Array[],
  count: number,
): number {
  const cells = grid.columns * grid.rows;
  const sums = channels.map(() => 0);
  for (let n = 0; n < count; n++) {
    const index = (n * 7919) % cells;
    const x = grid.x0 + ((index % grid.columns) + 0.5) * grid.cell;
    const y = grid.y0 + (Math.floor(index / grid.columns) + 0.5) * grid.cell;
    for (let k = 0; k < passes.count; k++) {
      const { share } = castRay(scene, [x, y, grid.height], passes.azimuth[k], passes.altitude[k], monthDays[k]);
      for (let c = 0; c < channels.length; c++) sums[c] += share * channels[c][k];
    }
  }
  return sums.reduce((a, b) => a + b);
}

interface Shadowed {
  readonly pass: number;
  readonly cells: Uint16Array;
}

function shadowedCells({ scene, passes }: SeasonCase, grid: GridSpec): Shadowed[] {
  const lists: Shadowed[] = [];
  for (let k = 0; k < passes.count; k += EVERY) {
    const one = {
      count: 1,
      azimuth: passes.azimuth.subarray(k, k + 1),
      altitude: passes.altitude.subarray(k, k + 1),
      state: passes.state.subarray(k, k + 1),
    };
    const [sun] = castGrid(scene, grid, one, [Float64Array.of(1)]);
    lists.push({ pass: k, cells: Uint16Array.from(sun.keys()).filter((index) => sun[index] < 1 - 1e-9) });
  }
  return lists;
}

/** What any cell-by-cell way would do at the least, given the shadowed cells for nothing. */
function plainLoop(shadowed: readonly Shadowed[], cells: number, channels: readonly Float64Array[]): number {
  const sums = channels.map(() => new Float64Array(cells));
  for (const { pass, cells: list } of shadowed) {
    for (let c = 0; c < channels.length; c++) {
      const sum = sums[c];
      const weight = channels[c][pass];
      for (let n = 0; n < list.length; n++) sum[list[n]] += weight;
    }
  }
  return sums[0][cells >> 1];
}

function hectare(): BenchCase {
  const season = seasonOf(HECTARE);
  const grid = gridOver(0.5, 100, 100);
  return {
    name: 'hectare with 200 trees',
    note: `${grid.columns} × ${grid.rows} cells, ${season.passes.count} samples, ${season.channels.length} channels`,
    variants: [
      { name: 'castGrid', run: () => castGrid(season.scene, grid, season.passes, season.channels)[0][777] },
      {
        name: 'castRay (on 4 cells)',
        scale: 10_000,
        run: () => rayCells(season, grid, season.channels, 4),
        warmUp: () => rayCells(season, grid, season.channels, 1),
      },
    ],
    ratios: [{ of: 'castGrid', to: 'castRay (on 4 cells)' }],
  };
}

/** Nine points round each of thirty plants, all samples. */
function points(): BenchCase {
  const caster = createPointCaster(yard.scene, yard.passes);
  const shares = new Float64Array(yard.passes.count);
  const cast = (count: number) => {
    let sum = 0;
    for (let n = 0; n < count; n++) {
      caster.sharesAt([0.7 + ((n * 5.3) % 16.6), 0.7 + ((n * 3.1) % 7.4), 0.3 + (n % 9) * 0.15], undefined, shares);
      sum += shares[n];
    }
    return sum;
  };
  return {
    name: 'points of thirty plants',
    note: `270 points, ${yard.passes.count} samples`,
    variants: [{ name: 'sharesAt', run: () => cast(270) }],
  };
}

/** A canopy carried over the yard in steps of about 0.15 m, as a drag does, each step re-scoring the season. */
function trial(name: string, passes: Passes, channels: readonly Float64Array[]): BenchCase {
  const canopy = YARD.features.find((feature) => feature.kind === 'canopy')!;
  const scene = buildScene({ ...YARD, features: YARD.features.filter((feature) => feature !== canopy) });
  const caster = createTrialCaster(scene, gridOver(0.25, 18, 12), passes, channels);
  const moves = (drops: Canopy['drops'], count: number) => {
    let sum = 0;
    for (let n = 0; n < count; n++) {
      caster.hang(
        clothSheets({ ...canopy, drops, center: [9 + 1.5 * Math.sin(n / 10), 5.2 + 1.5 * Math.cos(n / 10)] }),
      );
      sum += caster.sums()[0][999];
    }
    return sum;
  };
  return {
    name,
    note:
      `0.25 m, ${passes.count} passes, ${channels.length} channel${channels.length > 1 ? 's' : ''}; a ` +
      `frame has 16 ms`,
    variants: [
      { name: 'roof, a move', scale: 1 / 20, run: () => moves([], 20) },
      { name: 'roof and drop, a move', scale: 1 / 20, run: () => moves(canopy.drops, 20) },
    ],
  };
}
