import { afterEach, beforeEach, expect, test } from 'vitest';
import { demoPlan } from '../../../engine/index.ts';
import { commitEdit } from '../../../web/state/edit.ts';
import { mayLeave, noteFileCopy, save, saveState } from '../../../web/state/saving.ts';
import { addYard, openFromShelf } from '../../../web/state/shelf.ts';
import { notice } from '../../../web/state/speech.ts';
import { openYard, plan } from '../../../web/state/yard.ts';
import { MemoryDatabase } from './memory-database.ts';

const DEMO = demoPlan('courtyard');
const full = (operation: string): DOMException | null =>
  operation === 'write' ? new DOMException('Full.', 'QuotaExceededError') : null;

let database: MemoryDatabase;
beforeEach(async () => {
  database = new MemoryDatabase();
  database.enter();
  openYard.value = { id: '', fileCopyAt: null, readOnly: null };
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
