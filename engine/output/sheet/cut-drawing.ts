/** The cut list as bars, as SVG in black only. */

import type { CutTube } from '../../frame/cuts/types.ts';
import { formatCut } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { escaped } from './markup.ts';
import { millimetres } from './to-scale.ts';

/** Width of a bar, and the height of its line: so narrow that its words can be read on a phone. */
const BAR_WIDTH = 420;
const BAR_LINE = 34;

/** One bar a tube cut alike: pieces outlined, what is left over hatched. */
export function cutDrawing(tubes: readonly CutTube[], units: Units): string {
  const longest = Math.max(...tubes.map((tube) => tube.stock));
  const alike = new Map<string, { tube: CutTube; times: number }>();
  for (const tube of tubes) {
    const key = [tube.tube, ...tube.pieces].join(' ');
    alike.set(key, { tube, times: (alike.get(key)?.times ?? 0) + 1 });
  }
  const bars = [...alike.values()].map(({ tube, times }, row) => {
    const scale = BAR_WIDTH / longest;
    const y = row * BAR_LINE;
    let x = 0;
    const pieces = tube.pieces.map((piece) => {
      const width = piece * scale;
      const box =
        `<rect x="${millimetres(x)}" y="${y}" width="${millimetres(width)}" height="18" fill="none" ` +
        `stroke="black"/><text x="${millimetres(x + width / 2)}" y="${y + 13}" ` +
        `text-anchor="middle">${escaped(formatCut(piece, units))}</text>`;
      x += width + (tube.lost / tube.pieces.length) * scale;
      return box;
    });
    const left =
      tube.left > 0
        ? `<rect x="${millimetres(x)}" y="${y}" width="${millimetres(tube.left * scale)}" height="18" fill="none" ` +
          `stroke="black" stroke-dasharray="2 2"/>`
        : '';
    return `<text x="-8" y="${y + 13}" text-anchor="end">${times} ×</text>${pieces.join('')}${left}`;
  });
  return svg(`Cut list: ${tubes.length} tubes`, [-40, -4, BAR_WIDTH + 44, alike.size * BAR_LINE + 4], bars.join(''));
}

function svg(title: string, box: readonly number[], inside: string): string {
  return (
    `<svg role="img" aria-label="${escaped(title)}" viewBox="${box.map(millimetres).join(' ')}" ` +
    `font-family="sans-serif" font-size="14" xmlns="http://www.w3.org/2000/svg">${inside}</svg>`
  );
}
