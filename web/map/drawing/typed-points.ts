import { distance, formatLength, parseLength, pointToMillimetre, headingOf, radiansOf } from '../../../engine/index.ts';
import type { Plan, PlanPoint } from '../../../engine/index.ts';

/** What a typed line of numbers becomes: points to draw next, or one sentence about what could not be read. */
export type Typed =
  | { readonly ok: true; readonly points: readonly PlanPoint[] }
  | { readonly ok: false; readonly message: string };

export interface TypedContext {
  readonly units: NonNullable<Plan['units']>;
  /** Points drawn so far, in order. */
  readonly drawn: readonly PlanPoint[];
  /** Where the next length leads when no direction is typed: from the last point to here. */
  readonly aim?: PlanPoint;
  /** Whether two points make a rectangle, so that `3 x 2` is its size. */
  readonly box: boolean;
}

/** Directions on the paper, as typed before a length. Clockwise from +y. [°] */
const HEADINGS: Readonly<Record<string, number>> = { up: 0, right: 90, down: 180, left: 270 };

/**
 * Reads what a person types while drawing. Lengths as everywhere (`3.4`, `1,88`, `6'2"`, `6 ft 2`, `74 in`).
 * - `2 3.5`, `2; 3.5` or `x 2 y 3.5`: a point, across and up from the plan's corner (0, 0)
 * - `3.4`: that far on, towards the pointer, else straight on (the first leg: to the right)
 * - `up 3`, `left 2`: that way on the paper, when a leg begins with it
 * - `12.4 right 6.1`: walk, turn right (or `right 30°`), walk on; `home` ends where it began
 * - `3 x 2`: a rectangle's size across and up
 */
export function typedPoints(text: string, context: TypedContext): Typed {
  const entry = text.trim().toLowerCase();
  if (entry === '') return no('Type a length such as 3.4, or a point such as 2 3.5.');
  const size = entry.match(/^(.+?)\s*(?:×|\*|\bby\b|(?<=[\d'"m])\s*x)\s*(.+)$/);
  if (size && context.box) return boxCorner(size[1], size[2], context);
  const whole = parseLength(entry, context.units);
  if (whole !== null) return walk([{ length: whole }], context);
  return pointOf(entry, context) ?? chain(entry, context);
}

const ANGLE = String.raw`[-−]?\d+(?:[.,]\d+)?\s*(?:°|degrees?|deg)`;
/** Splits a walk into direction words, angles, and whatever stands between them. */
const WORDS = new RegExp(
  String.raw`home|up|down|left|right|turn|${ANGLE}|(?:(?!\b(?:home|up|down|left|right|turn)\b|${ANGLE}).)+`,
  'g',
);

interface Leg {
  readonly length: number;
  /** Absolute, clockwise from +y. [°] */
  readonly heading?: number;
  /** Clockwise from the leg before. [°] */
  readonly turn?: number;
}

function no(message: string): Typed {
  return { ok: false, message };
}

/** `2 3.5`, `2; 3.5`, `2, 3.5`, `x 2 y 3.5`, `-1 4`. */
function pointOf(entry: string, { units }: TypedContext): Typed | undefined {
  const named = entry.match(/^x\s*(\S.*?)\s*[,;]?\s*y\s*(\S.*)$/);
  const parts = named ? [named[1], named[2]] : entry.includes(';') ? entry.split(';') : entry.split(/,\s+|\s+/);
  if (parts.length !== 2) return undefined;
  const x = parseLength(parts[0], units);
  const y = parseLength(parts[1], units);
  return x === null || y === null ? undefined : { ok: true, points: [pointToMillimetre([x, y])] };
}

function boxCorner(across: string, up: string, { units, drawn, aim }: TypedContext): Typed {
  const from = drawn[drawn.length - 1];
  if (!from) return no('First place one corner, then type the size.');
  const width = parseLength(across, units);
  const depth = parseLength(up, units);
  if (width === null || depth === null) return no(`"${across} x ${up}" is not a size such as 3 x 2.`);
  const right = aim && aim[0] < from[0] ? -1 : 1;
  const above = aim && aim[1] < from[1] ? -1 : 1;
  return { ok: true, points: [pointToMillimetre([from[0] + right * width, from[1] + above * depth])] };
}

function chain(entry: string, context: TypedContext): Typed {
  const words = entry.match(WORDS) ?? [];
  const legs: Leg[] = [];
  let heading: number | undefined;
  let turn: number | undefined;
  let home = false;
  for (const raw of words) {
    const word = raw.trim().replace(/^,|,$/g, '').trim();
    if (word === '') continue;
    if (word === 'home') home = true;
    else if (word in HEADINGS) {
      const begins = legs.length === 0 && context.drawn.length < 2;
      if (begins || word === 'up' || word === 'down') heading = HEADINGS[word];
      else turn = word === 'left' ? -90 : 90;
    } else if (word === 'turn') turn = 90;
    else if (/(?:°|deg\w*)$/.test(word)) {
      const angle = Number(
        word
          .replace(/\s*(?:°|deg\w*)$/, '')
          .replace(',', '.')
          .replace('−', '-'),
      );
      turn = turn !== undefined && turn < 0 ? -angle : angle;
    } else {
      const lengths = lengthsIn(word, context.units);
      if (!lengths) return no(`"${word}" is not a length such as ${formatLength(3.4, context.units)}.`);
      for (const length of lengths) {
        legs.push({ length, heading, turn });
        heading = undefined;
        turn = undefined;
      }
    }
  }
  const walked = walk(legs, context);
  if (!walked.ok || !home) return legs.length === 0 && !home ? no('Type at least one length.') : walked;
  const start = context.drawn[0] ?? walked.points[0];
  return start ? { ok: true, points: [...walked.points, start] } : no('There is no first point to go home to.');
}

function lengthsIn(text: string, units: TypedContext['units']): number[] | null {
  const one = parseLength(text, units);
  if (one !== null) return [one];
  const each = text.split(/,\s+|;\s*|\s+/).map((part) => parseLength(part, units));
  return each.every((length): length is number => length !== null) ? each : null;
}

function walk(legs: readonly Leg[], { drawn, aim }: TypedContext): Typed {
  const start = drawn[drawn.length - 1];
  if (!start) return no('First place a point: tap the drawing, or type where it is, such as 2 3.5.');
  const before = drawn[drawn.length - 2];
  let bearing = 90;
  if (aim && distance(start, aim) > 0) bearing = headingOf(start, aim);
  else if (before) bearing = headingOf(before, start);
  let last = start;
  const points = legs.map((leg): PlanPoint => {
    if (leg.heading !== undefined) bearing = leg.heading;
    else if (leg.turn !== undefined)
      bearing = (last === start && before ? headingOf(before, start) : bearing) + leg.turn;
    const headingRad = radiansOf(bearing);
    last = pointToMillimetre([
      last[0] + leg.length * Math.sin(headingRad),
      last[1] + leg.length * Math.cos(headingRad),
    ]);
    return last;
  });
  return { ok: true, points };
}
