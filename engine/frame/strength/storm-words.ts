/** When and how the cloth comes off before a storm, in sentences. */

import { formatSpeed } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { GUST_OVER_MEAN } from './beaufort.ts';

/** The cloth comes off by this gust even where the tube would bear more (this project's own): 54 km/h, 34 mph. [m/s] */
export const TAKE_DOWN_GUST = 15;

/** @param limit Gust that the tube bears. [m/s]  @param tooWeak Whether that is why the cloth comes off. */
export function takeDownWords(limit: number, tooWeak: boolean, units: Units): string {
  const gust = formatSpeed(Math.floor(limit), units);
  return tooWeak
    ? `In a gust of ${gust} the tube bends for good with the cloth up.`
    : Math.floor(limit) <= TAKE_DOWN_GUST
      ? 'The tube would not bear much more.'
      : `The tube would bear gusts of ${gust}; the cloth comes off sooner all the same.`;
}

interface Storm {
  /** [m/s] */
  readonly takeDownGust: number;
  /** What one sees outside then. */
  readonly sign: string;
  readonly takeDownWhy: string;
  readonly drops: boolean;
}

export function stormWords({ takeDownGust, sign, takeDownWhy, drops }: Storm, units: Units): string[] {
  return [
    `Cloth off before gusts of ${formatSpeed(takeDownGust, units)}. Look at the forecast's gusts, not its ` +
      `wind: gusts ` +
      `run about ${GUST_OVER_MEAN} times the ten-minute mean. Outside, by then, ${sign}.`,
    takeDownWhy,
    ...(drops ? ['Roll the drops up first, a day ahead if you can: they catch the most wind.'] : []),
    'Two people. Let go the ties on the lee side first and roll the cloth towards the wind, so that no free ' +
      'edge can fill. Every tie must open with one hand and no tool.',
    'Nobody stands under the frame while the cloth moves. If the wind is already here, stay away: cloth and ' +
      'ties are the cheap part.',
    'Off as well before thunderstorms, hail, snow or freezing rain, and whenever you leave for more than a day. ' +
      'Write down who does it when you are away.',
    'Afterwards: walk round it, push each post, tighten screws, look for bent rails and torn ties before the ' +
      'cloth goes up again.',
  ];
}
