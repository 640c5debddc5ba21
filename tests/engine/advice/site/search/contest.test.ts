import { describe, expect, test } from 'vitest';
import { Contest, type Judges, type Place } from '../../../../../engine/advice/site/search/contest.ts';
import type { Canopy } from '../../../../../engine/plan/types.ts';

const roof = (id: string): Canopy => ({
  id,
  kind: 'canopy',
  center: [0, 0],
  length: 2,
  width: 2,
  height: 2.2,
  density: 0.5,
});

/** Everything may stand and costs the same; who is seen, and how plainly, is told by the ids. */
const judges: Judges = {
  objectionsToPlace: () => [],
  postsStand: () => true,
  isHidden: ({ id }) => id === 'unseen',
  isGlimpsed: ({ id }) => id === 'glimpsed',
  objections: () => [],
  isTooDear: () => false,
  isTooDearAnywhere: () => false,
  lateObjections: () => [],
  keptFromBy: () => null,
  cost: () => 1,
  leastCost: () => 1,
  isCautioned: () => false,
};

/** What the best would spare if a rule fell, after these were entered in turn: how each is seen, what it spares. */
function without(...entered: readonly (readonly [id: string, spared: number])[]): Record<string, number | undefined> {
  const contest = new Contest(1, judges, 0, 0);
  const family = contest.familyOf('roof', () => roof('unseen'));
  for (const [id, spared] of entered) contest.enter(family, 'roof', roof(id), 'unsure', spared, () => spared);
  const best = new Map(contest.standings().without);
  return { hidden: best.get('hidden')?.spared, glimpsed: best.get('glimpsed')?.spared };
}

describe('what hiding costs is told by the best cloth that is seen', () => {
  test('who may be seen plainly may be seen a little: what is glimpsed stands for both', () => {
    expect(without(['glimpsed', 120])).toEqual({ hidden: 120, glimpsed: 120 });
    expect(without(['plain', 100])).toEqual({ hidden: 100, glimpsed: undefined });
  });

  test('a glimpsed cloth that spares less takes nothing from one that is seen plainly', () => {
    expect(without(['plain', 100], ['glimpsed', 50])).toEqual({ hidden: 100, glimpsed: 50 });
    expect(without(['glimpsed', 50], ['plain', 100])).toEqual({ hidden: 100, glimpsed: 50 });
  });

  test('a cloth that keeps every rule and spares as much leaves nothing to pay for', () => {
    expect(without(['unseen', 100], ['glimpsed', 101])).toEqual({ hidden: undefined, glimpsed: undefined });
    expect(without(['unseen', 100], ['glimpsed', 103])).toEqual({ hidden: 103, glimpsed: 103 });
  });
});

test('nothing is scored that cannot spare more than is worth finding, seen or unseen', () => {
  const contest = new Contest(1, judges, 0, 1);
  const family = contest.familyOf('roof', () => roof('unseen'));
  const scored: string[] = [];
  for (const [id, bound] of [
    ['unseen', 0.9],
    ['plain', 0.9],
    ['glimpsed', 1],
    ['unseen', 1.1],
  ] as const)
    contest.enter(family, 'roof', roof(id), 'unsure', bound, () => {
      scored.push(id);
      return bound;
    });
  expect(scored).toEqual(['unseen']);
  expect(contest.standings().best).toBe(1.1);
});

test('what is beaten at the price of its place is neither scored nor asked about its light', () => {
  const asked: string[] = [];
  const priced: Judges = {
    ...judges,
    isHidden: () => true,
    leastCost: ({ id }) => (id === 'dear' ? 2 : 1),
    cost: ({ id }) => (id === 'sheltered' ? 3 : id === 'dear' ? 2 : 1),
    keptFromBy: ([{ id }]) => (asked.push(`light of ${id}`), null),
  };
  const contest = new Contest(1, priced, 0, 0);
  const enter = (form: string, id: string, bound: number): void =>
    contest.enter(
      contest.familyOf(form, () => roof(id)),
      'roof',
      roof(id),
      'free',
      bound,
      () => (asked.push(id), bound),
    );
  enter('dear', 'dear', 100);
  enter('cheap', 'sheltered', 90);
  enter('cheap', 'open', 80);
  expect(asked).toEqual(['dear', 'light of dear', 'open', 'light of open']);
  expect(contest.standings().fronts[0].map(({ spared, cost }) => [spared, cost])).toEqual([
    [100, 2],
    [80, 1],
  ]);
});

test('what nobody can pay is scored only where it would be the best if money did not bind', () => {
  const scored: string[] = [];
  const poor: Judges = { ...judges, isHidden: () => true, isTooDear: () => true, isTooDearAnywhere: () => true };
  const contest = new Contest(1, poor, 0, 0);
  const family = contest.familyOf('roof', () => roof('any'));
  for (const [id, bound, spared] of [
    ['best', 100, 90],
    ['no better', 89, 89],
    ['better', 95, 92],
    ['unlikely', 91, 91],
  ] as const)
    if (contest.mayBeat(family, bound))
      contest.enter(family, 'roof', roof(id), 'free', bound, () => (scored.push(id), spared));
  expect(scored).toEqual(['best', 'better']);
  expect(contest.mayBeat(family, 91.9)).toBe(false);
  const { best, without } = contest.standings();
  expect(best).toBe(0);
  expect(without.map(([rule, { spared }]) => [rule, spared])).toEqual([['budget', 92]]);
});

test('what is seen and too dear besides is neither looked at nor asked how much of it is seen', () => {
  const asked: string[] = [];
  const poor: Judges = {
    ...judges,
    isHidden: () => false,
    isGlimpsed: ({ id }) => (asked.push(id), false),
    isTooDear: () => true,
    isTooDearAnywhere: () => true,
  };
  const contest = new Contest(1, poor, 0, 0);
  const family = contest.familyOf('roof', () => roof('any'));
  expect(contest.breaksTwo(family, 'hidden')).toBe(false);
  for (const id of ['first', 'second']) contest.enter(family, 'roof', roof(id), 'unsure', 10, () => 10);
  expect(asked).toEqual(['first']);
  expect(['hidden', 'height', 'unsure', 'free'].map((place) => contest.breaksTwo(family, place as Place))).toEqual([
    true,
    true,
    false,
    false,
  ]);
  expect(contest.standings().without).toEqual([]);
});
