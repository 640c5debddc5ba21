/** The cut list as bars of characters, to scale. */
import type { CutTube } from '../frame/types.ts';
import { formatCut } from '../plan/units.ts';
import type { Units } from '../plan/units.ts';

/** A bar may be this share of the line; the numbers take the rest. */
const BAR_SHARE = 0.5;

/** Tubes cut alike share one line: how many, a bar (█ pieces, ░ left over), then the lengths in the order they are cut. */
export function cutBars(tubes: readonly CutTube[], units: Units, columns: number): string {
  const longest = Math.max(...tubes.map((tube) => tube.stock));
  const perMetre = Math.floor(columns * BAR_SHARE) / longest;
  const alike = new Map<string, { tube: CutTube; times: number }>();
  for (const tube of tubes) {
    const key = [tube.tube, ...tube.pieces].join(' ');
    const seen = alike.get(key);
    alike.set(key, { tube, times: (seen?.times ?? 0) + 1 });
  }
  return [...alike.values()]
    .map(({ tube, times }) => {
      const pieces = tube.pieces.map((piece) => '█'.repeat(Math.max(1, Math.round(piece * perMetre) - 1))).join('|');
      const left = '░'.repeat(Math.max(0, Math.round(tube.stock * perMetre) - pieces.length));
      const lengths = tube.pieces.map((piece) => formatCut(piece, units)).join(' + ');
      const rest = tube.left > 0 ? `, left ${formatCut(tube.left, units)}` : '';
      return `${times} × ${formatCut(tube.stock, units)}  ${pieces}${left}\n    ${lengths}${rest}`;
    })
    .join('\n');
}
