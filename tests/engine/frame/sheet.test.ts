import { describe, expect, test } from 'vitest';
import { sheetOf } from '../../../engine/frame/sheet.ts';
import type { Canopy } from '../../../engine/plan/types.ts';
import { roof, screen, yardWith } from './yard.ts';

describe('the sheet', () => {
  test('refuses what cannot be built, with two cures and the place in the plan', () => {
    const tubes = [{ id: 'short', name: 'short tube', outside: 0.02, wall: 0.001, length: 2, price: 3 }];
    const thin = [{ id: 'thin', name: 'thin tube', outside: 0.012, wall: 0.001, length: 6, price: 3 }];
    const refusal = (thing: Canopy, stock?: { tubes: typeof tubes }): string => {
      const result = sheetOf(yardWith([thing], stock ? { stock } : {}), 'roof');
      return result.ok ? 'built' : `${result.problems[0].pointer} ${result.problems[0].message}`;
    };
    expect(refusal({ ...roof, height: 1.95, frame: { tube: 'short', maxBay: 2.7 } }, { tubes })).toMatch(
      /^\/features\/2\/frame .*\d{4} mm.*sold up to 2000 mm\. Two cures/,
    );
    expect(refusal({ ...roof, frame: { maxBay: 6 } }, { tubes: thin })).toMatch(
      /^\/features\/2\/frame\/maxBay .*would sag.*Two cures/,
    );
    expect(refusal({ ...roof, frame: { tube: 'bamboo' } })).toMatch(/^\/features\/2\/frame\/tube .*"bamboo"/);
    expect(refusal({ ...roof, height: 2.6 }, { tubes })).toContain('a lower frame');
  });

  test('knows only canopies and screens, and says which option has the one asked for', () => {
    const plan = yardWith([roof], { options: [{ id: 'Z', adds: [screen] }] });
    const message = (id: string): string => {
      const result = sheetOf(plan, id);
      return result.ok ? '' : result.problems[0].message;
    };
    expect(message('wall')).toContain('"wall" is a wall');
    expect(message('screen')).toContain('option "Z"');
    expect(message('nothing')).toContain('"roof"');
  });
});
