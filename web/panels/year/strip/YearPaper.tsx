import { seasonSources, yearEntries } from '../../../../engine/index.ts';
import type { SeasonResult } from '../../../../engine/index.ts';
import { stripOf } from '../../../common/strip-days.ts';
import { plan } from '../../../state/yard.ts';
import { PaperHead } from '../../parts/paper/PaperHead.tsx';
import { bandsOf } from './bands.ts';
import { Lines, Months, spanWords } from './YearStrip.tsx';

/** The year for the wall, on one page: the strip, the dates with a box to tick, and what to mind. */
export function YearPaper({ season }: { readonly season: SeasonResult }) {
  const strip = stripOf(plan.value.season, plan.value.season.year);
  return (
    <article class="year-paper">
      <PaperHead />
      <h1>Shade, clay, frost: {strip.year}</h1>
      <Months strip={strip} />
      <Lines strip={strip} bands={bandsOf(season)} marks={[]} />
      {season.notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      <ul class="to-tick">
        {yearEntries(season).map((entry) => (
          <li key={entry.id}>
            <strong>{spanWords(entry)}</strong> {entry.title}
          </li>
        ))}
      </ul>
      <h2>Mind</h2>
      <ul>
        {season.cautions.map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
      <p>By {seasonSources(season).join('; ')}; else common practice or our estimate.</p>
    </article>
  );
}
