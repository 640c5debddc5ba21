import { describe, expect, test } from 'vitest';
import { frostAdvice } from '../../../engine/advice/frost.ts';
import { demoPlan } from '../../../engine/plan/demos/index.ts';
import type { Feature, Plan } from '../../../engine/plan/types.ts';

function frostIn(plan: Plan) {
  const frost = frostAdvice(plan);
  if (!frost.ok) throw new Error(frost.problems[0].message);
  return frost.value;
}

const courtyard = demoPlan('courtyard');
const lemon: Feature = { id: 'lemon', kind: 'plant', at: [5, 4], height: 1.7, spread: 1, plant: 'lemon' };

describe('frost', () => {
  test('it follows the summer on both halves of the earth: December after a northern one, May after a southern one', () => {
    expect(frostIn(courtyard).window).toMatchObject({ first: '2026-12-10', last: '2027-02-10' });
    expect(frostIn(demoPlan('lane')).window).toMatchObject({ first: '2027-05-25', last: '2027-09-15' });
  });

  test('a leaf is about 2 K colder than the air on a clear night, so the cover goes on 2 K before the plant’s limit (Leuning & Cremer 1988: 1 to 3 K)', () => {
    const { plants } = frostIn({ ...courtyard, features: [lemon] });
    expect(plants[0].coverBelow - plants[0].damage).toBe(2);
    expect(plants[0].reached).toBe(true);
  });

  test('a hardy apple and a lowest night of −3 °C: nothing to cover', () => {
    const { plants, advice } = frostIn({ ...courtyard, features: [{ ...lemon, plant: 'apple' }] });
    expect(plants[0].reached).toBe(false);
    expect(advice.at(-1)?.text).toBe('No plant here is hurt by nights like that.');
  });

  test('a roofed corner sees less of the night sky than an open bed', () => {
    const house: Feature = { id: 'house', kind: 'building', outline: [[0, 5], [11, 5], [11, 9], [0, 9]], height: 9 };
    expect(frostIn({ ...courtyard, features: [lemon] }).plants[0].exposure).toBe('exposed');
    expect(frostIn({ ...courtyard, features: [lemon, house] }).plants[0].exposure).toBe('half sheltered');
  });

  test('half of a month’s nights are below its mean low', () => {
    const months = [...courtyard.climate.months, { month: 1, high: 14, low: -1.7 }];
    const { plants } = frostIn({ ...courtyard, features: [lemon], climate: { ...courtyard.climate, months } });
    const damage = plants[0].damage;
    const even = frostIn({ ...courtyard, features: [lemon], climate: { ...courtyard.climate, months: [...courtyard.climate.months, { month: 1, high: 14, low: damage }] } });
    expect(even.plants[0].nights.find(({ month }) => month === 1)?.nights).toBeCloseTo(15, 6);
  });

  test('annuals end with the first frost and are not covered', () => {
    const { plants, advice } = frostIn({ ...courtyard, features: [{ ...lemon, plant: 'tomato' }] });
    expect(plants[0].annual).toBe(true);
    expect(advice.some(({ text }) => text.startsWith('The first frost ends'))).toBe(true);
  });

  test('a plan that says nothing of frost is asked for it', () => {
    const { frost: _, ...climate } = courtyard.climate;
    expect(frostIn({ ...courtyard, climate })).toMatchObject({ window: null, lowest: null });
  });
});
