/** A value of the plan's schema with what people wrote left behind: which text is theirs, the schema's forms say. */

import { PRICE_KEYS } from '../../frame/shop/prices.ts';
import { TUBE_IDS } from '../../frame/shop/stock.ts';
import { ANCHOR_KINDS, GROUND_KINDS } from '../../frame/strength/grounds.ts';
import { CATALOGUE } from '../../plan/catalogue/plants.ts';
import { read } from '../../plan/check/read.ts';
import type { Spot } from '../../plan/check/spot.ts';
import { FEATURE } from '../../plan/schema/feature.ts';
import type { Form, Json, Keys } from '../../plan/schema/form.ts';
import { isRecord } from '../../plan/schema/say.ts';
import { DAMAGE_PARTS } from '../why/types.ts';

/** Gives a name that a person gave another one, the same every time. */
export type Renamed = (id: string) => string;

/** Keys whose text is a name that a person gave to a thing, a pair, an option, a row or a tube. */
const ID_KEYS: ReadonlySet<string> = new Set(['id', 'plant', 'feature', 'pair', 'tube', 'removes']);

/** Keys that hold any text, but of which the program knows these. */
const KNOWN_TEXTS: Readonly<Record<string, readonly string[]>> = {
  colour: FEATURE.kinds.wall.colour.words,
  part: DAMAGE_PARTS,
  anchor: ANCHOR_KINDS,
  soil: GROUND_KINDS,
  limitOf: CATALOGUE.map(({ limitOf }) => limitOf),
};
/** The codes of ISO 4217. */
const CURRENCY = /^[A-Z]{3}$/;
/** What a limit is of when a row says something that the program does not know: as it reads it. */
const USUAL_LIMIT = 'leaf';

/** Where a value stands: its key, and the object that holds it with the keys of that object. */
interface Place {
  readonly key: string;
  readonly keys: Keys;
  readonly holder: Json;
}

/**
 * The value as far as nobody's own words are in it, `undefined` where nothing of it may go along. An object stays
 * behind that lacks a key which it must have, a list of which nothing is left too.
 */
export function withoutFreeText(form: Form, value: unknown, renamed: Renamed, place = NOWHERE): unknown {
  switch (form.form) {
    case 'text':
      return textOf(value, renamed, place);
    case 'id':
      return renamed(String(value));
    case 'texts':
    case 'image':
    case 'anything':
      return undefined;
    case 'or null':
      return value === null ? null : withoutFreeText(form.of as Form, value, renamed, place);
    case 'list': {
      if (!Array.isArray(value)) return undefined;
      const items = value.map((item: unknown) => withoutFreeText(form.of as Form, item, renamed, place));
      const left = items.filter((item) => item !== undefined);
      return left.length === 0 && items.length > 0 ? undefined : left;
    }
    case 'by name':
      return isRecord(value) ? namedOf(form.of as Form, value, renamed, place) : undefined;
    case 'object':
      return isRecord(value) ? keysOf(form.keys, value, renamed) : undefined;
    case 'kinds':
      return isRecord(value) ? keysOf(kindKeys(form, value), value, renamed) : undefined;
    default:
      return read(form, value, unheard());
  }
}

const NOWHERE: Place = { key: '', keys: {}, holder: {} };

/** Where problems are told that nobody is to hear of: a value that its form does not know is free text. */
function unheard(): Spot {
  return { pointer: '', subject: '', key: '', index: 0, owner: {}, problems: [] };
}

function kindKeys({ tag, common, kinds }: Extract<Form, { form: 'kinds' }>, value: Json): Keys {
  const kind = String(value[tag]);
  return { [tag]: { form: 'exactly', value: kind }, ...common, ...kinds[kind] };
}

function keysOf(keys: Keys, value: Json, renamed: Renamed): Json | undefined {
  const left: Record<string, unknown> = {};
  for (const [key, part] of Object.entries(value)) {
    if (!Object.hasOwn(keys, key)) continue;
    const kept = withoutFreeText(keys[key], part, renamed, { key, keys, holder: value });
    if (kept !== undefined) left[key] = kept;
    else if (keys[key].absent === undefined) return undefined;
  }
  return left;
}

/** Names of `moves` are ids; those of `how` and `prices` are the program's own or nobody's business. */
function namedOf(of: Form, value: Json, renamed: Renamed, place: Place): Json {
  const known = (name: string): boolean =>
    place.key === 'prices' ? [...PRICE_KEYS, ...TUBE_IDS].includes(name) : hasKey(place.keys, name);
  const entries = Object.entries(value).flatMap(([name, part]): [string, unknown][] => {
    if (place.key !== 'moves' && !known(name)) return [];
    const kept = withoutFreeText(of, part, renamed, { ...place, key: name });
    return kept === undefined ? [] : [[place.key === 'moves' ? renamed(name) : name, kept]];
  });
  return Object.fromEntries(entries);
}

/** Whether keys have a name, which may be of a part: "pot.width". */
function hasKey(keys: Keys, name: string): boolean {
  const [first, ...rest] = name.split('.');
  if (!Object.hasOwn(keys, first)) return false;
  const form: Form = keys[first];
  return rest.length === 0 || (form.form === 'object' && hasKey(form.keys, rest.join('.')));
}

function textOf(value: unknown, renamed: Renamed, { key, keys, holder }: Place): string | undefined {
  const said = String(value);
  if (ID_KEYS.has(key)) return renamed(said);
  // A row and a tube must have a name: the catalogue's, or its number.
  if (key === 'name' && keys.name.absent === undefined) return nameFor(String(holder.id), renamed);
  if (key === 'currency') return CURRENCY.test(said) ? said : undefined;
  if (Object.hasOwn(KNOWN_TEXTS, key) && KNOWN_TEXTS[key].includes(said)) return said;
  return key === 'limitOf' ? USUAL_LIMIT : undefined;
}

function nameFor(id: string, renamed: Renamed): string {
  return CATALOGUE.find((row) => row.id === id)?.name ?? renamed(id);
}
