import { useState } from 'preact/hooks';
import type { PlanPoint } from '../../../engine/index.ts';
import { units } from '../../state/yard.ts';
import { NUDGES } from '../drawing/keys.ts';

const ARROWS = [
  { name: 'up', sign: '↑', by: [0, 1] },
  { name: 'left', sign: '←', by: [-1, 0] },
  { name: 'right', sign: '→', by: [1, 0] },
  { name: 'down', sign: '↓', by: [0, -1] },
] as const;

interface Props {
  readonly onNudge: (by: PlanPoint) => void;
}

/** Four arrows that move by a wide step or a fine one: exact placing without a drag. */
export function NudgePad({ onNudge }: Props) {
  const [fine, setFine] = useState(false);
  const nudges = NUDGES[units.value];
  const [step, other] = fine ? [nudges.fine, nudges.wide] : [nudges.wide, nudges.fine];
  return (
    <div class="nudge-pad" role="group" aria-label="Nudge">
      {ARROWS.map(({ name, sign, by }) => (
        <button
          key={name}
          type="button"
          class={`nudge-${name}`}
          aria-label={`${step.words} ${name}`}
          onClick={() => onNudge([by[0] * step.length, by[1] * step.length])}
        >
          {sign}
        </button>
      ))}
      <button
        type="button"
        class="nudge-step"
        aria-label={`Step ${step.words}; change to ${other.words}`}
        onClick={() => setFine(!fine)}
      >
        {step.words}
      </button>
    </div>
  );
}
