import type { Outcome } from '../../engine/index.ts';

/** A question of the engine. */
export interface Asked {
  readonly method: string;
  readonly args: unknown;
  readonly signal: AbortSignal;
  answer(value: unknown): void;
}

/**
 * What the page has asked, answered when a test says so. A worker keeps the page's modules from one file to the next,
 * and with them whom they ask: all files that answer themselves share this list.
 */
export const asked: Asked[] = [];

/** In the place of `web/state/ask.ts`. */
export function askEngine(
  method: string,
  args: unknown,
  { signal = new AbortController().signal }: { readonly signal?: AbortSignal } = {},
): Promise<Outcome<unknown>> {
  return new Promise((resolve, reject) => {
    signal.addEventListener('abort', () => reject(new DOMException('', 'AbortError')));
    asked.push({ method, args, signal, answer: (value) => resolve({ ok: true, value }) });
  });
}
