import type { SkyPoint } from '../../engine/index.ts';
import { domePoint } from './dome.ts';
import type { DomeSide } from './dome.ts';

interface Named {
  readonly name: string;
  readonly parts: readonly (readonly (readonly SkyPoint[])[])[];
}

/** A name on the dome, its middle. */
export interface DomeLabel {
  readonly name: string;
  readonly x: number;
  readonly y: number;
}

/** Of a letter, and of a line. */
const LETTER = 4.6;
const LINE = 9;
/** Names stay inside this far from the middle to either side. */
const REACH = 118;
const QUARTERS = [
  [0, -109],
  [0, 109],
  [-111, 0],
  [111, 0],
] as const;

/** Names on their silhouettes, widest silhouette first; a name that would lie on another is left to the table. */
export function labelsOf(shapes: readonly Named[], side: DomeSide): DomeLabel[] {
  const placed: { name: string; x: number; y: number; half: number }[] = [];
  const taken = (x: number, y: number, half: number): boolean =>
    placed.some((one) => Math.abs(one.y - y) < LINE && Math.abs(one.x - x) < one.half + half) ||
    QUARTERS.some(([qx, qy]) => Math.abs(qy - y) < LINE && Math.abs(qx - x) < half + 12);
  const wide = shapes
    .map((shape) => ({ ...shape, spots: spotsOn(shape) }))
    .toSorted((a, b) => b.spots.length - a.spots.length);
  for (const { name, spots } of wide) {
    const half = (name.length * LETTER) / 2 + 1;
    const spot = middleFirst(spots).find((point) => {
      const [x, y] = domePoint(point, side);
      return Math.abs(x) + half < REACH && Math.hypot(x, y) < 97 && !taken(x, y, half);
    });
    if (!spot) continue;
    const [x, y] = domePoint(spot, side);
    placed.push({ name, x, y, half });
  }
  return placed;
}

/** Directions half-way up a silhouette, all along its widest part. */
function spotsOn({ parts }: Named): SkyPoint[] {
  const loops = parts.map((part) =>
    part.length === 2 ? part[0].map((point, k): SkyPoint[] => [point, part[1][k]]) : pairs(part[0]),
  );
  const widest = loops.toSorted((a, b) => b.length - a.length)[0] ?? [];
  return widest.map(([low, high]): SkyPoint => [low[0], (low[1] + high[1]) / 2]);
}

/** The lower edge of an outline beside its upper one. */
function pairs(loop: readonly SkyPoint[]): SkyPoint[][] {
  return Array.from({ length: Math.floor(loop.length / 2) }, (_, k) => [loop[k], loop[loop.length - 1 - k]]);
}

function middleFirst<T>(items: readonly T[]): T[] {
  const middle = (items.length - 1) / 2;
  return items
    .map((item, k) => ({ item, away: Math.abs(k - middle) }))
    .toSorted((a, b) => a.away - b.away)
    .map(({ item }) => item);
}
