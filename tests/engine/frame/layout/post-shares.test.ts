import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { briefOf } from '../../../../engine/frame/layout/brief.ts';
import { canopyFrame } from '../../../../engine/frame/layout/canopy-frame.ts';
import type { FramePost } from '../../../../engine/frame/layout/model.ts';
import { screenFrame } from '../../../../engine/frame/layout/screen-frame.ts';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import { ON_FEET } from '../../../../engine/frame/strength/footings.ts';
import type { Bed, Canopy, PlanPoint } from '../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { screen, yardWith } from '../yard.ts';

const SEED = 71;

/** Lower left corner at (4, 3), bays of 1.5 m each way: posts at (4 + 1.5 i, 3 + 1.5 j). */
const roof = (across: number, along: number): Canopy => ({
  id: 'roof',
  kind: 'canopy',
  center: [4 + 0.75 * across, 3 + 0.75 * along],
  width: 1.5 * across,
  length: 1.5 * along,
  height: 2.2,
  density: 0.5,
  frame: { soil: 'garden', maxBay: 1.5, tube: 'scaffold-48' },
});
const place = (column: number, row: number): PlanPoint => [4 + 1.5 * column, 3 + 1.5 * row];
const bedAt = ([x, y]: PlanPoint): Bed => ({
  id: `bed-${x}-${y}`,
  kind: 'bed',
  outline: [
    [x - 0.3, y - 0.3],
    [x + 0.3, y - 0.3],
    [x + 0.3, y + 0.3],
    [x - 0.3, y + 0.3],
  ],
  plantHeight: 0.5,
});

function postsOf(canopy: Canopy, beds: readonly Bed[]): readonly FramePost[] {
  const plan = yardWith([canopy, ...beds]);
  const read = briefOf(canopy, plan);
  mustBeOk(read);
  return canopyFrame(canopy, read.brief, ON_FEET, plan).posts;
}

const shareAt = (posts: readonly FramePost[], column: number, row: number): number =>
  posts.find(({ at: [x, y] }) => Math.hypot(x - 1.5 * column, y - 1.5 * row) < 1e-9)?.share ?? 0;
const sum = (posts: readonly FramePost[]): number => posts.reduce((total, { share }) => total + share, 0);

describe('what each post holds down', () => {
  test('adds up to the whole pull, whichever posts are left out', () => {
    let left = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 5 }),
        fc.array(fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 4 })), { maxLength: 6 }),
        (across, along, barred) => {
          const posts = postsOf(
            roof(across, along),
            barred.filter(([i, j]) => i < across && j < along).map(([i, j]) => bedAt(place(i, j))),
          );
          left += (across + 1) * (along + 1) - posts.length;
          expect(sum(posts)).toBeCloseTo(1, 12);
          expect(Math.min(...posts.map(({ share }) => share))).toBeGreaterThan(0);
        },
      ),
      { seed: SEED, numRuns: 150 },
    );
    expect(left).toBeGreaterThan(60);
  });

  test('is the cloth half-way to its neighbours: a quarter at the corners of one bay, 4 : 2 : 1 of two by two', () => {
    expect(postsOf(roof(1, 1), []).map(({ share }) => share)).toEqual([0.25, 0.25, 0.25, 0.25]);
    const posts = postsOf(roof(2, 2), []);
    expect([shareAt(posts, 1, 1), shareAt(posts, 1, 0), shareAt(posts, 0, 0)]).toEqual([4 / 16, 2 / 16, 1 / 16]);
  });

  test('goes to the four neighbours of a post that is left out, and to nobody else', () => {
    const [whole, without] = [postsOf(roof(4, 4), []), postsOf(roof(4, 4), [bedAt(place(1, 2))])];
    expect(without).toHaveLength(whole.length - 1);
    for (let row = 0; row <= 4; row++) {
      for (let column = 0; column <= 4; column++) {
        if (column === 1 && row === 2) continue;
        const more = Math.abs(column - 1) + Math.abs(row - 2) === 1 ? shareAt(whole, 1, 2) / 4 : 0;
        expect(shareAt(without, column, row)).toBeCloseTo(shareAt(whole, column, row) + more, 12);
      }
    }
  });

  test('of two posts in a row that are left out goes mostly to the nearer end of their rail, as on a lever', () => {
    const [whole, without] = [
      postsOf(roof(3, 2), []),
      postsOf(
        roof(3, 2),
        [1, 2].map((i) => bedAt(place(i, 1))),
      ),
    ];
    const share = shareAt(whole, 1, 1);
    // Half of each along the row, 2 : 1 and 1 : 2, so half of one post's to either end; half of each to front and back.
    expect(shareAt(without, 0, 1) - shareAt(whole, 0, 1)).toBeCloseTo(share / 2, 12);
    expect(shareAt(without, 3, 1) - shareAt(whole, 3, 1)).toBeCloseTo(share / 2, 12);
    expect(shareAt(without, 1, 0) - shareAt(whole, 1, 0)).toBeCloseTo(share / 4, 12);
  });

  test('a neighbour pulls harder at its anchor then', () => {
    const worst = (beds: readonly Bed[]): number => {
      const result = sheetOf(yardWith([roof(4, 4), ...beds], { stock: {} }), 'roof');
      mustBeOk(result);
      return Math.max(...result.sheet.anchors.posts.map(({ uplift }) => uplift.blocked));
    };
    expect(worst([bedAt(place(2, 2))])).toBeGreaterThan(worst([]) * 1.15);
  });

  test('adds up along a screen too', () => {
    const read = briefOf(screen, yardWith([screen]));
    mustBeOk(read);
    expect(sum(screenFrame(screen, read.brief, 0).posts)).toBeCloseTo(1, 12);
  });
});
