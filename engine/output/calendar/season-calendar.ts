import type { Advice } from '../../advice/year/advice.ts';
import { RISKS } from '../../advice/year/season/risks.ts';
import type { SeasonEvent, SeasonResult } from '../../advice/year/season/types.ts';
import { cautionsFor } from '../../frame/work/cautions.ts';
import type { Plan } from '../../plan/types.ts';
import { oneLine } from '../text/plain-text.ts';
import { type CalendarEvent, icalendar } from './icalendar.ts';

/** Evenings before on which a calendar reminds: cloth takes a dry, calm day to hang, heat a look at the forecast. */
const REMINDS: Readonly<Partial<Record<SeasonEvent['kind'], number>>> = { 'cloth-up': 3, heat: 1 };

/**
 * The year's dates as a calendar file. The same plan gives the same file to the byte: its stamp is the New Year of the
 * season's year. An event's identifier holds the kind of work, the feature, the year and the yard: by the plan's own
 * mark for it, which stays when the yard is renamed or drawn anew, else by its name and place.
 */
export function seasonCalendar(plan: Plan, season: SeasonResult): string {
  const name = oneLine(plan.name ?? '') || 'The yard';
  const events = season.events.map((event): CalendarEvent => ({
    ...event,
    notes: [
      ...(season.rough ? ['The climate is rough: this date is too.'] : []),
      ...event.advice.map(withGround),
      ...cautionsFor(RISKS[event.kind] ?? [], plan).map(({ text }) => text),
    ],
    remindsDaysBefore: REMINDS[event.kind],
  }));
  const { latitude, longitude } = plan.site;
  const yard = plan.yard ?? `${name} ${latitude.toFixed(3)} ${longitude.toFixed(3)}`;
  return icalendar(events, { name: `${name}: shade, water, frost`, yard, stamp: `${plan.season.year}0101T000000Z` });
}

function withGround({ text, basis, source }: Advice): string {
  return `${text} (${basis}${source === undefined ? '' : `: ${source}`})`;
}
