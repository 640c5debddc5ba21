/** A plan that can be given away: what it takes to work out the sun, and nothing that says whose yard it is. */
import { CATALOGUE } from '../../plan/catalogue.ts';
import { FEATURE } from '../../plan/schema/feature.ts';
import type { Plan } from '../../plan/types.ts';
import { DAMAGE_PARTS } from '../why/types.ts';

export interface ShareCopy {
  readonly plan: Plan;
  /** What is in the copy, one thing a line: to be read before it leaves. */
  readonly leaves: readonly string[];
  /** What was taken out. */
  readonly removed: readonly string[];
}

type Json = Readonly<Record<string, unknown>>;

/** Keys whose numbers, switches, points and lists go along; every other key stays behind, known or not. */
const KEPT: ReadonlySet<string> = new Set(
  (
    'format version units site season climate features options plants journal stock past plan year latitude ' +
    'longitude elevation timeZone upBearing boundary shelter surface skyline azimuth altitude ' +
    'northFrom by line when along reading declination bearing pm pace steps length rules maxHeight setback tap ' +
    'hose how from to stepMinutes offset gust frost first last lowest turbidity hotAir ' +
    'heatwaveHigh months month high low humidity wind sunshine sunshineAfternoon spread id kind path height ' +
    'thickness openness shades colour outline eaves at crownWidth crownBase shape leafless plant planted worth ' +
    'center width turn rise density measuredDensity drops side depth up frame tube bottomRails braces maxBay ' +
    'takeOff anchor soil bottom plantHeight container pot move foliageFrom blocks air leaf light covered ' +
    'pair adds moves removes sunHours minDLI heatLimit limitOf afternoonShade cloth frostDamage leafWidth ' +
    'bothSides date what feature amount part currency kerf tubes outside wall price prices'
  ).split(' '),
);

/** Keys whose text is a word of the plan file's own, a date, a clock time or a zone. */
const WORD_KEYS: ReadonlySet<string> = new Set(
  'format units timeZone by when from to first last kind shape shelter surface colour planted side anchor soil move blocks limitOf afternoonShade date what part currency'.split(
    ' ',
  ),
);
const WORD = /^[A-Za-z0-9:./+_-]{1,40}$/;

/**
 * Keys whose text is a name given by the person to a thing, a pair, an option, a row or a tube: each gets a number
 * instead.
 */
const ID_KEYS: ReadonlySet<string> = new Set(['id', 'plant', 'feature', 'pair', 'tube', 'removes']);

/** About this far in any direction a copy's place may be off. [km] */
const ROUNDED_KM = 8;

/**
 * The copy. Latitude and longitude are rounded to 0.1°, the height above the sea to 10 m; the picture, every name and
 * note, the climate's source, parts set aside and keys of other programs are gone; ids become numbers, the same in
 * every place and in every earlier year.
 */
export function shareCopy(plan: Plan): ShareCopy {
  const names = new Map<string, string>();
  const copied = copyOf(plan, '', (id) => numberedId(names, id)) as Json;
  return { plan: copied as unknown as Plan, leaves: leavesOf(copied as unknown as Plan), removed: removedOf(plan) };
}

function numberedId(names: Map<string, string>, id: string): string {
  if (CATALOGUE.some((row) => row.id === id)) return id;
  const numbered = names.get(id) ?? `n${names.size + 1}`;
  names.set(id, numbered);
  return numbered;
}

function copyOf(value: unknown, key: string, numbered: (id: string) => string): unknown {
  if (typeof value === 'string') return ID_KEYS.has(key) ? numbered(value) : value;
  if (typeof value === 'number')
    return key === 'latitude' || key === 'longitude'
      ? Math.round(value * 10) / 10
      : key === 'elevation'
        ? Math.round(value / 10) * 10
        : value;
  if (Array.isArray(value)) return value.map((item: unknown) => copyOf(item, key, numbered));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value as Json).filter(([name, part]) => leaves(key, name, part));
  const copied = entries.map(([name, part]): [string, unknown] => [
    key === 'moves' ? numbered(name) : name,
    copyOf(part, name, numbered),
  ]);
  const named =
    key === 'plants' || key === 'tubes' ? [['name', nameFor(value as Json, numbered)] as [string, unknown]] : [];
  return Object.fromEntries([...copied, ...named]);
}

/** Whether a part goes along. Keys of `moves` are ids, those of `prices` the program's own or nobody's business. */
function leaves(parent: string, name: string, value: unknown): boolean {
  if (parent === 'moves') return true;
  if (parent === 'prices') return typeof value === 'number' && /^[a-z]+[A-Za-z0-9]*$/.test(name);
  if (!KEPT.has(name)) return false;
  if (name === 'colour') return FEATURE.kinds.wall.colour.words.some((word) => word === value);
  if (name === 'part') return DAMAGE_PARTS.some((part) => part === value);
  return typeof value !== 'string' || ID_KEYS.has(name) || (WORD_KEYS.has(name) && WORD.test(value));
}

/** A row and a tube must have a name: the catalogue's, or its number. */
function nameFor(item: Json, numbered: (id: string) => string): string {
  const id = typeof item.id === 'string' ? item.id : '';
  return CATALOGUE.find((row) => row.id === id)?.name ?? numbered(id);
}

function leavesOf(plan: Plan): string[] {
  const { site, features, climate, season } = plan;
  const readings = features.filter(({ kind }) => kind === 'reading').length;
  const many = (count: number, one: string, more: string) =>
    count === 0 ? [] : [`${count} ${count === 1 ? one : more}`];
  return [
    `The place to the nearest 0.1°, up to ${ROUNDED_KM} km off: latitude ${site.latitude}°, longitude ` +
      `${site.longitude}°; the time zone ${site.timeZone}.`,
    ...(site.elevation === undefined ? [] : [`The height above the sea to the nearest 10 m: ${site.elevation} m.`]),
    'The outline of the yard with its lengths, which way is north, and the skyline.',
    ...many(
      features.length - readings,
      'thing drawn, with its sizes and its kind of plant.',
      'things drawn, with their sizes and kinds of plant.',
    ),
    ...many(plan.options?.length ?? 0, 'option to try.', 'options to try.'),
    `The season of ${season.year} and the climate of ${climate.months.length} months.`,
    ...many(readings, 'reading with its date, time and numbers.', 'readings with their dates, times and numbers.'),
    ...many(
      plan.journal?.length ?? 0,
      'journal entry with its date, without its text.',
      'journal entries with their dates, without their texts.',
    ),
    ...many(
      plan.plants?.length ?? 0,
      'plant row of your own, its numbers alone.',
      'plant rows of your own, their numbers alone.',
    ),
    ...(plan.stock === undefined ? [] : ['What the shop sells, in sizes and prices.']),
    ...many(
      plan.past?.length ?? 0,
      'earlier year, cut down in the same way.',
      'earlier years, cut down in the same way.',
    ),
  ];
}

function removedOf(plan: Plan): string[] {
  const { site, features, journal = [] } = plan;
  const named = features.filter(({ name }) => name !== undefined).length;
  const texts =
    features.filter((feature) => feature.kind === 'reading' && feature.text !== undefined).length +
    journal.filter(({ text }) => text !== undefined).length;
  return [
    'The exact place.',
    ...(site.underlay === undefined ? [] : ['The picture to trace over.']),
    ...(plan.name === undefined ? [] : ['The plan’s name.']),
    ...(named === 0 ? [] : [`${named} ${named === 1 ? 'name' : 'names'} of things drawn.`]),
    ...(texts === 0 ? [] : [`${texts} ${texts === 1 ? 'note' : 'notes'} on readings and in the journal.`]),
    ...(site.rules?.note === undefined ? [] : ['The note on local rules.']),
    ...(plan.cautions === undefined ? [] : ['The cautions of your place.']),
    ...(plan.climate.source === undefined ? [] : ['Where the climate’s figures come from.']),
    'Whatever was set aside or written by another program, and every id: numbers stand in its place.',
  ];
}
