import { effect, untracked } from '@preact/signals';
import { nameOf } from '../../engine/index.ts';
import { heat } from '../state/results.ts';
import { readOut } from '../state/speech.ts';
import { openYard, plan } from '../state/yard.ts';

/** Has a screen reader say which plants fare otherwise than before, whatever brought it about. */
export function tellVerdicts(): void {
  let before = new Map<string, string>();
  let yard = '';
  effect(() => {
    const { shown } = heat.value;
    if (!shown) return;
    const now = new Map(shown.value.plants.map(({ id, verdict }) => [id, verdict ?? 'not judged']));
    untracked(() => {
      const changes =
        yard === openYard.value.id ? [...now].filter(([id, verdict]) => (before.get(id) ?? verdict) !== verdict) : [];
      if (changes.length > 0)
        readOut(
          changes.map(([id, verdict]) => `${nameOf(plan.value, id)}: ${verdict}, was ${before.get(id)}.`).join(' '),
        );
      yard = openYard.value.id;
    });
    before = now;
  });
}
