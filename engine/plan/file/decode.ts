/** The bytes of a file as JSON that is safe to hold: nothing in it can stall, crash or trick what comes after. */

import { errorAt, refusal } from '../problems.ts';
import type { Problem } from '../types.ts';
import { firstFault } from './json-fault.ts';
import { LIMITS } from './limits.ts';
import { pointerOf } from './pointer.ts';

/** Present wherever the engine runs; the language's own library does not list it. */
declare const TextDecoder: new (encoding: string, options: { fatal: boolean }) => { decode(bytes: Uint8Array): string };

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const LETTER_U = 0x75;

export type Decoded = { ok: true; value: unknown } | ReturnType<typeof refusal>;

/**
 * UTF-8 (a byte order mark is allowed) or text, as a JSON value whose numbers are all finite, whose texts are all
 * whole, and which no key "__proto__" can harm. Anything else is refused with one sentence.
 */
export function decodeJson(input: Uint8Array | string): Decoded {
  if (input.length > LIMITS.fileBytes) {
    return refusal('', `The file is larger than ${LIMITS.fileBytes / 1e6} MB, the most that a plan may have.`);
  }
  const text = textFrom(input);
  if (text === null) return refusal('', 'The file is not UTF-8 text.');
  if (text.trim() === '') return refusal('', 'The file is empty.');
  const { depth, values, suspicious } = looksOf(text);
  if (depth > LIMITS.nesting)
    return refusal(
      '',
      `The file has more than ${LIMITS.nesting} objects and lists inside one another; a plan needs fewer than ten.`,
    );
  if (values > LIMITS.values)
    return refusal(
      '',
      `The file holds about ${values} numbers, texts and lists; a plan holds at most ${LIMITS.values}.`,
    );
  try {
    const value: unknown = JSON.parse(text);
    const problem = suspicious ? unsafePart(value, []) : null;
    return problem === null ? { ok: true, value } : { ok: false, problems: [problem] };
  } catch {
    return refusal('', notJson(text));
  }
}

function textFrom(input: Uint8Array | string): string | null {
  if (typeof input === 'string') return input.startsWith('\uFEFF') ? input.slice(1) : input;
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(input);
  } catch {
    return null;
  }
}

/**
 * How deep a text nests, about how many values it holds, and whether it may hold what cannot be kept: a number with an
 * exponent or with very many digits, an escaped character, half a character, a key "__proto__". Most files do not, and
 * need no second look.
 */
function looksOf(text: string): { depth: number; values: number; suspicious: boolean } {
  let depth = 0;
  let most = 0;
  let values = 1;
  let inText = false;
  let digits = 0;
  let suspicious = text.includes('__proto__');
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    if (inText) {
      if (code === BACKSLASH) {
        i++;
        if (text.charCodeAt(i) === LETTER_U) suspicious = true;
      } else if (code === QUOTE) inText = false;
      else if (code >= 0xd800 && code <= 0xdfff) suspicious = true;
      continue;
    }
    if (code >= 0x30 && code <= 0x39) {
      if (++digits > 300) suspicious = true;
      continue;
    }
    if (digits > 0 && (code === 0x65 || code === 0x45)) suspicious = true;
    digits = 0;
    if (code === QUOTE) inText = true;
    else if (code === 0x2c) values++;
    else if (code === 0x7b || code === 0x5b) {
      most = Math.max(most, ++depth);
      values++;
    } else if (code === 0x7d || code === 0x5d) depth--;
  }
  return { depth: most, values, suspicious };
}

/** The first thing in a value that cannot be kept. Recursion is safe: the nesting is limited. */
function unsafePart(value: unknown, keys: (string | number)[]): Problem | null {
  if (typeof value === 'number')
    return Number.isFinite(value) ? null : problemAt(keys, 'This number is too large to be read.');
  if (typeof value === 'string')
    return isWhole(value)
      ? null
      : problemAt(keys, 'This text holds half a character (a lone surrogate), which no file can keep.');
  if (typeof value !== 'object' || value === null) return null;
  const entries = Array.isArray(value) ? value.entries() : Object.entries(value);
  for (const [key, held] of entries) {
    keys.push(key);
    const problem = typeof key === 'string' ? (unsafeKey(key, keys) ?? unsafePart(held, keys)) : unsafePart(held, keys);
    if (problem !== null) return problem;
    keys.pop();
  }
  return null;
}

function unsafeKey(key: string, keys: readonly (string | number)[]): Problem | null {
  if (key === '__proto__') return problemAt(keys, 'A key may not be called "__proto__".');
  return isWhole(key)
    ? null
    : problemAt(keys.slice(0, -1), 'A key in here holds half a character (a lone surrogate), which no file can keep.');
}

/** With the flag u, a pair of surrogates is one character and only lone ones match. */
function isWhole(text: string): boolean {
  return !/\p{Surrogate}/u.test(text);
}

function notJson(text: string): string {
  const fault = firstFault(text);
  if (fault === null) return 'The file is not JSON.';
  const before = text.slice(0, fault.offset);
  const line = before.split('\n').length;
  const column = fault.offset - before.lastIndexOf('\n');
  return `The file is not JSON: line ${line}, column ${column}: ${fault.what}.`;
}

function problemAt(keys: readonly (string | number)[], message: string): Problem {
  return errorAt(pointerOf(keys), message);
}
