import { readdirSync } from 'node:fs';
import { join } from 'node:path';

export const ROOT = new URL('../../', import.meta.url).pathname;
export const ROOMS = ['engine', 'web', 'tests'] as const;

/** A room's files of code and styles, by their paths from the root. */
export function sourcesOf(room: (typeof ROOMS)[number]): string[] {
  return readdirSync(join(ROOT, room), { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.(tsx?|mjs|css)$/.test(name) && !name.includes('node_modules'))
    .map((name) => `${room}/${name}`);
}
