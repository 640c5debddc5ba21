import type { PlanPoint } from '../../engine/index.ts';

/**
 * Squares of ground as rings: those beside each other in a row become one.
 * @param middles row by row, along x
 * @param side of a square [m]
 */
export function stripsOf(middles: readonly PlanPoint[], side: number): PlanPoint[][] {
  const strips: { y: number; from: number; to: number }[] = [];
  const half = side / 2;
  for (const [x, y] of middles) {
    const last = strips.at(-1);
    if (last && last.y === y && Math.abs(last.to - (x - half)) < side / 10) last.to = x + half;
    else strips.push({ y, from: x - half, to: x + half });
  }
  return strips.map(({ y, from, to }) => [
    [from, y - half],
    [to, y - half],
    [to, y + half],
    [from, y + half],
  ]);
}
