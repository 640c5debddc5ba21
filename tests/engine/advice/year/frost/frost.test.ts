import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { frostAdvice } from '../../../../../engine/advice/year/frost/frost.ts';
import { demoPlan } from '../../../../../engine/plan/demos/index.ts';
import type { Feature, Plan } from '../../../../../engine/plan/types.ts';
import { mustBeOk } from '../../../../parts/outcome.ts';

function frostIn(plan: Plan) {
  const frost = frostAdvice(plan);
  mustBeOk(frost);
  return frost.value;
}

const courtyard = demoPlan('courtyard');
const lemon: Feature = { id: 'lemon', kind: 'plant', at: [5, 4], height: 1.7, spread: 1, plant: 'lemon' };

describe('frost', () => {
  test('it follows the summer on both halves of the earth: December after a northern one, May after a southern one', () => {
    expect(frostIn(courtyard).window).toMatchObject({ first: '2026-12-10', last: '2027-02-10' });
    expect(frostIn(demoPlan('lane')).window).toMatchObject({ first: '2027-05-25', last: '2027-09-15' });
  });

  test(
    'a leaf is about 2 K colder than the air on a clear night, so the cover goes on 2 K before the plant’s ' +
      'limit (Leuning & Cremer 1988: 1 to 3 K)',
    () => {
      const { plants } = frostIn({ ...courtyard, features: [lemon] });
      expect(plants[0].coverBelow - plants[0].damage).toBe(2);
      expect(plants[0].reached).toBe(true);
    },
  );

  test('a hardy apple and a lowest night of −3 °C: nothing to cover', () => {
    const { plants, advice } = frostIn({ ...courtyard, features: [{ ...lemon, plant: 'apple' }] });
    expect(plants[0].reached).toBe(false);
    expect(advice.at(-1)?.text).toBe('No plant here is hurt by nights like that.');
  });

  test('a roofed corner sees less of the night sky than an open bed', () => {
    const house: Feature = {
      id: 'house',
      kind: 'building',
      outline: [
        [0, 5],
        [11, 5],
        [11, 9],
        [0, 9],
      ],
      height: 9,
    };
    expect(frostIn({ ...courtyard, features: [lemon] }).plants[0].exposure).toBe('exposed');
    expect(frostIn({ ...courtyard, features: [lemon, house] }).plants[0].exposure).toBe('half sheltered');
  });

  test('half of a month’s nights are below its mean low', () => {
    const months = [...courtyard.climate.months, { month: 1, high: 14, low: -1.7 }];
    const { plants } = frostIn({ ...courtyard, features: [lemon], climate: { ...courtyard.climate, months } });
    const damage = plants[0].damage;
    const even = frostIn({
      ...courtyard,
      features: [lemon],
      climate: { ...courtyard.climate, months: [...courtyard.climate.months, { month: 1, high: 14, low: damage }] },
    });
    expect(even.plants[0].nights.find(({ month }) => month === 1)?.nights).toBeCloseTo(15, 6);
  });

  describe('a yard with twelve months of climate and −8 °C on its worst night', () => {
    const plan = JSON.parse(readFileSync('tests/plans/frosty-year.plan.json', 'utf8')) as Plan;
    const { plants, advice, window } = frostIn(plan);
    const words = (id: string): string =>
      advice
        .filter(({ text }) => text.includes(id))
        .map(({ text }) => text)
        .join(' ');

    test('frosty nights are counted month by month in the order of the winter, in words as in numbers', () => {
      expect(window).toMatchObject({ first: '2026-11-10', last: '2027-03-28' });
      const orange = plants.find(({ plant }) => plant === 'orange')!;
      expect(orange.nights.map(({ month }) => month)).toEqual([11, 12, 1, 2, 3]);
      // January: mean low −1 °C, spread 3.5 K, damage from −4 °C: Φ(−3/3.5) = 0.196 of 30 nights (table of the normal
      // distribution).
      expect(orange.damage).toBe(-4);
      expect(orange.nights[2].nights).toBeCloseTo(0.196 * 30, 1);
      expect(words('orange')).toMatch(
        /Nights of −4 °C or less in a mean year: 4 in December, 6 in January and 1 in February, seldom in November and March\./,
      );
    });

    test('a pot is carried in, a tree taller than a person can reach is neither carried nor wrapped', () => {
      expect(words('The lemon in a tub')).toMatch(/: carry in when the forecast says/i);
      expect(words('The orange')).toMatch(/too large to wrap or carry: water the soil the day before/);
      expect(advice.some(({ text }) => /: cover when|Put the cover on/.test(text))).toBe(false);
      expect(plants.map(({ plant, help }) => [plant, help])).toEqual(
        expect.arrayContaining([
          ['lemon', 'carry'],
          ['orange', 'none'],
        ]),
      );
    });

    // In wind or under cloud a cover gains 0 to 1 K (checks of measured covers: 0.2 to 0.4 K, single nights none).
    test('where a cover of no gain is not enough it says so', () => {
      const planted = (lowest: number): string => {
        const features = plan.features.map((each) =>
          each.id === 'lemon' && each.kind === 'plant' ? { ...each, container: false } : each,
        );
        const frost = { ...plan.climate.frost, lowest };
        return frostIn({ ...plan, features, climate: { ...plan.climate, frost } })
          .advice.map(({ text }) => text)
          .join(' ');
      };
      expect(planted(-8)).toMatch(
        /On nights of −8 °C a cover alone does not keep the lemon in a tub whole, for in wind or under cloud it gains 0 to 1 (K|°C): expect damage/,
      );
      expect(planted(-1)).not.toContain('a cover alone');
    });
  });

  test('a lemon at −2 °C, damaged from −1.7: told as −1.5, and that a cover alone does not save it', () => {
    const frost = { first: '12-01', last: '02-20', lowest: -2 };
    const { advice } = frostIn({ ...courtyard, features: [lemon], climate: { ...courtyard.climate, frost } });
    const words = advice.map(({ text }) => text).join(' ');
    expect(words).toContain('damaged from −1.5 °C');
    expect(words).toContain('On nights of −2 °C a cover alone does not keep');
    expect(words).not.toContain('damaged from −2');
  });

  test('annuals end with the first frost and are not covered', () => {
    const { plants, advice } = frostIn({ ...courtyard, features: [{ ...lemon, plant: 'tomato' }] });
    expect(plants[0].annual).toBe(true);
    expect(advice.at(-1)?.text).toMatch(/^The first frost ends/);
  });

  test('a plan that says nothing of frost is asked for it', () => {
    const { frost: _, ...climate } = courtyard.climate;
    expect(frostIn({ ...courtyard, climate })).toMatchObject({ window: null, lowest: null });
  });
});
