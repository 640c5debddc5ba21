/** What can be drawn: every kind with its keys. How the keys of a thing go together is for `check/rules.ts` to say. */

import { capital } from '../words/first-letter.ts';
import { byName, defaulted, flag, list, monthDay, number, object, optional, point, text, words } from './form.ts';
import type { Called, Form, Json, Keys, NumberRule } from './form.ts';
import { eitherOf, quote, show } from './say.ts';

const SHARE: NumberRule = { min: 0, max: 1, is: 'share' };
/** Heights and sizes of things drawn; no garden thing is larger. */
const SIZE: NumberRule = { above: 0, max: 500, unit: 'm' };
const HEIGHT: NumberRule = { ...SIZE, is: 'height' };
const FOOT: NumberRule = { min: 0, max: 500, unit: 'm', is: 'height' };
/** Least side of a cloth, and least member of its frame, that hands can build. [m] */
export const LEAST_BUILT = 0.1;
const CLOTH_SIDE: NumberRule = { min: LEAST_BUILT, max: 500, unit: 'm' };
const GUST: NumberRule = { min: 0, max: 120, unit: 'm/s' };
const path = { form: 'path', least: 2 } as const;
const outline = { form: 'outline' } as const;

/** How a number is known: it never changes a result, only its doubt. */
const KNOWLEDGE = object((_, _index, owner, key) => `${owner} ${quote(key)} is known`, {
  by: words('tape', 'shadow', 'paced', 'picture', 'compass', 'guess', 'catalogue'),
  /** How far the number may be off, in the number's own unit. */
  pm: optional(number({ min: 0 })),
});

/** By the name of the key that holds the number: `{"height": {"by": "guess", "pm": 0.4}}`. Absent: taped. */
export const HOW = byName((_, _index, owner) => `${owner}, how`, KNOWLEDGE);

/** Days of every year, both included; across New Year when `to` is before `from`. */
const YEARLY = { from: monthDay, to: monthDay } as const;

function calledAPart(what: string): Called {
  return (_, _index, owner) => `${owner}, ${what}`;
}

export const SURFACE = words('lawn', 'soil', 'paving', 'mulch', 'gravel');
/** How bright a side is: how much of the sun's light it throws back. */
const COLOUR = words('white', 'light', 'mid', 'dark');

/** What stands behind a plant's number: which, since when, how dear. */
const PLANTED = {
  /** Id of a catalogue row or of one of the person's own rows. */
  plant: optional(text),
  /** YYYY or YYYY-MM-DD. */
  planted: optional({ form: 'planted' }),
  worth: defaulted(number({ min: 0, max: 1000 }, 'Worth')),
} as const;

/** Of plants and beds: the shade they cast on others. */
const CASTS = {
  /** Share of the light that passes. */
  openness: defaulted(number(SHARE, 'Light through')),
  /** Whether it shades others. */
  shades: defaulted(flag),
} as const;

/** What canopies and screens share. */
const CLOTH = {
  density: number(SHARE, 'Cloth stops'),
  /** Replaces `density`; a canopy's drops keep their own. */
  measuredDensity: optional(number(SHARE, 'Cloth stops, measured')),
  up: optional(object(calledAPart('up'), YEARLY)),
  frame: optional(
    object(calledAPart('frame'), {
      /** Id of a tube in the stock list. */
      tube: optional(text),
      anchor: optional(text),
      soil: optional(text),
      bottomRails: optional(flag),
      /** Braces in every upright face, also where no drop needs them. */
      braces: optional(flag),
      maxBay: optional(number({ min: 0.3, max: 20, unit: 'm' })),
      takeOff: optional(number({ min: 0, max: 1, unit: 'm' })),
      /** [m/s] Wins over the climate's. */
      gust: optional(number(GUST)),
    }),
  ),
} as const;

const DROP = object((_, index, owner) => `${owner}, drop ${index + 1}`, {
  side: words('front', 'back', 'left', 'right'),
  depth: number(SIZE),
  density: number(SHARE),
});

const BLOCKED = words('posts', 'pots', 'canopy');

/** The numbers stand in the order in which they are shown. */
const KINDS = {
  wall: {
    path,
    height: number(HEIGHT, 'Height'),
    thickness: number({ min: 0.01, max: 100, unit: 'm' }, 'Thickness'),
    openness: defaulted(number(SHARE, 'Light through')),
    colour: defaulted(COLOUR),
    holdsCloth: optional(flag),
  },
  hedge: {
    path,
    height: number(HEIGHT, 'Height'),
    thickness: number({ min: 0.01, max: 100, unit: 'm' }, 'Thickness'),
    openness: defaulted(number(SHARE, 'Light through')),
  },
  building: {
    outline,
    height: number(HEIGHT, 'Height'),
    eaves: defaulted(number({ min: 0, max: 50, unit: 'm' }, 'Eaves')),
    colour: defaulted(COLOUR),
    /** Whether cloth may hang from it: its owner agrees, and somebody who may has said that it bears. */
    holdsCloth: optional(flag),
  },
  tree: {
    at: point,
    height: number(HEIGHT, 'Height'),
    crownWidth: number(SIZE, 'Crown width'),
    crownBase: number(FOOT, 'Crown begins at'),
    shape: defaulted(words('round', 'cone', 'column')),
    openness: number(SHARE, 'Light through'),
    leafless: optional(object(calledAPart('leafless'), { ...YEARLY, openness: number(SHARE) })),
    ...PLANTED,
  },
  canopy: {
    center: point,
    /** Back edge; the front edge is `rise` higher. */
    height: number(HEIGHT, 'Height of the back edge'),
    rise: defaulted(number({ min: -100, max: 100, unit: 'm', is: 'height' }, 'Front edge higher by')),
    length: number(CLOTH_SIDE, 'Length'),
    width: number(CLOTH_SIDE, 'Width'),
    turn: defaulted(number({ min: -3600, max: 3600, unit: 'degrees' }, 'Turned clockwise')),
    /** Whether its back edge hangs from a wall or building there: no posts stand under it. */
    onWall: optional(flag),
    ...CLOTH,
    drops: optional(
      list(DROP, {
        once: { key: 'side', says: (side) => `there is already a drop on the ${side} side; each side takes one.` },
      }),
    ),
  },
  screen: {
    path,
    height: number(HEIGHT, 'Top edge'),
    bottom: defaulted(number(FOOT, 'Bottom edge')),
    ...CLOTH,
  },
  bed: {
    outline: { ...outline, cells: 'bedCell' },
    plantHeight: number(FOOT, 'Plant height'),
    ...CASTS,
    ...PLANTED,
  },
  plant: {
    at: point,
    height: number(HEIGHT, 'Height'),
    spread: number(SIZE, 'Width'),
    foliageFrom: defaulted(number(FOOT, 'Leaves begin at')),
    container: optional(flag),
    pot: optional(
      object(calledAPart('pot'), {
        width: defaulted(number({ above: 0, max: 5, unit: 'm' }, 'Pot width')),
        height: defaulted(number({ above: 0, max: 3, unit: 'm' }, 'Pot height')),
        colour: optional(text),
      }),
    ),
    move: optional(words('carry', 'trolley', 'never')),
    ...CASTS,
    ...PLANTED,
  },
  keepout: {
    outline,
    blocks: list(BLOCKED, { wrong: (word) => `it can keep out ${eitherOf(BLOCKED.words)}, got ${show(word)}.` }),
  },
  /** Ground that is not as the rest of the yard; the last that holds a point counts. */
  ground: {
    outline,
    surface: SURFACE,
    /** Up to it from the yard; below 0 down. */
    steps: optional(number({ min: -50, max: 50, whole: true }, 'Steps up to it')),
  },
  /** Who should not see the frame: a line, or one point. */
  eye: {
    path: { form: 'path', least: 1 },
    height: number(FOOT, 'Eye height'),
  },
  reading: {
    at: point,
    /** Clock time of the site's zone. */
    when: { form: 'clock-time' },
    leaf: optional(number({ min: -60, max: 100, unit: '°C' }, 'Leaf')),
    air: optional(number({ min: -60, max: 70, unit: '°C' }, 'Air')),
    light: optional(number({ min: 0, max: 200_000, unit: 'lux' }, 'Light meter')),
    covered: optional(flag),
    pair: optional(text),
    plant: optional(text),
    side: optional({ form: 'side' }),
    text: optional(text),
  },
} as const;

export const FEATURE = {
  form: 'kinds',
  called: featureCalled,
  tag: 'kind',
  what: 'a kind of thing',
  common: { id: { form: 'id' }, name: optional(text), how: optional(HOW) },
  kinds: KINDS,
} as const;

/** The form of one key of a kind of thing; `undefined` where the kind has no such key. */
export function formOf(kind: keyof typeof KINDS, key: string): Form | undefined {
  const keys: Keys = KINDS[kind];
  return Object.hasOwn(keys, key) ? keys[key] : undefined;
}

/** What to call a feature in a sentence: `Wall "west"`. */
function featureCalled(item: Json, index: number): string {
  if (Object.keys(item).length === 0) return `Feature ${index + 1}`;
  const kind = typeof item.kind === 'string' && Object.hasOwn(KINDS, item.kind) ? item.kind : 'feature';
  const title = capital(kind);
  return typeof item.id === 'string' && item.id !== '' ? `${title} ${quote(item.id)}` : `${title} without an id`;
}
