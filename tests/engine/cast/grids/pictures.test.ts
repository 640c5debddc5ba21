import { describe, expect, test } from 'vitest';
import { castGrid } from '../../../../engine/cast/grids/cast-grid.ts';
import type { Feature } from '../../../../engine/plan/types.ts';
import { buildScene } from '../../../../engine/scene/build.ts';
import { emptyPlan } from '../random-plans.ts';

/** The ground at one moment, up the page up the plan, in cells of 0.5 m from (0, 0): `#` dark, `+` dimmed, `.` open. */
function picture(
  features: readonly Feature[],
  azimuth: number,
  altitude: number,
  columns: number,
  rows: number,
  height = 0,
): string[] {
  const grid = { x0: 0, y0: 0, cell: 0.5, columns, rows, height };
  const passes = {
    count: 1,
    azimuth: Float64Array.of(azimuth),
    altitude: Float64Array.of(altitude),
    state: new Uint16Array(1),
  };
  const [sun] = castGrid(buildScene(emptyPlan(features)), grid, passes, [Float64Array.of(1)]);
  const lines = Array.from({ length: rows }, (_, j) =>
    Array.from({ length: columns }, (__, i) =>
      sun[j * columns + i] < 1e-9 ? '#' : sun[j * columns + i] > 1 - 1e-9 ? '.' : '+',
    ).join(''),
  );
  return lines.reverse();
}

const WALL: Feature = {
  id: 'w',
  kind: 'wall',
  path: [
    [1, 1],
    [3, 1],
  ],
  height: 2,
  thickness: 0.4,
};

describe('the shape of a shadow', () => {
  test('a wall 2 m high, 0.8 m to 1.2 m up the plan, sun in the south at 45°: shade as far as 3.2 m', () => {
    expect(picture([WALL], 180, 45, 8, 8)).toEqual([
      '........',
      '........',
      '..####..',
      '..####..',
      '..####..',
      '..####..',
      '........',
      '........',
    ]);
  });

  test('the same from the south-west: the shadow leans', () => {
    expect(picture([WALL], 225, 45, 10, 7)).toEqual([
      '..........',
      '..........',
      '....#####.',
      '...#####..',
      '..#####...',
      '..........',
      '..........',
    ]);
  });

  test('a concave house keeps its yard open to the east', () => {
    const house: Feature = {
      id: 'b',
      kind: 'building',
      outline: [
        [1, 1],
        [5, 1],
        [5, 2],
        [2, 2],
        [2, 4],
        [5, 4],
        [5, 5],
        [1, 5],
      ],
      height: 1,
    };
    expect(picture([house], 90, 45, 12, 12)).toEqual([
      '............',
      '............',
      '##########..',
      '##########..',
      '####........',
      '####........',
      '####........',
      '####........',
      '##########..',
      '##########..',
      '............',
      '............',
    ]);
  });

  test('a level canopy is its own shadow, moved away from the sun; its drop adds a second cloth', () => {
    // 2 m high, sun in the south at atan 2: moved 1 m north, to 2 m to 4 m up the plan.
    const roof: Feature = { id: 'c', kind: 'canopy', center: [3, 2], length: 2, width: 3, height: 2, density: 0.6 };
    expect(picture([roof], 180, 63.4349488, 12, 8)).toEqual([
      '...++++++...',
      '...++++++...',
      '...++++++...',
      '...++++++...',
      '............',
      '............',
      '............',
      '............',
    ]);
    // Sun in the north at 45°: the roof's shade ends at 1 m, that of the drop, from 1 m to 2 m over its front edge,
    // follows.
    const dropped: Feature = { ...roof, density: 1, drops: [{ side: 'front', depth: 1, density: 0.5 }] };
    expect(picture([dropped], 0, 45, 12, 8)).toEqual([
      '............',
      '............',
      '............',
      '............',
      '...++++++...',
      '...++++++...',
      '...######...',
      '...######...',
    ]);
  });

  test('a round crown over the plane is a round patch at noon overhead, its trunk a dark middle', () => {
    expect(
      picture(
        [{ id: 't', kind: 'tree', at: [3, 3], height: 12, crownWidth: 4, crownBase: 2, openness: 0.5 }],
        0,
        90,
        12,
        12,
      ),
    ).toEqual([
      '............',
      '............',
      '....++++....',
      '...++++++...',
      '..++++++++..',
      '..+++##+++..',
      '..+++##+++..',
      '..++++++++..',
      '...++++++...',
      '....++++....',
      '............',
      '............',
    ]);
  });
});
