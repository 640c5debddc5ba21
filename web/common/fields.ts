import {
  DEFAULTS,
  foliageFromOf,
  formatLength,
  formatTemperature,
  parseLength,
  parseNumber,
  parseTemperature,
  potOf,
} from '../../engine/index.ts';
import type { Feature, FeatureChanges, FeatureKind, FeatureOf, KnownBy, Knowledge, Units } from '../../engine/index.ts';

/** What a number is made of: how it is typed and shown. Shares are stored 0 to 1 and typed in percent. */
export type FieldUnit = 'length' | 'percent' | 'degrees' | 'temperature' | 'lux' | 'count';

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

interface FieldOptions {
  readonly unit?: FieldUnit;
  readonly asked?: boolean;
  readonly optional?: boolean;
  readonly least?: number;
  readonly most?: number;
  readonly suggested?: number;
  readonly unusualAbove?: number;
  readonly read?: (feature: Feature) => number | undefined;
  readonly write?: NumberField['write'];
}

function field(key: string, label: string, options: FieldOptions = {}): NumberField {
  return {
    key,
    label,
    unit: options.unit ?? 'length',
    asked: options.asked ?? false,
    optional: options.optional,
    least: options.least ?? 0.01,
    most: options.most ?? 200,
    suggested: options.suggested,
    unusualAbove: options.unusualAbove,
    read: options.read ?? ((feature) => (feature as unknown as Readonly<Record<string, number | undefined>>)[key]),
    write: options.write ?? ((value) => ({ [key]: value })),
  };
}

/** A share the plan may leave out, with what holds then. */
function share(key: string, label: string, absent: number | undefined, options: FieldOptions = {}): NumberField {
  const base = field(key, label, { unit: 'percent', least: 0, most: 1, ...options });
  return { ...base, read: (feature) => base.read(feature) ?? absent };
}

/** Lowest height at which a wall or hedge is asked about: 18 for 1.8 is the usual slip. */
const TALL_WALL = 4;

/** Every number of each kind, in the order they are shown. Places (x, y) are edited apart. */
export const FIELDS: Readonly<Record<FeatureKind, readonly NumberField[]>> = {
  wall: [
    field('height', 'Height', { asked: true, suggested: 1.8, unusualAbove: TALL_WALL }),
    field('thickness', 'Thickness', { asked: true, suggested: 0.2, most: 5, unusualAbove: 1 }),
    share('openness', 'Light through', DEFAULTS.wallOpenness),
  ],
  hedge: [
    field('height', 'Height', { asked: true, suggested: 1.5, unusualAbove: TALL_WALL }),
    field('thickness', 'Thickness', { asked: true, suggested: 0.8, most: 20, unusualAbove: 3 }),
    share('openness', 'Light through', DEFAULTS.hedgeOpenness),
  ],
  screen: [
    field('height', 'Top edge', { asked: true, suggested: 1.8, unusualAbove: TALL_WALL }),
    field('bottom', 'Bottom edge', {
      asked: true,
      suggested: 0,
      least: 0,
      read: (f) => (f as FeatureOf<'screen'>).bottom ?? DEFAULTS.bottom,
    }),
    share('density', 'Cloth stops', undefined, { asked: true, suggested: 0.6 }),
  ],
  building: [
    field('height', 'Height', { asked: true, suggested: 3, unusualAbove: 20 }),
    field('eaves', 'Eaves', {
      least: 0,
      most: 10,
      unusualAbove: 2,
      read: (f) => (f as FeatureOf<'building'>).eaves ?? DEFAULTS.eaves,
    }),
  ],
  tree: [
    field('height', 'Height', { asked: true, suggested: 4, unusualAbove: 25 }),
    field('crownWidth', 'Crown width', { asked: true, suggested: 3, unusualAbove: 20 }),
    field('crownBase', 'Crown begins at', { asked: true, suggested: 1.5, least: 0 }),
    share('openness', 'Light through', undefined, { asked: true, suggested: 0.2 }),
    field('worth', 'Worth', { unit: 'count', least: 0, most: 100, read: worth }),
  ],
  bed: [
    field('plantHeight', 'Plant height', { asked: true, suggested: 0.5, most: 20, unusualAbove: 3 }),
    share('openness', 'Light through', DEFAULTS.plantOpenness),
    field('worth', 'Worth', { unit: 'count', least: 0, most: 100, read: worth }),
  ],
  plant: [
    field('height', 'Height', { asked: true, suggested: 1, unusualAbove: 6 }),
    field('spread', 'Width', { asked: true, suggested: 0.8, unusualAbove: 6 }),
    field('foliageFrom', 'Leaves begin at', { least: 0, read: (f) => foliageFromOf(f as FeatureOf<'plant'>) }),
    share('openness', 'Light through', DEFAULTS.plantOpenness),
    potField('pot.width', 'Pot width', 'width'),
    potField('pot.height', 'Pot height', 'height'),
    field('worth', 'Worth', { unit: 'count', least: 0, most: 100, read: worth }),
  ],
  canopy: [
    field('height', 'Height of the back edge', { asked: true, suggested: 2.2, unusualAbove: TALL_WALL }),
    field('rise', 'Front edge higher by', {
      least: -5,
      most: 5,
      read: (f) => (f as FeatureOf<'canopy'>).rise ?? DEFAULTS.rise,
    }),
    field('length', 'Length', { unusualAbove: 12 }),
    field('width', 'Width', { unusualAbove: 12 }),
    field('turn', 'Turned clockwise', {
      unit: 'degrees',
      least: -360,
      most: 360,
      read: (f) => (f as FeatureOf<'canopy'>).turn ?? DEFAULTS.turn,
    }),
    share('density', 'Cloth stops', undefined, { asked: true, suggested: 0.5 }),
    share('measuredDensity', 'Cloth stops, measured', undefined, { optional: true }),
  ],
  keepout: [],
  ground: [],
  eye: [field('height', 'Eye height', { asked: true, suggested: 1.6, least: 0, unusualAbove: 12 })],
  reading: [
    field('leaf', 'Leaf', { unit: 'temperature', asked: true, optional: true, least: -40, most: 90 }),
    field('air', 'Air', { unit: 'temperature', asked: true, optional: true, least: -40, most: 60 }),
    field('light', 'Light meter', { unit: 'lux', optional: true, least: 0, most: 200_000 }),
  ],
};

/** Which of a kind's numbers concern this very feature: a plant in the ground has no pot. */
export function fieldsOf(feature: Feature): readonly NumberField[] {
  const fields = FIELDS[feature.kind];
  return feature.kind === 'plant' && !feature.container ? fields.filter(({ key }) => !key.startsWith('pot.')) : fields;
}

/** Whether the plan itself holds the number, rather than what stands for it where it is absent. */
export function isSaid(feature: Feature, { key }: NumberField): boolean {
  return (
    key
      .split('.')
      .reduce<unknown>((part, name) => (part as Readonly<Record<string, unknown>> | undefined)?.[name], feature) !==
    undefined
  );
}

function worth(feature: Feature): number {
  return (feature as FeatureOf<'plant'>).worth ?? DEFAULTS.worth;
}

function potField(key: string, label: string, side: 'width' | 'height'): NumberField {
  return field(key, label, {
    suggested: side === 'width' ? DEFAULTS.potWidth : DEFAULTS.potHeight,
    most: 5,
    unusualAbove: 1.5,
    read: (feature) => potOf(feature as FeatureOf<'plant'>)[side],
    write: (value, feature) => ({ pot: { ...(feature as FeatureOf<'plant'>).pot, [side]: value } }),
  });
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
