import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { joinedCells } from '../../../../engine/cast/grids/joined-cells.ts';

const drawn = (...rows: readonly string[]): { columns: number; rows: number; marked: Uint8Array } => ({
  columns: rows[0].length,
  rows: rows.length,
  marked: Uint8Array.from(rows.join(''), (sign) => (sign === '#' ? 1 : 0)),
});

describe('parts of a grid', () => {
  const { columns, rows, marked } = drawn(
    '##..#', //
    '#..#.',
    '..##.',
    '#....',
  );
  const joined = joinedCells(columns, rows);

  test('cells that share an edge are one part; a corner joins nothing, nor does a row’s end its next row', () => {
    expect(joined.parts(marked)).toEqual([[0, 1, 5], [4], [8, 12, 13], [15]]);
  });

  test('the largest is told cell by cell, the first of equals; asked again it is the same', () => {
    const first = [0, 1, 5].reduce((cells, at) => cells.with(at, 1), new Uint8Array(20));
    expect(joined.largest(marked)).toEqual(first);
    expect(joined.largest(marked)).toEqual(first);
  });

  test('it hangs together where one part has the share asked for; nothing always does', () => {
    expect(joined.hangsTogether(marked, 3 / 8)).toBe(true);
    expect(joined.hangsTogether(marked, 0.38)).toBe(false);
    expect(joined.hangsTogether(new Uint8Array(20), 1)).toBe(true);
  });

  test('every marked cell is in one part, and the largest part decides what hangs together', () => {
    fc.assert(
      fc.property(
        fc.array(fc.boolean(), { minLength: 42, maxLength: 42 }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (cells, share) => {
          const some = Uint8Array.from(cells, Number);
          const ask = joinedCells(7, 6);
          const parts = ask.parts(some);
          const all = parts.flat();
          expect(all.toSorted((a, b) => a - b)).toEqual([...some.keys()].filter((at) => some[at] === 1));
          const most = Math.max(0, ...parts.map(({ length }) => length));
          expect(ask.largest(some).reduce((sum, each) => sum + each, 0)).toBe(most);
          expect(ask.hangsTogether(some, share)).toBe(most >= share * all.length);
        },
      ),
      { seed: 8, numRuns: 200 },
    );
  });
});
