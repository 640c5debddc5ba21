import { formatLength } from '../../../engine/index.ts';
import { isStale } from '../../state/live.ts';
import type { Live } from '../../state/live.ts';
import { units } from '../../state/yard.ts';
import { shapeName } from '../parts/quantity-words.ts';

/** What the numbers leave out where a sunny wall stands close by. */
export function WallNote({ live }: { readonly live: Live<'wallNear'> }) {
  const wall = live.shown?.value;
  if (!wall || live.asked === null || isStale(live)) return null;
  return (
    <p class="wall-note">
      <strong>Near a sunny wall:</strong> {shapeName(wall.id)} stands {formatLength(wall.distance, units.value)} off,
      and its face has {wall.sunHours.toFixed(1)} h of sun that day, {wall.hotHours.toFixed(1)} of them hot. It gives
      heat back into the evening, and glass in it can throw a second sun: neither is in these numbers, so count on more.
    </p>
  );
}
