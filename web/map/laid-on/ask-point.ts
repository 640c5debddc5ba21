import type { PlanPoint } from '../../../engine/index.ts';
import { slipHeight } from '../../state/view.ts';
import { askedPoint } from './overlays.ts';

/**
 * Asks for one point of the drawing; on a phone the slip makes room until it is given, and comes back as it was.
 * @param hint the step in one sentence
 * @param exact the very place that is pointed at, not the nearest line or grid
 */
export function askForPoint(hint: string, take: (at: PlanPoint) => void, exact = false): void {
  const { value: height } = slipHeight;
  slipHeight.value = 'line';
  askedPoint.value = {
    hint,
    exact,
    take(at) {
      slipHeight.value = height === 'line' ? 'half' : height;
      take(at);
    },
  };
}
