import { signal } from '@preact/signals';
import { MS_PER_DAY } from '../../engine/index.ts';
import type { Plan } from '../../engine/index.ts';
import { onEdit } from './edit.ts';
import { saveFile } from './files.ts';
import { takeOpenBoxes } from './open-boxes.ts';
import { say } from './speech.ts';
import { markKept } from './storage/kept-mark.ts';
import { SILENT_MS, unlessSilent } from './storage/silence.ts';
import { tellTabs } from './storage/tabs.ts';
import { SILENT_STORAGE, storageTrouble } from './storage/trouble.ts';
import { NOTHING_STORED, saveYard } from './storage/yards.ts';
import type { StoredSteps, YardRecord } from './storage/yards.ts';
import { history, openYard, plan } from './yard.ts';
import type { History } from './yard.ts';

/** `saved` is said only when the newest state is on the disk. */
export type SaveState =
  | { readonly kind: 'saved'; /** [ms UTC] */ readonly at: number }
  | { readonly kind: 'saving' }
  | { readonly kind: 'unsaved'; /** One sentence. */ readonly why: string };

export const saveState = signal<SaveState>({ kind: 'saving' });

/** Whether the browser has promised not to clear what it keeps for us; `null` until asked. */
export const keepsForGood = signal<boolean | null>(null);

let record: YardRecord | null = null;
let stored = NOTHING_STORED;
/** The history as it was last saved; `null`: never. */
let saved: History | null = null;
/** The plan as the person last wrote it to a file; it may be left though this browser keeps nothing. */
let inFile: Plan | null = null;
let underWay: Promise<void> | null = null;
let again = false;
let lastTrouble: string | null = null;

/**
 * From now on edits are saved into this yard.
 * @param where its steps stand
 * @param asStored the history as storage holds it; `null` where it holds none of it, or another
 */
export function saveInto(next: YardRecord, where: StoredSteps, asStored: History | null): void {
  record = next;
  stored = where;
  saved = asStored;
  if (asStored) saveState.value = { kind: 'saved', at: next.changedAt };
}

/** The open yard's record as last stored. */
export function openRecord(): YardRecord | null {
  return record;
}

/** Saves the newest state; calls that come while a save is under way are served by one more after it. */
export function save(): Promise<void> {
  if (underWay) {
    again = true;
    return underWay;
  }
  underWay = saveOnce().finally(() => {
    underWay = null;
    if (again) {
      again = false;
      return save();
    }
    return undefined;
  });
  return underWay;
}

async function saveOnce(): Promise<void> {
  if (!record || openYard.value.readOnly !== null) return;
  const state = history.value;
  const target = record;
  if (lastTrouble !== SILENT_STORAGE) saveState.value = { kind: 'saving' };
  const silent = setTimeout(() => notKept(SILENT_STORAGE), SILENT_MS);
  try {
    const done = await saveYard(target, state, stored, Date.now());
    if (record?.id !== target.id) return;
    if (done === 'newer') return becomeReadOnly('This yard was changed in another tab, so this one can only look.');
    if (done === 'gone') return keepAnew(target);
    const next = done.record;
    again ||= record.fileCopyAt !== next.fileCopyAt;
    record = { ...next, fileCopyAt: record.fileCopyAt };
    stored = done.stored;
    saved = state;
    if (state.steps.length > 1) markKept();
    tellTabs({ yard: next.id, revision: next.revision });
    lastTrouble = null;
    if (history.value === state) saveState.value = { kind: 'saved', at: next.changedAt };
    else again = true;
  } catch (error) {
    const why = storageTrouble(error);
    notKept(why);
    // What did not answer may answer yet.
    again ||= why === SILENT_STORAGE;
  } finally {
    clearTimeout(silent);
  }
}

/** Says that the open yard is not kept, each reason once until the next save that succeeds. */
export function notKept(why: string): void {
  const isNew = why !== lastTrouble;
  lastTrouble = why;
  saveState.value = { kind: 'unsaved', why };
  if (isNew) say(why, 'problem', { label: 'Save a file', run: saveFile });
}

/** The browser has cleared what it kept, with the yard still on the screen: all of it is written again. */
function keepAnew(target: YardRecord): void {
  record = { ...target, revision: 0 };
  stored = NOTHING_STORED;
  saved = null;
  again = true;
  say(
    'This browser had cleared what it kept of this yard; it is kept again now. Save a file, which no browser clears.',
    'problem',
    { label: 'Save a file', run: saveFile },
  );
}

/** The yard stays on the screen as it is here; nothing more is written from this tab. */
export function becomeReadOnly(why: string): void {
  openYard.value = { ...openYard.value, readOnly: why };
  saveState.value = { kind: 'unsaved', why };
}

async function askToKeep(): Promise<void> {
  if (keepsForGood.value !== null) return;
  try {
    keepsForGood.value = (await navigator.storage?.persist?.()) ?? false;
  } catch {
    keepsForGood.value = false;
  }
}

/** Whether something was done in the open yard that stands in no file. */
function isOnlyHere(): boolean {
  return openYard.value.readOnly === null && history.value.steps.length > 1 && plan.value !== inFile;
}

/**
 * Saves, before anything that takes the open yard off the screen. Where that fails the yard stays, and a file of it is
 * offered.
 * @returns whether it may be left
 */
export async function mayLeave(): Promise<boolean> {
  await unlessSilent(save());
  // A save that is still under way may fail yet.
  if (saveState.value.kind === 'saved' || !isOnlyHere()) return true;
  say('This yard is not saved, so it stays open. Save a file of it first, then do that again.', 'problem', {
    label: 'Save a file',
    run: saveFile,
  });
  return false;
}

/** Hooks saving to the end of every action and to the page's going away. */
export function startSaving(): void {
  onEdit(() => {
    void save();
    void askToKeep();
  });
  const saveRest = (): void => {
    if (saved !== history.value) void save();
  };
  addEventListener('pagehide', () => {
    takeOpenBoxes();
    saveRest();
  });
  addEventListener('beforeunload', (event) => {
    if (saveState.value.kind === 'unsaved' && isOnlyHere()) event.preventDefault();
  });
  document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && saveRest());
}

/** Remembers that the person wrote the yard to a file. */
export function noteFileCopy(at: number): void {
  inFile = plan.value;
  if (!record) return;
  record = { ...record, fileCopyAt: at };
  void save();
}

const OLD_MS = 30 * MS_PER_DAY;
/** A save that only notes the copy follows it at once. */
const NOTED_MS = 60_000;
/** So many steps are work that one would miss. Our choice. */
const MUCH_WORK = 10;

/** Whether the last file copy of a changed yard is over 30 days old, or there is none of one with much work in it. */
export function fileCopyIsOld(now: number): boolean {
  const { fileCopyAt } = openYard.value;
  const { steps } = history.value;
  if (plan.value.features.length === 0) return false;
  return fileCopyAt === null
    ? steps.length > MUCH_WORK
    : now - fileCopyAt > OLD_MS && (record?.changedAt ?? 0) - fileCopyAt > NOTED_MS;
}
