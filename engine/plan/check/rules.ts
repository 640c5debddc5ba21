/** What the checks of several parts share: ranges, outlines, how things are known. */
import { boundsOf, cleanPath, onOneLine, openRing } from '../geometry/shapes.ts';
import { LIMITS, cellCount } from '../file/limits.ts';
import { quote, readMonthDay, readNumber, readObject, readPoints, readWord, report } from './reader.ts';
import type { NumberRule, Owner } from './reader.ts';
import { selfMeeting } from '../geometry/turf.ts';
import type { KnownBy, PlanPoint, Surface } from '../types.ts';

export const SHARE: NumberRule = { min: 0, max: 1 };
/** Heights and sizes of things drawn; no garden thing is larger. */
export const SIZE: NumberRule = { above: 0, max: 500, unit: 'm' };
export const FOOT: NumberRule = { min: 0, max: 500, unit: 'm' };
export const BEARING: NumberRule = { min: -360, max: 360, unit: 'degrees' };

export const SURFACES: readonly Surface[] = ['lawn', 'soil', 'paving', 'mulch', 'gravel'];
const KNOWN_BY: readonly KnownBy[] = ['tape', 'shadow', 'paced', 'picture', 'compass', 'guess', 'catalogue'];

/** `how`: by the name of a number, how it is known. */
export function checkHow(owner: Owner): void {
  const how = readObject(owner, 'how', `${owner.subject}, how`, 'optional');
  if (how === undefined) return;
  for (const key of Object.keys(how.object)) {
    const knowledge = readObject(how, key, `${how.subject} ${quote(key)} is known`, 'required');
    if (knowledge === undefined) continue;
    readWord(knowledge, 'by', KNOWN_BY, 'required');
    readNumber(knowledge, 'pm', { min: 0 }, 'optional');
  }
}

/** `side` of a reading or a journal entry: a true bearing or one of four words. */
export function checkSide(owner: Owner): void {
  if (typeof owner.object.side === 'number') readNumber(owner, 'side', BEARING, 'optional');
  else readWord(owner, 'side', ['top', 'all', 'unknown'], 'optional');
}

/** Days of every year; the span itself as an owner of further keys. */
export function checkYearlySpan(owner: Owner, key: string): Owner | undefined {
  const span = readObject(owner, key, `${owner.subject}, ${key}`, 'optional');
  if (span === undefined) return undefined;
  readMonthDay(span, 'from', 'required');
  readMonthDay(span, 'to', 'required');
  return span;
}

/** A path of at least so many different points. */
export function checkPath(owner: Owner, least: 1 | 2): void {
  const path = readPoints(owner, 'path');
  if (path === undefined) return;
  const distinct = cleanPath(path).length;
  if (distinct < least)
    report(
      owner,
      'path',
      `path must have at least ${least === 1 ? 'one point' : 'two different points'}, got ` +
        `${distinct === 0 ? 'none' : 'one'}.`,
    );
}

/** A simple outline that encloses something; its corners when it is right. */
export function checkOutline(owner: Owner, key: string): PlanPoint[] | undefined {
  const outline = readPoints(owner, key);
  if (outline === undefined) return undefined;
  const ring = openRing(outline);
  if (ring.length < 3) {
    report(owner, key, `${key} must have at least three corners, got ${ring.length}.`);
    return undefined;
  }
  if (onOneLine(ring)) {
    report(owner, key, `${key} encloses no ground: its corners lie on one line.`);
    return undefined;
  }
  const meeting = selfMeeting(ring);
  if (meeting !== null) {
    report(owner, key, `${key} crosses or touches itself at [${round(meeting[0])}, ${round(meeting[1])}] m.`);
    return undefined;
  }
  return ring;
}

/** A grid over the box of a ring must not be too large to work out. @param cell [m] */
export function checkCellCount(owner: Owner, key: string, ring: readonly PlanPoint[], cell: number): void {
  const { minX, minY, maxX, maxY } = boundsOf(ring);
  const cells = cellCount(maxX - minX, maxY - minY, cell);
  if (cells <= LIMITS.cells) return;
  report(
    owner,
    key,
    `${Math.round(maxX - minX)} by ${Math.round(maxY - minY)} m are ${cells} cells of ${cell} m; at most ` +
      `${LIMITS.cells} can be worked out.`,
  );
}

/** Foliage or cloth must begin below where it ends. */
export function checkFootBelowTop(owner: Owner, key: string, foot: number | undefined, top: number | undefined): void {
  if (foot === undefined || top === undefined || foot < top) return;
  const names: Readonly<Record<string, string>> = {
    crownBase: 'the crown',
    bottom: 'the cloth',
    foliageFrom: 'the foliage',
  };
  report(owner, key, `${names[key]} begins at ${foot} m, which is not below its top at ${top} m.`);
}

/** To the millimetre, for sentences. */
export function round(metres: number): number {
  return Math.round(metres * 1000) / 1000;
}
