import type { Plan } from '../types.ts';
import { LIMITS } from './limits.ts';

/**
 * A plan as the text of its file: JSON, two spaces a level, points and short lists of numbers on one line, a line break
 * at the end. The same plan gives the same text; keys keep their order, unknown ones too. Without the spaces where the
 * file would be too large with them to be opened again.
 */
export function planText(plan: Plan): string {
  const text = `${textOf(plan, '')}\n`;
  return bytesOf(text) <= LIMITS.fileBytes ? text : `${JSON.stringify(plan)}\n`;
}

/** How many bytes a text has as UTF-8. */
function bytesOf(text: string): number {
  let bytes = text.length;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    // Half a character of two: both halves together have four bytes.
    if (code > 0x7f) bytes += code > 0x7ff && (code < 0xd800 || code > 0xdfff) ? 2 : 1;
  }
  return bytes;
}

function textOf(value: unknown, indent: string): string {
  if (Array.isArray(value)) {
    if (value.every((item) => typeof item === 'number'))
      return `[${value.map((item) => JSON.stringify(item)).join(', ')}]`;
    return block(
      '[',
      value.map((item) => textOf(item, `${indent}  `)),
      ']',
      indent,
    );
  }
  if (typeof value === 'object' && value !== null) {
    const entries = Object.entries(value).filter(([, held]) => held !== undefined);
    return block(
      '{',
      entries.map(([key, held]) => `${JSON.stringify(key)}: ${textOf(held, `${indent}  `)}`),
      '}',
      indent,
    );
  }
  return JSON.stringify(value);
}

function block(open: string, items: readonly string[], close: string, indent: string): string {
  if (items.length === 0) return open + close;
  return `${open}\n${items.map((item) => `${indent}  ${item}`).join(',\n')}\n${indent}${close}`;
}
