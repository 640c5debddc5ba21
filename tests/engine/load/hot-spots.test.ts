import { describe, expect, it } from 'vitest';
import type { GridSpec } from '../../../engine/cast/grid.ts';
import { hotSpotsOf } from '../../../engine/load/hot-spots.ts';
import { loadOf } from '../../../engine/load/load-of.ts';
import { QUANTITIES, type Cells } from '../../../engine/load/types.ts';
import { yardOf } from '../../../engine/load/yard.ts';
import type { Feature } from '../../../engine/plan/types.ts';
import { valueOf, yardPlan } from './yard-plan.ts';

const yard = valueOf(yardOf(yardPlan(), { kind: 'season' }));

/** Cells from a drawing, y up: a digit is a grade, `#` no value. */
function spotsOf(drawing: readonly string[], cell: number) {
  const loads = [0, 1, 4, 8, 14, 20];
  const rows = drawing.length;
  const columns = drawing[0].length;
  const grid: GridSpec = { x0: 1, y0: 2, cell, columns, rows, height: 0.5 };
  const digits = drawing.toReversed().flatMap((line) => [...line].map((mark) => (mark === '#' ? null : Number(mark))));
  const all = Object.fromEntries(QUANTITIES.map((name) => [name, digits])) as unknown as Cells;
  const cells: Cells = { ...all, hotLoad: digits.map((grade) => (grade === null ? null : loads[grade])) };
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

  it('say when, from where and over what: an afternoon sun over the western wall', () => {
    const walls: readonly Feature[] = [
      { id: 'east', kind: 'wall', path: [[12, -60], [12, 60]], height: 30, thickness: 0.2 },
      { id: 'west', kind: 'wall', name: 'West wall', path: [[8, -60], [8, 60]], height: 4.5, thickness: 0.2 },
    ];
    const [spot] = valueOf(loadOf(yardPlan(walls), { cell: 1 })).hotSpots;
    expect(spot.when.from.localeCompare('11:30')).toBe(1);
    expect(spot.from).toBeGreaterThan(180);
    expect(spot.past).toEqual(['west']);
    expect(spot.sentence).toMatch(/^\d+\.\d m² round \(\d+\.\d\d m, \d+\.\d\d m\): (harsh|scorching), hot load 1?\d\.\d MJ\/m² a day; worst 1\d:\d0 to 1\d:\d0, the sun from the (south-)?west, coming over the west wall\.$/);
  });
});
