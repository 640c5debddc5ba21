import { describe, expect, it } from 'vitest';
import { doubtInputs } from '../../../../engine/advice/doubt/inputs.ts';
import {
  CROWN_KINDS,
  CROWN_SOURCES,
  crownGuess,
  type CrownKind,
  crownKindOf,
  crownSourceWords,
} from '../../../../engine/plan/catalogue/crowns.ts';
import { checkPlan } from '../../../../engine/plan/check/check.ts';
import type { Feature } from '../../../../engine/plan/types.ts';
import { yardPlan } from '../../load/yard-plan.ts';

const kindOf = (id: string): CrownKind => {
  const kind = crownKindOf(id);
  if (!kind) throw new Error(id);
  return kind;
};
const treeOf = (kind: CrownKind, latitude = 33): Feature => ({
  id: kind.id,
  kind: 'tree',
  at: [4, 4],
  height: 6,
  crownWidth: 4,
  crownBase: 1.8,
  ...crownGuess(kind, latitude),
});

describe('crowns by kind', () => {
  it('each is named once, with its source, and more open when bare than in leaf', () => {
    expect(new Set(CROWN_KINDS.map(({ id }) => id)).size).toBe(CROWN_KINDS.length);
    expect(CROWN_KINDS.length).toBeGreaterThanOrEqual(60);
    for (const kind of CROWN_KINDS) {
      expect(CROWN_SOURCES.has(kind.source), kind.id).toBe(true);
      expect(crownSourceWords(kind)).toMatch(/seen|from memory/);
      expect(kind.openness - kind.pm).toBeGreaterThanOrEqual(0);
      if (kind.bare) expect(kind.bare.openness).toBeGreaterThan(kind.openness + kind.pm);
    }
  });

  it('all make a tree that a plan takes without a word, north and south', () => {
    for (const latitude of [33, -33]) {
      const features = CROWN_KINDS.map((kind) => treeOf(kind, latitude));
      expect(checkPlan(yardPlan(features))).toEqual([]);
    }
  });

  it('a fig is bare from mid-November to mid-April in the north, half a year later in the south', () => {
    expect(crownGuess(kindOf('fig'), 38).leafless).toMatchObject({ from: '11-15', to: '04-15' });
    expect(crownGuess(kindOf('fig'), -34).leafless).toMatchObject({ from: '05-15', to: '10-15' });
    expect(crownGuess(kindOf('olive'), 38).leafless).toBeUndefined();
  });

  it('the guess is in doubt by as much as its kind says', () => {
    const [input] = doubtInputs(yardPlan([treeOf(kindOf('mesquite'))])).filter(({ of }) => of === 'openness');
    expect(input).toMatchObject({ by: 'catalogue', pm: 0.12, kind: 'thickness of shade' });
  });

  /**
   * Gardner & Sydnor 1984, J. Amer. Soc. Hort. Sci. 109:448–450 (abstract seen): shares that passed in leaf and bare at
   * the drip line, where some sun comes beside the crown, so that they are upper bounds.
   */
  it.each([
    ['callery-pear', 0.25, 0.57],
    ['red-maple', 0.31, 0.75],
    ['zelkova', 0.39, 0.76],
    ['honeylocust', 0.44, 0.79],
    ['coffeetree', 0.4, 0.85],
  ])('%s lets through no more than was measured beside five trees', (id, inLeaf, bare) => {
    const kind = kindOf(id);
    expect(kind.openness).toBeLessThanOrEqual(inLeaf);
    expect(inLeaf - kind.openness).toBeLessThanOrEqual(0.1);
    expect(kind.bare?.openness).toBeLessThanOrEqual(bare);
  });

  /**
   * Sun stopped in leaf: Heisler 1986, Urban Ecology 9:337–359, about 80 %; Mendoza, box elder 86.0 %, umbrella
   * chinaberry 98.4 % (abstracts seen).
   */
  it.each([
    ['sugar-maple', 0.2],
    ['box-elder', 0.14],
    ['umbrella-chinaberry', 0.016],
    ['mulberry', 0.145],
    ['chinaberry', 0.198],
  ])('%s is within its doubt of the measured share', (id, measured) => {
    expect(Math.abs(kindOf(id).openness - measured)).toBeLessThanOrEqual(kindOf(id).pm);
  });
});
