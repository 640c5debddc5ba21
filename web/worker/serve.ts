import type { Outcome } from '../../engine/index.ts';
import { OF_THE_PROGRAM } from './protocol.ts';
import type { Call, Method, Reply, Task } from './protocol.ts';

const PROGRESS_EVERY_MS = 50;

/**
 * Answers calls with the given methods for as long as the worker lives. A throw becomes a problem; nothing is left
 * hanging.
 */
export function serve(methods: Readonly<Record<string, Method>>): void {
  const post = (reply: Reply, move: Transferable[] = []): void => self.postMessage(reply, { transfer: move });
  const alive = holdLock((holds) => post({ holds }));

  self.addEventListener('message', async ({ data }: MessageEvent<Call>) => {
    const { id, method, args, weather } = data;
    let answer: Outcome<unknown>;
    await alive;
    try {
      answer = await methods[method](
        args as never,
        taskOf((progress) => post({ id, progress }), weather),
      );
    } catch (error) {
      const message =
        `The reckoning of "${method}" broke off: ` + `${error instanceof Error ? error.message : String(error)}.`;
      answer = { ok: false, problems: [{ pointer: OF_THE_PROGRAM, message, severity: 'error' }] };
    }
    post({ id, answer }, answer.ok ? buffersOf(answer.value) : []);
  });
}

/**
 * Takes a lock and never gives it back: the browser does when the worker dies, with or without a word. Resolves once it
 * is held, or where there are no locks (a page served over plain http).
 */
function holdLock(tell: (name: string) => void): Promise<void> {
  const { locks } = navigator as { readonly locks?: LockManager };
  if (!locks) return Promise.resolve();
  const name = `shadewright.worker.${crypto.getRandomValues(new Uint32Array(2)).join('.')}`;
  return new Promise((resolve) => {
    const held = locks.request(name, () => {
      tell(name);
      resolve();
      return new Promise<never>(() => undefined);
    });
    held.catch(() => resolve());
  });
}

function taskOf(post: (progress: { done: number; what: string }) => void, weather: Task['weather']): Task {
  let lastMs = -Infinity;
  let highest = 0;
  return {
    weather,
    progress(done, what) {
      highest = Math.min(1, Math.max(highest, done));
      const nowMs = performance.now();
      if (nowMs - lastMs < PROGRESS_EVERY_MS) return;
      lastMs = nowMs;
      post({ done: highest, what });
    },
  };
}

/** Every array buffer inside a value, once each. */
function buffersOf(value: unknown, found: Set<ArrayBuffer> = new Set()): ArrayBuffer[] {
  if (ArrayBuffer.isView(value)) {
    if (value.buffer instanceof ArrayBuffer) found.add(value.buffer);
  } else if (Array.isArray(value)) {
    // Long lists here are numbers; only lists of objects can hold buffers.
    if (typeof value[0] === 'object') for (const item of value) buffersOf(item, found);
  } else if (typeof value === 'object' && value !== null) {
    for (const item of Object.values(value)) buffersOf(item, found);
  }
  return [...found];
}
