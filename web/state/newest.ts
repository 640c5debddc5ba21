import { effect } from '@preact/signals';
import type { ReadonlySignal, Signal } from '@preact/signals';
import type { Outcome } from '../../engine/index.ts';

/**
 * Asks again as fast as answers come, always for the newest question: what is dragged is followed, and nothing is
 * called off half-way. Runs until the function it returns is called.
 * @param question `null`: nothing is asked, and the answer is forgotten
 */
export function followNewest<Args, Answer>(
  question: ReadonlySignal<Args | null>,
  ask: (args: Args) => Promise<Outcome<Answer>>,
  answered: Signal<Answer | null>,
): () => void {
  let asking = false;
  let following = true;
  let newest: Args | null = null;
  async function follow(): Promise<void> {
    if (asking) return;
    asking = true;
    while (newest !== null) {
      const args: Args = newest;
      newest = null;
      // A question that is called off has no answer; the next one is asked all the same.
      const answer = await ask(args).catch(() => null);
      if (following) answered.value = answer?.ok ? answer.value : null;
    }
    asking = false;
  }
  const stop = effect(() => {
    newest = question.value;
    if (newest === null) answered.value = null;
    else void follow();
  });
  return () => {
    stop();
    following = false;
    newest = null;
    answered.value = null;
  };
}
