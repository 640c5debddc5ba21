/**
 * An adviser's pack: climate, plants, stock and cautions of a place, prepared once and laid over a yard in one step.
 */

import { plantRowOf } from '../../plan/catalogue/plants.ts';
import { planErrors } from '../../plan/check/check.ts';
import { monthWord } from '../../plan/dates/dates.ts';
import { decodeJson } from '../../plan/file/decode.ts';
import { refusal } from '../../plan/problems.ts';
import { isRecord, show } from '../../plan/schema/say.ts';
import type { Climate, ClimateMonth, LocalCaution, Plan, PlantRow, Problem, Stock } from '../../plan/types.ts';
import { formatSpeed, formatTemperature, formatTemperatureDifference, formatShare } from '../../plan/units/shown.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { listWords } from '../../plan/words/list-words.ts';

const PACK_FORMAT = 'shadewright-pack';
const PACK_VERSION = 1;

/**
 * `{"format": "shadewright-pack", "version": 1, "name", "climate", "plants", "stock", "cautions"}`, each part as in the
 * plan file, its keys all optional.
 */
interface Pack {
  readonly name?: string;
  readonly climate?: Partial<Climate>;
  readonly plants?: readonly PlantRow[];
  readonly stock?: Stock;
  readonly cautions?: readonly LocalCaution[];
}

export type PackChange =
  | {
      readonly ok: true;
      /** One sentence for each thing that differs. */ readonly changes: readonly string[];
      readonly plan: Plan;
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * What a pack's file would change in a plan, and the changed plan: show the first, then take the second as one step.
 * Nothing else of the plan is touched.
 */
export function withPack(plan: Plan, file: Uint8Array | string): PackChange {
  const decoded = decodeJson(file);
  if (!decoded.ok) return decoded;
  const { value } = decoded;
  if (!isRecord(value) || value.format !== PACK_FORMAT)
    return refusal(
      '/format',
      `This is no adviser’s pack: its format should be ` +
        `"${PACK_FORMAT}"${isRecord(value) && value.format !== undefined ? `, and is ${show(value.format)}` : ''}.`,
    );
  if (value.version !== PACK_VERSION)
    return refusal(
      '/version',
      `This program reads packs of version ${PACK_VERSION}; this one has ` +
        `${value.version === undefined ? 'none' : show(value.version)}.`,
    );
  for (const [part, isRight] of [
    ['climate', isRecord],
    ['stock', isRecord],
    ['plants', isListOfRecords],
    ['cautions', isListOfRecords],
  ] as const) {
    if (value[part] !== undefined && !isRight(value[part]))
      return refusal(
        `/${part}`,
        `The pack’s ${part} must be ${isRight === isRecord ? 'an object' : 'a list of objects'}, as in a plan file.`,
      );
  }
  if (isRecord(value.climate) && value.climate.months !== undefined && !isListOfRecords(value.climate.months))
    return refusal('/climate/months', 'The pack’s months must be a list of objects, as in a plan file.');
  const pack = value as Pack;
  const changed = merged(plan, pack);
  const problems = planErrors(changed).filter(({ pointer }) => /^\/(climate|plants|stock|cautions)\b/.test(pointer));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, changes: changesOf(plan, changed), plan: changed };
}

function isListOfRecords(value: unknown): boolean {
  return Array.isArray(value) && value.every(isRecord);
}

function merged(plan: Plan, { climate, plants, stock, cautions }: Pack): Plan {
  return {
    ...plan,
    ...(climate && { climate: climateWith(plan.climate, climate) }),
    ...(plants && { plants: withRows(plan.plants ?? [], plants) }),
    ...(stock && {
      stock: {
        ...plan.stock,
        ...stock,
        ...((plan.stock?.prices ?? stock.prices) && { prices: { ...plan.stock?.prices, ...stock.prices } }),
      },
    }),
    ...(cautions && {
      cautions: [
        ...(plan.cautions ?? []),
        ...cautions.filter(({ text }) => !plan.cautions?.some((own) => own.text === text)),
      ],
    }),
  };
}

/**
 * A month's row is laid over the plan's of that month. What was said of how well a replaced number is known no longer
 * holds.
 */
function climateWith(own: Climate, given: Partial<Climate>): Climate {
  const { how, ...before } = own;
  const kept = Object.entries(how ?? {}).filter(([key]) => !(key in given));
  const months = [...(given.months ?? [])].reduce<readonly ClimateMonth[]>((rows, row) => {
    const at = rows.findIndex(({ month }) => month === row.month);
    return at < 0 ? [...rows, row] : rows.with(at, { ...rows[at], ...row });
  }, own.months);
  return {
    ...before,
    ...given,
    months: months.toSorted((a, b) => a.month - b.month),
    ...(kept.length > 0 && { how: Object.fromEntries(kept) }),
  };
}

function withRows(own: readonly PlantRow[], given: readonly PlantRow[]): readonly PlantRow[] {
  return [...own.filter(({ id }) => !given.some((row) => row.id === id)), ...given];
}

function changesOf(before: Plan, after: Plan): string[] {
  return [
    ...climateChanges(before, after),
    ...plantChanges(before, after),
    ...stockChanges(before, after),
    ...cautionChanges(before, after),
  ];
}

/** Numbers of the climate in words, by key. */
const CLIMATE_WORDS: Readonly<
  Record<string, readonly [words: string, format: (value: number, units: Units) => string]>
> = {
  high: ['high', (value, units) => formatTemperature(value, units, 1)],
  low: ['low', (value, units) => formatTemperature(value, units, 1)],
  hotAir: ['hot air', (value, units) => formatTemperature(value, units, 1)],
  heatwaveHigh: ['heatwave high', (value, units) => formatTemperature(value, units, 1)],
  offset: ['offset of your own thermometer', (value, units) => formatTemperatureDifference(value, units, 1)],
  spread: ['spread of the highs', (value, units) => formatTemperatureDifference(value, units, 1)],
  gust: ['gust to build for', formatSpeed],
  wind: ['wind', formatSpeed],
  humidity: ['humidity', (value) => `${value} %`],
  sunshine: ['share of sunshine', formatShare],
  sunshineAfternoon: ['share of sunshine after noon', formatShare],
  turbidity: ['haze', String],
};

function climateChanges({ climate: before }: Plan, after: Plan): string[] {
  const units = unitsOf(after);
  const { months, ...rest } = after.climate;
  const own = numberChanges(before, rest, units).map((change) => `Climate, ${change}.`);
  const byMonth = months.flatMap((row) => {
    const was = before.months.find(({ month }) => month === row.month);
    const changes = numberChanges(was ?? {}, row, units);
    return was === undefined
      ? [`${monthWord(row.month)} is new: ${changes.join('; ')}.`]
      : changes.map((change) => `${monthWord(row.month)}, ${change}.`);
  });
  const { frost } = after.climate;
  const frosty =
    JSON.stringify(frost) === JSON.stringify(before.frost) || frost === undefined
      ? []
      : [
          `Frost: first ${frost.first ?? 'not known'}, last ${frost.last ?? 'not known'}, lowest ` +
            `${frost.lowest === undefined ? 'not known' : formatTemperature(frost.lowest, units)}.`,
        ];
  const source =
    after.climate.source === before.source && after.climate.from === before.from
      ? []
      : [
          `The climate’s source: ` +
            `${after.climate.source ?? 'not named'}${after.climate.from === 'rough' ? ' (rough)' : ''}.`,
        ];
  return [...own, ...byMonth, ...frosty, ...source];
}

/** "high: 38 °C becomes 39 °C" for each number that differs; one that is new without what it was. */
function numberChanges(before: object, after: object, units: Units): string[] {
  const was = new Map<string, unknown>(Object.entries(before));
  return Object.entries(after).flatMap(([key, value]: [string, unknown]) => {
    if (!(key in CLIMATE_WORDS) || typeof value !== 'number' || was.get(key) === value) return [];
    const [words, format] = CLIMATE_WORDS[key];
    const old = was.get(key);
    const becomes = typeof old === 'number' ? `${format(old, units)} becomes ` : '';
    return [`${words}: ${becomes}${format(value, units)}`];
  });
}

function plantChanges(before: Plan, { plants = [] }: Plan): string[] {
  return plants.flatMap((row) => {
    const was = plantRowOf(before, row.id);
    if (was === undefined) return [`A new plant: ${row.name}.`];
    const old = new Map<string, unknown>(Object.entries(was));
    const keys = [...new Set([...Object.keys(was), ...Object.keys(row)])].filter(
      (key) => JSON.stringify(old.get(key)) !== JSON.stringify(Object.entries(row).find(([name]) => name === key)?.[1]),
    );
    return keys.length === 0
      ? []
      : [`${was.name}: other figures for ${listWords(keys.map((key) => ROW_WORDS[key] ?? key))}.`];
  });
}

const ROW_WORDS: Readonly<Record<string, string>> = {
  sunHours: 'hours of sun',
  minDLI: 'least daily light',
  heatLimit: 'heat limit',
  limitOf: 'what the limit is of',
  limitBasis: 'the limit’s ground',
  afternoonShade: 'afternoon shade',
  cloth: 'density of cloth',
  frostDamage: 'frost damage',
  leafWidth: 'leaf width',
  fruitWidth: 'fruit width',
  bothSides: 'stomata',
  sources: 'sources',
  note: 'the note',
  name: 'the name',
  botanical: 'the botanical name',
};

function stockChanges({ stock: before = {} }: Plan, { stock: after = {} }: Plan): string[] {
  const differs = (key: keyof Stock) => JSON.stringify(before[key]) !== JSON.stringify(after[key]);
  const prices = Object.entries(after.prices ?? {}).filter(([key, price]) => before.prices?.[key] !== price).length;
  return [
    ...(differs('currency')
      ? [
          `Prices are in ${after.currency ?? 'no currency'}` +
            `${before.currency === undefined ? '' : `, no longer in ${before.currency}`}.`,
        ]
      : []),
    ...(differs('tubes')
      ? [`The shop’s tubes: ${before.tubes?.length ?? 'the built-in list'} before, ${after.tubes?.length ?? 0} now.`]
      : []),
    ...(differs('cloth')
      ? [`The shop’s cloths: ${before.cloth?.length ?? 'the built-in list'} before, ${after.cloth?.length ?? 0} now.`]
      : []),
    ...(differs('kerf') ? ['What a cut loses.'] : []),
    ...(prices > 0 ? [`${prices} ${prices === 1 ? 'price' : 'prices'} of fittings.`] : []),
  ];
}

function cautionChanges({ cautions: before = [] }: Plan, { cautions: after = [] }: Plan): string[] {
  return after.slice(before.length).map(({ text }) => `A caution more: ${text}`);
}
