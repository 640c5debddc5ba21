/** The build sheet as the page lays it on paper, in HTML, so that its parts and drawings can be read in one. */

import type { BuildSheet } from '../../../../engine/frame/types.ts';
import { cutDrawing } from '../../../../engine/output/sheet/cut-drawing.ts';
import { planDrawing, sideDrawing } from '../../../../engine/output/sheet/drawing.ts';
import { sheetInFull } from '../../../../engine/output/sheet/in-full.ts';
import { htmlTable, list, paragraph, section } from '../../../../engine/output/sheet/markup.ts';
import type { SheetPart } from '../../../../engine/output/sheet/part.ts';
import { settingOutDrawing } from '../../../../engine/output/sheet/setting-out-drawing.ts';
import { measureMe } from '../../../../engine/output/sheet/to-scale.ts';
import type { Units } from '../../../../engine/plan/units/units.ts';

export function sheetHtml(sheet: BuildSheet, units: Units): string {
  const sections = sheetInFull(sheet, units).map(({ id, title, parts }) =>
    section(
      `sheet-${id}`,
      title,
      parts.map((part) => partHtml(part, sheet, units)),
    ),
  );
  return `<article class="build-sheet">${sections.join('')}</article>`;
}

function partHtml(part: SheetPart, sheet: BuildSheet, units: Units): string {
  switch (part.kind) {
    case 'sentence':
      return paragraph(part.text);
    case 'list':
      return list(part.items, part.numbered ? 'ol' : 'ul', part.boxes === null ? undefined : 'boxes');
    case 'table':
      return htmlTable(part.head, part.rows, part.numbers);
    case 'cuts':
      return cutDrawing(sheet.cuts, units);
    case 'drawing':
      return part.of === 'frame'
        ? `${planDrawing(sheet, units)}${sideDrawing(sheet, units)}${measureMe()}`
        : settingOutDrawing(sheet, units);
  }
}
