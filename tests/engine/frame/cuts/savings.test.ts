import { describe, expect, test } from 'vitest';
import { sheetOf } from '../../../../engine/frame/sheet.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Canopy } from '../../../../engine/plan/types.ts';
import { withOptions } from '../../../../engine/plan/yards/options.ts';
import { mustBeOk } from '../../../parts/outcome.ts';
import { built, roof } from '../yard.ts';

describe('the sheet', () => {
  test('saves what it says when a smaller frame is drawn', () => {
    const thing: Canopy = { ...roof, turn: 0, length: 3.1, width: 2.6, height: 2.1 };
    const { cutting, cost } = built(thing);
    const offered = cutting.savings.flatMap(({ change, money, tubes }) => {
      const side = /^make the (length|width|height) 100 mm less/.exec(change)?.[1];
      return side === 'length' || side === 'width' || side === 'height' ? [{ side, money, tubes } as const] : [];
    });
    expect(offered.length).toBeGreaterThan(0);
    for (const { side, money, tubes } of offered) {
      const smaller = built({ ...thing, [side]: thing[side] - 0.1 });
      expect(Number(cost.total) - Number(smaller.cost.total)).toBeCloseTo(Number(money), 6);
      expect(cutting.tubes.length - smaller.cutting.tubes.length).toBe(tubes);
    }
  });

  test('saves what it says with a cutter that loses nothing, of the whole sheet’s price', () => {
    // Two rails of 3 m are one tube of 6 m, but for the width of the cut.
    const long = { id: 'long', name: 'tube', outside: 0.038, wall: 0.0015, length: 6, price: 27.5 };
    const tubes = [long, { ...long, id: 'short', length: 4, price: 19 }];
    const sheetWith = (kerf?: number) =>
      built(
        { ...roof, turn: 0, length: 3, width: 3, height: 2.2, frame: { soil: 'garden', bottomRails: true } },
        { stock: { tubes, ...(kerf !== undefined && { kerf }) } },
      );
    const offered = sheetWith().cutting.savings.find(({ change }) =>
      change.startsWith('cut with a rolling tube cutter'),
    );
    expect(offered?.money).toBeGreaterThan(0);
    expect(Number(sheetWith().cost.total) - Number(sheetWith(0).cost.total)).toBeCloseTo(Number(offered?.money), 6);
  });

  test('a brace of whole millimetres saves the demo’s roof a tube: one rail and three braces are a tube of 6 m', () => {
    const demo = withOptions(demoPlan('courtyard'), ['A']);
    mustBeOk(demo);
    const result = sheetOf(demo.plan, 'lemon-roof');
    mustBeOk(result);
    // By hand: 2600 + 3 × 1130 + 3 cuts of 2 mm = 5996 mm, twice; 6 more rails and posts of 2600; 2 braces more.
    expect(result.sheet.cutting.amount).toBe(2 * 24 + 6 * 12 + 12);
    expect(result.sheet.cutting.proven).toBe(true);
  });
});
