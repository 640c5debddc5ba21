import { describe, expect, test } from 'vitest';
import { reviewOf } from '../../../../engine/advice/review/review.ts';
import { appendJournal } from '../../../../engine/plan/edit/plan.ts';
import type { Building, JournalEntry, Plan, Reading } from '../../../../engine/plan/types.ts';
import { base, JULY, twoYears, withRoof } from './two-summers.ts';

const roofed = withRoof(base);
const reading = (id: string, more: Partial<Reading>): Reading => ({
  id,
  kind: 'reading',
  at: [3, 4],
  when: '2026-07-20T16:00',
  leaf: 44,
  air: 38,
  plant: 'lemon',
  side: 'top',
  ...more,
});
const told = (plan: Plan, ...readings: readonly Reading[]): string => {
  const { sentences, notes } = reviewOf({ ...plan, features: [...plan.features, ...readings] });
  return [...sentences, ...notes].join(' ');
};

describe('readings as somebody takes them', () => {
  test('one alone is called one, not a pair', () => {
    expect(told(base, reading('a', {}))).toContain('One reading claims nothing');
    expect(told(base, reading('a', {}))).not.toMatch(/\bpair\b/);
  });

  test('a thermometer in the sun is found out: air above the hottest day, or two airs in one yard', () => {
    // The hottest day of this yard is 44 °C.
    const hung = told(roofed, reading('a', { air: 52, covered: false }), reading('b', { covered: true }));
    expect(hung).toMatch(/left out: air of 52 °C is more than the hottest day brings here \(44 °C\)/);
    expect(hung).not.toContain('in air of 52 °C');
    const apart = told(roofed, reading('a', { air: 43.5, covered: false }), reading('b', { air: 37, covered: true }));
    expect(apart).toMatch(/the air beside them differs by 7 °C: one thermometer stood in the sun/);
    expect(apart).not.toContain('the estimate says');
    // A summer that was hotter than the climate's hottest day is known where it was typed.
    const hot = { ...roofed, summers: [{ year: 2026, months: [], hottest: 50 }] };
    expect(told(hot, reading('a', { air: 52 }))).toContain('in air of 52 °C');
    const right = told(roofed, reading('a', { covered: false }), reading('b', { air: 37, covered: true, leaf: 39 }));
    expect(right).toMatch(/the estimate says \d+ to \d+ °C/);
  });

  test('where none can be held against the estimate, it does not say that there are none', () => {
    const night = told(base, reading('a', { when: '2026-07-20T02:00' }));
    expect(night).toContain('No reading can be held against the estimate yet.');
    expect(night).not.toContain('No readings yet');
  });
});

describe('two summers as somebody lived them', () => {
  const built = (scores: readonly [number, number], ...diary: readonly JournalEntry[]): string => {
    const plan = twoYears({ scores: { lemon: scores }, july: [JULY, JULY] });
    return told(diary.reduce(appendJournal, plan));
  };

  test('a roof that went up in June, after the first leaves had burnt, is told by the day', () => {
    const june = built(
      [3, 2],
      { date: '2027-06-10', what: 'damage', feature: 'lemon', amount: 2 },
      { date: '2027-06-20', what: 'cloth-up', feature: 'roof' },
    );
    expect(june).toContain('had its cloth from 20 June; damage was noted before that.');
    expect(june).toContain('Whether the cover did it, a plant left as it was and scored in both summers would tell.');
  });

  test('cloth that came down early is told with both its days, and of another summer’s cloth nothing', () => {
    const early = built(
      [3, 3],
      { date: '2027-06-05', what: 'cloth-up', feature: 'roof' },
      { date: '2027-07-05', what: 'cloth-down', feature: 'roof' },
    );
    expect(early).toContain('had its cloth from 5 June to 5 July.');
    // It is no better: nothing that the cover could have done.
    expect(early).not.toContain('Whether the cover did it');
    expect(built([3, 3], { date: '2026-06-05', what: 'cloth-up', feature: 'roof' })).not.toContain('By the diary');
  });

  test('damage that the sun does not explain is called so, also of one summer', () => {
    const shed: Building = {
      id: 'shed',
      kind: 'building',
      outline: [
        [1, 4.6],
        [5, 4.6],
        [5, 8],
        [1, 8],
      ],
      height: 6,
    };
    // North of a tall shed in the south of Spain, with walls of it all round: hardly any sun.
    const walls = {
      ...shed,
      id: 'south',
      outline: [
        [1, 0],
        [5, 0],
        [5, 3.4],
        [1, 3.4],
      ] as const,
    };
    const shut = {
      ...shed,
      id: 'west',
      outline: [
        [0, 0],
        [2.4, 0],
        [2.4, 8],
        [0, 8],
      ] as const,
    };
    const east = {
      ...shed,
      id: 'east',
      outline: [
        [3.6, 0],
        [5, 0],
        [5, 8],
        [3.6, 8],
      ] as const,
    };
    const noted = (plan: Plan) =>
      told(appendJournal(plan, { date: '2026-07-22', what: 'damage', feature: 'lemon', amount: 3, side: 180 }));
    expect(noted({ ...base, features: [...base.features, shed, walls, shut, east] })).toContain(
      'Lemon: the sun does not explain this summer’s damage. Ask why it burnt before you shade it.',
    );
    expect(noted(base)).not.toContain('does not explain');
  });
});
