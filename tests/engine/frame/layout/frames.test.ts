import { describe, expect, test } from 'vitest';
import { built, roof, screen, yardWith } from '../yard.ts';

describe('the sheet', () => {
  test('drops bring braces, their own ties and a rod for their hem', () => {
    const { fittings, cost, pieces } = built({ ...roof, drops: [{ side: 'left', depth: 1.1, density: 0.6 }] });
    expect(pieces.find((piece) => piece.part === 'brace')?.count).toBe(4);
    expect(fittings.find((fitting) => fitting.kind === 'brace clamp')?.count).toBe(8);
    expect(cost.items.find((item) => item.id === 'hem-rods')?.need).toBe(2);
  });

  test('a drop at the left or right hangs along the length and pushes along the width, and is braced that way', () => {
    const hung = (side: 'left' | 'right' | 'front' | 'back') =>
      built({ ...roof, length: 3.6, width: 2.2, rise: 0, drops: [{ side, depth: 1, density: 0.6 }] });
    const pushOf = ({ uplift }: ReturnType<typeof hung>): number =>
      uplift.rows.find(({ gust }) => gust === 15)?.sidePush ?? 0;
    for (const side of ['left', 'right', 'front', 'back'] as const) {
      const sheet = hung(side);
      const braces = sheet.drawing.tubes.filter(({ kind }) => kind === 'brace');
      expect(braces).toHaveLength(4);
      for (const { from, to } of braces) {
        const [along, across] = [Math.abs(to[1] - from[1]), Math.abs(to[0] - from[0])];
        expect(side === 'left' || side === 'right' ? across > along : along > across, side).toBe(true);
      }
      // The same cloth in the same wind: as strong as its area.
      const long = side === 'left' || side === 'right' ? 3.6 : 2.2;
      expect(pushOf(sheet) / pushOf(hung('front'))).toBeCloseTo(long / 2.2, 6);
    }
  });

  test(
    'where posts in a row are left out, the rails that cross sooner carry the others; in a square the whole ' +
      'way is spanned',
    () => {
      const beans = {
        id: 'bed',
        kind: 'bed',
        name: 'Beans',
        outline: [
          [8.5, 3.5],
          [9.5, 3.5],
          [9.5, 10.5],
          [8.5, 10.5],
        ],
        plantHeight: 1,
      } as const;
      const long = {
        ...roof,
        turn: 0,
        length: 6,
        width: 2,
        frame: { tube: 'scaffold-48', maxBay: 1.5, soil: 'garden' },
      } as const;
      const { spans, notes } = built(long, { features: [...yardWith([]).features, long, beans] });
      expect(spans.map(({ rail, span }) => [rail, span])).toEqual([
        ['crosswise', 2],
        ['lengthwise', 1.5],
      ]);
      const across = { ...long, length: 2, width: 6 } as const;
      const row = {
        ...beans,
        outline: [
          [5.5, 6.5],
          [12.5, 6.5],
          [12.5, 7.5],
          [5.5, 7.5],
        ],
      } as const;
      expect(
        built(across, { features: [...yardWith([]).features, across, row] }).spans.map(({ span }) => span),
      ).toEqual([1.5, 2]);
      expect(notes.filter((note) => note.includes('left out'))).toEqual([
        expect.stringMatching(/^3 posts under the middle would stand in Beans, so they are left out/),
      ]);
      const square = {
        ...long,
        length: 4.2,
        width: 4.2,
        frame: { tube: 'scaffold-48', maxBay: 1.5, soil: 'garden' },
      } as const;
      const wide = {
        ...beans,
        outline: [
          [8, 6],
          [10, 6],
          [10, 8],
          [8, 8],
        ],
      } as const;
      expect(
        built(square, { features: [...yardWith([]).features, square, wide] }).spans.map(({ span }) => span),
      ).toEqual([4.2, 4.2].map((span) => expect.closeTo(span, 9)));
    },
  );

  test('braces of two lengths are told apart on the list and in the step, by the way they run', () => {
    const { pieces, steps, drawing } = built({ ...roof, length: 2.2, width: 3, height: 2.6 });
    const braces = pieces.filter(({ kind }) => kind === 'brace');
    expect(braces.map(({ part, count }) => [part, count])).toEqual([
      ['brace, crosswise', 4],
      ['brace, lengthwise', 4],
    ]);
    const text = steps.find(({ id }) => id === 'brace')?.text ?? '';
    for (const { part, length } of braces) {
      const runs = part.slice('brace, '.length);
      const [along, across] = runs === 'crosswise' ? [0, 1] : [1, 0];
      for (const { from, to } of drawing.tubes.filter((tube) => tube.part === part)) {
        expect(Math.abs(to[across] - from[across])).toBeLessThan(1e-9);
        // At 45°, cut to the 5 mm below: a clamp slides, and a saw holds no tenths.
        const leg = Math.abs(to[along] - from[along]);
        expect(text).toContain(`${(leg * 1000).toFixed(0)} mm down the post where the brace runs ${runs}`);
        expect(length * 1000).toBeCloseTo(5 * Math.floor((leg * Math.SQRT2 * 1000) / 5), 6);
      }
    }
    const alike = built({ ...roof, length: 2.6, width: 2.6, height: 2.6 });
    expect(alike.pieces.filter(({ kind }) => kind === 'brace').map(({ part }) => part)).toEqual(['brace']);
  });

  test('posts set in concrete are longer by their depth, which leaves 50 mm of the hole below them', () => {
    const { anchors, pieces } = built({ ...roof, frame: { soil: 'garden', anchor: 'sunk', gust: 30 } });
    const depth = (anchors.posts[0].hole?.depth ?? 0) - 0.05;
    expect(pieces.find((piece) => piece.part === 'post')?.length).toBeCloseTo(roof.height + depth, 9);
    const tall = built({ ...screen, height: 2.4 });
    expect(tall.pieces.find((piece) => piece.part === 'post')?.length).toBeCloseTo(2.4 + 0.8, 9);
    expect(tall.anchors.posts[0].hole?.depth).toBeCloseTo(0.85, 9);
  });

  test('a screen turns its corner with a three-way joint, adjustable where it is not square', () => {
    expect(built(screen).fittings.map((fitting) => [fitting.kind, fitting.count])).toEqual([
      ['2-way corner', 2],
      ['3-way corner', 1],
      ['3-way tee', 2],
      ['side clamp', 8],
    ]);
    const skew = built({
      ...screen,
      path: [
        [4, 3],
        [4, 5],
        [5.5, 7],
      ],
    });
    expect(skew.fittings.map((fitting) => fitting.kind)).toContain('3-way corner, adjustable');
    expect(skew.cloth.pieces).toHaveLength(2);
  });
});
