import type { Outcome } from '../../engine/index.ts';
import { asBefore } from './as-before.ts';
import { OF_THE_PROGRAM } from './protocol.ts';
import type { Call, Method, Reply, Task } from './protocol.ts';

const PROGRESS_EVERY_MS = 50;

/**
 * Answers calls with the given methods for as long as the worker lives. A throw becomes a problem; nothing is left
 * hanging.
 */
export function serve(methods: Readonly<Record<string, Method>>): void {
  const post = (reply: Reply, move: Transferable[] = []): void => self.postMessage(reply, { transfer: move });
  post({ lives: ownAddress() });

  const known = createKnown();
  self.addEventListener('message', async ({ data }: MessageEvent<Call>) => {
    const { id, method } = data;
    const { args, weather } = known(data);
    let answer: Outcome<unknown>;
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

/** Gives the yard and the weather of a call as those of the last call, as far as they are the same. */
function createKnown(): (call: Call) => Pick<Call, 'args' | 'weather'> {
  let last: { readonly plan?: unknown; readonly weather?: unknown } = {};
  return ({ args, weather: sent }) => {
    const weather = asBefore(sent, last.weather);
    if (typeof args !== 'object' || args === null || !('plan' in args)) return { args, weather };
    const plan = asBefore(args.plan, last.plan);
    last = { plan, weather };
    return { args: { ...args, plan }, weather };
  };
}

/**
 * The address of a blob of the worker's own: the browser answers for it however busy the worker is, and takes it back
 * when the worker dies, with or without a word. On a page opened from a file the page could not ask for it.
 */
function ownAddress(): string | null {
  return self.origin === 'null' ? null : URL.createObjectURL(new Blob(['alive']));
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
