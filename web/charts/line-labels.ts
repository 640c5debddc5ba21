import { distance, pathLength } from '../../engine/index.ts';
import type { PlanPoint } from '../../engine/index.ts';

/** Shares of a line's length at which its label is tried, the best first. */
const TRIED = [0.5, 0.42, 0.58, 0.35, 0.65, 0.27, 0.73, 0.2, 0.8, 0.14, 0.86, 0.08, 0.92] as const;
/** A shorter line, such as one round a pot, carries no label. [m] */
const SHORTEST = 2.5;

interface Labelled {
  readonly lines: readonly (readonly PlanPoint[])[];
  readonly label: string;
}

/**
 * A place on each line for its label, none nearer to another than `apart`; a line without such a place goes without.
 * [m]
 * @param isFree whether a label may stand there for all else
 * @param shortest line that a label does not crowd, where that is more than the shortest of any drawing [m]
 */
export function labelPlaces(
  labelled: readonly Labelled[],
  apart: number,
  isFree: (at: PlanPoint) => boolean = () => true,
  shortest = 0,
): { readonly at: PlanPoint; readonly label: string }[] {
  const placed: { at: PlanPoint; label: string }[] = [];
  for (const { lines, label } of labelled) {
    for (const line of lines.filter((each) => pathLength(each) >= Math.max(SHORTEST, shortest))) {
      const at = TRIED.map((share) => line[Math.floor(share * (line.length - 1))]).find(
        (place) => isFree(place) && placed.every((other) => distance(other.at, place) >= apart),
      );
      if (at) placed.push({ at, label });
    }
  }
  return placed;
}
