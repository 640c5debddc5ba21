import { describe, expect, test } from 'vitest';
import type { PlanPoint } from '../../../../engine/index.ts';
import { typedPoints } from '../../../../web/map/drawing/typed-points.ts';
import type { TypedContext } from '../../../../web/map/drawing/typed-points.ts';

function points(text: string, context: Partial<TypedContext> = {}): readonly PlanPoint[] {
  const read = typedPoints(text, { units: 'metric', drawn: [[1, 2]], box: false, ...context });
  if (!read.ok) throw new Error(read.message);
  return read.points;
}

function refusal(text: string, context: Partial<TypedContext> = {}): string {
  const read = typedPoints(text, { units: 'metric', drawn: [[1, 2]], box: false, ...context });
  if (read.ok) throw new Error(`"${text}" was read.`);
  return read.message;
}

describe('a point typed as two numbers', () => {
  test.each([['3 4.5'], ['3; 4.5'], ['3, 4.5'], ['x 3 y 4.5'], ['x3 y4.5'], ['3m 4.5m'], ['3 4,5'], ['3; 450cm']])(
    '%s',
    (text) => {
      expect(points(text, { drawn: [] })).toEqual([[3, 4.5]]);
    },
  );

  test('may lie left of and below the plan’s corner', () => {
    expect(points('-1 −2', { drawn: [] })).toEqual([[-1, -2]]);
  });

  test('is in feet where the plan is', () => {
    expect(points('10 20', { drawn: [], units: 'imperial' })).toEqual([[3.048, 6.096]]);
  });
});

describe('a typed length', () => {
  test('leads to the right where nothing else says where', () => {
    expect(points('3.4')).toEqual([[4.4, 2]]);
  });

  test('leads straight on after a leg', () => {
    expect(
      points('3', {
        drawn: [
          [1, 2],
          [1, 5],
        ],
      }),
    ).toEqual([[1, 8]]);
  });

  test('leads towards the pointer', () => {
    expect(points('5', { aim: [4, 6] })).toEqual([[4, 6]]);
  });

  test.each([
    ['6\'2"', 1.88],
    ['6 ft 2', 1.88],
    ['74 in', 1.88],
    ['1.88', 1.88],
    ['1,88', 1.88],
  ])('%s is a length as anywhere', (text, metres) => {
    expect(points(text)[0]![0] - 1).toBeCloseTo(metres, 2);
  });

  test('goes a way on the paper when it begins with one', () => {
    expect(points('up 3')).toEqual([[1, 5]]);
    expect(points('left 0.5')).toEqual([[0.5, 2]]);
    expect(points('down 2')).toEqual([[1, 0]]);
  });
});

describe('a typed walk', () => {
  test('12.4 right 6.1 turns as one who walks it turns', () => {
    expect(points('12.4 right 6.1')).toEqual([
      [13.4, 2],
      [13.4, -4.1],
    ]);
  });

  test('goes round and home', () => {
    expect(points('up 4 right 3 right 4 home', { drawn: [[0, 0]] })).toEqual([
      [0, 4],
      [3, 4],
      [3, 0],
      [0, 0],
    ]);
  });

  test('turns by degrees', () => {
    const [, second] = points('2 left 30° 4', { drawn: [[0, 0]] });
    expect(second![0]).toBeCloseTo(2 + 4 * Math.cos(Math.PI / 6), 3);
    expect(second![1]).toBeCloseTo(2, 3);
  });

  test('goes on from a leg already drawn: right is the walker’s right', () => {
    expect(
      points('right 2', {
        drawn: [
          [0, 0],
          [0, 5],
        ],
      }),
    ).toEqual([[2, 5]]);
    expect(
      points('right 2', {
        drawn: [
          [0, 0],
          [5, 0],
        ],
        aim: [9, 9],
      }),
    ).toEqual([[5, -2]]);
  });

  test('turns twice in two typings as in one', () => {
    const once = points('3 right 2 right 1', { drawn: [[0, 0]] });
    const first = points('3 right 2', { drawn: [[0, 0]] });
    expect([...first, ...points('right 1', { drawn: [[0, 0], ...first] })]).toEqual(once);
  });
});

describe('a typed size', () => {
  test.each([['3 x 2'], ['3 × 2'], ['3 by 2'], ['3x2'], ['3m x 2m']])(
    '%s makes the rectangle’s other corner',
    (text) => {
      expect(points(text, { box: true })).toEqual([[4, 4]]);
    },
  );

  test('opens towards the pointer', () => {
    expect(points('3 x 2', { box: true, aim: [0, 0] })).toEqual([[-2, 0]]);
  });
});

describe('what cannot be read is said in one sentence', () => {
  test.each([
    ['', {}, 'Type a length'],
    ['3 foo', {}, '"3 foo" is not a length'],
    ['3.4', { drawn: [] }, 'First place a point'],
    ['3 x 2', { drawn: [], box: true }, 'First place one corner'],
    ['right', {}, 'Type at least one length'],
  ] as const)('%s', (text, context, words) => {
    expect(refusal(text, context)).toContain(words);
  });
});
