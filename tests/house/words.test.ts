import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst } from 'vite';
import { expect, test } from 'vitest';

const root = new URL('../../', import.meta.url).pathname;

/** One word for one thing in all that people read, as in DEVELOPERS "Words": what is not said, and what is. */
const WORDS: readonly (readonly [not: RegExp, say: string, unless?: RegExp])[] = [
  [/\bside curtains?\b|\bcurtains?\b/i, 'drop'],
  [/\bcanop(y|ies)\b/i, 'roof', /^Try a canopy$|--canopy|\bcanopy-/],
  [/\bthe slip\b/i, 'panel'],
  [/\b(onlookers?|neighbours?)’ eyes\b|\bno eye\b|\beyes? drawn\b|\bplan’s eyes\b/i, 'onlooker'],
  [/\bwants?\b.* less\b/i, 'use cloth that stops so much'],
  [/\bscorch dose\b/i, 'heat damage'],
  [/\bhot load\b|\bharmful (sun|hours|rays)\b/i, 'hot sun'],
  [/\bheat stress\b|\bsunburn\b/i, 'heat damage, or burn'],
  [/\bthe programme?\b|\bthe algorithm\b|\bthe engine\b/i, 'we, or nothing'],
];

/** What a kelvin is to the trade is a degree to people. */
const KELVIN = /(^|[\d±}] )K\b(?!·)/;

interface Said {
  readonly path: string;
  readonly text: string;
}

/** Every text of more than one word that a file could print: literals, parts of templates and of the page. */
function textsOf(path: string, source: string): Said[] {
  const said: Said[] = [];
  const visit = (node: unknown): void => {
    if (Array.isArray(node)) return node.forEach(visit);
    if (typeof node !== 'object' || node === null) return;
    const { type, value, name } = node as { type?: string; value?: unknown; name?: { name?: string } };
    if (type === 'ImportDeclaration' || (type === 'JSXAttribute' && name?.name === 'class')) return;
    if (type === 'Literal' && typeof value === 'string') said.push({ path, text: value });
    if (type === 'TemplateElement') said.push({ path, text: (value as { cooked?: string }).cooked ?? '' });
    if (type === 'JSXText') said.push({ path, text: (value as string).replaceAll(/\s+/g, ' ') });
    for (const child of Object.values(node)) visit(child);
  };
  visit(parseAst(source, { lang: path.endsWith('x') ? 'tsx' : 'ts' }));
  return said.filter(({ text }) => text.trim().includes(' '));
}

function faultsOf({ path, text }: Said): string[] {
  const faults = WORDS.flatMap(([not, say, unless]) =>
    not.test(text) && !unless?.test(text.trim()) ? [`${path}: "${text.trim()}": say ${say}`] : [],
  );
  return KELVIN.test(text.trim()) ? [...faults, `${path}: "${text.trim()}": say °C`] : faults;
}

test.each(['engine', 'web'])('%s has one word for one thing in all that people read', (room) => {
  const files = readdirSync(join(root, room), { recursive: true, encoding: 'utf8' }).filter((file) =>
    /\.tsx?$/.test(file),
  );
  const said = files.flatMap((file) => textsOf(`${room}/${file}`, readFileSync(join(root, room, file), 'utf8')));
  expect(said.length).toBeGreaterThan(500);
  expect(said.flatMap(faultsOf)).toEqual([]);
});

test('the search finds a word that is planted, in a literal, a template and the page', () => {
  const planted = (source: string) => textsOf('planted.tsx', source).flatMap(faultsOf);
  expect(planted("const a = 'A roof with side curtains';")).toHaveLength(1);
  expect(planted('const a = `Wants ${x} less sun, ${y} K cooler`;')).not.toEqual([]);
  expect(planted('const a = <p class="the slip">Show less of the slip</p>;')).toHaveLength(1);
  expect(planted("const a = 'A roof with a drop, 4 °C cooler';")).toEqual([]);
});
