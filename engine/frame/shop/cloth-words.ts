/** What is said about the cloth: how it is sewn, what to mind, and what the frame carries in winter. */

import { formatArea, formatTemperatureDifference, formatUpToHand } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { formatAbout, formatMark } from '../layout/lengths.ts';
import type { FrameModel } from '../layout/model.ts';

export const READY_MADE = 'Nothing to sew: it comes hemmed, with eyelets.';

/** @param length Of one strip. [m]  @param hem Folded over at every edge. [m]  @param lap Of a seam. [m] */
export function sewingWords(
  { strips, length, lengthwise }: { readonly strips: number; readonly length: number; readonly lengthwise: boolean },
  hem: number,
  lap: number,
  units: Units,
): string {
  return strips === 1
    ? `One piece; hem all round, ${formatAbout(hem, units)}.`
    : `${strips} strips of ${formatMark(length, units)}, seams along the ${lengthwise ? 'length' : 'width'}; ` +
        `overlap ${formatAbout(lap, units)} and sew two rows, zigzag or triple stitch, so that the seam can ` +
        `stretch; hem all round, ${formatAbout(hem, units)}.`;
}

export function clothNotes(model: FrameModel, units: Units): string[] {
  const notes = [
    'Use knitted shade cloth: it does not unravel where it is cut. Woven cloth must be hemmed or taped all round.',
  ];
  if (model.cloths.some(({ kind }) => kind === 'drop'))
    notes.push(
      'A drop that flaps tears itself: a rod in its lower hem holds it down. Roll drops up first when wind ' +
        'is forecast.',
    );
  if (model.kind === 'canopy' && model.pitchDeg < 5)
    notes.push(
      `A level roof holds leaves, and water where the cloth is dense: give it a slope of 5° ` +
        `(${units === 'metric' ? '90 mm in a metre' : 'an inch in a foot'}) where it rains in summer, or leave ` +
        `a low point open to drain.`,
    );
  return notes;
}

/** Of frost cloth that lets 70 to 85 % of the light through. */
function fleeceWeight(units: Units): string {
  return units === 'metric' ? '17 to 42 g/m²' : '½ to 1¼ oz/yd²';
}

interface FrostSheet {
  /** Of it lies on the ground. [m] */
  readonly skirt: number;
  /** Along its edge. */
  readonly weights: number;
  /** With its currency; `null` where no price is known. */
  readonly cost: string | null;
  /** Whether the frame hangs from a wall, where no sheet comes down. */
  readonly onWall: boolean;
}

/**
 * @param cut Of the one sheet. [m]
 */
export function frostWords(
  cut: readonly [number, number],
  { skirt, weights, cost, onWall }: FrostSheet,
  units: Units,
): string {
  const down = onWall
    ? 'from the rail at the wall over the others and down to the ground on the three open sides'
    : 'over the rails and down to the ground';
  return (
    `In winter the same frame can carry frost cloth, for what stays under it and has to be covered: take the shade ` +
    `cloth off and lay one sheet of ${formatUpToHand(cut[0], units)} × ${formatUpToHand(cut[1], units)}, or strips ` +
    `that overlap by as much as lies on the soil, ${down}, ${formatAbout(skirt, units)} of it on the soil, with ` +
    `${weights} stones or sandbags along the edge. That is ${formatArea(cut[0] * cut[1], units)} of fleece of ` +
    `${fleeceWeight(units)}${cost === null ? '' : `, roughly ${cost}`}, not on the ` +
    `shopping list. It gives 0 to ${formatTemperatureDifference(3, units)}, on some clear nights nothing, and ` +
    `nothing against freezing wind. ` +
    'On before sunset, open in the morning once it is above freezing; the cloth must not touch leaves. The ' +
    'frame must not stay under it in wind or snow.'
  );
}
