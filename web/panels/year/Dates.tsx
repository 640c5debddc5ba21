import {
  ROUGH_DATES,
  coverWords,
  frostOpening,
  frostTable,
  seasonCalendar,
  setPlan,
  waterAdvice,
  waterTable,
  yearEntries,
} from '../../../engine/index.ts';
import type { Advice, SeasonEvent, SeasonResult } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { fileNameOf, offerFile } from '../../state/files.ts';
import { findOut } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { printPaper } from '../parts/paper/print-paper.ts';
import { timesIn } from '../parts/times.ts';
import { DataTable } from './DataTable.tsx';
import { season as yearNow, today } from './season.ts';
import { YearPaper } from './strip/YearPaper.tsx';
import { spanWords } from './strip/YearStrip.tsx';

/** What to do when, the next date first; then what is asked of water, frost and clay; and all of it on paper. */
export function Dates({ season }: { readonly season: SeasonResult }) {
  const entries = yearEntries(season);
  const next = entries.find(({ to }) => to >= today()) ?? entries[0];
  return (
    <section aria-label="Dates of the year" aria-busy={yearNow.value.working !== null}>
      <h2 class="unseen">What to do when</h2>
      {entries.length === 0 && season.water.length > 0 && (
        <p>No date this year: nothing needs cloth, clay or a winter cover.</p>
      )}
      {next && <Entry entry={next} />}
      {entries.length > 1 && (
        <Fold title={entries.length === 2 ? 'One more date' : `${entries.length - 1} more dates`}>
          {inOrder(entries.filter((entry) => entry !== next)).map((entry) => (
            <Entry key={entry.id} entry={entry} />
          ))}
        </Fold>
      )}
      {/* Cloth that is not worth hanging has no date. */}
      {season.cloth
        .filter(({ up }) => up === null)
        .map(({ canopy, advice }) => (
          <Sentences key={canopy} advice={advice} />
        ))}
      {/* The stage's answer says of the climate that it is rough. */}
      {season.notes
        .filter((note) => note !== ROUGH_DATES)
        .map((note) => (
          <p key={note}>{note}</p>
        ))}
      {season.water.length > 0 && <WaterFold season={season} />}
      <FrostFold season={season} />
      {season.water.length > 0 && <ClayFold season={season} />}
      <PaperFold season={season} />
      <Fold title="Take care">
        <ul class="year-cautions">
          {season.cautions.map(({ id, text }) => (
            <li key={id}>{text}</li>
          ))}
        </ul>
      </Fold>
    </section>
  );
}

/** What comes next first; what is over this year last. */
function inOrder(entries: readonly SeasonEvent[]): readonly SeasonEvent[] {
  const isOver = ({ to }: SeasonEvent): boolean => to < today();
  return [...entries.filter((entry) => !isOver(entry)), ...entries.filter(isOver)];
}

/** Kinds of which another part of the stage says the rest: the list for tomorrow, the fold of frost. */
const TOLD_ELSEWHERE: readonly SeasonEvent['kind'][] = ['heat', 'pots', 'frost', 'winter-cover'];

function Entry({ entry }: { readonly entry: SeasonEvent }) {
  const line = (
    <>
      <strong>{spanWords(entry)}</strong> {entry.title}
    </>
  );
  return TOLD_ELSEWHERE.includes(entry.kind) ? (
    <p>{line}</p>
  ) : (
    <details>
      <summary>{line}</summary>
      <Sentences advice={entry.advice} />
    </details>
  );
}

function WaterFold({ season }: { readonly season: SeasonResult }) {
  const { head, rows } = waterTable(plan.value, season, units.value);
  return (
    <Fold title="Water a day">
      {rows.length > 0 && <DataTable head={head} rows={rows} />}
      <Sentences advice={waterAdvice()} />
    </Fold>
  );
}

function FrostFold({ season: { frost } }: { readonly season: SeasonResult }) {
  const { head, rows } = frostTable(plan.value, frost);
  const isCounted = head.length > 3;
  return (
    <Fold title="Frost">
      <Sentences advice={frostOpening(plan.value, frost)} />
      {rows.length > 0 && <DataTable head={head} rows={rows} />}
      {rows.length > 0 && frost.window !== null && !isCounted && (
        <p>
          <button type="button" onClick={() => findOut('climate')}>
            Type winter’s lows
          </button>{' '}
          to have the cold nights counted.
        </p>
      )}
      <Sentences advice={coverWords(plan.value, frost)} />
    </Fold>
  );
}

/** Spraying is the person's own choice: nothing of it is dated before. */
function ClayFold({ season: { clay } }: { readonly season: SeasonResult }) {
  const isChosen = plan.value.clay === true;
  return (
    <Fold title="Clay spray">
      <label class="clay-choice">
        <input
          type="checkbox"
          checked={isChosen}
          onChange={() =>
            commitEdit(
              isChosen ? 'Plan no clay' : 'Plan clay',
              setPlan(plan.value, { clay: isChosen ? undefined : true }),
            )
          }
        />{' '}
        Plan coats of clay
      </label>
      {clay.coats.length === 0 && <Sentences advice={clay.advice} />}
    </Fold>
  );
}

function PaperFold({ season }: { readonly season: SeasonResult }) {
  return (
    <Fold title="Calendar, paper, sources">
      <div class="editor-buttons">
        <button
          type="button"
          disabled={season.events.length === 0}
          onClick={() => offerFile(fileNameOf(plan.value, '.ics'), seasonCalendar(plan.value, season), 'text/calendar')}
        >
          Save the calendar (.ics)
        </button>
        <button type="button" onClick={() => printPaper(<YearPaper season={season} />)}>
          Print the year on a page
        </button>
      </div>
    </Fold>
  );
}

function Sentences({ advice }: { readonly advice: readonly Advice[] }) {
  return (
    <ul>
      {advice.map(({ text }) => (
        <li key={text}>{timesIn(text)}</li>
      ))}
    </ul>
  );
}
