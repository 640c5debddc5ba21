import { planText } from '../../../engine/index.ts';
import type { Plan } from '../../../engine/index.ts';
import type { History, Step } from '../yard.ts';
import { withoutPictures, withPictures } from './pictures.ts';
import { readRecord, readRecords, swapRecords, writeRecords } from './records.ts';

/** What the shelf knows of a yard. Each of its steps stands in a record of its own, its pictures beside them. */
export interface YardRecord {
  readonly id: string;
  readonly name: string;
  /** Goes up by one with every save; looked at and raised in one transaction. */
  readonly revision: number;
  readonly cursor: number;
  readonly steps: number;
  /** [ms UTC] */
  readonly changedAt: number;
  /** When the person last wrote the yard to a file; `null`: never. [ms UTC] */
  readonly fileCopyAt: number | null;
  /** When the person took it off the shelf; kept until deleted for good. [ms UTC] */
  readonly putAwayAt: number | null;
}

/** A state of a yard that was whole when it was opened. */
export interface GoodState {
  /** [ms UTC] */
  readonly at: number;
  readonly plan: Plan;
}

/** Where the steps of a yard are stored, so that a save writes only what is new. */
export interface StoredSteps {
  readonly keys: ReadonlyMap<Step, string>;
  /** Records that the next save takes away: of an older form, or of steps that could not be read. */
  readonly outdated: readonly string[];
  /** Number of the next step's record: keys in their order are the steps in theirs. */
  readonly next: number;
}

export const NOTHING_STORED: StoredSteps = { keys: new Map(), outdated: [], next: 0 };

const GOOD_STATES = 5;

const yardKey = (id: string): string => `yard/${id}`;
const stepKey = (id: string, serial: number): string => `steps/${id}/${String(serial).padStart(9, '0')}`;
const pictureKey = (id: string, name: string): string => `picture/${id}/${name}`;
const goodKey = (id: string, at: number): string => `good/${id}/${String(at).padStart(15, '0')}`;

export async function listYards(): Promise<YardRecord[]> {
  return [...(await readRecords('yard/')).values()].filter(isYardRecord).sort((a, b) => b.changedAt - a.changedAt);
}

async function lastOpenId(): Promise<string | null> {
  const id = await readRecord('last-open');
  return typeof id === 'string' ? id : null;
}

/**
 * What opening a yard found. `repaired` tells, in one sentence, what was lost when its newest state could not be read.
 */
export interface OpenedYard {
  readonly record: YardRecord;
  readonly history: History;
  readonly stored: StoredSteps;
  readonly repaired: string | null;
}

/** What the browser still holds at the page's start. */
export interface Found {
  /** `null` where nothing can be opened. */
  readonly opened: OpenedYard | null;
  /** Whether a yard stands before it that could not be read. */
  readonly damaged: boolean;
}

/** The yard that was open last, or else the one that was changed last of those that can be read. */
export async function findYard(): Promise<Found> {
  const [last, shelf] = await Promise.all([lastOpenId(), readRecords('yard/')]);
  const others = [...shelf.values()]
    .filter(isYardRecord)
    .filter(({ id }) => id !== last)
    .sort((a, b) => Number(a.putAwayAt !== null) - Number(b.putAwayAt !== null) || b.changedAt - a.changedAt)
    .map(({ id }) => id);
  const tried = last === null ? others : [last, ...others];
  for (const id of tried) {
    const opened = await readYard(id);
    if (opened) return { opened, damaged: id !== tried[0] };
  }
  return { opened: null, damaged: shelf.size > 0 };
}

/** Opens a yard from storage, trusting nothing: a newest state that is not a plan gives way to the last good one. */
export async function readYard(id: string): Promise<OpenedYard | null> {
  const [held, records, pictures, goods, isWhole] = await Promise.all([
    readRecord(yardKey(id)),
    readRecords(`steps/${id}/`),
    readPictures(id),
    readGoodStates(id),
    planChecker(),
  ]);
  const { steps, stored } = stepsIn(records, pictures);
  const record = isYardRecord(held) ? held : recordAnew(id, held, steps);
  const cursor = Math.min(record.cursor, steps.length - 1);
  if (steps.length === record.steps && cursor >= 0 && isWhole(steps[cursor].plan)) {
    // Only notes: where there is no room for them the yard opens all the same.
    void keepGoodState(id, steps[cursor].plan, goods).catch(() => undefined);
    void writeRecords({ put: new Map([['last-open', id]]) }).catch(() => undefined);
    return { record, history: { steps, cursor }, stored, repaired: null };
  }
  const sound = steps.findLastIndex((step) => isWhole(step.plan));
  const plan = sound >= 0 ? steps[sound].plan : goods.findLast((good) => isWhole(good.plan))?.plan;
  if (!plan) return null;
  const history = {
    steps: [...steps.slice(0, Math.max(0, sound)), { label: 'Last good state', plan }],
    cursor: Math.max(0, sound),
  };
  return {
    record,
    history,
    stored: { keys: new Map(), outdated: [...records.keys()], next: stored.next },
    repaired: 'The newest state of this yard could not be read, so the last good one is open.',
  };
}

/** Stands for a record that is gone or damaged, so that the steps beside it still open; its number of steps is none. */
function recordAnew(id: string, held: unknown, steps: readonly Step[]): YardRecord {
  const revision = hasFields(held, ['revision']) ? Number((held as { revision: unknown }).revision) : 0;
  const name = steps.at(-1)?.plan.name ?? 'Unnamed yard';
  return { ...newRecord(id, name, Date.now(), null), revision, cursor: steps.length - 1 };
}

/** The steps among a yard's records, and which stands where. An older form held several steps in one record. */
function stepsIn(
  records: ReadonlyMap<string, unknown>,
  pictures: ReadonlyMap<string, string>,
): { readonly steps: Step[]; readonly stored: StoredSteps } {
  const steps: Step[] = [];
  const keys = new Map<Step, string>();
  const outdated: string[] = [];
  let next = 0;
  for (const [key, found] of records) {
    next = Math.max(next, Number(key.slice(key.lastIndexOf('/') + 1)) + 1);
    const sound = (Array.isArray(found) ? found : [found])
      .filter(isStep)
      .map(({ label, plan }): Step => ({ label, plan: withPictures(plan, pictures) }));
    steps.push(...sound);
    if (Array.isArray(found) || sound.length === 0) outdated.push(key);
    else keys.set(sound[0], key);
  }
  return { steps, stored: { keys, outdated, next } };
}

/**
 * Saves what is new since the last save, if storage still holds `revision`: one step made writes one step.
 * @param stored where the steps stood after that save
 * @returns the new record and where its steps stand; when nothing was written, that another tab was faster, or that the
 *   browser has cleared the yard
 */
export async function saveYard(
  record: YardRecord,
  history: History,
  stored: StoredSteps,
  now: number,
): Promise<{ readonly record: YardRecord; readonly stored: StoredSteps } | 'newer' | 'gone'> {
  const { id } = record;
  const { steps, cursor } = history;
  const saved: YardRecord = {
    ...record,
    revision: record.revision + 1,
    cursor,
    steps: steps.length,
    name: steps[cursor].plan.name ?? 'Unnamed yard',
    changedAt: now,
  };
  const put = new Map<string, unknown>([[yardKey(id), saved]]);
  const pictures = new Map<string, string>();
  const keys = new Map<Step, string>();
  let { next } = stored;
  for (const step of steps) {
    const key = stored.keys.get(step) ?? stepKey(id, next++);
    keys.set(step, key);
    if (!stored.keys.has(step)) put.set(key, { label: step.label, plan: withoutPictures(step.plan, pictures) });
  }
  for (const [name, image] of pictures) put.set(pictureKey(id, name), image);
  put.set('last-open', id);
  const gone = [...stored.keys].flatMap(([step, key]) => (keys.has(step) ? [] : [key]));
  const ended = await swapRecords(yardKey(id), record.revision, { put, remove: [...stored.outdated, ...gone] });
  return ended === 'written' ? { record: saved, stored: { keys, outdated: [], next } } : ended;
}

/** A record for a yard that is not stored yet. */
export function newRecord(id: string, name: string, now: number, fileCopyAt: number | null): YardRecord {
  return { id, name, revision: 0, cursor: 0, steps: 0, changedAt: now, fileCopyAt, putAwayAt: null };
}

/** Changes what the shelf knows of a yard, not its plan. @returns false when another tab was faster. */
export async function saveRecord(
  record: YardRecord,
  change: Partial<Pick<YardRecord, 'fileCopyAt' | 'putAwayAt'>>,
): Promise<boolean> {
  const next = { ...record, ...change, revision: record.revision + 1 };
  return (
    (await swapRecords(yardKey(record.id), record.revision, { put: new Map([[yardKey(record.id), next]]) })) ===
    'written'
  );
}

export async function deleteYard(id: string): Promise<void> {
  const found = await Promise.all(['steps', 'picture', 'good'].map((kind) => readRecords(`${kind}/${id}/`)));
  await writeRecords({ remove: [yardKey(id), ...found.flatMap((records) => [...records.keys()])] });
}

/** The last good states of a yard, oldest first. */
export async function readGoodStates(id: string): Promise<GoodState[]> {
  const pictures = await readPictures(id);
  return [...(await readRecords(`good/${id}/`)).values()]
    .filter(isGoodState)
    .map(({ at, plan }) => ({ at, plan: withPictures(plan, pictures) }));
}

async function keepGoodState(id: string, plan: Plan, goods: readonly GoodState[]): Promise<void> {
  const newest = goods.at(-1);
  if (newest && planText(newest.plan) === planText(plan)) return;
  const at = Math.max(Date.now(), (newest?.at ?? 0) + 1);
  const pictures = new Map<string, string>();
  const put = new Map<string, unknown>([[goodKey(id, at), { at, plan: withoutPictures(plan, pictures) }]]);
  for (const [name, image] of pictures) put.set(pictureKey(id, name), image);
  const remove = goods.slice(0, Math.max(0, goods.length + 1 - GOOD_STATES)).map((good) => goodKey(id, good.at));
  await writeRecords({ put, remove });
}

async function readPictures(id: string): Promise<Map<string, string>> {
  const prefix = pictureKey(id, '');
  const pictures = new Map<string, string>();
  for (const [key, image] of await readRecords(prefix))
    if (typeof image === 'string') pictures.set(key.slice(prefix.length), image);
  return pictures;
}

async function planChecker(): Promise<(plan: Plan) => boolean> {
  const { parsePlan } = await import('../plan-reader.ts');
  return (plan) => {
    try {
      return parsePlan(planText(plan)).ok;
    } catch {
      return false;
    }
  };
}

function isYardRecord(value: unknown): value is YardRecord {
  return hasFields(value, ['id', 'name', 'revision', 'cursor', 'steps', 'changedAt']);
}

function isStep(value: unknown): value is Step {
  return hasFields(value, ['label', 'plan']) && hasFields((value as Step).plan, ['site', 'features']);
}

function isGoodState(value: unknown): value is GoodState {
  return hasFields(value, ['at', 'plan']) && hasFields((value as GoodState).plan, ['site', 'features']);
}

function hasFields(value: unknown, fields: readonly string[]): boolean {
  return typeof value === 'object' && value !== null && fields.every((field) => field in value);
}
