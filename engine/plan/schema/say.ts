/** Values and keys as a sentence can hold them. */

import type { Json } from './form.ts';

export function isRecord(value: unknown): value is Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What an object holds at a key that is known by its name only. */
export function heldAt(object: object, key: string): unknown {
  return Object.hasOwn(object, key) ? Reflect.get(object, key) : undefined;
}

/** The same without the keys that hold nothing: a file has no such value. */
export function withoutUndefined<T extends object>(thing: T): T {
  return Object.fromEntries(Object.entries(thing).filter(([, value]) => value !== undefined)) as T;
}

/** A value as a sentence can hold it. */
export function show(value: unknown): string {
  if (typeof value === 'string') return quote(value);
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (value === null) return 'null';
  return Array.isArray(value) ? 'a list' : 'an object';
}

/** What to call an item of a list that has an id: `Option "A"`, else by its place. */
export function byId(what: string): (item: Json, index: number) => string {
  return ({ id }, index) => `${what} ${typeof id === 'string' ? quote(id) : index + 1}`;
}

/** A person's text in quotes, cut when long, without line breaks. */
export function quote(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ');
  return `"${line.length > 40 ? `${line.slice(0, 39).trimEnd()}…` : line}"`;
}

/** Keys that say little when read out. */
const LABELS: Readonly<Record<string, string>> = {
  at: 'place',
  from: '"from"',
  to: '"to"',
  by: '"by"',
  pm: '"pm"',
  when: 'time',
  hotAir: 'hot air temperature',
  stepMinutes: 'step',
  limitOf: 'what the limit is of',
  minDLI: 'least daily light',
};

/** A key in plain words: "crownWidth" is the crown width. */
export function label(key: string): string {
  if (Object.hasOwn(LABELS, key)) return LABELS[key];
  return key.replaceAll(/[A-Z]+/g, (letters) => ` ${letters.length > 1 ? letters : letters.toLowerCase()}`);
}

/** "a", "a or b", "a, b or c", each in quotes. */
export function eitherOf(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length === 1 ? quoted[0] : `${quoted.slice(0, -1).join(', ')} or ${quoted[quoted.length - 1]}`;
}
