/** The build sheet as plain text. */
import type { BuildSheet } from '../../frame/types.ts';
import type { Units } from '../../plan/units.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { cutBars } from './cut-bars.ts';
import type { SheetPart } from './part.ts';
import { sheetSections } from './sections.ts';

const NARROWEST = 40;
const WIDEST = 110;

/** @param columns Longest line of running text; tables may be wider. */
export function sheetText(sheet: BuildSheet, units: Units, columns: number): string {
  const width = Math.max(NARROWEST, Math.min(columns, WIDEST));
  const sections = sheetSections(sheet, units).map(({ title, parts }, index) => {
    const rule = (index === 0 ? '=' : '-').repeat(title.length);
    return [
      title,
      rule,
      ...parts.map((part) => partText(part, sheet, units, width)).filter((text) => text !== ''),
    ].join('\n');
  });
  return `${sections.join('\n\n')}\n`;
}

function partText(part: SheetPart, sheet: BuildSheet, units: Units, columns: number): string {
  switch (part.kind) {
    case 'sentence':
      return wrapped(part.text, columns, '');
    case 'list':
      return part.items
        .map((item, index) =>
          part.numbered ? wrapped(`${index + 1}. ${item}`, columns, '   ') : wrapped(`- ${item}`, columns),
        )
        .join('\n');
    case 'table':
      return table(part.head, part.rows, part.numbers);
    case 'cuts':
      return cutBars(sheet.cuts, units, columns);
    case 'drawing':
      return '';
  }
}
