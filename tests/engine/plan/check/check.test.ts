import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy, Feature, Plan } from '../../../../engine/plan/types.ts';

/** Every key of the plan file, version 1. */
const KEYS = `format version name units site season climate features options plants journal stock past
  latitude longitude elevation timeZone upBearing boundary shelter surface skyline azimuth altitude underlay image at width turn opacity
  northFrom by line when pm reading along declination bearing pace steps length rules maxHeight setback note tap hose how
  year from to stepMinutes source offset gust frost first last lowest turbidity hotAir heatwaveHigh months month high low humidity wind sunshine
  sunshineAfternoon spread id kind path height thickness openness outline eaves crownWidth crownBase shape leafless plant center rise density
  measuredDensity drops side depth up frame tube bottomRails braces maxBay takeOff anchor soil bottom plantHeight container pot colour move planted foliageFrom shades
  worth blocks air leaf light covered pair text adds moves removes date what feature amount part currency kerf tubes outside wall price cloth prices plan summers hottest clay yard budget holdsCloth onWall fruitWidth`.split(
  /\s+/,
);

function keysIn(value: unknown, found = new Set<string>()): Set<string> {
  if (typeof value !== 'object' || value === null) return found;
  for (const [key, held] of Object.entries(value)) {
    if (!Array.isArray(value)) found.add(key);
    keysIn(held, found);
  }
  return found;
}

describe('check', () => {
  it('the example holds every key, every kind and every journal word', () => {
    const example = JSON.parse(readFileSync('tests/plans/example.plan.json', 'utf8'));
    const found = keysIn(example);
    expect(KEYS.filter((key) => !found.has(key))).toEqual([]);
    expect(new Set(example.features.map((feature: { kind: string }) => feature.kind)).size).toBe(12);
    expect(new Set(example.journal.map((entry: { what: string }) => entry.what)).size).toBe(7);
    expect(checkPlan(example)).toEqual([]);
  });

  it('a plan in memory may hold keys set to undefined', () => {
    const plan: Plan = { ...demoPlan('lane'), name: undefined, stock: undefined };
    expect(checkPlan(plan)).toEqual([]);
  });

  it('a drop may reach the ground, and no further', () => {
    const canopy: Canopy = {
      id: 'c',
      kind: 'canopy',
      center: [5, 4],
      length: 2,
      width: 2,
      height: 2.1,
      rise: 0.3,
      density: 0.4,
      drops: [
        { side: 'back', depth: 2.1, density: 0.4 },
        { side: 'front', depth: 2.4, density: 0.4 },
      ],
    };
    const plan = { ...demoPlan('courtyard'), options: [], features: [canopy] };
    expect(checkPlan(plan).filter(({ severity }) => severity === 'error')).toEqual([]);
    const deeper: Canopy = {
      ...canopy,
      drops: [
        { side: 'back', depth: 2.11, density: 0.4 },
        { side: 'front', depth: 2.41, density: 0.4 },
        { side: 'right', depth: 2.11, density: 0.4 },
      ],
    };
    expect(checkPlan({ ...plan, features: [deeper] }).map(({ pointer }) => pointer)).toEqual([
      '/features/0/drops/0/depth',
      '/features/0/drops/1/depth',
      '/features/0/drops/2/depth',
    ]);
  });

  it('no cloth smaller than a hand can build', () => {
    const canopy = (length: number, width: number): Feature => ({
      id: 'c',
      kind: 'canopy',
      center: [5, 4],
      length,
      width,
      height: 2,
      density: 0.5,
    });
    const screen = (end: number, bottom: number): Feature => ({
      id: 's',
      kind: 'screen',
      path: [
        [5, 4],
        [5, end],
      ],
      bottom,
      height: 1.8,
      density: 0.5,
    });
    const pointers = (...features: Feature[]) =>
      checkPlan({ ...demoPlan('courtyard'), options: [], journal: [], features }).map(({ pointer }) => pointer);
    expect(pointers(canopy(0.1, 0.1), screen(4.1, 1.7))).toEqual([]);
    expect(pointers(canopy(0.002, 2))).toEqual(['/features/0/length']);
    expect(pointers(canopy(2, 0.09))).toEqual(['/features/0/width']);
    expect(pointers(screen(4.002, 0))).toEqual(['/features/0/path']);
    expect(pointers(screen(6, 1.79))).toEqual(['/features/0/height']);
  });

  it('a yard of exactly four million cells is worked out, one row more is not', () => {
    const plan = demoPlan('courtyard');
    const yard = (height: number) =>
      checkPlan({
        ...plan,
        features: [],
        options: [],
        journal: [],
        site: {
          ...plan.site,
          boundary: [
            [0, 0],
            [500, 0],
            [500, height],
            [0, height],
          ],
        },
      });
    expect(yard(500)).toEqual([]);
    expect(yard(500.25).map(({ pointer }) => pointer)).toEqual(['/site/boundary']);
  });

  it('an option may lean on what another option adds', () => {
    const plan = demoPlan('courtyard');
    const options = [
      { id: 'X', adds: [{ id: 'fig-pot', kind: 'plant', at: [3, 7], height: 1.1, spread: 0.7, plant: 'fig' }] },
      { id: 'Y', moves: { 'fig-pot': [4, 7] } },
    ] as const;
    expect(checkPlan({ ...plan, options })).toEqual([]);
  });
});
