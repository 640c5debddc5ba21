import { describe, expect, test } from 'vitest';
import { spotWords } from '../../../../engine/advice/words/spot-words.ts';
import type { Feature, Plan } from '../../../../engine/plan/types.ts';
import { yardPlan } from '../../load/yard-plan.ts';

const WALL: Feature = {
  id: 'west',
  kind: 'wall',
  name: 'West wall',
  path: [
    [0, 0],
    [0, 8],
  ],
  height: 2,
  thickness: 0.2,
};
const SHED: Feature = {
  id: 'shed',
  kind: 'building',
  name: 'Shed',
  outline: [
    [2, 6],
    [5, 6],
    [5, 8],
    [2, 8],
  ],
  height: 2.3,
};
const FIG: Feature = {
  id: 'fig',
  kind: 'tree',
  name: 'Fig',
  at: [8, 2],
  height: 4,
  crownWidth: 3,
  crownBase: 1,
  openness: 0.1,
};
const POT: Feature = { id: 'pot', kind: 'plant', name: 'Lemon', at: [8, 4], height: 1.5, spread: 1, container: true };
const YARD: Plan = yardPlan([WALL, SHED, FIG, POT]);

describe('a spot is told by what stands there', () => {
  test('a wall or a house an arm’s length or two away, from its face', () => {
    expect(spotWords(YARD, [1.25, 2], 'pot', 'metric')).toBe('beside the west wall');
    expect(spotWords(YARD, [1.35, 2], 'pot', 'metric')).not.toContain('beside');
  });

  test('both where it stands in a corner, the nearer first', () => {
    expect(spotWords(YARD, [1, 7], 'pot', 'metric')).toBe('beside the west wall and the shed');
  });

  test('in the open by the way from the nearest thing, the plant itself left out', () => {
    expect(spotWords(YARD, [8, 3.6], 'pot', 'metric')).toBe('1.6 m north of the fig');
    expect(spotWords(YARD, [8, 3.6], 'pot', 'imperial')).toBe('5 ft north of the fig');
  });

  test('a wall that goes round by its side as well', () => {
    const round: Feature = {
      ...WALL,
      name: 'Wall all round',
      path: [
        [0, 0],
        [12, 0],
        [12, 8],
        [0, 8],
        [0, 0],
      ],
    };
    expect(spotWords(yardPlan([round]), [11, 4], 'pot', 'metric')).toBe('beside the wall all round on the east');
  });

  test('by the true compass where the plan lies askew', () => {
    expect(spotWords({ ...YARD, site: { ...YARD.site, upBearing: 90 } }, [8, 3.6], 'pot', 'metric')).toBe(
      '1.6 m east of the fig',
    );
  });

  test('by what stays where it is, and by the cloth that it is under', () => {
    const other: Feature = { ...POT, id: 'other', name: 'Thyme', at: [8, 4.5] };
    const parasol: Feature = {
      id: 'parasol',
      kind: 'canopy',
      name: 'Parasol',
      center: [8, 4],
      length: 2.7,
      width: 2.7,
      height: 2.3,
      density: 0.9,
    };
    expect(spotWords(yardPlan([FIG, other]), [8, 4], 'pot', 'metric')).toBe('2.0 m north of the fig');
    expect(spotWords(yardPlan([FIG, parasol]), [8, 4], 'pot', 'metric')).toBe(
      'under the parasol 2.0 m north of the fig',
    );
    // Nothing else stands there: better a pot than nothing.
    expect(spotWords(yardPlan([other]), [8, 4], 'pot', 'metric')).toBe('0.5 m south of the thyme');
    expect(spotWords(yardPlan([parasol]), [8, 4], 'pot', 'metric')).toBe('under the parasol');
  });

  test('on empty ground there is nothing to tell it by', () => {
    expect(spotWords(yardPlan([]), [1, 1], 'pot', 'metric')).toBe('on the open ground');
  });
});
