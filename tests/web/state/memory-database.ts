import { vi } from 'vitest';

/** What a transaction of the stand-in does next, and what is told of it. */
interface Work {
  run(): unknown;
  readonly request: { result?: unknown; onsuccess?: () => void; onerror?: () => void; error?: unknown };
}

/** What the database does instead of what it is asked. */
type Fault = (operation: 'open' | 'read' | 'write') => 'hang' | DOMException | null;

/**
 * A stand-in for the browser's database, as far as `web/state/storage/records.ts` uses it: one store, keys in order,
 * values copied, and a transaction that ends when nothing more is asked in it, writing all or nothing.
 */
export class MemoryDatabase {
  records = new Map<string, unknown>();
  /** Keys written and removed by each transaction that changed something. */
  readonly changes: { put: string[]; removed: string[] }[] = [];
  fault: Fault = () => null;
  private opened: { onclose?: () => void } | null = null;

  /** Puts it in the place of the browser's own until `leave`. */
  enter(): void {
    vi.stubGlobal('indexedDB', { open: () => this.open() });
    vi.stubGlobal('IDBKeyRange', { bound: (from: string, to: string) => ({ from, to }) });
  }

  /** The page forgets its connection, as when a phone closes it. */
  leave(): void {
    this.opened?.onclose?.();
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
      work.request.result = work.run();
      work.request.onsuccess?.();
      setTimeout(next);
    };
    const ask = (operation: 'read' | 'write', run: () => unknown): object => {
      const fault = this.fault(operation);
      const request: Work['request'] = { error: fault };
      if (fault === null) queue.push({ run, request });
      else if (fault !== 'hang') setTimeout(() => (request.onerror?.(), end(fault)));
      else ended = true;
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
