import { get, promisifyRequest } from 'idb-keyval';
import type { UseStore } from 'idb-keyval';

/** The one place that talks to the browser's database: keys to values, written strictly or not at all. */

const DATABASE = 'shadewright';
const STORE = 'records';

let connection: Promise<IDBDatabase> | null = null;

function connect(): Promise<IDBDatabase> {
  connection ??= new Promise<IDBDatabase>((resolve, reject) => {
    const request = indexedDB.open(DATABASE, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new DOMException('Another tab holds the old database open.', 'BlockedError'));
  }).then((db) => {
    const forget = (): void => {
      connection = null;
    };
    db.onclose = forget;
    // Another tab wants to delete or upgrade the database: let it.
    db.onversionchange = () => {
      db.close();
      forget();
    };
    return db;
  });
  connection.catch(() => (connection = null));
  return connection;
}

/** Strict: a transaction is complete only when the system says that the bytes are on the disk. */
const strictStore: UseStore = (mode, callback) =>
  connect().then((db) => callback(db.transaction(STORE, mode, { durability: 'strict' }).objectStore(STORE)));

/** Some phones close the connection of a page that slept; a fresh one is all it takes. */
async function withFreshConnection<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof DOMException) || error.name !== 'InvalidStateError') throw error;
    connection = null;
    return work();
  }
}

export function readRecord(key: string): Promise<unknown> {
  return withFreshConnection(() => get(key, strictStore));
}

/** Every record whose key begins so, by key, in the keys' order. */
export function readRecords(prefix: string): Promise<Map<string, unknown>> {
  const range = IDBKeyRange.bound(prefix, `${prefix}\uffff`);
  return withFreshConnection(() =>
    strictStore('readonly', async (store) => {
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
      return promisifyRequest(store.transaction);
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
      const done = promisifyRequest(store.transaction);
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
