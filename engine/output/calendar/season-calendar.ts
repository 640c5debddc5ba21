import type { Advice } from '../../advice/year/advice.ts';
import { RISKS } from '../../advice/year/season/risks.ts';
import type { SeasonResult } from '../../advice/year/season/types.ts';
import { cautionsFor } from '../../frame/work/cautions.ts';
import type { Plan } from '../../plan/types.ts';
import { type CalendarEvent, icalendar } from './icalendar.ts';
import { oneLine } from '../text/plain-text.ts';

/**
 * The year's dates as a calendar file. The same plan gives the same file to the byte: its stamp is the New Year of the
 * season's year. An event's identifier holds the kind of work, the feature and the year, so that a yard renamed, or
 * drawn anew from the first corner, updates its events. Two yards with the same ids therefore want a calendar each.
 */
export function seasonCalendar(plan: Plan, season: SeasonResult): string {
  const name = oneLine(plan.name ?? '') || 'The yard';
  const events = season.events.map((event): CalendarEvent => ({
    ...event,
    notes: [
      ...(season.rough ? ['The climate is rough: this date is too.'] : []),
      ...event.advice.map(withGround),
      ...cautionsFor(RISKS[event.kind] ?? [], plan.cautions).map(({ text }) => text),
    ],
  }));
  return icalendar(events, { name: `${name}: shade, water, frost`, stamp: `${plan.season.year}0101T000000Z` });
}

function withGround({ text, basis, source }: Advice): string {
  return `${text} (${basis}${source === undefined ? '' : `: ${source}`})`;
}
