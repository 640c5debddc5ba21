import { minutesOf } from '../../../engine/index.ts';
import type { Stretch } from '../../../engine/index.ts';
import { sunUp } from '../../state/results.ts';

/** Where the sun's rise and set are not known. */
const LONG_DAY = { from: '05:00', to: '22:00' } as const;

/** The day from sunrise to sunset as a bar, the hours over the limit filled. The words beside it say the same. */
export function HoursBar({ when }: { readonly when: Stretch }) {
  const { from, to } = sunUp.value ?? LONG_DAY;
  const place = (clock: string): number =>
    (100 * (minutesOf(clock) - minutesOf(from))) / (minutesOf(to) - minutesOf(from));
  const [left, right] = [Math.max(0, place(when.from)), Math.min(100, place(when.to))];
  return (
    <span class="hours-bar" aria-hidden="true">
      <span style={{ left: `${left}%`, width: `${right - left}%` }} />
    </span>
  );
}
