import type { Plan } from '../types.ts';

/**
 * A plan as the text of its file: JSON, two spaces a level, points and short lists of numbers on one line, a line break
 * at the end. The same plan gives the same text; keys keep their order, unknown ones too.
 */
export function planText(plan: Plan): string {
  return `${textOf(plan, '')}\n`;
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
