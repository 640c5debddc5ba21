import { useState } from 'preact/hooks';
import type { PlanPoint } from '../../../engine/index.ts';
import { NUDGE } from '../drawing/keys.ts';

const ARROWS = [
  { name: 'up', sign: '↑', by: [0, 1] },
  { name: 'left', sign: '←', by: [-1, 0] },
  { name: 'right', sign: '→', by: [1, 0] },
  { name: 'down', sign: '↓', by: [0, -1] },
] as const;

interface Props {
  readonly onNudge: (by: PlanPoint) => void;
}

/** Four arrows that move by 10 cm or 1 cm: exact placing without a drag. */
export function NudgePad({ onNudge }: Props) {
  const [fine, setFine] = useState(false);
  const step = fine ? NUDGE.fine : NUDGE.wide;
  const words = fine ? '1 cm' : '10 cm';
  return (
    <div class="nudge-pad" role="group" aria-label="Nudge">
      {ARROWS.map(({ name, sign, by }) => (
        <button
          key={name}
          type="button"
          class={`nudge-${name}`}
          aria-label={`${words} ${name}`}
          onClick={() => onNudge([by[0] * step, by[1] * step])}
        >
          {sign}
        </button>
      ))}
      <button
        type="button"
        class="nudge-step"
        aria-label={`Step ${words}; change to ${fine ? '10 cm' : '1 cm'}`}
        onClick={() => setFine(!fine)}
      >
        {words}
      </button>
    </div>
  );
}
