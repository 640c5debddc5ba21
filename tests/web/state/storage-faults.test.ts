import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demoPlan } from '../../../engine/index.ts';
import { commitEdit } from '../../../web/state/edit.ts';
import { save, saveState } from '../../../web/state/saving.ts';
import { addYard, openLastYard, shelf } from '../../../web/state/shelf.ts';
import { notice } from '../../../web/state/speech.ts';
import { newRecord, NOTHING_STORED, readYard, saveYard } from '../../../web/state/storage/yards.ts';
import { openYard, plan } from '../../../web/state/yard.ts';
import { MemoryDatabase } from './memory-database.ts';
import type { Fault } from './memory-database.ts';

const KEPT = { ...demoPlan('lane'), name: 'Kept before' };
const DEMO_NAME = demoPlan('courtyard').name;

let database: MemoryDatabase;
beforeEach(async () => {
  // Fetched when it is first wanted, which takes time that no clock of the test knows of.
  await import('../../../web/state/plan-reader.ts');
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  database = new MemoryDatabase();
  database.enter();
  openYard.value = { id: '', fileCopyAt: null, readOnly: null };
  notice.value = null;
  const saved = saveYard(
    newRecord('kept', '', 1, null),
    { steps: [{ label: 'Opened', plan: KEPT }], cursor: 0 },
    NOTHING_STORED,
    1,
  );
  await vi.runAllTimersAsync();
  await saved;
  database.forget();
});
afterEach(async () => {
  database.fault = () => null;
  await saved();
  await vi.advanceTimersByTimeAsync(200_000);
  database.leave();
  vi.useRealTimers();
});

/** Until it is called again everything of the kind does so. */
function always(operation: string, does: ReturnType<Fault>): void {
  database.fault = (asked) => (asked === operation ? does : null);
}

function once(operation: string, does: ReturnType<Fault>): void {
  let done = false;
  database.fault = (asked) => {
    if (done || asked !== operation) return null;
    done = true;
    return does;
  };
}

/** Lets the page open, as long as it is given. */
async function opened(forMs: number): Promise<void> {
  const opening = openLastYard();
  await vi.advanceTimersByTimeAsync(forMs);
  await opening;
}

async function saved(): Promise<void> {
  void save();
  await vi.advanceTimersByTimeAsync(100);
}

for (const operation of ['open', 'read'])
  test(`where the first ${operation} never answers the page opens after three seconds, unsaved`, async () => {
    always(operation, 'hang');
    await opened(3_100);
    expect(plan.value.name).toBe(DEMO_NAME);
    expect(saveState.value.kind).toBe('unsaved');
    expect(notice.value).toMatchObject({ kind: 'problem', action: { label: 'Save a file' } });
    expect(notice.value?.text).toMatch(/storage does not answer/);
  });

for (const operation of ['open', 'read'])
  test(`where only the first ${operation} is forgotten the yard comes by itself`, async () => {
    once(operation, 'hang');
    await opened(3_100);
    await vi.advanceTimersByTimeAsync(10_000);
    expect(plan.value.name).toBe('Kept before');
    expect(saveState.value.kind).toBe('saved');
  });

test('what was done until the storage came is kept beside the yard from before', async () => {
  always('open', 'hang');
  await opened(3_100);
  commitEdit('Rename', { ...plan.value, name: 'Done meanwhile' });
  void save();
  await vi.advanceTimersByTimeAsync(100);
  expect(saveState.value.kind).toBe('unsaved');
  database.fault = () => null;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(plan.value.name).toBe('Done meanwhile');
  expect(saveState.value.kind).toBe('saved');
  expect(shelf.value.map(({ name }) => name).sort()).toEqual(['Done meanwhile', 'Kept before']);
  expect(notice.value?.action?.label).toBe('Open Kept before');
});

test('a browser that throws when its storage is looked at opens the page, unsaved', async () => {
  database.forbid();
  await opened(100);
  expect(plan.value.name).toBe(DEMO_NAME);
  expect(saveState.value).toMatchObject({ kind: 'unsaved', why: expect.stringMatching(/does not let/) as string });
});

test('a full storage does not keep a yard from opening', async () => {
  always('write', new DOMException('Full.', 'QuotaExceededError'));
  await opened(100);
  expect(plan.value.name).toBe('Kept before');
});

test('a yard whose hours of weather never come is shown without them', async () => {
  await opened(100);
  always('read', 'hang');
  void addYard({ ...KEPT, name: 'After a file', climate: { ...KEPT.climate, from: 'file', source: 'a' } }, 'Opened');
  // Three seconds for the yard that is left, three for the hours.
  await vi.advanceTimersByTimeAsync(6_200);
  expect(plan.value.name).toBe('After a file');
});

test('an edit that the storage does not answer is said after three seconds, and kept once it answers', async () => {
  await opened(100);
  always('write', 'hang');
  commitEdit('Rename', { ...plan.value, name: 'Slowly' });
  void save();
  await vi.advanceTimersByTimeAsync(3_100);
  expect(saveState.value.kind).toBe('unsaved');
  database.fault = () => null;
  await vi.advanceTimersByTimeAsync(40_000);
  expect(saveState.value.kind).toBe('saved');
  const read = readYard('kept');
  await vi.advanceTimersByTimeAsync(100);
  expect((await read)?.history.steps.at(-1)?.plan.name).toBe('Slowly');
});

test('a damaged record of the last yard costs none of its steps', async () => {
  database.records.set('yard/kept', { revision: 1 });
  await opened(100);
  expect(plan.value.name).toBe('Kept before');
  await saved();
  expect(saveState.value.kind).toBe('saved');
});

test('where the last yard cannot be read another that is whole is opened, and that is said', async () => {
  database.records.set('yard/worse', { ...newRecord('worse', 'Worse', 5, null), revision: 1, steps: 1 });
  database.records.set('steps/worse/000000000', 'no step');
  database.records.set('last-open', 'worse');
  await opened(100);
  expect(plan.value.name).toBe('Kept before');
  expect(notice.value?.text).toMatch(/could not be read. Kept before is open instead/);
});

test('where no yard can be read it is not said that the browser cleared them', async () => {
  database.records.set('steps/kept/000000000', 'no step');
  for (const key of database.records.keys()) if (key.startsWith('good/')) database.records.delete(key);
  await opened(100);
  expect(plan.value.name).toBe(DEMO_NAME);
  expect(notice.value?.text).toMatch(/No yard kept in this browser could be read/);
});

const KINDS = {
  silence: 'hang',
  'no room': new DOMException('Full.', 'QuotaExceededError'),
  'a lost connection': new DOMException('Connection lost.', 'UnknownError'),
  'a closed connection': new DOMException('Closing.', 'InvalidStateError'),
  'an end without a reason': new DOMException('', 'AbortError'),
} as const;

/** The newest name that storage holds of the open yard. */
async function nameOnDisk(): Promise<string | undefined> {
  const held = database.fault;
  database.fault = () => null;
  const reading = readYard(openYard.value.id);
  await vi.advanceTimersByTimeAsync(100);
  database.fault = held;
  return (await reading)?.history.steps.at(-1)?.plan.name;
}

async function renamed(name: string): Promise<void> {
  commitEdit('Rename', { ...plan.value, name });
  void save();
  await vi.advanceTimersByTimeAsync(3_100);
  if (saveState.value.kind === 'saved') expect(await nameOnDisk()).toBe(name);
  else
    expect(saveState.value).toMatchObject({
      kind: 'unsaved',
      why: expect.not.stringMatching(/null|undefined|\(\)/) as string,
    });
}

for (const operation of ['open', 'read', 'write'])
  for (const [kind, fault] of Object.entries(KINDS))
    for (const lasting of [once, always])
      test(`${kind} at ${operation}, ${lasting.name}, then a second fault: nothing lost, "saved" is true`, async () => {
        lasting(operation, fault);
        await opened(3_200);
        expect(plan.value.features.length).toBeGreaterThan(0);
        await renamed('First');
        once('write', KINDS['an end without a reason']);
        await renamed('Second');
        once('read', KINDS.silence);
        await renamed('Third');
        database.fault = () => null;
        await renamed('Last');
        await vi.advanceTimersByTimeAsync(60_000);
        expect(saveState.value.kind).toBe('saved');
        expect(await nameOnDisk()).toBe('Last');
        const before = readYard('kept');
        await vi.advanceTimersByTimeAsync(100);
        expect((await before)?.history.steps[0].plan.name).toBe('Kept before');
      });
