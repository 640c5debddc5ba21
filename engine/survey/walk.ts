import { DEGREE } from '../plan/geometry/angles.ts';
import { distance } from '../plan/geometry/shapes.ts';
import type { PlanPoint } from '../plan/types.ts';
import { formatDistance, formatLength } from '../plan/units/shown.ts';
import { parseLength } from '../plan/units/typed.ts';
import type { Units } from '../plan/units/units.ts';
import { type Finding, found, refused } from './estimate.ts';

/** One straight stretch of a walk round the fence, and how to turn after it: clockwise positive. [m, °] */
export interface Leg {
  readonly length: number;
  readonly turn: number;
}

export interface ClosedWalk {
  /** Corners as walked, the start first; the end, which should be the start, last. */
  readonly walked: readonly PlanPoint[];
  /**
   * Corners after the gap is shared out, the start first, closed without repeating it. `null` when the gap is too large
   * to share.
   */
  readonly corrected: readonly PlanPoint[] | null;
  /** From the end of the walk to where it began. [m] */
  readonly gap: number;
  /** [m] */
  readonly perimeter: number;
  /** Legs that run along the gap, most likely first: the first leg is 1. Empty when the gap is shared out. */
  readonly suspects: readonly number[];
}

/** A gap of more than this share of the way walked is a mistake, not an error of measuring. */
const LARGEST_GAP = 0.05;
/** A leg runs along the gap when its direction is within this of it. [°] */
const ALONG = 25;

/**
 * Walks the legs and closes the ring by the compass rule of surveying (Bowditch): each corner is moved against the gap
 * in proportion to the length walked up to it.
 * @param start Where the walk begins. @param direction Of the first leg, clockwise from the plan's +y. [°]
 */
export function closeWalk(
  legs: readonly Leg[],
  start: PlanPoint = [0, 0],
  direction = 0,
  units: Units = 'metric',
): Finding<ClosedWalk> {
  if (legs.length < 3)
    return refused(
      `${legs.length} ${legs.length === 1 ? 'leg encloses' : 'legs enclose'} nothing: a walk round a yard has at ` +
        `least three.`,
    );
  const wrong = legs.findIndex(({ length, turn }) => !(length > 0) || !Number.isFinite(length + turn));
  if (wrong >= 0)
    return refused(`Leg ${wrong + 1} is ${legs[wrong].length.toFixed(2)} m long: every leg must be longer than 0 m.`);
  const walked = walk(legs, start, direction);
  const end = walked[walked.length - 1];
  const gap = distance(start, end);
  const perimeter = legs.reduce((sum, { length }) => sum + length, 0);
  const notes = [
    `Walking round, you end ${formatLength(gap, units)} from where you began ` +
      `(${((100 * gap) / perimeter).toFixed(1)} % of ${formatDistance(perimeter, units)}).`,
  ];
  if (gap > LARGEST_GAP * perimeter) {
    const suspects = suspectLegs(legs, direction, [start[0] - end[0], start[1] - end[1]]);
    return found({ walked, corrected: null, gap, perimeter, suspects }, [...notes, suspicion(legs, suspects, gap)]);
  }
  let gone = 0;
  const corrected = legs.map(({ length }, i): PlanPoint => {
    const [x, y] = walked[i];
    const share = gone / perimeter;
    gone += length;
    return [x - share * (end[0] - start[0]), y - share * (end[1] - start[1])];
  });
  return found({ walked, corrected, gap, perimeter, suspects: [] }, notes);
}

/**
 * A walk as typed: lengths with turns between them, `12.4 right 6.1 right 12.4 right 6.1`. A turn is `right` or `left`,
 * a quarter turn unless degrees follow (`left 30°`; the degree sign is needed). After a length without a turn the walk
 * goes straight on.
 */
export function parseWalk(text: string, units: Units): Finding<readonly Leg[]> {
  const tokens =
    text
      .toLowerCase()
      .replaceAll(/[;]+/g, ' ')
      .replaceAll(/,(?=\s)/g, ' ')
      .match(/(?:right|left|r|l)(?:\s*[\d.,]+\s*°)?(?![a-z])|[^\s]+(?:\s*(?:m|cm|ft|in)\b)?/g) ?? [];
  const legs: { length: number; turn: number }[] = [];
  for (const token of tokens) {
    const turn = /^(r|l)[a-z]*\s*(?:([\d.,]+)\s*°)?$/.exec(token);
    if (turn !== null) {
      const last = legs.at(-1);
      if (last === undefined) return refused(`The walk begins with "${token}": begin with a length.`);
      last.turn += (turn[1] === 'r' ? 1 : -1) * (turn[2] === undefined ? 90 : Number(turn[2].replace(',', '.')));
      continue;
    }
    const length = parseLength(token, units);
    if (length === null)
      return refused(`"${token}" is neither a length nor a turn: write "12.4 right 6.1 left 30° 4".`);
    legs.push({ length, turn: 0 });
  }
  return found(legs);
}

function walk(legs: readonly Leg[], start: PlanPoint, direction: number): PlanPoint[] {
  const points: PlanPoint[] = [start];
  let heading = direction;
  for (const { length, turn } of legs) {
    const [x, y] = points[points.length - 1];
    points.push([x + length * Math.sin(heading * DEGREE), y + length * Math.cos(heading * DEGREE)]);
    heading += turn;
  }
  return points;
}

function suspectLegs(legs: readonly Leg[], direction: number, missing: PlanPoint): number[] {
  const toward = Math.atan2(missing[0], missing[1]) / DEGREE;
  let heading = direction;
  const angles = legs.map(({ turn }, i) => {
    const between = Math.abs(Math.sin((toward - heading) * DEGREE));
    heading += turn;
    return { leg: i + 1, between: Math.asin(Math.min(1, between)) / DEGREE };
  });
  return angles
    .filter(({ between }) => between <= ALONG)
    .sort((a, b) => a.between - b.between)
    .map(({ leg }) => leg);
}

function suspicion(legs: readonly Leg[], suspects: readonly number[], gap: number): string {
  if (suspects.length === 0)
    return 'That is too much to share out, and no leg runs along the gap: a turn is more likely wrong than a length.';
  const named = suspects.map((leg) => `leg ${leg} (${legs[leg - 1].length.toFixed(2)} m)`).join(' or ');
  return (
    `That is too much to share out. Measure again: ${named}; one of them being ${gap.toFixed(2)} m longer or ` +
    `shorter would close the ring.`
  );
}
