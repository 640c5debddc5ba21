import type { SeasonEvent, SeasonResult } from '../year/season/types.ts';

/** The year's dates for people: the two coats of clay are one entry, with how to do it and when to look again. */
export function yearEntries({ events, clay }: Pick<SeasonResult, 'events' | 'clay'>): readonly SeasonEvent[] {
  const coats = events.filter(({ kind }) => kind === 'clay');
  if (coats.length < 2) return events;
  const both: SeasonEvent = {
    ...coats[0],
    to: coats[coats.length - 1].to,
    title: `${coats[0].title.replace(/^First coat of clay/, 'Clay')}. Two coats a few days apart`,
    advice: clay.advice,
  };
  return events.flatMap((event) => (event.kind !== 'clay' ? [event] : event === coats[0] ? [both] : []));
}
