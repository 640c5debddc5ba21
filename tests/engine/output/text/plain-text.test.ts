import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oneLine, pageOf, table, withTextsOnOneLine, wrapped } from '../../../../engine/output/text/plain-text.ts';

describe('plain text', () => {
  it('a person’s text cannot break a line or steer a terminal', () => {
    expect(oneLine('a\nb\u001b[31mred\u0007\u2028c ')).toBe('a b [31mred c');
    expect(oneLine('a\u009b31mred')).toBe('a 31mred');
    const plan = { id: 'a\n', moves: { 'p\u001bq': [1, null] }, drops: [{ name: 'x\u009by', wide: true }] };
    expect(withTextsOnOneLine(plan)).toEqual({
      id: 'a',
      moves: { 'p q': [1, null] },
      drops: [{ name: 'x y', wide: true }],
    });
  });

  it('a table sets columns under each other, numbers flush right', () => {
    expect(
      table(
        80,
        ['what', 'm'],
        [
          ['wall', '1.8'],
          ['shed roof', '12.25'],
        ],
        [1],
      ),
    ).toBe('what           m\nwall         1.8\nshed roof  12.25');
  });

  it('a table too wide for the page has its words broken, else a paragraph a row', () => {
    const head = ['what', 'm', 'in the way'];
    const rows = [['wall', '1.80', 'the neighbour to the east, and a gum']];
    expect(table(40, head, rows, [1])).toBe(
      'what     m  in the way\nwall  1.80  the neighbour to the east,\n             and a gum',
    );
    const wide = [...head, 'a', 'b', 'c', 'd'];
    expect(table(40, wide, [[...rows[0], '1234567', '', '1234567', '']], [1, 3, 4, 5, 6])).toBe(
      'wall\n  m: 1.80; in the way: the neighbour to\n    the east, and a gum; a: 1234567; c:\n    1234567',
    );
  });

  it('wraps between words, and within a word that is longer than a line', () => {
    expect(wrapped('the sun comes over the low wall', 12)).toBe('the sun\n  comes over\n  the low\n  wall');
    expect(wrapped('abcdefgh ij', 5)).toBe('abc\n  def\n  gh\n  ij');
  });

  it('no line of a page, table or paragraph is longer than it may be, and nothing of the words is lost', () => {
    const words = fc.array(fc.stringMatching(/^\S{0,60}$/u), { maxLength: 30 }).map((list) => list.join(' '));
    fc.assert(
      fc.property(
        words,
        fc.array(fc.tuple(words, words), { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 40, max: 120 }),
        (text, rows, columns) => {
          const pages = [
            pageOf(`  ${oneLine(text)}\n${oneLine(text)}`, columns),
            wrapped(text, columns),
            table(columns, ['a', 'b'], rows),
          ];
          for (const page of pages)
            for (const line of page.split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
          const letters = (some: string) => some.replaceAll(/\s+/g, '');
          expect(letters(pages[1])).toBe(letters(oneLine(text)));
          expect(letters(pages[0])).toBe(letters(oneLine(text)).repeat(2));
        },
      ),
      { seed: 40, numRuns: 500 },
    );
  });
});
