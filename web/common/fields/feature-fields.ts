import { FEATURE, heldAt, numberOf, potOf } from '../../../engine/index.ts';
import type { Feature, FeatureKind, Keys, NumberForm, NumberRule } from '../../../engine/index.ts';
import type { FieldUnit, NumberField } from './number-field.ts';

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
      return inner === undefined ? { [key]: value } : { [part]: { ...heldObject(feature, part), [inner]: value } };
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

function heldObject(feature: Feature, part: string): object {
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
  return (inner === undefined ? heldAt(feature, key) : heldAt(heldObject(feature, part), inner)) !== undefined;
}
