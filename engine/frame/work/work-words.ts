/** How many hands for how long, in sentences. */

import type { AnchorPlan } from '../strength/types.ts';
import type { HourRange, WorkEstimate } from './types.ts';

/** Up to here an estimate is told to the hour, beyond it to five hours, from a hundred on to ten. [h] */
const TOLD_TO_THE_HOUR = 10;
const TOLD_TO_TEN = 100;

/** What a frame takes with anchors in a ground that is named. */
export interface AnchoredHours {
  readonly where: string;
  readonly hours: HourRange;
}

/** @param morning How long one works before the heat. [h]  @param crowd Whether more hands would only be in the way. */
export function workWords(
  { people, parts, hours, mornings }: Omit<WorkEstimate, 'sentences'>,
  { ground, concrete }: AnchorPlan,
  {
    morning,
    crowd,
    inAll,
  }: { readonly morning: number; readonly crowd: boolean; readonly inAll: AnchoredHours | null },
): string[] {
  const days = mornings.high === 1 ? 'one cool morning' : `${range(mornings)} cool mornings`;
  const [inNumbers, who] =
    people === 2 ? ['two', 'Two people'] : [people, `${people} people, or two with trestles who raise it bay by bay,`];
  const longest = parts.reduce((a, b) => (b.hours.high > a.hours.high ? b : a));
  return [
    `Reckon with ${days} of ${morning} hours for ${inNumbers} people, ${hoursWords(hours)} of work in all, most of ` +
      `it ${longest.what}${ground === null ? '; what the ground takes comes on top' : ''}` +
      `${inAll === null ? '' : `: with anchors, as ${inAll.where}, ${hoursWords(inAll.hours)} in all`}` +
      `${concrete === null ? '' : ', and a week between for the concrete to harden'}.`,
    `${who} are needed to raise the frame and to hang the cloth; never alone.` +
      `${crowd ? ' A roof with rails as heavy as this is better built by people who do it for a living.' : ''}`,
    'Hours and hands are our estimate, from practised to a first frame; nobody has measured them.',
  ];
}

/** "7 to 15 hours": an estimate told no finer than anybody could hold it to. */
export function hoursWords({ low, high }: HourRange): string {
  return `${range({ low: toldHours(low), high: toldHours(high) })} hours`;
}

/** @param hours An estimate. [h] */
export function toldHours(hours: number): number {
  const step = hours <= TOLD_TO_THE_HOUR ? 1 : hours <= TOLD_TO_TEN ? 5 : 10;
  return Math.max(1, Math.round(hours / step)) * step;
}

function range({ low, high }: HourRange): string {
  return low === high ? String(low) : `${low} to ${high}`;
}
