/**
 * Reads JSON of unknown make by its form: what is right is returned, what is not becomes a problem with its pointer and
 * one plain sentence and is left out.
 */

import { LIMITS } from '../file/limits.ts';
import { pointerOf } from '../file/pointer.ts';
import type { Form, Json, Keys, KindsForm, ListForm, NamedForm, ObjectForm, Optionality } from '../schema/form.ts';
import { eitherOf, isRecord, show } from '../schema/say.ts';
import { readNumber, readPair } from './numbers.ts';
import { readPoint, readPoints } from './points.ts';
import { RULES } from './rules.ts';
import { called, keySpot, wrong } from './spot.ts';
import type { It, Spot, Tell } from './spot.ts';
import { readText } from './texts.ts';

export function read(form: Form, value: unknown, spot: Spot): unknown {
  switch (form.form) {
    case 'number':
      return readNumber(form.rule, value, spot);
    case 'flag':
      return typeof value === 'boolean'
        ? value
        : wrong(spot, `${called(spot)} must be true or false, got ${show(value)}.`);
    case 'words':
      return readWord(form.words, value, spot);
    case 'exactly':
      return readExactly(form.value, value, spot);
    case 'point':
      return readPoint(value, spot);
    case 'path':
    case 'outline':
    case 'line':
      return readPoints(form, value, spot);
    case 'pair':
      return Array.isArray(value) ? readPair(form.rule, value, spot) : notAList(value, spot);
    case 'texts':
      if (!Array.isArray(value)) return notAList(value, spot);
      return value.every((item) => typeof item === 'string')
        ? value
        : wrong(spot, `${called(spot)} must be a list of texts.`);
    case 'side':
      return typeof value === 'number'
        ? readNumber({ min: -360, max: 360, unit: 'degrees' }, value, spot)
        : readWord(['top', 'all', 'unknown'], value, spot);
    case 'or null':
      return value === null ? null : read(form.of as Form, value, spot);
    case 'anything':
      return value;
    case 'list':
      return readList(form, value, spot);
    case 'by name':
      return readNamed(form, value, spot);
    case 'object':
      return readObject(form, value, spot);
    case 'kinds':
      return readKinds(form, value, spot);
    default:
      return readText(form.form, value, spot);
  }
}

function readWord(words: readonly string[], value: unknown, spot: Spot): string | undefined {
  return (
    words.find((known) => known === value) ??
    wrong(spot, `${called(spot)} must be ${eitherOf(words)}, got ${show(value)}.`)
  );
}

function readExactly(wanted: string | number, value: unknown, spot: Spot): unknown {
  if (value === wanted) return value;
  if (typeof wanted === 'string' && typeof value !== 'string')
    return wrong(spot, `${called(spot)} must be text, got ${show(value)}.`);
  return wrong(spot, `${called(spot)} must be ${show(wanted)}, got ${show(value)}.`);
}

function notAList(value: unknown, spot: Spot): undefined {
  return wrong(spot, `${called(spot)} must be a list, got ${show(value)}.`);
}

function readList(form: ListForm, value: unknown, spot: Spot): readonly unknown[] | undefined {
  if (!Array.isArray(value)) return notAList(value, spot);
  const most = form.most ?? LIMITS.entries;
  if (value.length > most) return wrong(spot, `${called(spot)} has ${value.length} entries; at most ${most} are read.`);
  if (form.empty !== undefined && value.length === 0) return wrong(spot, form.empty);
  const seen = new Set<unknown>();
  return value.map((item: unknown, index) => {
    const at: Spot = { ...spot, pointer: `${spot.pointer}/${index}`, index };
    const sound = readItem(form, item, at);
    if (form.once !== undefined && isRecord(sound)) reportTwice(form.once, sound, seen, calledSpot(form, item, at));
    return sound;
  });
}

function readItem({ of, wrong: says }: ListForm, item: unknown, spot: Spot): unknown {
  if (says === undefined) return read(of as Form, item, spot);
  const sound = read(of as Form, item, { ...spot, problems: [] });
  return sound === undefined ? wrong(spot, says(item)) : sound;
}

/** The spot of an item with the item's own name as subject. */
function calledSpot({ of }: ListForm, item: unknown, spot: Spot): Spot {
  return { ...spot, subject: subjectOf((of as ObjectForm).called, isRecord(item) ? item : {}, spot) };
}

function reportTwice(
  { key, as, says }: NonNullable<ListForm['once']>,
  sound: Json,
  seen: Set<unknown>,
  spot: Spot,
): void {
  if (sound[key] === undefined) return;
  const value = as === undefined ? sound[key] : as(sound[key]);
  if (seen.has(value)) wrong({ ...spot, pointer: `${spot.pointer}/${key}` }, says(value));
  seen.add(value);
}

function readNamed(form: NamedForm, value: unknown, spot: Spot): Json | undefined {
  const record = recordOf(form.called, value, spot);
  if (record === undefined) return undefined;
  const keys = Object.keys(record.object);
  return Object.fromEntries(keys.map((key) => [key, present(form.of as Form, record, key, spot, form.each?.(key))]));
}

function readObject(form: ObjectForm, value: unknown, spot: Spot): Json | undefined {
  if (form.apart) return readApart(form, value, spot);
  const record = recordOf(form.called, value, spot);
  return record === undefined ? undefined : readKeys([form.keys], record, spot);
}

/** What is wrong in it is said with its owner's name first. */
function readApart(form: ObjectForm, value: unknown, spot: Spot): Json | undefined {
  const problems: Spot['problems'] = [];
  const sound = readObject({ ...form, apart: false }, value, { ...spot, problems });
  for (const problem of problems) spot.problems.push({ ...problem, message: `${spot.subject}: ${problem.message}` });
  return sound;
}

function readKinds(form: KindsForm, value: unknown, spot: Spot): Json | undefined {
  const record = recordOf(form.called, value, spot);
  if (record === undefined) return undefined;
  const kind = present({ form: 'text' }, record, form.tag, spot);
  const known = typeof kind === 'string' && Object.hasOwn(form.kinds, kind);
  if (kind !== undefined && !known)
    wrong(
      keySpot(spot, record.subject, record.object, form.tag),
      `${show(kind)} is not ${form.what}; it must be ${eitherOf(Object.keys(form.kinds))}.`,
    );
  const sound = readKeys(known ? [form.common, form.kinds[kind]] : [form.common], record, spot);
  return known ? { [form.tag]: kind, ...sound } : sound;
}

/** The value as an object with a name; says of anything else that it is none. */
function recordOf(title: ObjectForm['called'], value: unknown, spot: Spot): It | undefined {
  const subject = subjectOf(title, isRecord(value) ? value : {}, spot);
  if (isRecord(value)) return { object: value, subject, pointer: spot.pointer };
  return wrong({ ...spot, subject }, `expected an object with keys, got ${show(value)}.`);
}

function subjectOf(title: ObjectForm['called'], item: Json, { index, subject, key }: Spot): string {
  return typeof title === 'string' ? title : title(item, index, subject, key);
}

/** Every key by its own form, and then what they say together. */
function readKeys(parts: readonly Keys[], it: It, spot: Spot): Json {
  const { subject, pointer } = it;
  const sound: Record<string, unknown> = {};
  for (const keys of parts) for (const [key, form] of Object.entries(keys)) sound[key] = present(form, it, key, spot);
  const tell: Tell = (at, message, whose = subject) =>
    void wrong({ ...spot, pointer: pointer + pointerOf(at), subject: whose }, message);
  for (const keys of parts) RULES.get(keys)?.(sound, tell, it);
  return sound;
}

/** A key's value; says so where a key that must be there is not. */
function present(form: Form & Optionality, { object, subject }: It, key: string, spot: Spot, name?: string): unknown {
  const value = Object.hasOwn(object, key) ? object[key] : undefined;
  if (value === undefined && form.absent !== undefined) return undefined;
  const at = keySpot(spot, subject, object, key, name);
  return value === undefined ? wrong(at, `${called(at)} is missing.`) : read(form, value, at);
}
