import { expect, test } from 'vitest';
import { agreeingWith, isPlural } from '../../../../engine/plan/words/agreement.ts';

// English grammar: names of many end in s, Latin names and some others do not tell.
test('a plant is spoken of in the number of its name', () => {
  const many = [
    'Chillies',
    'Tomatoes',
    'Basil pots',
    'Ferns',
    'Bell peppers',
    'Cacti',
    'Hostas',
    'Salad leaves',
    'Tomatoes in the west bed',
    'Tomatoes further back',
    'Peas (dwarf)',
    'Roses, along the wall',
    'Lettuce and basil',
    'the chillies',
    'Herbs along the south wall',
  ];
  const one = [
    'Lemon',
    'Hibiscus',
    'Citrus',
    'Asparagus',
    'Iris',
    'Swiss chard',
    'Lemongrass',
    'Cosmos',
    'Physalis',
    'Pot of chillies',
    'Tomato bed',
    'Ana’s lemon',
    'Ana’s',
    'Bed by the roses',
    'Herb and salad bed',
    '',
  ];
  for (const name of many) expect(isPlural(name), name).toBe(true);
  for (const name of one) expect(isPlural(name), name).toBe(false);
});

test('pronouns and verbs agree with it, and several are always many', () => {
  const words = (...names: string[]): string => {
    const { they, them, their, are, were, does } = agreeingWith(...names);
    return [they, them, their, are, were, does('need'), does('go'), does('reach')].join(' ');
  };
  expect(words('Lemon')).toBe('it it its is was needs goes reaches');
  expect(words('Chillies')).toBe('they them their are were need go reach');
  expect(words('Lemon', 'Fig')).toBe(words('Chillies'));
});
