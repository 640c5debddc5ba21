import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { format, type FormatConfig } from 'oxfmt';
import { expect, test } from 'vitest';
import layout from '../oxfmt.json' with { type: 'json' };
import { ROOMS, ROOT, sourcesOf } from './sources.ts';

test.each(ROOMS)('every file of %s is laid out as the formatter would: `npm run format` does it', async (room) => {
  const crooked: string[] = [];
  for (const file of sourcesOf(room)) {
    const text = await readFile(join(ROOT, file), 'utf8');
    const { code, errors } = await format(file, text, layout as FormatConfig);
    if (errors.length > 0 || code !== text) crooked.push(file);
  }
  expect(crooked).toEqual([]);
});
