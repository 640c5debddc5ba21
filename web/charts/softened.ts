import type { PlanPoint } from '../../engine/index.ts';

/** Rounds of cutting: after two no corner of a grid's line is seen. */
const ROUNDS = 2;

/**
 * A line with its corners cut (Chaikin 1974, from memory): it leaves the one given by less than a quarter of a segment.
 * Ends stay; a line that comes back to itself still does.
 */
export function softened(line: readonly PlanPoint[]): readonly PlanPoint[] {
  let soft = line;
  for (let round = 0; round < ROUNDS; round++) soft = cut(soft);
  return soft;
}

function cut(line: readonly PlanPoint[]): PlanPoint[] {
  if (line.length < 3) return [...line];
  const cuts = line.slice(1).flatMap((b, k): PlanPoint[] => {
    const a = line[k];
    const at = (share: number): PlanPoint => [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
    return [at(0.25), at(0.75)];
  });
  const last = line[line.length - 1];
  const closed = line[0][0] === last[0] && line[0][1] === last[1];
  return closed ? [...cuts, cuts[0]] : [line[0], ...cuts.slice(1, -1), last];
}
