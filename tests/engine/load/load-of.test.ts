import { describe, expect, it } from 'vitest';
import { cellCenter } from '../../../engine/load/light/grid-of.ts';
import { spotOf } from '../../../engine/load/light/spot-of.ts';
import { loadOf } from '../../../engine/load/load-of.ts';
import { QUANTITIES, type Quantity } from '../../../engine/load/types.ts';
import type { Feature } from '../../../engine/plan/types.ts';
import { valueOf } from '../../parts/outcome.ts';
import { yardPlan } from './yard-plan.ts';

const FEATURES: readonly Feature[] = [
  {
    id: 'house',
    kind: 'building',
    name: 'House',
    outline: [
      [0, 6],
      [5, 6],
      [5, 8],
      [0, 8],
    ],
    height: 3.1,
    eaves: 0.4,
  },
  {
    id: 'wall',
    kind: 'wall',
    name: 'Low wall',
    path: [
      [12, 0],
      [12, 8],
    ],
    height: 1.7,
    thickness: 0.2,
  },
  {
    id: 'fig',
    kind: 'tree',
    at: [8, 5],
    height: 4.2,
    crownWidth: 3.1,
    crownBase: 1.1,
    openness: 0.25,
    plant: 'fig',
    planted: '2010',
  },
  { id: 'roof', kind: 'canopy', center: [3, 2], length: 2, width: 3, height: 2.2, density: 0.55 },
  {
    id: 'bed',
    kind: 'bed',
    outline: [
      [8, 1],
      [11, 1],
      [11, 2],
      [8, 2],
    ],
    plantHeight: 0.6,
    plant: 'tomato',
  },
  { id: 'pot', kind: 'plant', at: [3, 2], height: 1.3, spread: 0.8, plant: 'lemon', container: true },
];

describe('the load of a yard', () => {
  const load = valueOf(loadOf(yardPlan(FEATURES), { cell: 0.5 }));

  it('has its keys in the order that other programs read', () => {
    expect(Object.keys(load)).toEqual(['grid', 'cells', 'hotSpots', 'plants', 'season']);
    expect(Object.keys(load.grid)).toEqual(['x0', 'y0', 'cell', 'columns', 'rows', 'height']);
    expect(Object.keys(load.cells)).toEqual([...QUANTITIES]);
    expect(Object.keys(load.season)).toEqual(['days', 'samples', 'openSunHours', 'openBeamDose', 'openHotLoad']);
    expect(Object.keys(load.plants[2])).toEqual([
      'id',
      'kind',
      'at',
      'height',
      ...QUANTITIES,
      'sides',
      'pot',
      'lightClass',
      'leaf',
      'scorchDose',
      'peak',
      'verdict',
      'when',
      'from',
      'sentence',
      'close',
      'walls',
      'cloth',
    ]);
    expect(Object.keys(load.plants[2].sides?.[0] ?? {})).toEqual([
      'side',
      ...QUANTITIES,
      'scorchDose',
      'peak',
      'peakAt',
    ]);
  });

  it('has no number in every array at the same cells: those inside the house', () => {
    const missingIn = (name: Quantity) => Array.from(load.cells[name], Number.isNaN);
    const missing = missingIn('grade');
    for (const name of QUANTITIES) expect(missingIn(name)).toEqual(missing);
    const inHouse = missing.map((_, index) => cellCenter(load.grid, index)).map(([x, y]) => x < 5 && y > 6);
    expect(missing).toEqual(inHouse);
  });

  it('gives each cell what a spot at its centre gets', () => {
    for (const index of [3, 77, 130, 165, 210, 300]) {
      if (Number.isNaN(load.cells.grade[index])) continue;
      const spot = valueOf(spotOf(yardPlan(FEATURES), cellCenter(load.grid, index)));
      if (spot.date !== null) throw new Error('Not a season.');
      for (const name of QUANTITIES)
        expect(load.cells[name][index], `${name} of cell ${index}`).toBeCloseTo(spot.season[name], 9);
    }
  });

  it('lists the planted tree, the bed and the pot in the plan’s order, and no tree without a plant', () => {
    expect(load.plants.map(({ id, kind }) => [id, kind])).toEqual([
      ['fig', 'tree'],
      ['bed', 'bed'],
      ['pot', 'plant'],
    ]);
    expect(load.plants[0].pot).toBeNull();
    expect(load.plants[1].at).toEqual([expect.closeTo(9.5, 12), expect.closeTo(1.5, 12)]);
    expect(load.plants[1].sides).toBeUndefined();
  });

  it('its open totals are those of an open spot; a skyline takes from them what it hides', () => {
    const open = valueOf(spotOf(yardPlan(), [6, 4]));
    if (open.date !== null) throw new Error('Not a season.');
    expect(load.season.openSunHours).toBeCloseTo(open.season.sunHours, 9);
    expect(load.season.openHotLoad).toBeCloseTo(open.season.hotLoad, 9);
    const base = yardPlan();
    const hills = { ...base, site: { ...base.site, skyline: [{ azimuth: 0, altitude: 12 }] } };
    const below = valueOf(loadOf(hills, { cell: 2 })).season;
    expect(below.openSunHours).toBeLessThan(load.season.openSunHours - 1.5);
    expect(below.samples).toBe(load.season.samples);
  });

  it('refuses a grid of over 4 million cells, and says what to do', () => {
    const outcome = loadOf(yardPlan(), { cell: 0.004 });
    expect(outcome).toMatchObject({
      ok: false,
      problems: [{ pointer: '--cell', message: expect.stringContaining('3000 × 2000') }],
    });
  });

  it('tells how far it has come', () => {
    const told: number[] = [];
    loadOf(yardPlan(FEATURES), { cell: 1, progress: (done) => told.push(done) });
    expect(told[0]).toBe(0);
    expect(told.at(-1)).toBe(1);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
  });
});
