import { useSignal, useSignalEffect } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { PlanPoint } from '../../../engine/index.ts';
import { askedPoint, barredRings } from '../../map/overlays.ts';
import { readOut } from '../../state/speech.ts';
import type { GroundAnswer } from '../../worker/advice-methods/ground.ts';
import { ground } from './placed.ts';

/** Hatches the ground on which the pot may not stand, and says of a tapped point why. */
export function BarredGround() {
  const said = useSignal<string | null>(null);
  useEffect(() => () => {
    barredRings.value = [];
    askedPoint.value = null;
  }, []);
  useSignalEffect(() => {
    const answer = ground.value.shown?.value;
    barredRings.value = answer ? stripsOf(answer) : [];
  });
  const reasons = reasonList(ground.value.shown?.value);
  const ask = (): void => {
    askedPoint.value = {
      hint: 'Tap the ground you want to know about.',
      take(at) {
        askedPoint.value = null;
        said.value = wordsAt(ground.value.shown?.value, at);
        readOut(said.value);
      },
    };
  };
  return (
    <details class="barred-ground">
      <summary>Hatched ground: where it may not stand</summary>
      <p><button type="button" onClick={ask}>Why not there?</button> {said.value}</p>
      <ul>{reasons.map(([reason, area]) => <li key={reason}>{sentence(reason)} ({area.toFixed(1)} m²)</li>)}</ul>
    </details>
  );
}

/** Squares beside each other in a row become one ring. */
function stripsOf({ step, barred }: GroundAnswer): PlanPoint[][] {
  const strips: { y: number; from: number; to: number }[] = [];
  for (const { at: [x, y] } of barred) {
    const last = strips.at(-1);
    if (last && last.y === y && Math.abs(last.to - (x - step / 2)) < step / 10) last.to = x + step / 2;
    else strips.push({ y, from: x - step / 2, to: x + step / 2 });
  }
  const half = step / 2;
  return strips.map(({ y, from, to }) => [[from, y - half], [to, y - half], [to, y + half], [from, y + half]]);
}

function reasonList(answer: GroundAnswer | undefined): [reason: string, area: number][] {
  const areas = new Map<string, number>();
  for (const { reason } of answer?.barred ?? []) areas.set(reason, (areas.get(reason) ?? 0) + answer!.step ** 2);
  return [...areas].sort((a, b) => b[1] - a[1]);
}

function wordsAt(answer: GroundAnswer | undefined, [x, y]: PlanPoint): string {
  if (!answer) return 'That is still being worked out.';
  const half = answer.step / 2;
  const square = answer.barred.find(({ at }) => Math.abs(at[0] - x) <= half && Math.abs(at[1] - y) <= half);
  return square ? `Not there: ${square.reason}.` : 'The pot may stand there.';
}

function sentence(clause: string): string {
  return clause.charAt(0).toUpperCase() + clause.slice(1);
}
