import type { Outcome, Weather } from '../../engine/index.ts';
import { OF_THE_PROGRAM } from './protocol.ts';
import type { Call, Progress, Reply } from './protocol.ts';

export interface CallOptions {
  /**
   * Aborting rejects the call with the signal's reason; if the worker is at it, the worker is ended, at once or after
   * its grace.
   */
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: Progress) => void;
  /** Goes along with the arguments: what every reckoning of the yard is made after. */
  readonly weather?: Weather;
}

export interface Bridge {
  /** Waits its turn, then runs. Resolves with a value or problems; rejects only when aborted. */
  call(method: string, args: unknown, options?: CallOptions): Promise<Outcome<unknown>>;
  /** Ends the worker and rejects every call that waits. */
  end(): void;
}

interface Waiting extends Call {
  readonly options: CallOptions;
  /** A worker has died over it without a word. */
  died?: boolean;
  settle(answer: Outcome<unknown>): void;
  fail(reason: unknown): void;
}

/** How long a worker lives that has nothing to do, and one whose job was aborted. [ms] */
export interface Patience {
  readonly idleMs: number;
  readonly graceMs: number;
}

const PATIENCE: Patience = { idleMs: 10_000, graceMs: 0 };

/** For jobs of a few hundred ms: a fresh worker would need longer than that until its code is compiled and warm. */
export const FOR_SHORT_JOBS: Patience = { idleMs: 60_000, graceMs: 1_000 };

/**
 * One worker, one job at a time, the rest in a queue. A job that is aborted takes the worker with it, unless it ends
 * within the grace: then its answer is dropped. The next job starts a fresh one, as does the first after an idle time.
 * Nothing waits for ever: a worker that dies answers with a problem; where it died without a word (a phone short of
 * memory), a fresh one tries once more first.
 */
export function createBridge(start: () => Worker, { idleMs, graceMs } = PATIENCE): Bridge {
  let worker: Worker | null = null;
  let running: Waiting | null = null;
  let queue: Waiting[] = [];
  let lastId = 0;
  let idle: ReturnType<typeof setTimeout> | undefined;
  let grace: ReturnType<typeof setTimeout> | undefined;

  const stop = (): void => {
    clearTimeout(grace);
    worker?.terminate();
    worker = null;
    running = null;
  };

  const fallOver = (message: string): void => {
    const job = running;
    stop();
    job?.settle({ ok: false, problems: [{ pointer: OF_THE_PROGRAM, message, severity: 'error' }] });
    next();
  };

  /** Hears of a worker's death by the lock that only its death sets free. */
  const watch = (watched: Worker | null, lock: string): void => {
    const onFree = (): void => {
      if (watched !== worker || worker === null) return;
      if (running === null || running.died)
        return fallOver('The reckoning was ended twice by this device, perhaps for want of memory. Close other tabs.');
      running.died = true;
      queue.unshift(running);
      stop();
      next();
    };
    navigator.locks.request(lock, onFree).catch(() => undefined);
  };

  const hear = ({ data }: MessageEvent<Reply>): void => {
    if ('holds' in data) return watch(worker, data.holds);
    if (!running || data.id !== running.id) return;
    const job = running;
    if ('progress' in data) return job.options.signal?.aborted ? undefined : job.options.onProgress?.(data.progress);
    clearTimeout(grace);
    running = null;
    job.settle(data.answer);
    next();
  };

  const next = (): void => {
    clearTimeout(idle);
    if (running) return;
    const job = queue.shift();
    if (!job) {
      idle = setTimeout(stop, idleMs);
      return;
    }
    running = job;
    try {
      if (!worker) {
        worker = start();
        worker.onmessage = hear;
        worker.onerror = (event) =>
          fallOver(
            event.message
              ? `The reckoning broke off: ${event.message}.`
              : 'A part of the page that reckons could not be loaded.',
          );
        worker.onmessageerror = () => fallOver('The reckoning broke off: its answer could not be read.');
      }
      worker.postMessage({
        id: job.id,
        method: job.method,
        args: job.args,
        weather: job.options.weather,
      } satisfies Call);
    } catch (error) {
      fallOver(`The reckoning could not start: ${error instanceof Error ? error.message : String(error)}.`);
    }
  };

  const abort = (job: Waiting, reason: unknown): void => {
    job.fail(reason);
    if (job !== running) queue = queue.filter((other) => other !== job);
    else if (graceMs === 0) stop();
    else {
      // Whatever it still answers goes to a promise that is rejected already.
      grace = setTimeout(() => (stop(), next()), graceMs);
    }
    next();
  };

  return {
    call(method, args, options = {}) {
      const { signal } = options;
      if (signal?.aborted) return Promise.reject(signal.reason);
      return new Promise((resolve, reject) => {
        const onAbort = (): void => abort(job, signal?.reason);
        const done = (): void => signal?.removeEventListener('abort', onAbort);
        const job: Waiting = {
          id: ++lastId,
          method,
          args,
          options,
          settle: (answer) => (done(), resolve(answer)),
          fail: (reason) => (done(), reject(reason)),
        };
        signal?.addEventListener('abort', onAbort);
        queue.push(job);
        next();
      });
    },
    end() {
      const jobs = running ? [running, ...queue] : queue;
      queue = [];
      stop();
      clearTimeout(idle);
      for (const job of jobs) job.fail(new DOMException('The worker was ended.', 'AbortError'));
    },
  };
}
