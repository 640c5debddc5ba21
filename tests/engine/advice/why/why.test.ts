import { describe, expect, test } from 'vitest';
import type { WhyRequest, WhyResult } from '../../../../engine/advice/why/types.ts';
import { whyBurnt } from '../../../../engine/advice/why/why.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { JournalEntry, Plan } from '../../../../engine/plan/types.ts';

const COURTYARD = demoPlan('courtyard');
const LANE = demoPlan('lane');

function why(plan: Plan, request: WhyRequest): WhyResult {
  const outcome = whyBurnt(plan, request);
  if (!outcome.ok) throw new Error(outcome.problems.map(({ message }) => message).join());
  return outcome.value;
}

function complaint(plan: Plan, request: WhyRequest): string {
  const outcome = whyBurnt(plan, request);
  if (outcome.ok) throw new Error(outcome.value.sentence);
  return outcome.problems.map(({ pointer, message }) => `${pointer} ${message}`).join();
}

const withJournal = (plan: Plan, entries: readonly JournalEntry[]): Plan => ({
  ...plan,
  journal: [...(plan.journal ?? []), ...entries],
});

describe('why a plant burnt', () => {
  test('the courtyard’s lemon burnt on its south-west side in July: the sun explains it, in the afternoon', () => {
    const { answer, side, date, when, sentence } = why(COURTYARD, { plant: 'lemon' });
    expect(answer).toBe('explains');
    expect(side).toBe(225);
    expect(date).toBe('2025-07-19');
    expect(when && when.from >= '13:00' && when.to <= '20:00').toBe(true);
    expect(sentence).toContain('the sun explains it');
    expect(sentence).toContain('south-west side');
  });

  test('a wall that adds half a degree or more in those hours is named, and what it adds and when', () => {
    const { sides, sentence } = why(COURTYARD, { plant: 'lemon' });
    const walls = sides.find(({ side }) => side === 225)?.walls ?? [];
    expect(walls.map(({ id }) => id)).toEqual(['east-house']);
    expect(walls[0].adds).toBeGreaterThan(0.5);
    expect(sentence).toMatch(/The neighbour to the east, white wall, adds 1 °C from 1[67]:00 to 19:00\./);
    expect(why(LANE, { plant: 'apricot' }).sentence).not.toMatch(/ adds /);
  });

  test('the same lemon burnt on its north-east side: the sun does not explain it, and other causes are named', () => {
    const { answer, when, sentence } = why(COURTYARD, { plant: 'lemon', side: 45 });
    expect(answer).toBe('does not');
    expect(when).toBeNull();
    expect(sentence).toMatch(/The sun would burn its south(-west)? side first/);
    for (const cause of ['dry root ball', 'salt', 'wind', 'spray', 'glare', 'not hardened'])
      expect(sentence).toContain(cause);
  });

  test('while nobody knows which way the yard lies, no side can be named: it could be', () => {
    const lost = { ...COURTYARD, site: { ...COURTYARD.site, how: { upBearing: { by: 'guess', pm: 180 } } } } as const;
    const { answer, notes } = why(lost, { plant: 'lemon' });
    expect(answer).toBe('could be');
    expect(notes.join(' ')).toContain('Which way the yard lies is not known');
    expect(why(lost, { plant: 'lemon', side: 45 }).answer).toBe('could be');
    const found = { ...COURTYARD, site: { ...COURTYARD.site, how: { upBearing: { by: 'compass', pm: 15 } } } } as const;
    expect(why(found, { plant: 'lemon' }).answer).toBe('explains');
  });

  test('damage on all sides alike, and damage whose side nobody saw, cannot be matched', () => {
    expect(why(COURTYARD, { plant: 'lemon', side: 'all' }).answer).toBe('does not');
    expect(why(COURTYARD, { plant: 'lemon', side: 'unknown' }).answer).toBe('could be');
    expect(why(COURTYARD, { plant: 'lemon', part: 'pot' }).answer).toBe('could be');
  });

  test('sides are ranked one to eight by scorch dose, the top apart', () => {
    const { sides } = why(COURTYARD, { plant: 'lemon' });
    expect(sides.map(({ side }) => side)).toEqual(['top', 0, 45, 90, 135, 180, 225, 270, 315]);
    expect(sides[0].rank).toBeNull();
    const byRank = sides.slice(1).toSorted((a, b) => (a.rank ?? 0) - (b.rank ?? 0));
    expect(byRank.map(({ rank }) => rank)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    for (let i = 1; i < byRank.length; i++)
      expect(byRank[i].scorchDose).toBeLessThanOrEqual(byRank[i - 1].scorchDose ?? 0);
  });

  test(
    'a flank that burns half as much as the worst flank may be the sun’s doing, though the top, under the ' +
      'whole sky, burns more than both',
    () => {
      const inCorner: Plan = {
        ...COURTYARD,
        site: { ...COURTYARD.site, shelter: 'open' },
        features: COURTYARD.features.map((feature) =>
          feature.id === 'lemon' && feature.kind === 'plant' ? { ...feature, at: [1, 1] } : feature,
        ),
      };
      const { sides, answer } = why(inCorner, { plant: 'lemon', side: 270 });
      const dose = (wanted: number | 'top'): number => sides.find(({ side }) => side === wanted)?.scorchDose ?? 0;
      const worst = Math.max(...sides.slice(1).map(({ scorchDose }) => scorchDose ?? 0));
      expect(dose(270)).toBeGreaterThan(worst / 2);
      expect(dose(270)).toBeLessThan(dose('top') / 2);
      expect(answer).toBe('could be');
    },
  );

  test('a bearing between the eight is taken by its nearest', () => {
    expect(why(COURTYARD, { plant: 'lemon', side: 240 }).answer).toBe('explains');
    expect(why(COURTYARD, { plant: 'lemon', side: 355 }).sentence).toContain('north side');
  });

  test('in the south the apricot’s north and west sides burn nearly alike, and its south-east does not', () => {
    expect(why(LANE, { plant: 'apricot', side: 0 }).answer).toBe('explains');
    expect(why(LANE, { plant: 'apricot' }).answer).toBe('could be');
    expect(why(LANE, { plant: 'apricot', side: 135 }).answer).toBe('does not');
  });

  test('a cool summer explains no burn, whatever the side', () => {
    const cool: Plan = {
      ...COURTYARD,
      climate: {
        ...COURTYARD.climate,
        heatwaveHigh: 20,
        months: COURTYARD.climate.months.map((month) => ({ ...month, high: 18, low: 8 })),
      },
    };
    const { answer, sentence } = why(cool, { plant: 'lemon' });
    expect(answer).toBe('does not');
    expect(sentence).toContain('Even on a hot day');
  });
});

test('hot air alone is not the sun: under a roof that lets nothing through no side is explained, however warm', () => {
  const roof = {
    id: 'cover',
    kind: 'canopy',
    center: [9.6, 6.4],
    length: 30,
    width: 30,
    height: 2.4,
    density: 1,
  } as const;
  const { answer, sides, limit, sentence } = why(
    { ...COURTYARD, features: [...COURTYARD.features, roof] },
    { plant: 'lemon' },
  );
  const southWest = sides.find(({ side }) => side === 225);
  expect(southWest?.peak).toBeGreaterThan((limit ?? 0) - 4);
  expect(southWest?.when).toBeNull();
  expect(answer).toBe('does not');
  expect(sentence).toContain('The sun does not reach its south-west side while it is hot');
});

describe('rival causes', () => {
  test('each yes lowers the answer by a step and no number', () => {
    const plain = why(COURTYARD, { plant: 'lemon' });
    const one = why(COURTYARD, { plant: 'lemon', rivals: ['wind'] });
    const two = why(COURTYARD, { plant: 'lemon', rivals: ['wind', 'salt'] });
    expect([plain.answer, one.answer, two.answer]).toEqual(['explains', 'could be', 'does not']);
    expect(one.sides).toEqual(plain.sides);
    expect(two.sentence).toContain('By the sun alone: the sun explains it');
  });

  test('the journal answers for itself: a spray or a move in the two weeks before, of that plant', () => {
    const sprayed = withJournal(COURTYARD, [{ date: '2025-07-10', what: 'spray', feature: 'lemon' }]);
    expect(why(sprayed, { plant: 'lemon' }).answer).toBe('could be');
    expect(why(sprayed, { plant: 'lemon' }).sentence).toContain('a spray on 2025-07-10');
    const long = withJournal(COURTYARD, [{ date: '2025-07-01', what: 'spray', feature: 'lemon' }]);
    expect(why(long, { plant: 'lemon' }).answer).toBe('explains');
    const other = withJournal(COURTYARD, [{ date: '2025-07-10', what: 'moved', feature: 'hydrangea' }]);
    expect(why(other, { plant: 'lemon' }).answer).toBe('explains');
  });
});

describe('what is asked of whom', () => {
  test('the latest damage is meant', () => {
    const again = withJournal(COURTYARD, [
      { date: '2026-08-03', what: 'damage', feature: 'lemon', amount: 1, side: 45, part: 'leaf' },
    ]);
    const { side, date, answer } = why(again, { plant: 'lemon' });
    expect({ side, date, answer }).toEqual({ side: 45, date: '2026-08-03', answer: 'does not' });
  });

  test('damage of a frozen year is judged in that year’s yard', () => {
    const roofed: Plan = {
      ...COURTYARD,
      features: [
        ...COURTYARD.features,
        { id: 'cover', kind: 'canopy', center: [9.6, 6.4], length: 6, width: 6, height: 2.4, density: 1 },
      ],
    };
    const { notes, answer } = why({ ...roofed, past: [{ year: 2025, plan: COURTYARD }] }, { plant: 'lemon' });
    expect(notes).toEqual(['Judged in the yard as it was in 2025.']);
    expect(answer).toBe('explains');
  });

  test('a month outside the season is judged on the heatwave day, and said so', () => {
    const { heatDay, notes } = why(COURTYARD, { plant: 'lemon', date: '2026-11-02' });
    expect(heatDay).toBe('2026-07-21');
    expect(notes.join()).toContain('outside the season');
  });

  test('a plant without a kind is never more than "could be", and its kind is asked for', () => {
    const nameless: Plan = {
      ...COURTYARD,
      features: COURTYARD.features.map((feature) =>
        feature.id === 'lemon' && feature.kind === 'plant' ? { ...feature, plant: undefined } : feature,
      ),
    };
    const { answer, limit, sentence } = why(nameless, { plant: 'lemon' });
    expect(answer).toBe('could be');
    expect(limit).toBeNull();
    expect(sentence).toContain('Say which plant it is');
  });

  test('a bed is judged at its middle', () => {
    const { sides, answer } = why(COURTYARD, { plant: 'geraniums', side: 'unknown', date: '2026-08-04' });
    expect(sides).toHaveLength(1);
    expect(answer).toBe('could be');
    // It has no sides, so nobody is asked for one.
    expect(why(COURTYARD, { plant: 'geraniums', date: '2026-08-04' }).side).toBe('unknown');
  });

  test('no such plant, and no damage known, are said plainly', () => {
    expect(complaint(COURTYARD, { plant: 'rose' })).toContain(
      '--plant There is no plant, bed or planted tree "rose"; there are "orange"',
    );
    expect(complaint(COURTYARD, { plant: 'hydrangea' })).toContain('--side No damage to "hydrangea"');
  });
});
