import type { Outcome, Weather } from '../../engine/index.ts';
import { OF_THE_PROGRAM } from './protocol.ts';
import type { Call, Progress } from './protocol.ts';
import { createWatchedWorker, type Heard, type WatchedWorker } from './watched-worker.ts';

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

type Timer = ReturnType<typeof setTimeout> | undefined;

/** How long a worker lives that has nothing to do, and one whose job was aborted. [ms] */
export interface Patience {
  readonly idleMs: number;
  readonly graceMs: number;
}

const PATIENCE: Patience = { idleMs: 10_000, graceMs: 0 };

/** For jobs of a few hundred ms: a fresh worker would need longer than that until its code is compiled and warm. */
export const FOR_SHORT_JOBS: Patience = { idleMs: 60_000, graceMs: 1_000 };

/** Whoever searches once searches again, for less or for something else. */
export const FOR_SEARCHES: Patience = { idleMs: 60_000, graceMs: 0 };

/**
 * One worker, one job at a time, the rest in a queue. A job that is aborted takes the worker with it, unless it ends
 * within the grace: then its answer is dropped. The next job starts a fresh one, as does the first after an idle time.
 * Nothing waits for ever: a worker that dies answers with a problem; where it died without a word (a phone short of
 * memory), a fresh one tries once more first.
 */
export function createBridge(start: () => Worker, patience = PATIENCE): Bridge {
  return new JobQueue(start, patience);
}

class JobQueue implements Bridge {
  readonly #worker: WatchedWorker;
  readonly #patience: Patience;
  #running: Waiting | null = null;
  #queue: Waiting[] = [];
  #lastId = 0;
  #idle: Timer;
  #grace: Timer;

  constructor(start: () => Worker, patience: Patience) {
    this.#patience = patience;
    this.#worker = createWatchedWorker(start, {
      reply: (reply) => this.#hear(reply),
      broke: (why) => this.#fallOver(why),
      died: () => this.#tryAgain(),
    });
  }

  call(method: string, args: unknown, options: CallOptions = {}): Promise<Outcome<unknown>> {
    const { signal } = options;
    if (signal?.aborted) return Promise.reject(signal.reason);
    return new Promise((resolve, reject) => {
      const onAbort = (): void => this.#abort(job, signal?.reason);
      const done = (): void => signal?.removeEventListener('abort', onAbort);
      const job: Waiting = {
        id: ++this.#lastId,
        method,
        args,
        options,
        settle: (answer) => (done(), resolve(answer)),
        fail: (reason) => (done(), reject(reason)),
      };
      signal?.addEventListener('abort', onAbort);
      this.#queue.push(job);
      this.#next();
    });
  }

  end(): void {
    const jobs = this.#running ? [this.#running, ...this.#queue] : this.#queue;
    this.#queue = [];
    this.#stop();
    clearTimeout(this.#idle);
    for (const job of jobs) job.fail(new DOMException('The worker was ended.', 'AbortError'));
  }

  #next(): void {
    clearTimeout(this.#idle);
    if (this.#running) return;
    const job = this.#queue.shift();
    if (!job) {
      this.#idle = setTimeout(() => this.#stop(), this.#patience.idleMs);
      return;
    }
    this.#running = job;
    const { id, method, args, options } = job;
    this.#worker.post({ id, method, args, weather: options.weather });
  }

  #hear(reply: Parameters<Heard['reply']>[0]): void {
    const job = this.#running;
    if (reply.id !== job?.id) return;
    const { signal, onProgress } = job.options;
    if ('progress' in reply) return signal?.aborted ? undefined : onProgress?.(reply.progress);
    clearTimeout(this.#grace);
    this.#running = null;
    job.settle(reply.answer);
    this.#next();
  }

  #abort(job: Waiting, reason: unknown): void {
    job.fail(reason);
    if (job !== this.#running) this.#queue = this.#queue.filter((other) => other !== job);
    else if (this.#patience.graceMs === 0) this.#stop();
    else {
      // Whatever it still answers goes to a promise that is rejected already.
      this.#grace = setTimeout(() => (this.#stop(), this.#next()), this.#patience.graceMs);
    }
    this.#next();
  }

  #tryAgain(): void {
    const job = this.#running;
    if (job === null || job.died)
      return this.#fallOver(
        'The reckoning was ended twice by this device, perhaps for want of memory. Close other tabs.',
      );
    job.died = true;
    this.#queue.unshift(job);
    this.#stop();
    this.#next();
  }

  #fallOver(message: string): void {
    const job = this.#running;
    this.#stop();
    job?.settle({ ok: false, problems: [{ pointer: OF_THE_PROGRAM, message, severity: 'error' }] });
    this.#next();
  }

  #stop(): void {
    clearTimeout(this.#grace);
    this.#worker.end();
    this.#running = null;
  }
}
