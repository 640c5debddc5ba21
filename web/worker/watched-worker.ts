import type { Call, Reply } from './protocol.ts';

/** What is heard of a worker: its replies, and its end if that comes unasked. */
export interface Heard {
  reply(reply: Exclude<Reply, { readonly holds: string }>): void;
  /** @param why One sentence */
  broke(why: string): void;
  /** Without a word, as on a phone short of memory. */
  died(): void;
}

/** A worker that is started when something is first posted to it, and afresh after its end. */
export interface WatchedWorker {
  post(call: Call): void;
  end(): void;
}

export function createWatchedWorker(start: () => Worker, heard: Heard): WatchedWorker {
  let living: Worker | null = null;

  /** Hears of a worker's death by the lock that only its death sets free. */
  const watch = (worker: Worker, lock: string): void => {
    const onFree = (): void => {
      if (worker === living) heard.died();
    };
    navigator.locks.request(lock, onFree).catch(() => undefined);
  };

  const begin = (): Worker => {
    const worker = start();
    worker.onmessage = ({ data }: MessageEvent<Reply>) =>
      'holds' in data ? watch(worker, data.holds) : heard.reply(data);
    worker.onerror = ({ message }) =>
      heard.broke(
        message ? `The reckoning broke off: ${message}.` : 'A part of the page that reckons could not be loaded.',
      );
    worker.onmessageerror = () => heard.broke('The reckoning broke off: its answer could not be read.');
    return worker;
  };

  return {
    post(call) {
      try {
        living ??= begin();
        living.postMessage(call);
      } catch (error) {
        heard.broke(`The reckoning could not start: ${error instanceof Error ? error.message : String(error)}.`);
      }
    },
    end() {
      living?.terminate();
      living = null;
    },
  };
}
