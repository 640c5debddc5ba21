import { describe, expect, test } from 'vitest';
import type { PlanPoint } from '../../../../engine/index.ts';
import {
  beginDraft,
  canFinish,
  finish,
  legText,
  nextStep,
  place,
  takeBack,
} from '../../../../web/map/drawing/draft.ts';
import { TOOLS, shapeOf, toolById, toolByLetter } from '../../../../web/map/drawing/tools.ts';
import type { ToolId } from '../../../../web/map/drawing/tools.ts';

const draw = (id: ToolId, points: readonly PlanPoint[], box?: boolean) =>
  points.reduce(place, beginDraft(toolById(id)!, box));

describe('a thing being drawn', () => {
  test('a pot is whole with its first point', () => {
    expect(draw('pot', [[2, 3]])).toMatchObject({ asking: true, points: [[2, 3]] });
  });

  test('a wall ends where its last point is placed again', () => {
    expect(
      draw('wall', [
        [0, 0],
        [4, 0],
        [4, 0],
      ]),
    ).toMatchObject({
      asking: true,
      points: [
        [0, 0],
        [4, 0],
      ],
    });
  });

  test('a wall of one point is no wall yet', () => {
    const begun = draw('wall', [
      [0, 0],
      [0, 0],
    ]);
    expect(begun.asking).toBe(false);
    expect(canFinish(begun)).toBe(false);
    expect(finish(begun)).toBe(begun);
  });

  test('a wall closes on its first point, which its path repeats', () => {
    expect(
      draw('wall', [
        [0, 0],
        [4, 0],
        [4, 3],
        [0, 0],
      ]),
    ).toMatchObject({
      asking: true,
      points: [
        [0, 0],
        [4, 0],
        [4, 3],
        [0, 0],
      ],
    });
  });

  test('a bed is a rectangle by two opposite corners, whichever they are', () => {
    const corners = [
      [1, 2],
      [4, 2],
      [4, 7],
      [1, 7],
    ];
    expect(
      draw('bed', [
        [1, 2],
        [4, 7],
      ]).points,
    ).toEqual(corners);
    expect(
      draw('bed', [
        [4, 2],
        [1, 7],
      ]).points,
    ).toEqual(corners);
  });

  test('a rectangle without width is not taken', () => {
    expect(
      draw('bed', [
        [1, 2],
        [1, 7],
      ]),
    ).toMatchObject({ asking: false, points: [[1, 2]] });
  });

  test('an outline corner by corner closes on its first and does not repeat it', () => {
    expect(
      draw(
        'building',
        [
          [0, 0],
          [5, 0],
          [5, 4],
          [0, 0],
        ],
        false,
      ),
    ).toMatchObject({
      asking: true,
      points: [
        [0, 0],
        [5, 0],
        [5, 4],
      ],
    });
  });

  test('a roof keeps middle, length up the paper and width across it', () => {
    const roof = draw('canopy', [
      [6, 9],
      [2, 6],
    ]);
    expect(shapeOf(roof.tool, roof.points, '')).toEqual({ kind: 'canopy', center: [4, 7.5], length: 3, width: 4 });
  });

  test('points are taken back one by one', () => {
    const whole = finish(
      draw('wall', [
        [0, 0],
        [4, 0],
        [4, 3],
      ]),
    );
    expect(takeBack(whole)).toMatchObject({
      asking: false,
      points: [
        [0, 0],
        [4, 0],
        [4, 3],
      ],
    });
    expect(takeBack(takeBack(whole)).points).toEqual([
      [0, 0],
      [4, 0],
    ]);
    expect(
      takeBack(
        draw('bed', [
          [1, 2],
          [4, 7],
        ]),
      ).points,
    ).toEqual([[1, 2]]);
  });

  test('says the length of the leg being drawn, or the sides of the rectangle', () => {
    expect(
      legText(
        draw('wall', [
          [0, 0],
          [3, 0],
        ]),
        [3, 4.5],
        'metric',
      ),
    ).toBe('4.50 m');
    expect(legText(draw('bed', [[1, 1]]), [4, 3.5], 'metric')).toBe('3.00 m × 2.50 m');
    expect(legText(draw('wall', []), [3, 4.5], 'metric')).toBeNull();
  });

  test('every tool says every next step in one sentence', () => {
    for (const tool of TOOLS) {
      let draft = beginDraft(tool);
      for (const at of [
        [0, 0],
        [3, 0],
        [3, 2],
        [3, 2],
      ] as const) {
        for (const hand of ['pointer', 'cross-hair'] as const)
          expect(nextStep(draft, hand)).toMatch(/^[A-Z][^.]*[a-z]\.$/);
        draft = place(draft, at);
      }
    }
  });
});

test('every tool has a letter of its own', () => {
  const letters = TOOLS.map(({ letter }) => letter);
  expect(new Set(letters).size).toBe(TOOLS.length);
  for (const tool of TOOLS) expect(toolByLetter(tool.letter.toLowerCase())).toBe(tool);
});
