import type { SeasonEvent, SeasonResult } from '../../../engine/index.ts';

/** The year's dates, coats of clay as one: the weather says when the next is due, not the calendar. */
export function entriesOf({ events, clay }: SeasonResult): readonly SeasonEvent[] {
  const coats = events.filter(({ kind }) => kind === 'clay');
  if (coats.length < 2) return events;
  const rule: SeasonEvent = {
    ...coats[0],
    to: coats[coats.length - 1].to,
    title: `${coats[0].title.replace('First coat of clay', 'Clay')}. Two coats a few days apart, then again after rain or on new growth`,
    advice: clay.advice.filter(({ text }) => !text.startsWith('Coats about ')),
  };
  return events.flatMap((event) => (event.kind !== 'clay' ? [event] : event === coats[0] ? [rule] : []));
}
