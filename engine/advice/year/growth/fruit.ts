/**
 * When fruit hangs, from its set to its last picking: common practice, no source; early kinds in warm places and late
 * ones in cool places taken together.
 */

import type { PlantRow } from '../../../plan/types.ts';
import { isInSpan, type Span } from './months.ts';

const HANGS: Readonly<Record<string, Span>> = {
  apple: [5, 10],
  pomegranate: [6, 11],
  grape: [6, 10],
  blueberry: [4, 8],
  pepper: [5, 11],
  chile: [5, 11],
  cucumber: [5, 10],
};

/**
 * Whether a plant has in a month what its limit is of: leaves always, fruit while it hangs; of a row of the person's
 * own nobody knows, and it is taken to hang.
 * @param month 1 to 12 @param latitude [°]
 */
export function bearsWhatBurns({ id, limitOf }: PlantRow, month: number, latitude: number): boolean {
  return limitOf !== 'fruit' || !(id in HANGS) || isInSpan(HANGS[id], month, latitude);
}
