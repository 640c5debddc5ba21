import { describe, expect, it } from 'vitest';
import type { GridSpec } from '../../../../engine/cast/grids/grid-spec.ts';
import { hotSpotsOf } from '../../../../engine/load/light/hot-spots.ts';
import { loadOf } from '../../../../engine/load/load-of.ts';
import { QUANTITIES, type Quantity } from '../../../../engine/load/types.ts';
import { yardOf } from '../../../../engine/load/yard.ts';
import type { Feature } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';
import { yardPlan } from '../yard-plan.ts';

const yard = valueOf(yardOf(yardPlan(), { kind: 'season' }));

/** Cells from a drawing, y up: a digit is a grade, `#` no value. */
function spotsOf(drawing: readonly string[], cell: number) {
  const loads = [0, 1, 4, 8, 14, 20];
  const rows = drawing.length;
  const columns = drawing[0].length;
  const grid: GridSpec = { x0: 1, y0: 2, cell, columns, rows, height: 0.5 };
  const digits = drawing.toReversed().flatMap((line) => [...line].map((mark) => (mark === '#' ? NaN : Number(mark))));
  const cells = Object.fromEntries(QUANTITIES.map((name) => [name, Float64Array.from(digits)])) as Record<
    Quantity,
    Float64Array
  >;
  cells.hotLoad = Float64Array.from(digits, (grade) => loads[grade] ?? NaN);
  return hotSpotsOf(yard, grid, cells, 'metric');
}

describe('hot spots', () => {
  it('are cells of grade 4 or 5 joined by edges, not by corners', () => {
    const spots = spotsOf(['1441', '3134', '4411'], 1);
    expect(spots.map(({ cells }) => cells).toSorted()).toEqual([1, 2, 2]);
  });

  it('do not join round the edge of the map, nor over cells without a value', () => {
    expect(spotsOf(['114', '411', '111'], 1).map(({ cells }) => cells)).toEqual([1, 1]);
    expect(spotsOf(['4#4'], 1)).toHaveLength(2);
  });

  it('of less than 0.25 m² are not told', () => {
    expect(spotsOf(['411', '411'], 0.25)).toHaveLength(0);
    expect(spotsOf(['441', '441'], 0.25)).toHaveLength(1);
    expect(spotsOf(['4'], 0.5)).toHaveLength(1);
  });

  it('say their area, centre and grade of the mean load; the one with the most load over its area first', () => {
    const [first, second] = spotsOf(['55#4', '55#4'], 0.5);
    expect(first).toMatchObject({ cells: 4, area: 1, grade: 5, hotLoad: 20, center: [1.5, 2.5] });
    expect(second).toMatchObject({ cells: 2, area: 0.5, grade: 4, center: [2.75, 2.5] });
  });

  it('stand in the order of their load over their area, wherever they lie on the map', () => {
    // Load times cells: 14 · 2, 14 · 3, 20 · 2 and 14 · 1, met in this order from the lower left.
    const loads = (drawing: readonly string[]) => spotsOf(drawing, 0.5).map((spot) => spot.hotLoad * spot.cells);
    const expected = [42, 40, 28, 14];
    expect(loads(['11114', '55111', '11111', '44144', '11114'])).toEqual(expected);
    expect(loads(['44144', '11114', '11111', '55111', '11114'])).toEqual(expected);
  });

  it('that are nearly all of a large ground are told as that, not by a middle that nobody looks for', () => {
    const [whole] = spotsOf(['555#', '5555', '5515', '5555', '5555'], 2);
    expect(whole.sentence).toMatch(/^Nearly all of the ground: scorching; /);
    const [half] = spotsOf(['5511', '5511', '5511'], 2);
    expect(half.sentence).toMatch(/^About 25 m² round /);
  });

  it('say when, from where and how that sun comes: in the afternoon, from the west, in under a porch', () => {
    // The porch covers everything east of x = 4; the yard is a strip just inside its edge.
    const porch: Feature = {
      id: 'porch',
      kind: 'canopy',
      name: 'Porch',
      center: [24, 4],
      length: 80,
      width: 40,
      height: 2.5,
      density: 1,
    };
    const site = {
      ...yardPlan().site,
      boundary: [
        [4.1, 1],
        [4.6, 1],
        [4.6, 3],
        [4.1, 3],
      ] as const,
    };
    const [spot] = valueOf(loadOf(yardPlan([porch], { site }), { cell: 0.5 })).hotSpots;
    expect(spot).toMatchObject({ cells: 4, area: 1, past: ['porch'] });
    expect(spot.when.from).toMatch(/^1[23]:/);
    expect(spot.from).toBeGreaterThan(225);
    expect(spot.from).toBeLessThan(280);
    expect(spot.sentence).toMatch(
      /^About 1 m² round 4\.\d m across, 2\.0 m up: (harsh|scorching); worst 1[23]:\d0 to 1[56]:\d0, the sun from the (south-)?west, coming in under the porch\.$/,
    );
  });
});
