import type { SeasonResult } from '../advice/season-types.ts';
import type { Plan } from '../plan/types.ts';
import { icalendar } from './icalendar.ts';
import { oneLine } from './plain-text.ts';

/** The year's dates as a calendar file. The same plan gives the same file to the byte: its stamp is the New Year of the season's year. */
export function seasonCalendar(plan: Plan, season: SeasonResult): string {
  const name = oneLine(plan.name ?? '') || 'The yard';
  return icalendar(season.events, { name: `${name}: shade, water, frost`, yard: name, stamp: `${plan.season.year}0101T000000Z` });
}
