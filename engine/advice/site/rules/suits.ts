import { countUp } from '../../../plan/numbers/tolerances.ts';
import type { PlantRow } from '../../../plan/types.ts';

/** The thinnest cloth sold, and the steps in which it is: common practice, no source. Shares of the light it blocks. */
const THINNEST = 0.3;
const STEP = 0.1;
/** Tried where no plant names a range: what suits most that fruit or flower (the class values of the catalogue). */
const USUAL = [0.3, 0.5];

/** Cloth no denser than this suits a plant, 0 to 1; Infinity where its row names no range. */
export function densestFor({ cloth }: PlantRow): number {
  return cloth ? cloth[1] / 100 : Infinity;
}

/** Densities worth a try over some plants: the densest that suits each, and the thinnest that suits any. */
export function densitiesFor(rows: readonly PlantRow[]): number[] {
  const ranges = rows.flatMap(({ cloth }) => (cloth ? [cloth] : []));
  if (ranges.length === 0) return USUAL;
  const ends = [Math.min(...ranges.map(([least]) => least)), ...ranges.map(([, most]) => most)];
  return [...new Set(ends.map((percent) => Math.max(THINNEST, percent / 100)))].sort((a, b) => a - b);
}

/** Densities in which cloth is sold below one, the thinnest first. */
export function thinnerThan(density: number): number[] {
  const count = Math.max(0, countUp((density - THINNEST) / STEP));
  return Array.from({ length: count }, (_, k) => Math.round((THINNEST + k * STEP) * 100) / 100);
}
