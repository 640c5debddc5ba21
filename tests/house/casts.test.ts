import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const root = new URL('../../', import.meta.url).pathname;
/** A value that is called first nothing and then something is checked by nobody. */
const CAST = /\bas\s+(unknown|never|any)\s+as\b/;

test.each(['engine', 'web'])('%s calls no value first nothing, then something', (room) => {
  const sources = readdirSync(join(root, room), { recursive: true, encoding: 'utf8' }).filter((path) =>
    /\.tsx?$/.test(path),
  );
  expect(sources.length).toBeGreaterThan(200);
  expect(sources.filter((path) => CAST.test(readFileSync(join(root, room, path), 'utf8')))).toEqual([]);
});

test('the search finds one that is planted', () => {
  expect(CAST.test('const plan = read as unknown\n  as Plan;')).toBe(true);
  expect(CAST.test('const plan = read as Plan;')).toBe(false);
});
