import { effect, signal, untracked } from '@preact/signals';
import type { ReadonlySignal } from '@preact/signals';
import type { Problem } from '../../engine/index.ts';
import { askEngine } from './ask.ts';
import type { ArgsOf, MethodName, ValueOf } from './ask.ts';
import type { Progress } from './ask.ts';
import { openYardId } from './yard.ts';

/** An answer of the engine that keeps itself up to date. `asked` and `shown.args` differ while it is out of date. */
export interface Live<M extends MethodName> {
  /** What the screen wants now; `null` when it wants nothing. */
  readonly asked: ArgsOf<M> | null;
  /**
   * The newest answer and the arguments it was made from; kept, and out of date, while the next is worked out. Nothing
   * of a yard stays when another one is opened.
   */
  readonly shown: { readonly args: ArgsOf<M>; readonly value: ValueOf<M> } | null;
  /** `null` when nothing is being worked out. */
  readonly working: Progress | null;
  /** Why there is no answer to `asked`. Empty when there is one or it is under way. */
  readonly problems: readonly Problem[];
}

const DEBOUNCE_MS = 100;

/**
 * Asks a method of the worker again whenever what `ask` reads has changed and has been still for 100 ms.
 * The older question is aborted. `ask` returns `null` to ask nothing.
 */
export function liveAnswer<M extends MethodName>(method: M, ask: () => ArgsOf<M> | null): ReadonlySignal<Live<M>> {
  const live = signal<Live<M>>({ asked: null, shown: null, working: null, problems: [] });
  const change = (part: Partial<Live<M>>): void => {
    live.value = { ...live.peek(), ...part };
  };

  let yard = openYardId.peek();
  effect(() => {
    if (openYardId.value !== yard) {
      yard = openYardId.value;
      untracked(() => change({ shown: null }));
    }
    const args = ask();
    if (!args) {
      untracked(() => change({ asked: null, working: null, problems: [] }));
      return undefined;
    }
    const controller = new AbortController();
    untracked(() => change({ asked: args, working: { done: 0, what: '' }, problems: [] }));
    const wait = live.peek().shown ? DEBOUNCE_MS : 0;
    const timer = setTimeout(() => {
      const onProgress = (working: Progress): void => change({ working });
      askEngine(method, args, { signal: controller.signal, onProgress }).then(
        (answer) => {
          if (controller.signal.aborted) return;
          if (answer.ok) change({ shown: { args, value: answer.value as ValueOf<M> }, working: null, problems: [] });
          else change({ working: null, problems: answer.problems });
        },
        () => {},
      );
    }, wait);
    return () => {
      clearTimeout(timer);
      controller.abort();
    };
  });
  return live;
}

/** Whether what is shown answers an older question than the one asked. */
export function isStale(live: Live<MethodName>): boolean {
  return live.shown !== null && live.asked !== null && live.shown.args !== live.asked;
}
