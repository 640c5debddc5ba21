/** The plan file, version 1, and what stands in it beside the site and the drawing. */

import { LIMITS } from '../file/limits.ts';
import { FEATURE } from './feature.ts';
import { byName, exactly, flag, list, number, object, optional, orNull, point, text, words } from './form.ts';
import type { Json, NumberRule } from './form.ts';
import { byId, quote, show } from './say.ts';
import { CLIMATE, SEASON, SITE, SUMMER, YEAR } from './site.ts';

export const PLAN_FORMAT = 'shadewright-plan';
/** The version of the plan file that this program writes. */
export const PLAN_VERSION = 1;

const PRICE: NumberRule = { min: 0, max: 1e9 };
const TUBE: NumberRule = { above: 0, max: 1, unit: 'm' };
const LENGTH: NumberRule = { above: 0, max: 1000, unit: 'm' };

export const OPTION = object(byId('Option'), {
  id: text,
  name: optional(text),
  adds: optional(list(FEATURE, { most: Infinity })),
  /** Where plants go, by their ids. */
  moves: optional(
    byName(
      (_, _index, owner) => owner,
      point,
      (id) => `the place for ${quote(id)}`,
    ),
  ),
  removes: optional(list(text, { most: Infinity, wrong: (id) => `removes must be a list of ids, got ${show(id)}.` })),
});

/** A row of the catalogue, or one of the person's own, which must have what a verdict needs. */
export const PLANT_ROW = object(byId('Plant row'), {
  id: text,
  name: text,
  botanical: optional(text),
  group: optional(text),
  light: optional(text),
  limitBasis: optional(text),
  sensitivity: optional(text),
  frost: optional(text),
  note: optional(text),
  /** Direct sun preferred in a hot climate, [min, max]. [h/day] */
  sunHours: { form: 'pair', rule: { min: 0, max: 24, unit: 'h' } },
  /** [mol m⁻² day⁻¹] */
  minDLI: optional(orNull(number({ min: 0, max: 100, unit: 'mol/m²' }))),
  /** Temperature of `limitOf` above which damage begins. [°C] */
  heatLimit: number({ min: 20, max: 90, unit: '°C' }),
  limitOf: text,
  afternoonShade: words('yes', 'young', 'fruit', 'no'),
  /** Nominal density for the hottest months, [min, max]. [%] */
  cloth: optional(orNull({ form: 'pair', rule: { min: 0, max: 100, unit: '%' } })),
  frostDamage: optional(number({ min: -80, max: 30, unit: '°C' })),
  /** [m] */
  leafWidth: number({ above: 0, max: 3, unit: 'm' }),
  /** Where the limit is the fruit's: how wide it is. [m] */
  fruitWidth: optional(number({ above: 0, max: 1, unit: 'm' })),
  bothSides: optional(flag),
  /** Keys of the catalogue's citations. */
  sources: optional({ form: 'texts' }),
});

export const JOURNAL_ENTRY = object(journalCalled, {
  date: { form: 'civil-date' },
  what: words('damage', 'spray', 'rain', 'cloth-up', 'cloth-down', 'moved', 'note'),
  feature: optional(text),
  /** Damage 0 to 5; rain in mm. */
  amount: optional(number({ min: 0, max: 10_000 })),
  side: optional({ form: 'side' }),
  part: optional(text),
  text: optional(text),
});

export const STOCK_TUBE = object(byId('Tube'), {
  id: text,
  name: text,
  /** [m] */
  outside: number(TUBE),
  /** [m] */
  wall: number(TUBE),
  length: number(LENGTH),
  price: optional(number(PRICE)),
});

const STOCK_CLOTH = object((_, index) => `Cloth ${index + 1} of the stock`, {
  width: number(LENGTH),
  length: optional(number(LENGTH)),
  density: optional(number({ min: 0, max: 1 })),
  price: optional(number(PRICE)),
});

const STOCK = object('Stock', {
  currency: optional(text),
  kerf: optional(number({ min: 0, max: 0.05, unit: 'm' })),
  tubes: optional(list(STOCK_TUBE, { once: { key: 'id', says: () => 'there is already a tube with this id.' } })),
  cloth: optional(list(STOCK_CLOTH)),
  prices: optional(byName('Prices', number(PRICE))),
  /** What may be spent on what is put up, in `currency`. */
  budget: optional(number(PRICE)),
});

export const THIS_YEAR = {
  format: exactly(PLAN_FORMAT),
  version: exactly(PLAN_VERSION),
  name: optional(text),
  /** A mark that no other yard has, for other programs to know it again by; it stays when the name changes. */
  yard: optional(text),
  /** What is shown, never what is stored. */
  units: optional(words('metric', 'imperial')),
  site: SITE,
  season: SEASON,
  climate: CLIMATE,
  features: list(FEATURE, { most: Infinity }),
  options: optional(
    list(OPTION, {
      most: LIMITS.options,
      once: { key: 'id', says: () => 'there is already an option with this id.' },
    }),
  ),
  plants: optional(
    list(PLANT_ROW, {
      most: LIMITS.plantRows,
      once: { key: 'id', says: () => 'there is already a row with this id.' },
    }),
  ),
  journal: optional(list(JOURNAL_ENTRY)),
  /** Whether the person has chosen to spray reflective clay. */
  clay: optional(flag),
  stock: optional(STOCK),
  /** What to mind in this place, beside the program's own cautions: local words, from an adviser. */
  cautions: optional(list(object((_, index) => `Caution ${index + 1}`, { text }))),
  /** Broken parts of a file, kept verbatim so that saving loses nothing; `from` is the list each stood in. */
  setAside: optional(
    list(object((_, index) => `Part ${index + 1} set aside`, { from: text, value: optional({ form: 'anything' }) })),
  ),
} as const;

/** What a frozen year says of the years before it is not read. */
const PAST_YEAR = object(({ year }, index) => `Earlier year ${typeof year === 'number' ? year : index + 1}`, {
  year: YEAR,
  plan: { ...object('Plan', THIS_YEAR), apart: true },
});

export const PLAN = object('Plan', {
  ...THIS_YEAR,
  past: optional(list(PAST_YEAR, { most: LIMITS.pastYears })),
  /** Beside the years, this one's too: none of them is reckoned by it but against each other. */
  summers: optional(
    list(SUMMER, {
      most: LIMITS.pastYears + 1,
      once: { key: 'year', says: (year) => `there is already a summer of ${Number(year)}.` },
    }),
  ),
});

function journalCalled({ date }: Json, index: number): string {
  return typeof date === 'string' ? `Journal entry of ${show(date)}` : `Journal entry ${index + 1}`;
}
