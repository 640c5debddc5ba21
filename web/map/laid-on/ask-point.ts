import type { PlanPoint } from '../../../engine/index.ts';
import { slipHeight } from '../../state/view.ts';
import { askedPoint } from './overlays.ts';

/**
 * Asks for one point of the drawing; on a phone the slip makes room until it is given.
 * @param hint the step in one sentence
 */
export function askForPoint(hint: string, take: (at: PlanPoint) => void): void {
  slipHeight.value = 'line';
  askedPoint.value = {
    hint,
    take(at) {
      slipHeight.value = 'half';
      take(at);
    },
  };
}
