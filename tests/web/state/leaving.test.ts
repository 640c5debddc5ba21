import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { demoPlan } from '../../../engine/index.ts';
import { keepOffline } from '../../../web/app/offline.ts';
import { commitEdit } from '../../../web/state/edit.ts';
import { mayLeave, noteFileCopy, save, saveState } from '../../../web/state/saving.ts';
import { addYard, openFromShelf } from '../../../web/state/shelf.ts';
import { notice } from '../../../web/state/speech.ts';
import { mapHeight, periodKind, quantity, selection, shownOptions } from '../../../web/state/view.ts';
import { history, openYard, plan } from '../../../web/state/yard.ts';
import { turn } from '../turn.ts';
import { MemoryDatabase } from './memory-database.ts';

const DEMO = demoPlan('courtyard');
const full = (operation: string): DOMException | null =>
  operation === 'write' ? new DOMException('Full.', 'QuotaExceededError') : null;

let database: MemoryDatabase;
beforeEach(async () => {
  database = new MemoryDatabase();
  database.enter();
  openYard.value = { id: '', fileCopyAt: null, readOnly: null };
  history.value = { steps: [{ label: 'Demo yard', plan: DEMO }], cursor: 0 };
  await addYard({ ...DEMO, name: 'Before' }, 'Opened');
});
afterEach(() => database.leave());

function rename(name: string): void {
  commitEdit(`Rename to ${name}`, { ...plan.value, name });
}

test('a yard whose last edit could not be saved is left by no button, and a file of it is offered', async () => {
  const first = openYard.value.id;
  await addYard({ ...DEMO, name: 'Work' }, 'Opened');
  database.fault = full;
  rename('Work of an hour');
  expect(await addYard(DEMO, 'Demo yard')).toBe(false);
  await openFromShelf(first);
  expect(await mayLeave()).toBe(false);
  expect(plan.value.name).toBe('Work of an hour');
  expect(saveState.value.kind).toBe('unsaved');
  expect(notice.value).toMatchObject({ kind: 'problem', action: { label: 'Save a file' } });
});

test('what was looked at in one yard is not looked at in the next: its things, its day, the height of its plants', async () => {
  selection.value = ['lemon'];
  shownOptions.value = ['A'];
  periodKind.value = 'day';
  mapHeight.value = 1.7;
  quantity.value = 'skyView';
  await addYard({ ...demoPlan('lane'), name: 'Next' }, 'Opened');
  expect([selection.value, shownOptions.value, periodKind.value, mapHeight.value, quantity.value]).toEqual([
    [],
    [],
    'heatwave',
    0.5,
    'hotLoad',
  ]);
});

test('once it is in a file it may be left, until the next edit', async () => {
  database.fault = full;
  rename('In a file');
  noteFileCopy(1);
  await save();
  expect(await mayLeave()).toBe(true);
  rename('And more');
  expect(await mayLeave()).toBe(false);
});

test('once there is room again it is saved and may be left', async () => {
  database.fault = full;
  rename('No room');
  expect(await mayLeave()).toBe(false);
  database.fault = () => null;
  expect(await mayLeave()).toBe(true);
  expect(await addYard(DEMO, 'Demo yard')).toBe(true);
});

test('a yard in which nothing was done is left even where nothing can be kept', async () => {
  await addYard(DEMO, 'Demo yard');
  database.fault = full;
  expect(await addYard({ ...DEMO, name: 'Another' }, 'Opened')).toBe(true);
  expect(plan.value.name).toBe('Another');
});

test('a new version waits until what was done in the yard is kept', async () => {
  const waiting = { postMessage: vi.fn() };
  vi.stubGlobal('HAS_SERVICE_WORKER', true);
  vi.stubGlobal('navigator', {
    serviceWorker: {
      controller: {},
      addEventListener: () => undefined,
      register: () => Promise.resolve({ waiting, installing: null, addEventListener: () => undefined }),
    },
  });
  keepOffline();
  await turn();
  const takeOver = notice.value?.action;
  expect(takeOver?.label).toBe('Use the new version');
  database.fault = full;
  rename('Work of an hour');
  await takeOver?.run();
  expect(waiting.postMessage).not.toHaveBeenCalled();
  expect(notice.value).toMatchObject({ kind: 'problem', action: { label: 'Save a file' } });
  database.fault = () => null;
  await takeOver?.run();
  expect(waiting.postMessage).toHaveBeenCalledWith('take over');
});

test('a yard is not left while its last save is still under way', async () => {
  rename('Being saved');
  const saving = save();
  // That one goes well; the one after it is never answered.
  let writes = 0;
  database.fault = (operation) => (operation === 'write' && ++writes > 3 ? 'hang' : null);
  rename('And edited meanwhile');
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  const left = mayLeave();
  await vi.advanceTimersByTimeAsync(3_001);
  expect(await left).toBe(false);
  database.fault = () => null;
  await vi.advanceTimersByTimeAsync(40_000);
  await saving;
  vi.useRealTimers();
  expect(saveState.value.kind).toBe('saved');
});
