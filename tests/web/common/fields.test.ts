import { describe, expect, test } from 'vitest';
import { FIELDS } from '../../../web/common/fields/feature-fields.ts';
import { knownAs } from '../../../web/common/fields/known-by.ts';
import type { NumberField } from '../../../web/common/fields/number-field.ts';
import { readField, showNumber } from '../../../web/common/fields/read-field.ts';

const fieldOf = (kind: keyof typeof FIELDS, key: string): NumberField => FIELDS[kind].find((each) => each.key === key)!;
const height = fieldOf('wall', 'height');

describe('a height typed', () => {
  test.each([['6\'2"'], ['6 ft 2'], ['74 in'], ['1.88'], ['1,88'], ['188 cm']])('as %s is 1.88 m', (text) => {
    const entry = readField(height, text, 'metric');
    expect(entry.ok && entry.value).toBeCloseTo(1.88, 2);
    expect(entry.ok && entry.unusual).toBeNull();
  });

  test('is shown with its unit, in feet where the plan is', () => {
    expect(showNumber(height, 1.8796, 'metric')).toBe('1.88 m');
    expect(showNumber(height, 1.8796, 'imperial')).toBe('6 ft 2 in');
  });

  test('of 18 m asks back: it is likely 1.8', () => {
    expect(readField(height, '18', 'metric')).toMatchObject({
      ok: true,
      value: 18,
      unusual: 'Height 18.00 m: is that meant? It is unusually much.',
    });
    expect(readField(height, '4', 'metric')).toMatchObject({ ok: true, unusual: expect.any(String) });
    expect(readField(height, '3.9', 'metric')).toMatchObject({ ok: true, unusual: null });
  });

  test('of 1.8 ft asks back: feet and metres are mixed', () => {
    expect(readField(height, '1.8', 'imperial')).toMatchObject({
      ok: true,
      unusual: expect.stringContaining('below the knee'),
    });
    expect(readField(fieldOf('plant', 'height'), '1.8', 'imperial')).toMatchObject({ ok: true, unusual: null });
  });

  test('that is no number, or none at all, is refused by name', () => {
    expect(readField(height, 'tall', 'metric')).toEqual({
      ok: false,
      message: 'Height: "tall" is not a number such as 1.80 m.',
    });
    expect(readField(height, '-2', 'metric')).toMatchObject({
      ok: false,
      message: expect.stringContaining('must lie between 0.01 m and 200.00 m'),
    });
    expect(readField(height, ' ', 'metric')).toMatchObject({ ok: false });
  });
});

test('a share is typed in percent and kept as a share', () => {
  const density = fieldOf('screen', 'density');
  expect(readField(density, '60 %', 'metric')).toMatchObject({ value: 0.6 });
  expect(readField(density, '60', 'metric')).toMatchObject({ value: 0.6 });
  expect(readField(density, '130', 'metric')).toMatchObject({ ok: false });
  expect(showNumber(density, 0.6, 'metric')).toBe('60 %');
});

test('a reading may leave a number out', () => {
  expect(readField(fieldOf('reading', 'air'), '', 'metric')).toEqual({ ok: true, value: undefined, unusual: null });
});

test('nobody’s guess is as good as a tape: 2 cm by tape, a twentieth by paces, a fifth by eye', () => {
  const off = (['tape', 'paced', 'shadow', 'guess'] as const).map((by) => knownAs(by, 6, 'length').pm);
  expect(off).toEqual([0.02, 0.3, 0.3, 1.2]);
  // A thin crown and a frame that is not turned are no surer than others.
  expect(knownAs('guess', 0.2, 'percent')).toEqual({ by: 'guess', pm: 0.1 });
  expect(knownAs('guess', 0, 'degrees').pm).toBeGreaterThan(knownAs('compass', 0, 'degrees').pm ?? 0);
});
