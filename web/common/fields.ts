import {
  potOf,
  FEATURE,
  formatLength,
  formatTemperature,
  heldAt,
  numberOf,
  parseLength,
  parseNumber,
  parseTemperature,
} from '../../engine/index.ts';
import type {
  Feature,
  FeatureChanges,
  FeatureKind,
  Keys,
  KnownBy,
  Knowledge,
  NumberForm,
  NumberRule,
  Units,
} from '../../engine/index.ts';

/** What a number is made of: how it is typed and shown. Shares are stored 0 to 1 and typed in percent. */
type FieldUnit = 'length' | 'percent' | 'degrees' | 'temperature' | 'lux' | 'count';

/**
 * One number of a feature: its words, where it stands, what is suggested, what is odd. The drawing bar and the list
 * share these.
 */
export interface NumberField {
  /** Key of the plan file, and of `how`. */
  readonly key: string;
  readonly label: string;
  readonly unit: FieldUnit;
  /** Asked before a newly drawn feature enters the plan. */
  readonly asked: boolean;
  /** May stay empty. */
  readonly optional?: boolean;
  readonly least: number;
  readonly most: number;
  /** Put into the box when the thing is drawn; left untouched it is marked as guessed. */
  readonly suggested?: number;
  /** Beyond these a person is asked whether it is meant. [same unit] */
  readonly unusualAbove?: number;
  readonly unusualBelow?: number;
  /** `undefined` where the plan says nothing and nothing holds instead. */
  read(feature: Feature): number | undefined;
  /** The keys of the feature that change. */
  write(value: number | undefined, feature: Feature): FeatureChanges;
}

/** What the page adds to a number of the schema: what is asked and suggested, and what is odd. */
interface Hint {
  readonly asked?: boolean;
  readonly optional?: boolean;
  readonly most?: number;
  readonly suggested?: number;
  readonly unusualAbove?: number;
}

/** Lowest height at which a wall or hedge is asked about: 18 for 1.8 is the usual slip. */
const TALL_WALL = 4;
/** Longest length that a box takes. [m] */
const LONGEST = 200;
/** Least that a box takes of what must be above nothing. [m] */
const SMALLEST = 0.01;

type Kinds = typeof FEATURE.kinds;

/** By kind and key of the schema; a pot's numbers are the plant's own. */
const HINTS: {
  readonly [K in FeatureKind]?: {
    readonly [P in keyof Kinds[K] | (K extends 'plant' ? 'pot.width' | 'pot.height' : never)]?: Hint;
  };
} = {
  wall: {
    height: { asked: true, suggested: 1.8, unusualAbove: TALL_WALL },
    thickness: { asked: true, suggested: 0.2, most: 5, unusualAbove: 1 },
  },
  hedge: {
    height: { asked: true, suggested: 1.5, unusualAbove: TALL_WALL },
    thickness: { asked: true, suggested: 0.8, most: 20, unusualAbove: 3 },
  },
  screen: {
    height: { asked: true, suggested: 1.8, unusualAbove: TALL_WALL },
    bottom: { asked: true, suggested: 0 },
    density: { asked: true, suggested: 0.6 },
    measuredDensity: { optional: true },
  },
  building: { height: { asked: true, suggested: 3, unusualAbove: 20 }, eaves: { most: 10, unusualAbove: 2 } },
  tree: {
    height: { asked: true, suggested: 4, unusualAbove: 25 },
    crownWidth: { asked: true, suggested: 3, unusualAbove: 20 },
    crownBase: { asked: true, suggested: 1.5 },
    openness: { asked: true, suggested: 0.2 },
    worth: { most: 100 },
  },
  bed: { plantHeight: { asked: true, suggested: 0.5, most: 20, unusualAbove: 3 }, worth: { most: 100 } },
  plant: {
    height: { asked: true, suggested: 1, unusualAbove: 6 },
    spread: { asked: true, suggested: 0.8, unusualAbove: 6 },
    'pot.width': { suggested: potOf({}).width, unusualAbove: 1.5 },
    'pot.height': { suggested: potOf({}).height, unusualAbove: 1.5 },
    worth: { most: 100 },
  },
  canopy: {
    height: { asked: true, suggested: 2.2, unusualAbove: TALL_WALL },
    rise: { most: 5 },
    length: { unusualAbove: 12 },
    width: { unusualAbove: 12 },
    turn: { most: 360 },
    density: { asked: true, suggested: 0.5 },
    measuredDensity: { optional: true },
  },
  eye: { height: { asked: true, suggested: 1.6, unusualAbove: 12 } },
  reading: { leaf: { asked: true, optional: true }, air: { asked: true, optional: true }, light: { optional: true } },
};

/** Every number of each kind, in the order they are shown. Places (x, y) are edited apart. */
export const FIELDS: Readonly<Record<FeatureKind, readonly NumberField[]>> = {
  wall: boxesOf('wall'),
  hedge: boxesOf('hedge'),
  screen: boxesOf('screen'),
  building: boxesOf('building'),
  tree: boxesOf('tree'),
  bed: boxesOf('bed'),
  plant: boxesOf('plant'),
  canopy: boxesOf('canopy'),
  keepout: boxesOf('keepout'),
  ground: boxesOf('ground'),
  eye: boxesOf('eye'),
  reading: boxesOf('reading'),
};

function boxesOf(kind: FeatureKind): NumberField[] {
  return numbersIn(FEATURE.kinds[kind]).map((each) => fieldOf(kind, each));
}

interface Titled {
  readonly key: string;
  readonly form: NumberForm;
  readonly title: string;
}

/** The numbers of the schema that have a box, those of parts with the part's name before them. */
function numbersIn(keys: Keys, part = ''): Titled[] {
  return Object.entries(keys).flatMap(([key, form]): Titled[] => {
    if (form.form === 'object') return numbersIn(form.keys, `${part}${key}.`);
    return form.form === 'number' && form.title !== undefined ? [{ key: part + key, form, title: form.title }] : [];
  });
}

function fieldOf(kind: FeatureKind, { key, form, title }: Titled): NumberField {
  const hints: Readonly<Record<string, Hint | undefined>> = HINTS[kind] ?? {};
  const { asked = false, optional, most = Infinity, suggested, unusualAbove } = hints[key] ?? {};
  const { rule } = form;
  const unit = unitOf(rule);
  const cap = Math.min(most, unit === 'length' ? LONGEST : Infinity);
  return {
    key,
    label: title,
    unit,
    asked,
    optional,
    least: Math.max(-cap, rule.min ?? SMALLEST),
    most: Math.min(cap, rule.max ?? Infinity),
    suggested,
    unusualAbove,
    read: (feature) => numberOf(feature, key),
    write: (value, feature) => {
      const [part, inner] = key.split('.');
      return inner === undefined ? { [key]: value } : { [part]: { ...partOf(feature, part), [inner]: value } };
    },
  };
}

function unitOf({ unit, is }: NumberRule): FieldUnit {
  if (is === 'share') return 'percent';
  const units: Readonly<Record<string, FieldUnit>> = {
    m: 'length',
    degrees: 'degrees',
    '°C': 'temperature',
    lux: 'lux',
  };
  return units[unit ?? ''] ?? 'count';
}

function partOf(feature: Feature, part: string): object {
  const held = heldAt(feature, part);
  return typeof held === 'object' && held !== null ? held : {};
}

/** Which of a kind's numbers concern this very feature: a plant in the ground has no pot. */
export function fieldsOf(feature: Feature): readonly NumberField[] {
  const fields = FIELDS[feature.kind];
  return feature.kind === 'plant' && !feature.container ? fields.filter(({ key }) => !key.startsWith('pot.')) : fields;
}

/** Whether the plan itself holds the number, rather than what stands for it where it is absent. */
export function isSaid(feature: Feature, { key }: NumberField): boolean {
  const [part, inner] = key.split('.');
  return (inner === undefined ? heldAt(feature, key) : heldAt(partOf(feature, part), inner)) !== undefined;
}

/** A typed number in the plan's own unit, or one sentence about it. `unusual` asks back before it is taken. */
export type FieldEntry =
  | { readonly ok: true; readonly value: number | undefined; readonly unusual: string | null }
  | { readonly ok: false; readonly message: string };

/** Reads what was typed into a field, its range and what is odd about it. */
export function readField(field: NumberField, text: string, units: Units): FieldEntry {
  if (text.trim() === '')
    return field.optional
      ? { ok: true, value: undefined, unusual: null }
      : { ok: false, message: `${field.label}: type a number, such as ${example(field, units)}.` };
  const value = parse(field, text, units);
  if (value === null)
    return { ok: false, message: `${field.label}: "${text}" is not a number such as ${example(field, units)}.` };
  if (value < field.least || value > field.most) {
    return {
      ok: false,
      message:
        `${field.label} must lie between ${showNumber(field, field.least, units)} and ` +
        `${showNumber(field, field.most, units)}; ${showNumber(field, value, units)} does not.`,
    };
  }
  return { ok: true, value, unusual: unusual(field, value, units) };
}

/**
 * What usually is as tall as a person and was typed lower than a knee is likely metres typed as feet: 1.8 for a wall.
 * [m]
 */
const PERSON = 1.5;
const KNEE = 0.61;

function unusual(field: NumberField, value: number, units: Units): string | null {
  const shown = showNumber(field, value, units);
  if (field.unusualAbove !== undefined && value >= field.unusualAbove)
    return `${field.label} ${shown}: is that meant? It is unusually much.`;
  if (field.unusualBelow !== undefined && value <= field.unusualBelow)
    return `${field.label} ${shown}: is that meant? It is unusually little.`;
  if (field.key === 'height' && units === 'imperial' && (field.suggested ?? 0) >= PERSON && value > 0 && value < KNEE)
    return `${field.label} ${shown}: is that meant? It is below the knee.`;
  return null;
}

function parse(field: NumberField, text: string, units: Units): number | null {
  switch (field.unit) {
    case 'length':
      return parseLength(text, units);
    case 'temperature':
      return parseTemperature(text, units);
    case 'percent': {
      const percent = parseNumber(text.replace(/%\s*$/, ''));
      return percent === null ? null : percent / 100;
    }
    case 'degrees':
      return parseNumber(text.replace(/\s*(°|degrees?|deg)\s*$/i, ''));
    case 'lux':
      return parseNumber(text.replace(/\s*(lux|lx)\s*$/i, ''));
    case 'count':
      return parseNumber(text);
  }
}

/** A field's number with its unit, as it stands in the box and in sentences. */
export function showNumber(field: NumberField, value: number, units: Units): string {
  switch (field.unit) {
    case 'length':
      return formatLength(value, units);
    case 'temperature':
      return formatTemperature(value, units, 1);
    case 'percent':
      return `${trimmed(value * 100)} %`;
    case 'degrees':
      return `${trimmed(value)}°`;
    case 'lux':
      return `${trimmed(value)} lux`;
    case 'count':
      return trimmed(value);
  }
}

function example(field: NumberField, units: Units): string {
  return showNumber(field, field.suggested ?? Math.max(field.least, Math.min(1, field.most)), units);
}

function trimmed(value: number): string {
  return String(Number(value.toFixed(1)));
}

/** How far a number may be off when nobody says: 2 cm by tape, 5 % by shadow or paces, 20 % guessed. */
export function usualDoubt(by: KnownBy, value: number): number {
  const share = by === 'guess' ? 0.2 : 0.05;
  return by === 'tape' ? 0.02 : Math.round(Math.abs(value) * share * 1000) / 1000;
}

export function guessed(value: number): Knowledge {
  return { by: 'guess', pm: usualDoubt('guess', value) };
}

export const KNOWN_BY_WORDS: Readonly<Record<KnownBy, string>> = {
  tape: 'measured',
  shadow: 'by its shadow',
  paced: 'paced',
  picture: 'from a picture',
  compass: 'by compass',
  guess: 'guessed',
  catalogue: 'from a table',
};
