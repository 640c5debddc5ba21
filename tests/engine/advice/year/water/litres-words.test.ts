import { expect, test } from 'vitest';
import { aboutLitres, litresWords } from '../../../../../engine/advice/year/water/litres-words.ts';

test('water is told as a can holds it, to a quarter where it is little and to five litres where it is much', () => {
  expect([0.6, 2.3, 7.4, 33].map((litres) => litresWords(litres, 'metric'))).toEqual(['½ L', '2½ L', '7 L', '35 L']);
  // A gallon is 3.785 L, four quarts.
  expect([1, 7.57].map((litres) => litresWords(litres, 'imperial'))).toEqual(['1 qt', '2 gal']);
});

test('what is estimated is about so much; less than a can tells is under that, and not about it', () => {
  expect(aboutLitres(2.3, 'metric')).toBe('about 2½ L');
  expect(aboutLitres(0.05, 'metric')).toBe('under ¼ L');
});
