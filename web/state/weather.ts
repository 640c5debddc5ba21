import { computed, effect, signal } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import type { Plan, Weather } from '../../engine/index.ts';
import { readRecord, readRecords, writeRecords } from './storage/records.ts';
import { plan } from './yard.ts';

/**
 * The hours of weather files. A plan keeps a file's months and its name; the hours, too many for a plan, are kept
 * beside it in this browser under what the plan says of its climate's source, and every reckoning is made after them.
 * The source names the file, its place and its content.
 */

/** What storage holds of a weather file. */
interface KeptHours {
  /** [ms UTC] */
  readonly at: number;
  readonly weather: Weather;
}

/** Files kept at most; the oldest make room. */
const MOST_KEPT = 6;

const PREFIX = 'weather/';

/** Hours by the source of the climate that they belong to. */
const known = signal<ReadonlyMap<string, Weather>>(new Map());

/**
 * The hours that the open yard is reckoned after; `undefined` where it has no weather file, or where this browser has
 * not its hours.
 */
export const weatherInUse: ReadonlySignal<Weather | undefined> = computed(() => {
  const source = fileOf(plan.value);
  return source === null ? undefined : known.value.get(source);
});

/** Where a plan's climate comes from when that is a weather file, as its `source` says; else `null`. */
export function fileOf({ climate: { from, source } }: Plan): string | null {
  return from === 'file' && source !== undefined ? source : null;
}

/**
 * Takes hours into use for every plan whose climate is of this source, and keeps them. Rejects when the browser cannot
 * keep them: they last until the page closes.
 */
export async function keepHours(source: string, weather: Weather): Promise<void> {
  known.value = new Map([...known.value, [source, weather]]);
  const others = [...(await readRecords(PREFIX))].filter(
    ([key, hours]) => key !== PREFIX + source && isKept(hours),
  ) as [string, KeptHours][];
  const oldest = others
    .toSorted(([, a], [, b]) => b.at - a.at)
    .slice(MOST_KEPT - 1)
    .map(([key]) => key);
  await writeRecords({
    put: new Map<string, KeptHours>([[PREFIX + source, { at: Date.now(), weather }]]),
    remove: oldest,
  });
}

/** Fetches the kept hours that a plan needs. A plan whose hours are not in this browser is reckoned by its months. */
export async function loadHours(of: Plan): Promise<void> {
  const source = fileOf(of);
  if (source === null || known.peek().has(source)) return;
  const kept = await readRecord(PREFIX + source).catch(() => null);
  if (isKept(kept)) known.value = new Map([...known.peek(), [source, kept.weather]]);
}

/** From now on a step to and fro in the history finds its hours. */
export function followHours(): void {
  effect(() => void loadHours(plan.value));
}

function isKept(value: unknown): value is KeptHours {
  return (
    typeof value === 'object' &&
    value !== null &&
    'at' in value &&
    (value as KeptHours).weather?.air instanceof Float64Array
  );
}
