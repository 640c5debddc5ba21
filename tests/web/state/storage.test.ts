import { afterEach, beforeEach, expect, test } from 'vitest';
import { demoPlan } from '../../../engine/index.ts';
import type { Plan } from '../../../engine/index.ts';
import { newRecord, NOTHING_STORED, readYard, saveYard } from '../../../web/state/storage/yards.ts';
import type { StoredSteps, YardRecord } from '../../../web/state/storage/yards.ts';
import type { History, Step } from '../../../web/state/yard.ts';
import { MemoryDatabase } from './memory-database.ts';

const FIRST = demoPlan('courtyard');
const PICTURE = 'data:image/png;base64,AAAA';
const stepNamed = (name: string): Step => ({ label: `Rename to ${name}`, plan: { ...FIRST, name } });
const ending = (...steps: Step[]): History => ({ steps, cursor: steps.length - 1 });

let database: MemoryDatabase;
beforeEach(() => {
  database = new MemoryDatabase();
  database.enter();
});
afterEach(() => database.leave());

/** Saves what must be saved. */
async function saved(
  record: YardRecord,
  history: History,
  stored: StoredSteps,
): Promise<{ record: YardRecord; stored: StoredSteps }> {
  const done = await saveYard(record, history, stored, 1);
  if (typeof done === 'string') throw new Error(`Not written: ${done}.`);
  return done;
}

test('one step made writes one step, however many there are', async () => {
  const steps = Array.from({ length: 50 }, (_, k) => stepNamed(String(k)));
  const before = await saved(newRecord('a', 'A', 0, null), ending(...steps), NOTHING_STORED);
  await saved(before.record, ending(...steps, stepNamed('50')), before.stored);
  const { put, removed } = database.changes.at(-1) ?? { put: [], removed: ['?'] };
  expect(put.filter((key) => key.startsWith('steps/'))).toHaveLength(1);
  expect(removed).toEqual([]);
});

test('a history is read as it was saved, through undo, a new branch, and the loss of its oldest steps', async () => {
  const [a, b, c, d] = ['a', 'b', 'c', 'd'].map(stepNamed);
  let state = await saved(newRecord('y', 'Y', 0, null), ending(a, b, c), NOTHING_STORED);
  state = await saved(state.record, { steps: [a, b, c], cursor: 0 }, state.stored);
  state = await saved(state.record, ending(a, b, d), state.stored);
  state = await saved(state.record, ending(b, d), state.stored);
  const opened = await readYard('y');
  expect(opened?.repaired).toBe(null);
  expect(opened?.history).toEqual(ending(b, d));
  expect([...database.records.keys()].filter((key) => key.startsWith('steps/'))).toHaveLength(2);
  // And what was read goes on being saved step by step.
  if (!opened) throw new Error('No yard.');
  await saved(opened.record, ending(...opened.history.steps, c), opened.stored);
  expect(database.changes.at(-1)?.put.filter((key) => key.startsWith('steps/'))).toHaveLength(1);
  expect((await readYard('y'))?.history).toEqual(ending(b, d, c));
});

test('a yard stored many steps to a record is read, and kept step by step from its next save on', async () => {
  const [a, b, c] = ['a', 'b', 'c'].map(stepNamed);
  const record = { ...newRecord('old', 'Old', 0, null), revision: 3, cursor: 1, steps: 2 };
  database.records.set('yard/old', record);
  database.records.set('steps/old/000000', [a, b]);
  const opened = await readYard('old');
  expect(opened?.history).toEqual(ending(a, b));
  if (!opened) throw new Error('No yard.');
  await saved(opened.record, ending(...opened.history.steps, c), opened.stored);
  expect(database.records.has('steps/old/000000')).toBe(false);
  expect((await readYard('old'))?.history).toEqual(ending(a, b, c));
});

test('a yard whose newest step is damaged opens at the one before, and its next save leaves nothing of the damage', async () => {
  const state = await saved(newRecord('y', 'Y', 0, null), ending(stepNamed('a'), stepNamed('b')), NOTHING_STORED);
  const newest = [...state.stored.keys.values()].at(-1) ?? '';
  database.records.set(newest, { label: 'Rename to b', plan: { ...FIRST, site: { ...FIRST.site, latitude: 'here' } } });
  const opened = await readYard('y');
  expect(opened?.repaired).toMatch(/could not be read/);
  expect(opened?.history.steps.at(-1)?.plan.name).toBe('a');
  if (!opened) throw new Error('No yard.');
  await saved(opened.record, opened.history, opened.stored);
  expect((await readYard('y'))?.repaired).toBe(null);
});

test('of two tabs that save the same yard the second writes nothing, and one whose yard was cleared is told so', async () => {
  const first = await saved(newRecord('y', 'Y', 0, null), ending(stepNamed('a')), NOTHING_STORED);
  await saved(first.record, ending(stepNamed('b')), first.stored);
  const before = new Map(database.records);
  expect(await saveYard(first.record, ending(stepNamed('c')), first.stored, 1)).toBe('newer');
  expect(database.records).toEqual(before);
  database.records.clear();
  expect(await saveYard(first.record, ending(stepNamed('c')), first.stored, 1)).toBe('gone');
  expect(database.records.size).toBe(0);
});

test('a picture is stored once for all steps that show it, and comes back in each', async () => {
  const underlay: Plan['site']['underlay'] = { image: PICTURE, at: [0, 0], width: 4, turn: 0, opacity: 0.5 };
  const pictured = (name: string): Step => ({
    label: name,
    plan: { ...FIRST, name, site: { ...FIRST.site, underlay } },
  });
  await saved(newRecord('y', 'Y', 0, null), ending(pictured('a'), pictured('b')), NOTHING_STORED);
  const pictures = [...database.records].filter(([key]) => key.startsWith('picture/'));
  expect(pictures.map(([, image]) => image)).toEqual([PICTURE]);
  expect(JSON.stringify([...database.records].filter(([key]) => key.startsWith('steps/')))).not.toContain(PICTURE);
  expect((await readYard('y'))?.history.steps.map(({ plan }) => plan.site.underlay?.image)).toEqual([PICTURE, PICTURE]);
});
