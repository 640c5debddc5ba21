import { describe, expect, test } from 'vitest';
import { wayReader } from '../../../../../engine/advice/site/rules/way-left.ts';
import { siteOf } from '../../../../../engine/advice/site/site.ts';
import type { Building, Plan, PlanPoint, Screen } from '../../../../../engine/plan/types.ts';
import { valueOf } from '../../../../parts/outcome.ts';
import { plant, yard } from '../../yards/table.ts';

/** A balcony 5 m long and 1.5 m deep before a house to its north. */
function balcony(): Plan {
  const house: Building = {
    id: 'house',
    kind: 'building',
    height: 3,
    outline: [
      [0, 1.5],
      [5, 1.5],
      [5, 5],
      [0, 5],
    ],
  };
  const plan = yard([house, plant('hydrangea', { at: [1.4, 0.75], height: 0.8, spread: 0.6 })]);
  return {
    ...plan,
    site: {
      ...plan.site,
      boundary: [
        [0, 0],
        [5, 0],
        [5, 1.5],
        [0, 1.5],
      ],
    },
  };
}

const screen = (...path: PlanPoint[]): Screen => ({
  id: 'screen',
  kind: 'screen',
  path,
  bottom: 0.2,
  height: 2,
  density: 0.5,
});

// A person needs about 0.8 m to pass: common practice, no source.
describe('upright cloth leaves people their way', () => {
  const passes = (...path: PlanPoint[]): boolean => wayReader(balcony())([screen(...path)]);

  test('across a balcony it may not stand, along the rail it may, and a gap of 0.8 m is enough at any turn', () => {
    expect(passes([2.5, 0], [2.5, 1.4])).toBe(false);
    expect(passes([2.5, 0.5], [2.5, 1])).toBe(false);
    expect(passes([1, 0.1], [4, 0.1])).toBe(true);
    expect(passes([2.5, 0], [2.5, 0.7])).toBe(true);
    expect(passes([2.1, 0], [2.8, 0.7])).toBe(true);
    // Behind it is a corner that nobody walks into.
    expect(passes([0.1, 0], [0.1, 1.4])).toBe(true);
  });

  test('none that the search proposes for a plant on a balcony closes it', () => {
    const { options } = valueOf(
      siteOf(balcony(), { kinds: ['screen'], sizes: [{ length: 1.2, width: 1 }], step: 0.25, turnStep: 45 }),
    );
    for (const { features } of options) expect(wayReader(balcony())(features)).toBe(true);
    expect(options.length).toBeGreaterThan(0);
  });
});
