import type { SeasonEvent, SeasonResult } from './types.ts';

/**
 * The year's dates for people: a plant's two coats of clay, or those of plants sprayed on one day, are one entry, with
 * how to do it and when to look again.
 */
export function yearEntries({ events, clay }: Pick<SeasonResult, 'events' | 'clay'>): readonly SeasonEvent[] {
  return events.flatMap((event): readonly SeasonEvent[] => {
    if (event.kind !== 'clay') return [event];
    if (!clay.plants.some(({ plant, coats }) => event.features.includes(plant) && coats[0] === event.from)) return [];
    const seconds = clay.plants.filter(({ plant }) => event.features.includes(plant)).map(({ coats }) => coats[1]);
    return [
      {
        ...event,
        to: seconds.toSorted()[seconds.length - 1],
        title: `${event.title.replace(/^First coat of clay/, 'Clay')}. Two coats a few days apart`,
        advice: clay.advice,
      },
    ];
  });
}
