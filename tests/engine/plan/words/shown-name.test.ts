import { expect, test } from 'vitest';
import { demoPlan } from '../../../../engine/plan/demos/index.ts';
import { nameOf } from '../../../../engine/plan/words/names.ts';
import { shownName } from '../../../../engine/plan/words/shown-name.ts';

test('an everyday name is shown as it was given', () => {
  for (const name of ['Lemon pot', 'حديقة', 'Great-grandmother’s fig, by the gate', '🌵🍋'])
    expect(shownName(name)).toBe(name);
});

test('a name of 100 kB is cut wherever it is called', () => {
  const endless = 'x'.repeat(100_000);
  const plan = demoPlan('courtyard');
  const [first, ...others] = plan.features;
  const called = nameOf({ ...plan, features: [{ ...first, name: endless }, ...others] }, first.id);
  expect(called).toBe(`${'x'.repeat(59)}…`);
  expect(shownName('🍋'.repeat(50_000))).toBe(`${'🍋'.repeat(59)}…`);
});

test('a thing without a name is called what people call it, not what the file does', () => {
  const plan = demoPlan('courtyard');
  const features = [
    { id: 'canopy-2', kind: 'canopy', center: [1, 1], length: 2, width: 2, turn: 0, height: 2, density: 0.5 },
    { id: 'street', kind: 'eye', path: [[1, -2]], height: 1.6 },
    {
      id: 'wall',
      kind: 'wall',
      path: [
        [0, 0],
        [1, 0],
      ],
      height: 1,
      thickness: 0.1,
    },
  ] as const;
  expect(features.map(({ id }) => nameOf({ ...plan, features }, id))).toEqual(['Roof 2', 'Onlooker street', 'Wall']);
});

test('a mark that turns the direction of writing ends with its name', () => {
  expect(shownName('\u202Etop')).toBe('\u202Etop\u202C');
  expect(shownName('\u2067a\u202Bb')).toBe('\u2067a\u202Bb\u202C\u2069');
  expect(shownName('\u202Etop\u202C')).toBe('\u202Etop\u202C');
  // An end that comes too early, or stands in another's isolate, ends nothing.
  expect(shownName('\u202C\u202Etop')).toBe('\u202C\u202Etop\u202C');
  expect(shownName('\u202Ea\u2066b\u202C')).toBe('\u202Ea\u2066b\u202C\u2069\u202C');
  expect(shownName('\u2066a\u202Eb\u2069c')).toBe('\u2066a\u202Eb\u2069c');
  expect(shownName(`\u202E${'x'.repeat(200)}\u202C`).at(-1)).toBe('\u202C');
});

test('what only an option adds is called by its name too, not by its id', () => {
  const yard = demoPlan('courtyard');
  for (const { name, id } of (yard.options ?? []).flatMap(({ adds = [] }) => adds)) expect(nameOf(yard, id)).toBe(name);
});
