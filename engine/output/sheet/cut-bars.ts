/** The cut list as bars of characters, to scale. */

import type { CutTube } from '../../frame/cuts/types.ts';
import { METRES_PER_INCH } from '../../plan/units/per-unit.ts';
import { formatCut } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';

/** A bar may be this share of the line; the numbers take the rest. */
const BAR_SHARE = 0.5;
/** [m] */
const SIXTEENTH = METRES_PER_INCH / 16;

/**
 * Tubes cut alike share one line: how many, a bar (█ pieces, ░ left over), then the lengths in the order they are cut.
 */
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
      const bare = '░'.repeat(Math.max(0, Math.round(tube.stock * perMetre) - pieces.length));
      const lengths = tube.pieces.map((piece) => formatCut(piece, units)).join(' + ');
      const left = leftShown(tube, units);
      const rest = left > 0 ? `, left ${formatCut(left, units)}` : '';
      return `${times} × ${formatCut(tube.stock, units)}  ${pieces}${bare}\n    ${lengths}${rest}`;
    })
    .join('\n');
}

/**
 * What is left over, so that the printed numbers of a line add up: each piece as it is printed, to the millimetre or
 * the sixteenth of an inch. [m]
 */
function leftShown({ stock, pieces, lost }: CutTube, units: Units): number {
  const step = units === 'metric' ? 0.001 : SIXTEENTH;
  const steps = (metres: number): number => Math.round(metres / step);
  return Math.max(0, steps(stock) - pieces.reduce((sum, piece) => sum + steps(piece), 0) - steps(lost)) * step;
}
