import { describe, expect, it } from 'vitest';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Feature, Plan, YardOption } from '../../../../engine/plan/types.ts';
import { withOptions, withOptionsLeft } from '../../../../engine/plan/yards/options.ts';

const base = demoPlan('courtyard');
const pot: Feature = { id: 'fig-pot', kind: 'plant', at: [3, 7], height: 1.1, spread: 0.7, plant: 'fig' };

function tried(options: YardOption[], ids: string[]): ReturnType<typeof withOptions> {
  return withOptions({ ...base, options }, ids);
}

function featuresOf(result: ReturnType<typeof withOptions>): Plan['features'] {
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join('\n'));
  return result.plan.features;
}

describe('options', () => {
  it('no option leaves the yard as it is', () => {
    expect(featuresOf(withOptions(base, []))).toBe(base.features);
  });

  it('adds come first, then moves that reach them, then removes', () => {
    const features = featuresOf(
      tried([{ id: 'X', adds: [pot], moves: { 'fig-pot': [5, 2], lemon: [1, 2] }, removes: ['orange'] }], ['X']),
    );
    expect(features.find(({ id }) => id === 'fig-pot')).toEqual({ ...pot, at: [5, 2] });
    expect(features.find(({ id }) => id === 'lemon')).toMatchObject({ at: [1, 2], height: 1.7 });
    expect(features.some(({ id }) => id === 'orange')).toBe(false);
    expect(base.features.find(({ id }) => id === 'lemon')).toMatchObject({ at: [9.6, 6.4] });
  });

  it('several are applied whole, in the order given', () => {
    const options: YardOption[] = [
      { id: 'X', adds: [pot], moves: { lemon: [2, 2] } },
      { id: 'Y', moves: { lemon: [3, 3], 'fig-pot': [4, 4] } },
    ];
    expect(featuresOf(tried(options, ['X', 'Y'])).find(({ id }) => id === 'lemon')).toMatchObject({ at: [3, 3] });
    expect(featuresOf(tried(options, ['X', 'Y'])).find(({ id }) => id === 'fig-pot')).toMatchObject({ at: [4, 4] });
    const backwards = tried(options, ['Y', 'X']);
    expect(backwards).toMatchObject({ ok: false, problems: [{ pointer: '/options/1/moves/fig-pot' }] });
  });

  it.each<[string, YardOption, string[], string, string]>([
    [
      'an id that is there',
      { id: 'X', adds: [{ ...pot, id: 'lemon' }] },
      ['X'],
      '/options/0/adds/0/id',
      'already there',
    ],
    ['the same option twice', { id: 'X', adds: [pot] }, ['X', 'X'], '/options/0/adds/0/id', 'already there'],
    ['an unknown option', { id: 'X' }, ['Z'], '/options', 'no option "Z"'],
    [
      'a move of nothing',
      { id: 'X', moves: { 'a/b': [1, 1] } },
      ['X'],
      '/options/0/moves/a~1b',
      'nothing with that id',
    ],
    [
      'a move of a wall',
      { id: 'X', moves: { 'west-wall': [1, 1] } },
      ['X'],
      '/options/0/moves/west-wall',
      'only plants',
    ],
    ['a remove of nothing', { id: 'X', removes: ['moon'] }, ['X'], '/options/0/removes/0', 'nothing with that id'],
  ])('%s is refused, with its place', (_, option, ids, pointer, says) => {
    expect(tried([option], ids)).toMatchObject({
      ok: false,
      problems: [{ pointer, message: expect.stringContaining(says), severity: 'error' }],
    });
  });

  it('what is left to try in a yard with some taken is neither those nor what no longer fits', () => {
    const options: YardOption[] = [
      { id: 'X', adds: [pot], removes: ['orange'] },
      { id: 'Y', adds: [{ ...pot, at: [1, 1] }] },
      { id: 'Z', moves: { lemon: [3, 3] } },
      { id: 'W', moves: { orange: [3, 3] } },
    ];
    const taken = tried(options, ['X']);
    if (!taken.ok) throw new Error('X');
    const left = withOptionsLeft(taken.plan, ['X']);
    expect([left.plan.options?.map(({ id }) => id), left.unfit]).toEqual([['Z'], ['Y', 'W']]);
    const none = { ...base, options };
    expect(withOptionsLeft(none, [])).toEqual({ plan: none, unfit: [] });
  });
});
