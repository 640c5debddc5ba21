/** The build sheet for paper: one section after the other, drawings to scale, every line to be ticked off. */
import type { BuildSheet } from '../../frame/types.ts';
import type { Units } from '../../plan/units.ts';
import { cutDrawing, measureMe, planDrawing, sideDrawing } from './drawing.ts';
import { htmlTable, list, paragraph, section } from './markup.ts';
import type { SheetPart } from './part.ts';
import { sheetSections } from './sections.ts';

/** A fragment of sections without styles; `SHEET_STYLE` goes with it. Whatever a person typed is text in it. */
export function sheetHtml(sheet: BuildSheet, units: Units): string {
  const sections = sheetSections(sheet, units).map(({ id, title, parts }) =>
    section(
      `sheet-${id}`,
      title,
      parts.map((part) => partHtml(part, sheet, units)),
    ),
  );
  return `<article class="build-sheet">${sections.join('')}</article>`;
}

/** For A4 and Letter, black only. */
export const SHEET_STYLE = `
.build-sheet { color: black; background: white; font: 11pt/1.35 sans-serif; max-width: 180mm; }
.build-sheet h2 { font-size: 13pt; border-bottom: 1px solid black; break-after: avoid; }
.build-sheet table { border-collapse: collapse; width: 100%; }
.build-sheet th, .build-sheet td { text-align: left; padding: 1mm 2mm; border-bottom: 1px solid #999; }
.build-sheet .number { text-align: right; font-variant-numeric: tabular-nums; }
.build-sheet tr, .build-sheet li, .build-sheet svg { break-inside: avoid; }
.build-sheet svg:not([width]) { width: 100%; max-height: 110mm; }
.build-sheet #sheet-steps li, .build-sheet #sheet-cautions li { list-style-type: "☐ "; }
`;

function partHtml(part: SheetPart, sheet: BuildSheet, units: Units): string {
  switch (part.kind) {
    case 'sentence':
      return paragraph(part.text);
    case 'list':
      return list(part.items, part.numbered ? 'ol' : 'ul');
    case 'table':
      return htmlTable(part.head, part.rows, part.numbers);
    case 'cuts':
      return cutDrawing(sheet.cuts, units);
    case 'drawing':
      return `${planDrawing(sheet, units)}${sideDrawing(sheet, units)}${measureMe()}`;
  }
}
