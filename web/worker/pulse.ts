/** Seconds are counted, not read off a clock: what the device sleeps through is no silence. [ms] */
const BEAT_MS = 1000;
/** After so many silent seconds of a job the worker's address is asked, every second. */
const QUIET_BEATS = 3;
/** Unanswered so often in a row, it is dead: one failure may be the browser's own. */
const MISSES = 2;
/** So long a silence is a death where there is no address to ask: no job is silent for a tenth of it. */
const SILENT_BEATS = 300;

/**
 * Whether a worker lives that has a job in hand; an idle one's death shows with its next job. A busy worker answers
 * nobody, and nothing tells of its death: no event, and locks are for safe origins only. But the browser answers for a
 * blob of the worker's until the worker is gone.
 */
export class Pulse {
  readonly #died: () => void;
  readonly #asking = new AbortController();
  /** What has answered once, and so would answer again. */
  #address: string | null = null;
  #beat: ReturnType<typeof setInterval> | undefined;
  #quiet = 0;
  #misses = 0;

  constructor(died: () => void) {
    this.#died = died;
  }

  /** @param address of the worker's own, if it has one */
  async feelAt(address: string | null): Promise<void> {
    if (address !== null && (await this.#answers(address))) this.#address = address;
  }

  /** The worker was given a job or has said something; `busy` while it has the job still in hand. */
  felt(busy: boolean): void {
    this.#quiet = 0;
    this.#misses = 0;
    if (!busy) this.stop();
    else this.#beat ??= setInterval(() => void this.#listen(), BEAT_MS);
  }

  stop(): void {
    clearInterval(this.#beat);
    this.#beat = undefined;
  }

  /** Before the worker is ended: the browser would complain of a question that it takes along. */
  end(): void {
    this.stop();
    this.#asking.abort();
  }

  async #listen(): Promise<void> {
    this.#quiet += 1;
    const dead = this.#address === null ? this.#quiet >= SILENT_BEATS : await this.#missed(this.#address);
    if (!dead || this.#beat === undefined) return;
    this.stop();
    this.#died();
  }

  async #missed(address: string): Promise<boolean> {
    if (this.#quiet < QUIET_BEATS) return false;
    const heard = this.#quiet;
    if (await this.#answers(address)) this.#misses = 0;
    else if (this.#quiet >= heard) this.#misses += 1;
    return this.#misses >= MISSES;
  }

  #answers(address: string): Promise<boolean> {
    return fetch(address, { signal: this.#asking.signal }).then(
      ({ ok }) => ok,
      () => false,
    );
  }
}
