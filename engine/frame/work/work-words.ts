/** How many hands for how long, in sentences. */
import type { AnchorPlan } from '../strength/types.ts';
import type { HourRange, WorkEstimate } from './types.ts';

/** @param morning How long one works before the heat. [h]  @param crowd Whether more hands would only be in the way. */
export function workWords(
  { people, parts, hours, mornings }: Omit<WorkEstimate, 'sentences'>,
  { ground, concrete }: AnchorPlan,
  { morning, crowd }: { readonly morning: number; readonly crowd: boolean },
): string[] {
  const each = parts.filter((part) => part.hours.high > 0).map((part) => `${part.what} ${range(part.hours)}`);
  const days = mornings.high === 1 ? 'one cool morning' : `${range(mornings)} cool mornings`;
  const [inNumbers, who] =
    people === 2 ? ['two', 'Two people'] : [people, `${people} people, or two with trestles who raise it bay by bay,`];
  return [
    `Reckon with ${range(hours)} hours of one person’s work in all: ${each.join(', ')}` +
      `${ground === null ? '; what the ground takes comes on top' : ''}. With ${inNumbers} people that is ` +
      `${days} of ${morning} hours${concrete === null ? '' : ', and a week between for the concrete to harden'}.`,
    `${who} are needed to raise the frame and to hang the cloth; never alone.` +
      `${crowd ? ' A roof with rails as heavy as this is better built by people who do it for a living.' : ''}`,
    'Hours and hands are our estimate, from somebody who has built one before to somebody who has not; nobody has ' +
      'measured them.',
  ];
}

function range({ low, high }: HourRange): string {
  return low === high ? String(low) : `${low} to ${high}`;
}
