import { seasonCalendar } from '../../../engine/index.ts';
import type { Advice, SeasonResult } from '../../../engine/index.ts';
import { fileNameOf, offerFile } from '../../state/files.ts';
import { plan } from '../../state/yard.ts';
import { dayWords } from './lists.ts';
import { today } from './season.ts';

/** What to do when, the next date first open, with what each sentence rests on; and all of it for a calendar. */
export function Dates({ season }: { readonly season: SeasonResult }) {
  const next = season.events.find(({ to }) => to >= today()) ?? season.events[0];
  return (
    <section aria-label="Dates of the year">
      <h2>What to do when</h2>
      {season.events.length === 0 && <p>No date this year: no cloth is drawn that spares harm, and nothing needs clay or a winter cover.</p>}
      {season.notes.map((note) => <p key={note}>{note}</p>)}
      {season.events.map((event) => (
        <details key={event.id} open={event === next}>
          <summary><strong>{event.from === event.to ? dayWords(event.from) : `${dayWords(event.from)} to ${dayWords(event.to)}`}</strong> {event.title}</summary>
          <ul>{event.advice.map((advice) => <li key={advice.text}>{advice.text} <span class="quiet">({grounds(advice)})</span></li>)}</ul>
        </details>
      ))}
      <button type="button" disabled={season.events.length === 0} onClick={() => offerFile(fileNameOf(plan.value, '.ics'), seasonCalendar(plan.value, season), 'text/calendar')}>Save the calendar (.ics)</button>
      <h3>Before you climb, spray or work in heat</h3>
      <ul class="year-cautions">{season.cautions.map(({ id, text }) => <li key={id}>{text}</li>)}</ul>
    </section>
  );
}

function grounds({ basis, source }: Advice): string {
  return source === undefined ? basis : `${basis}: ${source}`;
}
