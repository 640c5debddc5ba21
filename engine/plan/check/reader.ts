/**
 * Reading JSON of unknown make, key by key: what is right is returned, what is not becomes a problem with its pointer
 * and
 * one plain sentence. Every reader returns `undefined` for a key that is absent or wrong.
 */
import { daysInMonth } from '../dates.ts';
import { LIMITS } from '../file/limits.ts';
import { pointerOf, pointerToken } from '../file/pointer.ts';
import type { PlanPoint, Problem } from '../types.ts';

/** An object of the file: where it stands, what to call it in a sentence, and where its problems go. */
export interface Owner {
  readonly object: Readonly<Record<string, unknown>>;
  readonly pointer: string;
  readonly subject: string;
  readonly problems: Problem[];
}

/** Which numbers a key may hold. `above` is an open end. */
export interface NumberRule {
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
  readonly unit?: string;
  readonly whole?: boolean;
}

export type Need = 'required' | 'optional';

/** Adds an error about one key of the owner; about the owner itself when `key` is empty. */
export function report(owner: Owner, key: string, message: string): void {
  const pointer = key === '' ? owner.pointer : `${owner.pointer}/${pointerToken(key)}`;
  owner.problems.push({ pointer, message: `${owner.subject}: ${message}`, severity: 'error' });
}

/** The value as an owner of keys; reports anything that is not an object. */
export function ownerOf(value: unknown, pointer: string, subject: string, problems: Problem[]): Owner | undefined {
  if (isRecord(value)) return { object: value, pointer, subject, problems };
  problems.push({
    pointer,
    message: `${subject}: expected an object with keys, got ${show(value)}.`,
    severity: 'error',
  });
  return undefined;
}

export function readObject(owner: Owner, key: string, subject: string, need: Need): Owner | undefined {
  const value = present(owner, key, need);
  return value === undefined
    ? undefined
    : ownerOf(value, `${owner.pointer}/${pointerToken(key)}`, subject, owner.problems);
}

export function readList(owner: Owner, key: string, need: Need): readonly unknown[] | undefined {
  const value = present(owner, key, need);
  if (value === undefined || Array.isArray(value)) return value as readonly unknown[] | undefined;
  report(owner, key, `${label(key)} must be a list, got ${show(value)}.`);
  return undefined;
}

/** Every item of a list that is an object, as an owner; an item's subject is made from its place. */
export function readOwners(
  owner: Owner,
  key: string,
  need: Need,
  subjectOf: (item: Readonly<Record<string, unknown>>, index: number) => string,
  most: number = LIMITS.entries,
): Owner[] {
  const list = readList(owner, key, need) ?? [];
  if (list.length > most) {
    report(owner, key, `${label(key)} has ${list.length} entries; at most ${most} are read.`);
    return [];
  }
  const owners: Owner[] = [];
  for (const [index, item] of list.entries()) {
    const subject = subjectOf(isRecord(item) ? item : {}, index);
    const read = ownerOf(item, `${owner.pointer}/${pointerToken(key)}/${index}`, subject, owner.problems);
    if (read !== undefined) owners.push(read);
  }
  return owners;
}

export function readNumber(owner: Owner, key: string, rule: NumberRule, need: Need): number | undefined {
  const value = present(owner, key, need);
  if (value === undefined) return undefined;
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    report(
      owner,
      key,
      `${label(key)} must be a number${rule.unit === undefined ? '' : ` in ${rule.unit}`}, got ${show(value)}.`,
    );
    return undefined;
  }
  if (inRange(value, rule)) return value;
  const unit = rule.unit === undefined ? '' : ` ${rule.unit}`;
  report(owner, key, `${label(key)} is ${value}${unit}, but must be ${rangeText(rule)}${slipHint(value, rule)}.`);
  return undefined;
}

export function readText(owner: Owner, key: string, need: Need): string | undefined {
  const value = present(owner, key, need);
  if (value === undefined || typeof value === 'string') return value;
  report(owner, key, `${label(key)} must be text, got ${show(value)}.`);
  return undefined;
}

export function readFlag(owner: Owner, key: string): boolean | undefined {
  const value = present(owner, key, 'optional');
  if (value === undefined || typeof value === 'boolean') return value;
  report(owner, key, `${label(key)} must be true or false, got ${show(value)}.`);
  return undefined;
}

export function readWord<W extends string>(owner: Owner, key: string, words: readonly W[], need: Need): W | undefined {
  const value = present(owner, key, need);
  if (value === undefined) return undefined;
  const word = words.find((known) => known === value);
  if (word === undefined) report(owner, key, `${label(key)} must be ${eitherOf(words)}, got ${show(value)}.`);
  return word;
}

export function readPoint(owner: Owner, key: string, need: Need, name = label(key)): PlanPoint | undefined {
  const value = present(owner, key, need);
  return value === undefined ? undefined : pointFrom(owner, [key], value, name);
}

/** A list of points; `undefined` when any of them is wrong. */
export function readPoints(owner: Owner, key: string): readonly PlanPoint[] | undefined {
  const list = readList(owner, key, 'required');
  if (list === undefined) return undefined;
  if (list.length > LIMITS.pointsPerPath) {
    report(owner, key, `${label(key)} has ${list.length} points; at most ${LIMITS.pointsPerPath} are read.`);
    return undefined;
  }
  const points = list.map((item, index) => pointFrom(owner, [key, index], item, `point ${index + 1} of ${label(key)}`));
  return points.includes(undefined) ? undefined : (points as PlanPoint[]);
}

/** A day of every year, "MM-DD"; 02-29 passes unless a year is given that has none. */
export function readMonthDay(owner: Owner, key: string, need: Need, year?: number): string | undefined {
  const value = readText(owner, key, need);
  if (value === undefined) return undefined;
  const parts = /^(\d\d)-(\d\d)$/.exec(value);
  if (parts === null)
    report(owner, key, `${label(key)} must be a day written MM-DD, such as "06-01", got ${show(value)}.`);
  else if (!isDay(year ?? 2000, Number(parts[1]), Number(parts[2])))
    report(
      owner,
      key,
      `${label(key)} is ${show(value)}, a day that ${year === undefined ? 'no year has' : `${year} does not have`}.`,
    );
  else return value;
  return undefined;
}

/** A civil day, "YYYY-MM-DD". */
export function readCivilDate(owner: Owner, key: string, need: Need): string | undefined {
  const value = readText(owner, key, need);
  if (value === undefined) return undefined;
  if (isCivilDate(value)) return value;
  report(owner, key, `${label(key)} must be a real day written YYYY-MM-DD, got ${show(value)}.`);
  return undefined;
}

/** A clock time of the site's zone, "YYYY-MM-DDTHH:MM", seconds allowed. */
export function readClockTime(owner: Owner, key: string): string | undefined {
  const value = readText(owner, key, 'required');
  if (value === undefined) return undefined;
  const parts = /^(.{10})T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/.exec(value);
  if (parts !== null && isCivilDate(parts[1])) return value;
  report(
    owner,
    key,
    `${label(key)} must be a clock time written YYYY-MM-DDTHH:MM, without an offset, got ${show(value)}.`,
  );
  return undefined;
}

export function isCivilDate(text: string): boolean {
  const parts = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text);
  return parts !== null && isDay(Number(parts[1]), Number(parts[2]), Number(parts[3]));
}

export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A value as a sentence can hold it. */
export function show(value: unknown): string {
  if (typeof value === 'string') return quote(value);
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  if (value === null) return 'null';
  return Array.isArray(value) ? 'a list' : 'an object';
}

/** A person's text in quotes, cut when long, without line breaks. */
export function quote(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ');
  return `"${line.length > 40 ? `${line.slice(0, 39).trimEnd()}…` : line}"`;
}

/** Keys that say little when read out. */
const LABELS: Readonly<Record<string, string>> = {
  at: 'place',
  from: '"from"',
  to: '"to"',
  by: '"by"',
  pm: '"pm"',
  when: 'time',
  hotAir: 'hot air temperature',
  stepMinutes: 'step',
  limitOf: 'what the limit is of',
  minDLI: 'least daily light',
};

/** A key in plain words: "crownWidth" is the crown width. */
export function label(key: string): string {
  if (Object.hasOwn(LABELS, key)) return LABELS[key];
  return key.replaceAll(/[A-Z]+/g, (letters) => ` ${letters.length > 1 ? letters : letters.toLowerCase()}`);
}

/** "a", "a or b", "a, b or c", each in quotes. */
export function eitherOf(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length === 1 ? quoted[0] : `${quoted.slice(0, -1).join(', ')} or ${quoted[quoted.length - 1]}`;
}

function present(owner: Owner, key: string, need: Need): unknown {
  const value = Object.hasOwn(owner.object, key) ? owner.object[key] : undefined;
  if (value === undefined && need === 'required') report(owner, key, `${label(key)} is missing.`);
  return value;
}

function pointFrom(
  owner: Owner,
  keys: readonly (string | number)[],
  value: unknown,
  name: string,
): PlanPoint | undefined {
  const pointer = owner.pointer + pointerOf(keys);
  const isPoint =
    Array.isArray(value) &&
    value.length === 2 &&
    value.every((part) => typeof part === 'number' && Number.isFinite(part));
  const message = !isPoint
    ? `${name} must be two numbers in metres, [x, y].`
    : Math.abs(value[0]) > LIMITS.coordinate || Math.abs(value[1]) > LIMITS.coordinate
      ? `${name} is at [${value.join(', ')}] m, more than ${LIMITS.coordinate} m from the plan's origin.`
      : null;
  if (message === null) return value as unknown as PlanPoint;
  owner.problems.push({ pointer, message: `${owner.subject}: ${message}`, severity: 'error' });
  return undefined;
}

function inRange(value: number, { min, above, max, whole }: NumberRule): boolean {
  return (
    (min === undefined || value >= min) &&
    (above === undefined || value > above) &&
    (max === undefined || value <= max) &&
    (whole !== true || Number.isInteger(value))
  );
}

function rangeText({ min, above, max, unit, whole }: NumberRule): string {
  const units = unit === undefined ? '' : ` ${unit}`;
  const kind = whole === true ? 'a whole number ' : '';
  if (above !== undefined) return `${kind}above ${above}${max === undefined ? units : ` and at most ${max}${units}`}`;
  if (min !== undefined && max !== undefined) return `${kind}from ${min} to ${max}${units}`;
  return `${kind}${min === undefined ? `at most ${max}` : `at least ${min}`}${units}`;
}

/** People write 60 for 60 %, and °F for °C. */
function slipHint(value: number, { min, max, unit }: NumberRule): string {
  if (min === 0 && max === 1 && unit === undefined && value > 1 && value <= 100)
    return `: write ${value / 100} for ${value} %`;
  if (unit === '°C' && max !== undefined && value > max && value <= 150)
    return `: ${value} °F would be ${Math.round((value - 32) / 1.8)} °C`;
  return '';
}

function isDay(year: number, month: number, day: number): boolean {
  return month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}
