import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ROOMS, ROOT, sourcesOf } from './sources.ts';

const SOURCES = ROOMS.flatMap(sourcesOf);
const LONGEST = 120;
/** Listed data: words to be split, and a row as a weather file has it. */
const LISTED = new Set(['tests/engine/plan/check/check.test.ts', 'tests/engine/sun/weather/epw.test.ts']);

/** A regular expression cannot be broken, and a test is known by its title, which the formatter leaves whole. */
const isWhole = (line: string): boolean => /^\s*\/[^/*]/.test(line) || /^\s*(?:test|it)(?:\.\w+)?\('/.test(line);

test('no line is longer than 120 characters: a formatter breaks code, and people break sentences', () => {
  const long = SOURCES.filter((file) => !LISTED.has(file)).flatMap((file) =>
    readFileSync(join(ROOT, file), 'utf8')
      .split('\n')
      .flatMap((line, index) => (Array.from(line).length > LONGEST && !isWhole(line) ? [`${file}:${index + 1}`] : [])),
  );
  expect(SOURCES.length).toBeGreaterThan(500);
  expect(long).toEqual([]);
});

/** A comment that stands among the imports, or against one. */
const SUNKEN = /^import [^;]*;\n+\/\*\*(?:(?!\*\/)[^])*\*\/\nimport |^import [^;]*;\n\/\*\*|\*\/\nimport /m;

test('what is said of a whole file stands first in it, apart from the imports, which are sorted below it', () => {
  expect(SOURCES.filter((file) => SUNKEN.test(readFileSync(join(ROOT, file), 'utf8')))).toEqual([]);
});
