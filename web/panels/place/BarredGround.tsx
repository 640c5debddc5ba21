import { untracked, useSignal, useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { featureOf, middleOf, capital } from '../../../engine/index.ts';
import type { PlanPoint, BarredGround } from '../../../engine/index.ts';
import { softGround } from '../../charts/soft-ground.ts';
import { askForPoint } from '../../map/laid-on/ask-point.ts';
import { askedPoint, barredRings } from '../../map/laid-on/overlays.ts';
import { readOut } from '../../state/speech.ts';
import { pin, selection } from '../../state/view.ts';
import { plan } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { ground } from './placed.ts';

/** The rest is heard by a tap. */
const MOST_REASONS = 8;

/** Hatches the ground on which the pot may not stand, and says of a tapped point why. */
export function BarredGround() {
  const said = useSignal<string | null>(null);
  useEffect(
    () => () => {
      barredRings.value = [];
      askedPoint.value = null;
    },
    [],
  );
  useSignalEffect(() => {
    const answer = ground.value.shown?.value;
    barredRings.value = answer
      ? softGround(
          answer.barred.map(({ at }) => at),
          answer.step,
        )
      : [];
  });
  // A tap on the ground asks at once; the button asks for whoever has the cross or the keys.
  useSignalEffect(() => {
    const at = pin.value;
    if (at) untracked(() => answerAt(at));
  });
  // What stands there is chosen by a tap on it: that is asking, too.
  useSignalEffect(() => {
    const [id] = selection.value;
    const thing = untracked(() => featureOf(plan.value, id ?? ''));
    if (thing && !(thing.kind === 'plant' && thing.container)) untracked(() => answerAt(middleOf(thing)));
  });
  const answerAt = (at: PlanPoint): void => {
    said.value = wordsAt(ground.value.shown?.value, at);
    readOut(said.value);
  };
  const reasons = reasonList(ground.value.shown?.value);
  const ask = (): void => {
    askForPoint('Tap the ground you want to know about.', (at) => (pin.value = at));
  };
  return (
    <section class="barred-ground" aria-label="Hatched ground">
      {said.value !== null && <p class="said">{said.value}</p>}
      <Fold title="Hatched ground">
        <p>
          Tap it, or{' '}
          <button type="button" onClick={ask}>
            ask about a place
          </button>
        </p>
        <ul>
          {reasons.slice(0, MOST_REASONS).map((reason) => (
            <li key={reason}>{capital(reason)}</li>
          ))}
        </ul>
      </Fold>
    </section>
  );
}

/** What takes most ground first. */
function reasonList(answer: BarredGround | undefined): string[] {
  const squares = new Map<string, number>();
  for (const { reason } of answer?.barred ?? []) squares.set(reason, (squares.get(reason) ?? 0) + 1);
  return [...squares].sort((a, b) => b[1] - a[1]).map(([reason]) => reason);
}

function wordsAt(answer: BarredGround | undefined, [x, y]: PlanPoint): string {
  if (!answer) return 'That is still being worked out.';
  const half = answer.step / 2;
  const square = answer.barred.find(({ at }) => Math.abs(at[0] - x) <= half && Math.abs(at[1] - y) <= half);
  return square ? `Not there: ${square.reason}.` : 'The pot may stand there.';
}
