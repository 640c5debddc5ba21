import { describe, expect, test } from 'vitest';
import { blanksOf, fieldSheet } from '../../../../engine/advice/hand-outs/field-sheet.ts';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import type { Plan } from '../../../../engine/plan/types.ts';

const COURTYARD = demoPlan('courtyard');
const LANE = demoPlan('lane');

describe('the field sheet', () => {
  test('has one numbered blank for each guess of the demo, and none for what was taped', () => {
    const blanks = blanksOf(COURTYARD);
    expect(blanks.map(({ number }) => number)).toEqual(blanks.map((_, index) => index + 1));
    const guesses = COURTYARD.features.flatMap(({ id, how }) =>
      Object.entries(how ?? {})
        .filter(([, { by }]) => by === 'guess')
        .map(([key]) => `${id}/${key}`),
    );
    expect(guesses.length).toBeGreaterThan(2);
    for (const id of guesses) expect(blanks.map((blank) => blank.id)).toContain(id);
    expect(blanks.some(({ feature }) => feature === 'west-wall')).toBe(false);
    expect(blanks.some(({ id }) => id === 'site/upBearing')).toBe(false);
  });

  test('says what is taken till then, with its ±, and how to find out', () => {
    const gum = blanksOf(LANE).find(({ id }) => id === 'gum/height');
    expect(gum).toMatchObject({ kind: 'height', now: 'guessed 11.00 m (± 2.00 m)', at: [19, 14] });
    expect(gum?.ways).toContain('shadow');
  });

  test('a rough climate asks for its three numbers, in January in the south', () => {
    const labels = blanksOf(LANE).map(({ label }) => label);
    expect(labels).toEqual(
      expect.arrayContaining(['Usual high in January', 'Usual low in January', 'High of the hottest day last year']),
    );
    expect(blanksOf(COURTYARD).map(({ label }) => label)).not.toContain('Usual high in July');
  });

  test('north and a plant’s kind are asked for where nobody said', () => {
    const bare: Plan = {
      ...LANE,
      site: { ...LANE.site, upBearing: undefined, how: undefined },
      features: [{ id: 'pot', kind: 'plant', at: [2, 3], height: 1, spread: 0.6 }],
    };
    const [north, ...rest] = blanksOf(bare);
    expect(north).toMatchObject({ id: 'site/upBearing', kind: 'bearing', now: null });
    expect(rest.at(-1)).toMatchObject({ id: 'pot/plant', kind: 'kind' });
  });

  test('a guessed outline is sketched, not typed', () => {
    const sketchy: Plan = {
      ...COURTYARD,
      features: [
        {
          id: 'w',
          kind: 'wall',
          path: [
            [0, 0],
            [4, 0],
          ],
          height: 2,
          thickness: 0.2,
          how: { path: { by: 'guess' } },
        },
      ],
    };
    expect(blanksOf(sketchy).find(({ feature }) => feature === 'w')).toMatchObject({ kind: 'sketch', now: 'guessed' });
  });

  test('carries the shadow clock of each day asked for', () => {
    const { days, title, pace } = fieldSheet(COURTYARD, ['2026-05-02', '2026-05-03']);
    expect(title).toBe('The well courtyard');
    expect(pace).toBeNull();
    expect(days.map((day) => day.title)).toEqual(['2 May', '3 May']);
    const ten = days[0].shadows.find(({ clock }) => clock === '10:00');
    // The plan is askew by 20°.
    expect(ten?.direction).toBeCloseTo((ten?.bearing ?? 0) - 20, 9);
    expect(days[0].northTimes).toHaveLength(2);
  });
});
