import { get, promisifyRequest } from 'idb-keyval';
import type { UseStore } from 'idb-keyval';
import { GIVEN_UP_MS, untilAnswered } from './silence.ts';

/** The one place that talks to the browser's database: keys to values, written strictly or not at all. */

const DATABASE = 'shadewright';
const STORE = 'records';

let connection: Promise<IDBDatabase> | null = null;

/** Where there is no storage, or a browser that throws when it is so much as looked at. */
function factory(): IDBFactory {
  try {
    if (typeof indexedDB === 'object') return indexedDB;
  } catch {
    // Said below.
  }
  throw new DOMException('This browser has no storage.', 'SecurityError');
}

function openDatabase(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = factory().open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new DOMException('Another tab holds the old database open.', 'BlockedError'));
  });
}

function connect(): Promise<IDBDatabase> {
  if (connection) return connection;
  const opening = untilAnswered(openDatabase, (late) => late.close()).then((db) => {
    const forget = (): void => {
      if (connection === opening) connection = null;
    };
    db.onclose = forget;
    // Another tab wants to delete or upgrade the database: let it.
    db.onversionchange = () => {
      db.close();
      forget();
    };
    return db;
  });
  connection = opening;
  opening.catch(() => (connection = null));
  return opening;
}

/** Strict: a transaction is complete only when the system says that the bytes are on the disk. */
const strictStore: UseStore = (mode, callback) =>
  connect().then((db) => callback(db.transaction(STORE, mode, { durability: 'strict' }).objectStore(STORE)));

/** How phones say that they closed the connection of a page that slept. */
const CLOSED = ['InvalidStateError', 'UnknownError'];

/** A fresh connection is all that it takes. */
async function withFreshConnection<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof DOMException) || !CLOSED.includes(error.name)) throw error;
    connection = null;
    return work();
  }
}

/** Reading twice does no harm, so what stays silent is asked again. */
function read<T>(work: () => Promise<T>): Promise<T> {
  return untilAnswered(() => withFreshConnection(work));
}

/**
 * The end of a transaction that writes. One that stays silent is called off, and only then has it failed: what was
 * called off is never written later.
 */
function endOf(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    const giveUp = setTimeout(() => {
      try {
        transaction.abort();
      } catch {
        // It is being written already.
        return;
      }
      reject(new DOMException('The storage did not answer.', 'TimeoutError'));
    }, GIVEN_UP_MS);
    promisifyRequest(transaction)
      .then(resolve, reject)
      .finally(() => clearTimeout(giveUp));
  });
}

export function readRecord(key: string): Promise<unknown> {
  return read(() => get(key, strictStore));
}

/** Every record whose key begins so, by key, in the keys' order. */
export function readRecords(prefix: string): Promise<Map<string, unknown>> {
  return read(() =>
    strictStore('readonly', async (store) => {
      const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`);
      const [keys, values] = await Promise.all([
        promisifyRequest(store.getAllKeys(range)),
        promisifyRequest(store.getAll(range)),
      ]);
      return new Map(keys.map((key, index) => [String(key), values[index] as unknown]));
    }),
  );
}

/** What one transaction writes and removes. */
export interface Change {
  readonly put?: ReadonlyMap<string, unknown>;
  readonly remove?: readonly string[];
}

/** Writes all of it or nothing. Resolves when it is on the disk. */
export function writeRecords(change: Change): Promise<void> {
  return withFreshConnection(() =>
    strictStore('readwrite', (store) => {
      apply(store, change);
      return endOf(store.transaction);
    }),
  );
}

/**
 * How a swap ended: written; or not, since somebody else has written a newer one, or since the browser has cleared the
 * old one.
 */
export type Swapped = 'written' | 'newer' | 'gone';

/**
 * Writes only if the record at `key` is still at the expected revision (0: not there yet), looked at and written in one
 * transaction.
 */
export function swapRecords(key: string, expectedRevision: number, change: Change): Promise<Swapped> {
  return withFreshConnection(() =>
    strictStore('readwrite', async (store) => {
      let ended: Swapped = 'newer';
      let fault: unknown = null;
      const done = endOf(store.transaction);
      const look: IDBRequest<{ revision?: number } | undefined> = store.get(key);
      look.onsuccess = () => {
        if (look.result === undefined && expectedRevision > 0) ended = 'gone';
        if ((look.result?.revision ?? 0) !== expectedRevision) return;
        try {
          apply(store, change);
          ended = 'written';
        } catch (error) {
          fault = error;
          store.transaction.abort();
        }
      };
      await done.catch((error: unknown) => {
        throw fault ?? error;
      });
      return ended;
    }),
  );
}

function apply(store: IDBObjectStore, { put, remove }: Change): void {
  for (const key of remove ?? []) store.delete(key);
  for (const [key, value] of put ?? []) store.put(value, key);
}
