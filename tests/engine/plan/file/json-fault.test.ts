import fc from 'fast-check';
import { expect, it } from 'vitest';
import { firstFault } from '../../../../engine/plan/file/json-fault.ts';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

it('finds a fault exactly where the language’s own reader fails', () => {
  const pieces = fc.constantFrom(
    '{',
    '}',
    '[',
    ']',
    ',',
    ':',
    '"a"',
    '"',
    '1',
    '-',
    '0',
    '1.5',
    'e3',
    '.',
    'true',
    'nul',
    'null',
    ' ',
    '\n',
    '\\',
    '"\\u12"',
    '\t',
    "'",
  );
  let faults = 0;
  fc.assert(
    fc.property(
      fc.oneof(
        fc.json(),
        fc.array(pieces, { maxLength: 8 }).map((list) => list.join('')),
      ),
      (text) => {
        const fault = firstFault(text);
        if (fault !== null) faults++;
        expect(fault === null, text).toBe(isJson(text));
      },
    ),
    { seed: 12, numRuns: 4000 },
  );
  expect(faults).toBeGreaterThan(500);
});

it('what stands before a fault could have gone on to be right', () => {
  expect(firstFault('{"a": [1, 2,]}')).toEqual({ offset: 12, what: 'a value should stand here' });
  expect(firstFault('{"a": 1 "b": 2}')).toEqual({ offset: 8, what: 'a "," or a closing bracket should stand here' });
  expect(firstFault('{"a": 01}')?.offset).toBe(6);
  expect(firstFault('[1] 2')).toEqual({ offset: 4, what: 'the file should end here' });
});

it('eight million backslashes in a text that never ends are walked over', () => {
  expect(firstFault(`["${'\\\\'.repeat(4e6)}`)).toEqual({ offset: 1, what: 'a value or "]" should stand here' });
  expect(firstFault(`["${'\\n'.repeat(4e6)}" 1]`)?.offset).toBe(8e6 + 4);
});

it('a text of fifteen million characters inside a broken file is walked over', () => {
  expect(firstFault(`["${'x'.repeat(15e6)}" "]`)?.offset).toBe(15e6 + 4);
});
