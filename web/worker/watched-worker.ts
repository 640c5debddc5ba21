import type { Call, Reply } from './protocol.ts';
import { Pulse } from './pulse.ts';

/** What is heard of a worker: its replies, and its end if that comes unasked. */
export interface Heard {
  reply(reply: Exclude<Reply, { readonly lives: string | null }>): void;
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
  let living: { readonly worker: Worker; readonly pulse: Pulse } | null = null;

  const begin = () => {
    const worker = start();
    const pulse = new Pulse(() => heard.died());
    worker.onmessage = ({ data }: MessageEvent<Reply>) => {
      if ('lives' in data) return pulse.feelAt(data.lives);
      pulse.felt('progress' in data);
      heard.reply(data);
    };
    worker.onerror = ({ message }) =>
      heard.broke(
        message ? `The reckoning broke off: ${message}.` : 'A part of the page that reckons could not be loaded.',
      );
    worker.onmessageerror = () => heard.broke('The reckoning broke off: its answer could not be read.');
    return { worker, pulse };
  };

  return {
    post(call) {
      try {
        living ??= begin();
        living.worker.postMessage(call);
        living.pulse.felt(true);
      } catch (error) {
        heard.broke(`The reckoning could not start: ${error instanceof Error ? error.message : String(error)}.`);
      }
    },
    end() {
      living?.pulse.end();
      living?.worker.terminate();
      living = null;
    },
  };
}
