import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  hiddenHeightAt,
  hiddenHeightGrid,
  hiddenHeightWords,
  sightLinesOf,
} from '../../../../engine/advice/sight/hidden-height.ts';
import { eyeReaches } from '../../../../engine/advice/sight/hidden-heights.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { pointInRing } from '../../../../engine/plan/geometry/shapes.ts';
import type { Building, Eye, Feature, Plan, PlanPoint } from '../../../../engine/plan/types.ts';
import { yardPlan } from '../../load/yard-plan.ts';

const SEED = { seed: 71, numRuns: 60 };
const LANE = demoPlan('lane');
const COURTYARD = demoPlan('courtyard');

const box = (x: number, y: number, w: number, d: number): PlanPoint[] => [
  [x, y],
  [x + w, y],
  [x + w, y + d],
  [x, y + d],
];
const building = fc
  .record({
    x: fc.double({ min: 0, max: 9, noNaN: true }),
    y: fc.double({ min: 0, max: 5, noNaN: true }),
    w: fc.double({ min: 0.3, max: 2.5, noNaN: true }),
    d: fc.double({ min: 0.2, max: 3, noNaN: true }),
    height: fc.double({ min: 0.4, max: 4, noNaN: true }),
  })
  .map(({ x, y, w, d, height }) => ({ outline: box(x, y, w, d), height }));
const buildings = fc
  .array(building, { minLength: 1, maxLength: 4 })
  .map((list) => list.map((each, k): Building => ({ id: `b${k}`, kind: 'building', ...each })));
const eyeOf = (id: string, height: number, ...path: PlanPoint[]): Eye => ({ id, kind: 'eye', path, height });

/** Whether anything on the way from an eye to a place in space is solid, by walking along it. */
function isHidden(
  walls: readonly Building[],
  eye: readonly [number, number, number],
  to: readonly [number, number, number],
): boolean {
  const steps = 4000;
  for (let n = 0; n <= steps; n++) {
    const [x, y, z] = eye.map((from, axis) => from + ((to[axis] - from) * n) / steps);
    if (walls.some(({ outline, height }) => z < height && pointInRing([x, y], outline))) return true;
  }
  return false;
}

describe('hidden height', () => {
  test('a centimetre lower nothing is seen, a centimetre higher the top is, by walking along the line', () => {
    fc.assert(
      fc.property(
        buildings,
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.double({ min: 1, max: 7, noNaN: true }),
        fc.double({ min: 1, max: 11, noNaN: true }),
        (walls, eyeHeight, y, x) => {
          const eye: readonly [number, number, number] = [-4, 2.3, eyeHeight];
          const { height } = hiddenHeightAt(sightLinesOf(yardPlan([...walls, eyeOf('e', eyeHeight, [-4, 2.3])])), [
            x,
            y,
          ]);
          if (height < 4) expect(isHidden(walls, eye, [x, y, height + 0.01])).toBe(false);
          // A corner just touched is narrower than the walk's stride.
          for (const z of [height - 0.01, height / 2])
            if (z > 0 && height < 4 && height > 0.05)
              expect(isHidden(walls, eye, [x, y, z]) || graze(walls, eye, [x, y])).toBe(true);
        },
      ),
      SEED,
    );
  });

  test('one more wall never lowers it, one more eye never raises it', () => {
    fc.assert(
      fc.property(
        buildings,
        fc.double({ min: 0.5, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 12, noNaN: true }),
        (walls, eyeHeight, x) => {
          const at: PlanPoint = [x, 3.7];
          const first = eyeOf('first', eyeHeight, [-3, 6.1]);
          const height = (features: Feature[]) => hiddenHeightAt(sightLinesOf(yardPlan(features)), at).height;
          const all = height([...walls, first]);
          expect(height([...walls.slice(1), first])).toBeLessThanOrEqual(all);
          expect(height([...walls, first, eyeOf('second', 2.2, [15, 4.4])])).toBeLessThanOrEqual(all);
        },
      ),
      SEED,
    );
  });

  test('the grid says the same as its cells’ centres one by one', () => {
    const sight = sightLinesOf(LANE);
    const grid = { x0: 0, y0: 0, cell: 1.1, columns: 14, rows: 19, height: 0 };
    const heights = hiddenHeightGrid(sight, grid);
    for (let index = 0; index < heights.length; index++) {
      const at: PlanPoint = [((index % 14) + 0.5) * 1.1, (Math.floor(index / 14) + 0.5) * 1.1];
      expect(heights[index]).toBe(hiddenHeightAt(sight, at).height);
    }
  });

  test('without eyes anything may stand, in the open nothing is hidden', () => {
    expect(hiddenHeightAt(sightLinesOf(yardPlan([])), [3, 4])).toEqual({ height: Infinity, eye: null });
    expect(hiddenHeightAt(sightLinesOf(yardPlan([eyeOf('e', 1.7, [-2, 1])])), [3, 4])).toEqual({ height: 0, eye: 'e' });
  });

  test('hedges hide, lattice and trees do not', () => {
    const eye = eyeOf('e', 1.5, [-2, 4]);
    const height = (feature: Feature) => hiddenHeightAt(sightLinesOf(yardPlan([feature, eye])), [5, 4]).height;
    expect(
      height({
        id: 'h',
        kind: 'hedge',
        path: [
          [1, 0],
          [1, 8],
        ],
        height: 2,
        thickness: 0.6,
      }),
    ).toBeGreaterThan(2);
    expect(
      height({
        id: 'l',
        kind: 'wall',
        path: [
          [1, 0],
          [1, 8],
        ],
        height: 2,
        thickness: 0.1,
        openness: 0.4,
      }),
    ).toBe(0);
    expect(height({ id: 't', kind: 'tree', at: [1, 4], height: 6, crownWidth: 5, crownBase: 0.5, openness: 0 })).toBe(
      0,
    );
  });

  test('a long line of eyes is asked at every metre: a gap in the fence is found', () => {
    const fence = (from: number, to: number, id: string): Feature => ({
      id,
      kind: 'wall',
      path: [
        [0, from],
        [0, to],
      ],
      height: 1.9,
      thickness: 0.1,
    });
    const lane = eyeOf('lane', 1.6, [-3, -20], [-3, 20]);
    const whole = hiddenHeightAt(sightLinesOf(yardPlan([fence(-40, 40, 'f'), lane])), [4, 2]).height;
    const gap = hiddenHeightAt(sightLinesOf(yardPlan([fence(-40, 5, 'f'), fence(6.2, 40, 'g'), lane])), [4, 2]).height;
    expect(whole).toBeGreaterThan(1.9);
    expect(gap).toBe(0);
  });

  test('somebody at a window inside a house looks out of it; from its roof the roof’s edge hides', () => {
    const house: Feature = { id: 'house', kind: 'building', outline: box(-6, 0, 6, 8), height: 5 };
    const from = (height: number) =>
      hiddenHeightAt(sightLinesOf(yardPlan([house, eyeOf('e', height, [-2, 4])])), [3, 4]).height;
    expect(from(4)).toBe(0);
    // 1.6 m above a roof whose edge is 2 m away: the line falls 0.8 a metre and meets the ground's z at 5 m as 6.6 −
    // 0.8·5.
    expect(from(6.6)).toBeCloseTo(6.6 - (1.6 / 2) * 5, 9);
  });
});

test('from whom cloth can be hidden in most of the yard: the terrace and the lane, not the window behind the lane yard', () => {
  const reaches = (plan: Plan) => eyeReaches(plan).map(({ id, canBeHiddenFrom }) => [id, canBeHiddenFrom]);
  expect(reaches(COURTYARD)).toEqual([['terrace', true]]);
  expect(reaches(LANE)).toEqual([
    ['lane', true],
    ['upstairs', false],
  ]);
});

test('how much of the ground hides nothing is told by the line over the fence, and an eye just above it still is hidden from', () => {
  // Over a fence of 1.8 m at x = −1, from an eye 4 m before it: the line falls (eye − 1.8)/4 a metre and is at half a
  // metre after 1.3·4/(eye − 1.8).
  const fence: Feature = {
    id: 'fence',
    kind: 'wall',
    path: [
      [-1, -2000],
      [-1, 2000],
    ],
    height: 1.8,
    thickness: 0.001,
  };
  const reach = (height: number) => eyeReaches(yardPlan([fence, eyeOf('window', height, [-5, 4])]))[0];
  for (const height of [1.7, 1.9, 2.2]) expect(reach(height)).toMatchObject({ bare: 0, canBeHiddenFrom: true });
  for (const height of [2.6, 3, 4]) {
    // Straight on; to the sides the way is as much longer before the fence as behind it.
    const hidden = (1.3 * 4) / (height - 1.8) - 1;
    expect(reach(height).bare).toBeCloseTo(1 - hidden / 12, 1);
    expect(reach(height).canBeHiddenFrom).toBe(hidden > 6);
  }
});

/** Whether the line passes within 2 cm of a building's corner, where walking along it may step over what it cuts. */
function graze(walls: readonly Building[], [ex, ey]: readonly [number, number, number], [x, y]: PlanPoint): boolean {
  const length = Math.hypot(x - ex, y - ey);
  return walls.some(({ outline }) =>
    outline.some(([cx, cy]) => Math.abs((x - ex) * (cy - ey) - (y - ey) * (cx - ex)) / length < 0.02),
  );
}

test('words: hidden at any height up to four metres, or not to be hidden at all', () => {
  expect(hiddenHeightWords(0.28, 'metric')).toBe('cannot be hidden');
  expect(hiddenHeightWords(1.934, 'metric')).toMatch(/^1\.93/);
  expect(hiddenHeightWords(Infinity, 'metric')).toMatch(/^over 4/);
});
