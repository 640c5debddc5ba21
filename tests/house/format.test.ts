import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { check, type Options } from 'prettier';
import { expect, test } from 'vitest';
import layout from '../prettier.json' with { type: 'json' };
import { ROOMS, ROOT, sourcesOf } from './sources.ts';

// Here it runs beside the other tests; before them a core would wait for it.
test.each(ROOMS)('every file of %s is laid out as the formatter would: `npm run format` does it', async (room) => {
  const crooked: string[] = [];
  for (const file of sourcesOf(room)) {
    const text = await readFile(join(ROOT, file), 'utf8');
    if (!(await check(text, { ...(layout as Options), filepath: file }))) crooked.push(file);
  }
  expect(crooked).toEqual([]);
});
