import { batch, signal } from '@preact/signals';
import { courtyard, shownName } from '../../engine/index.ts';
import type { Plan } from '../../engine/index.ts';
import { onFileSaved, saveFile } from './files.ts';
import {
  becomeReadOnly,
  fileCopyIsOld,
  mayLeave,
  noteFileCopy,
  notKept,
  openRecord,
  save,
  saveInto,
} from './saving.ts';
import { notice, say } from './speech.ts';
import { markKept, wasKept } from './storage/kept-mark.ts';
import { unlessSilent } from './storage/silence.ts';
import { onTabNews } from './storage/tabs.ts';
import { SILENT_STORAGE, storageTrouble } from './storage/trouble.ts';
import {
  deleteYard,
  findYard,
  listYards,
  newRecord,
  NOTHING_STORED,
  readGoodStates,
  readYard,
  saveRecord,
} from './storage/yards.ts';
import type { Found, GoodState, OpenedYard, YardRecord } from './storage/yards.ts';
import { lookAnew } from './view.ts';
import { loadHours } from './weather.ts';
import { history, openYard, plan, preview } from './yard.ts';

/** Every yard kept in this browser, the newest change first; those put away too. */
export const shelf = signal<readonly YardRecord[]>([]);

/**
 * Opens the yard that was open last, or the demo yard where there is none. Always ends with a yard on the screen,
 * though the storage answer too late or never.
 */
export async function openLastYard(): Promise<void> {
  const finding = findYard();
  try {
    const found = await unlessSilent(finding);
    if (found !== 'silent') await showFound(found);
    else {
      await show(demoYard());
      notKept(SILENT_STORAGE);
      const standIn = openYard.value.id;
      finding.then(
        (late) => takeLate(late, standIn),
        (error: unknown) => notKept(storageTrouble(error)),
      );
    }
  } catch (error) {
    await show(demoYard());
    notKept(storageTrouble(error));
  }
  void refreshShelf();
}

/** Shows what storage holds, and says what of it is lost. */
async function showFound({ opened, damaged }: Found): Promise<void> {
  if (opened) {
    await show(opened);
    if (damaged) {
      const name = opened.record.name;
      say(`The yard that was open last could not be read. ${shownName(name)} is open instead.`, 'problem');
    } else remindOfFile();
    return;
  }
  await show(demoYard());
  void save();
  if (damaged) say('No yard kept in this browser could be read. Open the file copy you saved last.', 'problem');
  else if (wasKept()) say('This browser has cleared the yards it kept. Open the file copy you saved last.', 'problem');
}

/** The storage answers after all: what it holds is shown, unless the yard that stands in has been worked on. */
async function takeLate(found: Found, standIn: string): Promise<void> {
  const untouched = openYard.value.id === standIn && history.value.steps.length === 1;
  if (untouched) await showFound(found);
  else {
    await save();
    const { opened } = found;
    if (opened)
      say(`The storage answers: this yard is kept, and ${shownName(opened.record.name)} is on the shelf.`, 'done', {
        label: `Open ${shownName(opened.record.name)}`,
        run: () => openFromShelf(opened.record.id),
      });
  }
  await refreshShelf();
}

function remindOfFile(): void {
  if (notice.value !== null || !fileCopyIsOld(Date.now())) return;
  const { fileCopyAt } = openYard.value;
  say(
    `${
      fileCopyAt === null
        ? 'There is no file copy of this yard yet'
        : 'The last file copy of this yard is over a month old'
    }. Browsers may clear what they keep; a file stays.`,
    'warning',
    { label: 'Save a file', run: saveFile },
  );
}

/**
 * Puts a plan on the shelf as a yard of its own and opens it; the yard that was open stays there.
 * @returns false when that one could not be saved, and so was not left
 */
export async function addYard(next: Plan, firstLabel: string, fileCopyAt: number | null = null): Promise<boolean> {
  if (!(await mayLeave())) return false;
  await show(fresh(next, firstLabel, fileCopyAt));
  await save();
  markKept();
  await refreshShelf();
  return true;
}

/** Opens a yard of the shelf. */
export async function openFromShelf(id: string): Promise<void> {
  if (!(await mayLeave())) return;
  try {
    const opened = await readYard(id);
    if (opened) await show(opened);
    else say('That yard could not be read. What is open stays open.', 'problem');
  } catch (error) {
    say(storageTrouble(error), 'problem');
  }
  await refreshShelf();
}

/** In a tab that can only look: shows the newest state, and may change it again. */
export function showNewest(): Promise<void> {
  openYard.value = { ...openYard.value, readOnly: 'The newest state is being opened.' };
  return openFromShelf(openYard.value.id);
}

/** A copy of the open yard, on the shelf beside it; the copy is opened. */
export function copyYard(): Promise<boolean> {
  return addYard({ ...plan.value, name: `${plan.value.name ?? 'Unnamed yard'}, copy` }, 'Copy of a yard');
}

export function putAway(yard: YardRecord): Promise<void> {
  return onShelf(() => saveRecord(yard, { putAwayAt: Date.now() }));
}

export function bringBack(yard: YardRecord): Promise<void> {
  return onShelf(() => saveRecord(yard, { putAwayAt: null }));
}

export function deleteForGood(yard: YardRecord): Promise<void> {
  return onShelf(() => deleteYard(yard.id));
}

/** Does something to a yard that is not open, and says when storage does not allow it. */
async function onShelf(work: () => Promise<unknown>): Promise<void> {
  await work().catch((error: unknown) => say(storageTrouble(error), 'problem'));
  await refreshShelf();
}

/** Earlier states of the open yard that were whole, oldest first. */
export function goodStates(): Promise<GoodState[]> {
  return readGoodStates(openYard.value.id).catch(() => []);
}

export async function refreshShelf(): Promise<void> {
  shelf.value = await listYards().catch(() => []);
}

/** Keeps the shelf and the other tabs in step. Once, at the start. */
export function watchShelf(): void {
  onTabNews(({ yard, revision }) => {
    void refreshShelf();
    const record = openRecord();
    if (record && yard === record.id && revision > record.revision)
      becomeReadOnly('This yard was changed in another tab, so this one can only look.');
  });
  onFileSaved(noteFileCopy);
}

function fresh(first: Plan, label: string, fileCopyAt: number | null): OpenedYard {
  const record = newRecord(newYardId(), first.name ?? 'Unnamed yard', Date.now(), fileCopyAt);
  return { record, history: { steps: [{ label, plan: first }], cursor: 0 }, stored: NOTHING_STORED, repaired: null };
}

/** Not `randomUUID`: a page served over plain http in the yard has no such function. */
function newYardId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(10)), (byte) => byte.toString(36).padStart(2, '0')).join('');
}

function demoYard(): OpenedYard {
  // Not by its name: the other demo would be fetched before the first picture too.
  return fresh(courtyard, 'Demo yard', null);
}

/** The hours of its weather file come first, so that the yard is not reckoned twice; late ones come all the same. */
async function show({ record, history: state, stored, repaired }: OpenedYard): Promise<void> {
  await unlessSilent(loadHours(state.steps[state.cursor].plan));
  batch(() => {
    preview.value = null;
    lookAnew();
    history.value = state;
    openYard.value = { id: record.id, fileCopyAt: record.fileCopyAt, readOnly: null };
    saveInto(record, stored, repaired === null && record.revision > 0 ? state : null);
  });
  if (repaired !== null) say(repaired, 'warning');
}
