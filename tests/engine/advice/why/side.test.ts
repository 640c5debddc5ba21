import { expect, test } from 'vitest';
import { nearestOfEight, parseSide, sideWords } from '../../../../engine/advice/why/side.ts';

test.each([
  ['SW', 225],
  ['south-west', 225],
  ['South West', 225],
  ['n', 0],
  ['north', 0],
  ['NNE', null],
  ['225', 225],
  ['225°', 225],
  ['360', 0],
  ['361', null],
  ['top', 'top'],
  ['ALL', 'all'],
  ['unknown', 'unknown'],
  ['', null],
  ['left', null],
  ['-5', null],
] as const)('the side "%s" is %s', (text, side) => {
  expect(parseSide(text)).toBe(side);
});

test('in words, and the nearest of eight', () => {
  expect(sideWords('top')).toBe('top');
  expect(sideWords(315)).toBe('north-west side');
  expect([nearestOfEight(23), nearestOfEight(22), nearestOfEight(340)]).toEqual([45, 0, 0]);
});
