/** The build sheet as plain text. */

import type { BuildSheet } from '../../frame/types.ts';
import type { Units } from '../../plan/units/units.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { cutBars } from './cut-bars.ts';
import { sheetInFull } from './in-full.ts';
import type { SheetPart } from './part.ts';

const WIDEST = 100;

/** @param columns Width of the page; running text stays below the widest that reads well. */
export function sheetText(sheet: BuildSheet, units: Units, columns: number): string {
  const width = Math.min(columns, WIDEST);
  const sections = sheetInFull(sheet, units).map(({ title, parts }, index) => {
    const rule = (index === 0 ? '=' : '-').repeat(title.length);
    return [
      title,
      rule,
      ...parts.map((part) => partText(part, sheet, units, { width, columns })).filter((text) => text !== ''),
    ].join('\n');
  });
  return `${sections.join('\n\n')}\n`;
}

function partText(
  part: SheetPart,
  sheet: BuildSheet,
  units: Units,
  { width, columns }: { readonly width: number; readonly columns: number },
): string {
  switch (part.kind) {
    case 'sentence':
      return wrapped(part.text, width, '');
    case 'list':
      return part.items
        .map((item, index) =>
          part.numbered
            ? wrapped(`${index + 1}. ${item}`, width, '   ')
            : wrapped(`${part.boxes === null ? '-' : '[ ]'} ${item}`, width, part.boxes === null ? undefined : '    '),
        )
        .join('\n');
    case 'table':
      return table(columns, part.head, part.rows, part.numbers);
    case 'cuts':
      return cutBars(sheet.cuts, units, width);
    case 'drawing':
      return '';
  }
}
