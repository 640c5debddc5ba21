import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellCenter, gridOf, maskOf, usualCell, windowOf } from '../../../../engine/load/light/grid-of.ts';
import { DEMO_NAMES, demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Feature, PlanPoint } from '../../../../engine/plan/types.ts';
import { yardPlan } from '../yard-plan.ts';

/** The mask drawn with y up: `.` a cell, `#` none. */
function drawn(features: readonly Feature[], boundary: readonly PlanPoint[], cell: number, height: number): string[] {
  const base = yardPlan(features);
  const plan = { ...base, site: { ...base.site, boundary } };
  const grid = gridOf(plan, { cell, height });
  const mask = maskOf(plan, grid);
  return Array.from({ length: grid.rows }, (_, row) => {
    const j = grid.rows - 1 - row;
    return Array.from({ length: grid.columns }, (__, i) => (mask[j * grid.columns + i] === 1 ? '#' : '.')).join('');
  });
}

const BOX: readonly PlanPoint[] = [
  [0, 0],
  [6, 0],
  [6, 4],
  [0, 4],
];

describe('the grid', () => {
  it('begins at the smallest x and y, and covers the boundary', () => {
    const base = yardPlan();
    const plan = {
      ...base,
      site: {
        ...base.site,
        boundary: [
          [-1.5, 2],
          [4.1, 2.5],
          [3, 9],
        ] as const,
      },
    };
    expect(gridOf(plan, { cell: 0.5, height: 0.7 })).toEqual({
      x0: -1.5,
      y0: 2,
      cell: 0.5,
      columns: 12,
      rows: 14,
      height: 0.7,
    });
  });

  it('takes no cell more for a length a hair over', () => {
    const base = yardPlan();
    const plan = {
      ...base,
      site: {
        ...base.site,
        boundary: [
          [0, 0],
          [0.1 + 0.2, 0],
          [0.3, 0.7],
          [0, 0.7],
        ] as const,
      },
    };
    expect(gridOf(plan, { cell: 0.1, height: 0 })).toMatchObject({ columns: 3, rows: 7 });
  });

  it('index = j·columns + i, centres half a cell in', () => {
    const grid = { x0: 2, y0: -1, cell: 0.4, columns: 5, rows: 3, height: 0 };
    expect(cellCenter(grid, 0)).toEqual([2.2, -0.8]);
    const [x, y] = cellCenter(grid, 5 * 2 + 3);
    expect([x, y]).toEqual([expect.closeTo(3.4, 12), expect.closeTo(0, 12)]);
  });

  it('a window on it keeps its anchor', () => {
    const grid = gridOf(yardPlan(), { cell: 0.1, height: 0.5 });
    const bed: PlanPoint[] = [
      [3.04, 1.96],
      [4.42, 1.96],
      [4.42, 2.55],
      [3.04, 2.55],
    ];
    const part = windowOf(grid, bed, 0.9);
    expect(part).toMatchObject({ columns: 15, rows: 7, height: 0.9, cell: 0.1 });
    expect(part.x0).toBeCloseTo(3, 12);
    expect(part.y0).toBeCloseTo(1.9, 12);
  });
});

describe('cells without a value', () => {
  it('lie outside the boundary; a centre on it lies inside', () => {
    // The slanted side runs through centres of cells.
    expect(
      drawn(
        [],
        [
          [0, 0],
          [4, 0],
          [0, 4],
        ],
        1,
        0.5,
      ),
    ).toEqual(['.###', '..##', '...#', '....']);
  });

  it('lie inside a building or wall taller than the grid; not under a lower one', () => {
    const house: Feature = {
      id: 'b',
      kind: 'building',
      outline: [
        [1, 1],
        [3, 1],
        [3, 3],
        [1, 3],
      ],
      height: 2,
      eaves: 0.9,
    };
    const wall: Feature = {
      id: 'w',
      kind: 'wall',
      path: [
        [4.5, 0],
        [4.5, 4],
      ],
      height: 1.2,
      thickness: 0.4,
    };
    expect(drawn([house, wall], BOX, 1, 0.5)).toEqual(['....#.', '.##.#.', '.##.#.', '....#.']);
    expect(drawn([house, wall], BOX, 1, 1.5)).toEqual(['......', '.##...', '.##...', '......']);
    expect(drawn([house, wall], BOX, 1, 2)).toEqual(['......', '......', '......', '......']);
  });

  it('a bent wall covers its corner, and hedges, crowns and trunks take no cell away', () => {
    const bent: Feature = {
      id: 'w',
      kind: 'wall',
      path: [
        [0.5, 0.5],
        [4.5, 0.5],
        [4.5, 3.5],
      ],
      height: 2,
      thickness: 0.6,
    };
    const hedge: Feature = {
      id: 'h',
      kind: 'hedge',
      path: [
        [0, 2.5],
        [3, 2.5],
      ],
      height: 2,
      thickness: 0.8,
    };
    const tree: Feature = {
      id: 't',
      kind: 'tree',
      at: [2.5, 3.5],
      height: 9,
      crownWidth: 4,
      crownBase: 0,
      openness: 0,
    };
    expect(drawn([bent, hedge, tree], BOX, 1, 0.5)).toEqual(['......', '....#.', '....#.', '.####.']);
  });
});

describe('usualCell', () => {
  const tree = (k: number): Feature => ({
    id: `tree-${k}`,
    kind: 'tree',
    at: [k % 30, Math.floor(k / 30)],
    height: 4,
    crownWidth: 3,
    crownBase: 1,
    openness: 0.2,
  });
  const yard = (side: number, trees: number) => ({
    site: {
      ...demoPlan('courtyard').site,
      boundary: [
        [0, 0],
        [side, 0],
        [side, side],
        [0, side],
      ] as PlanPoint[],
    },
    features: Array.from({ length: trees }, (_, k) => tree(k)),
  });

  it('a quarter of a metre in the demo yards and in any yard of a house', () => {
    for (const name of DEMO_NAMES) expect(usualCell(demoPlan(name))).toBe(0.25);
    expect(usualCell(yard(30, 20))).toBe(0.25);
  });

  it('never lets a map take more work for a crowd or a field than for a large yard', () => {
    expect(usualCell(yard(30, 500))).toBe(1);
    expect(usualCell(yard(200, 0))).toBe(1);
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 500 }), fc.integer({ min: 0, max: 500 }), (side, trees) => {
        const cell = usualCell(yard(side, trees));
        expect(Math.ceil(side / cell) ** 2 * (1 + trees / 8)).toBeLessThanOrEqual(60_000);
        expect(Math.log2(cell / 0.25) % 1).toBe(0);
      }),
    );
  });
});
