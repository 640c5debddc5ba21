import type { SeasonEvent, SeasonResult } from '../year/season/types.ts';

/**
 * The year's dates for people: coats of clay are one entry, for the weather says when the next is due, not the
 * calendar.
 */
export function yearEntries({ events, clay }: Pick<SeasonResult, 'events' | 'clay'>): readonly SeasonEvent[] {
  const coats = events.filter(({ kind }) => kind === 'clay');
  if (coats.length < 2) return events;
  const rule: SeasonEvent = {
    ...coats[0],
    to: coats[coats.length - 1].to,
    title:
      `${coats[0].title.replace(/^First coat of clay/, 'Clay')}. Two coats a few days apart, then again ` +
      `after rain or on new growth`,
    advice: clay.advice,
  };
  return events.flatMap((event) => (event.kind !== 'clay' ? [event] : event === coats[0] ? [rule] : []));
}
