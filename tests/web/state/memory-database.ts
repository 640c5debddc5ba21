import { vi } from 'vitest';

/** What a transaction of the stand-in does next, and what is told of it. */
interface Work {
  run(): unknown;
  readonly request: { result?: unknown; onsuccess?: () => void; onerror?: () => void; error?: unknown };
}

/** What the database does instead of what it is asked. */
export type Fault = (operation: 'open' | 'read' | 'write') => 'hang' | DOMException | null;

/**
 * A stand-in for the browser's database, as far as `web/state/storage/records.ts` uses it: one store, keys in order,
 * values copied, and a transaction that ends when nothing more is asked in it, writing all or nothing.
 */
export class MemoryDatabase {
  records = new Map<string, unknown>();
  /** Keys written and removed by each transaction that changed something. */
  readonly changes: { put: string[]; removed: string[] }[] = [];
  fault: Fault = () => null;
  private unforbid = (): void => undefined;
  private opened: { onclose?: () => void } | null = null;

  /** Puts it in the place of the browser's own until `leave`. */
  enter(): void {
    vi.stubGlobal('indexedDB', { open: () => this.open() });
    vi.stubGlobal('IDBKeyRange', { bound: (from: string, to: string) => ({ from, to }) });
  }

  /** As in a browser that throws when its storage is so much as looked at. */
  forbid(): void {
    vi.unstubAllGlobals();
    const had = Object.getOwnPropertyDescriptor(globalThis, 'indexedDB');
    Object.defineProperty(globalThis, 'indexedDB', {
      configurable: true,
      get: () => {
        throw new DOMException('Forbidden.', 'SecurityError');
      },
    });
    this.unforbid = () => {
      delete (globalThis as { indexedDB?: unknown }).indexedDB;
      if (had) Object.defineProperty(globalThis, 'indexedDB', had);
    };
  }

  /** The page forgets its connection, as when a phone closes it. */
  forget(): void {
    this.opened?.onclose?.();
  }

  leave(): void {
    this.forget();
    this.unforbid();
    vi.unstubAllGlobals();
  }

  private open(): object {
    const request: Work['request'] = {};
    const fault = this.fault('open');
    if (fault !== 'hang')
      queueMicrotask(() => {
        request.error = fault;
        request.result = fault ? undefined : (this.opened = { transaction: () => this.transaction() } as object);
        (fault ? request.onerror : request.onsuccess)?.();
      });
    return request;
  }

  private transaction(): object {
    const staged = new Map(this.records);
    const change = { put: [] as string[], removed: [] as string[] };
    const queue: Work[] = [];
    const own: { oncomplete?: () => void; onabort?: () => void; error?: unknown } = {};
    let ended = false;
    const end = (error: unknown): void => {
      if (ended) return;
      ended = true;
      own.error = error;
      if (error !== null) return own.onabort?.();
      this.records = staged;
      if (change.put.length + change.removed.length > 0) this.changes.push(change);
      own.oncomplete?.();
    };
    const next = (): void => {
      const work = queue.shift();
      if (ended || !work) return end(null);
      if (work.request.error) return (work.request.onerror?.(), end(work.request.error));
      work.request.result = work.run();
      work.request.onsuccess?.();
      setTimeout(next);
    };
    const ask = (operation: 'read' | 'write', run: () => unknown): object => {
      const fault = this.fault(operation);
      const request: Work['request'] = { error: fault };
      if (fault === 'hang') ended = true;
      else queue.push({ run, request });
      return request;
    };
    const within = ({ from, to }: { from: string; to: string }): string[] =>
      [...staged.keys()].filter((key) => key >= from && key <= to).sort();
    const store = {
      get: (key: string) => ask('read', () => structuredClone(staged.get(key))),
      getAllKeys: (range: { from: string; to: string }) => ask('read', () => within(range)),
      getAll: (range: { from: string; to: string }) =>
        ask('read', () => within(range).map((key) => structuredClone(staged.get(key)))),
      put: (value: unknown, key: string) =>
        ask('write', () => (change.put.push(key), staged.set(key, structuredClone(value)))),
      delete: (key: string) => ask('write', () => (change.removed.push(key), staged.delete(key))),
      transaction: Object.assign(own, { abort: () => end(new DOMException('Aborted.', 'AbortError')) }),
    };
    setTimeout(next);
    return { objectStore: () => store };
  }
}
