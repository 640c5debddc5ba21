import {
  formatFrostLimit,
  inYearlySpan,
  monthWord,
  nameOf,
  seasonCalendar,
  setPlan,
  waterAdvice,
  waterTable,
  yearEntries,
} from '../../../engine/index.ts';
import type { Advice, FrostAdvice, FrostPlant, SeasonEvent, SeasonResult } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { fileNameOf, offerFile } from '../../state/files.ts';
import { findOut } from '../../state/view.ts';
import { plan, units } from '../../state/yard.ts';
import { Fold } from '../parts/answer/Fold.tsx';
import { printPaper } from '../parts/paper/print-paper.ts';
import { DataTable } from './DataTable.tsx';
import { grounds } from './grounds.ts';
import { today } from './season.ts';
import { YearPaper } from './strip/YearPaper.tsx';
import { spanWords } from './strip/YearStrip.tsx';

/**
 * What to do when, the next date first open, with what each sentence rests on; and all of it for a calendar and for the
 * wall.
 */
export function Dates({ season }: { readonly season: SeasonResult }) {
  const { clay, frost } = season;
  const entries = yearEntries(season);
  const next = entries.find(({ to }) => to >= today()) ?? entries[0];
  const water = waterTable(plan.value, season, units.value);
  return (
    <section aria-label="Dates of the year">
      <h2 class="unseen">What to do when</h2>
      {entries.length === 0 && (
        <p>No date this year: no cloth is drawn that spares harm, and nothing needs clay or a winter cover.</p>
      )}
      {next && <Entry entry={next} />}
      {entries.length > 1 && (
        <Fold title={entries.length === 2 ? 'One more date' : `${entries.length - 1} more dates`}>
          {inOrder(entries.filter((entry) => entry !== next)).map((entry) => (
            <Entry key={entry.id} entry={entry} />
          ))}
        </Fold>
      )}
      <Fold title="Clay spray">
        <ClayChoice />
        {clay.coats.length === 0 && <Sentences advice={clay.advice} />}
      </Fold>
      <Fold title="Water a day">
        {water.rows.length > 0 && <DataTable head={['Plant', ...water.head.slice(1)]} rows={water.rows} />}
        <Sentences advice={waterAdvice()} />
      </Fold>
      <Fold title="Frost">
        {frost.plants.length > 0 && <FrostTable frost={frost} />}
        <Sentences advice={frost.advice} />
      </Fold>
      <Fold title="Calendar and paper">
        {season.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
        <div class="editor-buttons">
          <button
            type="button"
            disabled={entries.length === 0}
            onClick={() =>
              offerFile(fileNameOf(plan.value, '.ics'), seasonCalendar(plan.value, season), 'text/calendar')
            }
          >
            Save the calendar (.ics)
          </button>
          <button type="button" onClick={() => printPaper(<YearPaper season={season} />)}>
            Print the year on a page
          </button>
        </div>
      </Fold>
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

/** Kinds of which the fold of frost says everything. */
const IN_FULL_BELOW: readonly SeasonEvent['kind'][] = ['frost', 'winter-cover'];

function Entry({ entry }: { readonly entry: SeasonEvent }) {
  return (
    <details>
      <summary>
        <strong>{spanWords(entry)}</strong> {entry.title}
      </summary>
      {IN_FULL_BELOW.includes(entry.kind) ? <p>All of it stands under Frost.</p> : <Sentences advice={entry.advice} />}
    </details>
  );
}

/** Spraying is the person's own choice: nothing of it is dated before. */
function ClayChoice() {
  const isChosen = plan.value.clay === true;
  return (
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
  );
}

function Sentences({ advice }: { readonly advice: readonly Advice[] }) {
  return (
    <ul>
      {advice.map((one) => (
        <li key={one.text}>
          {one.text} <span class="quiet">({grounds(one)})</span>
        </li>
      ))}
    </ul>
  );
}

/**
 * When a plant is hurt and what it gets to live on under a cover; how many nights too, where the climate has winter
 * months.
 */
function FrostTable({ frost: { plants, window } }: { readonly frost: FrostAdvice }) {
  const counted =
    window !== null &&
    plan.value.climate.months.some(({ month }) =>
      inYearlySpan({ from: window.first.slice(5), to: window.last.slice(5) }, `${String(month).padStart(2, '0')}-15`),
    );
  const degrees = (celsius: number): string => formatFrostLimit(celsius, units.value);
  const rows = plants.map(({ plant, damage, coverBelow, nights, light }) => [
    nameOf(plan.value, plant),
    degrees(damage),
    degrees(coverBelow),
    ...(counted ? [nightWords(nights)] : []),
    light === null
      ? '–'
      : `${light.low.toFixed(0)} to ${light.high.toFixed(0)} mol/m²${light.enough ? '' : ', too little'}`,
  ]);
  return (
    <>
      <DataTable
        head={['Plant', 'Hurt at', 'Cover below', ...(counted ? ['Nights that cold'] : []), 'Light under a cover']}
        rows={rows}
      />
      {window !== null && !counted && (
        <p>
          The climate has no winter months: type their highs and lows, and the cold nights are counted.{' '}
          <button type="button" onClick={() => findOut('climate')}>
            Type winter’s lows
          </button>
        </p>
      )}
    </>
  );
}

function nightWords(nights: FrostPlant['nights']): string {
  const cold = nights
    .filter((each) => each.nights >= 0.5)
    .map((each) => `${monthWord(each.month)} ${each.nights.toFixed(0)}`);
  return cold.length === 0 ? 'hardly any' : cold.join(', ');
}
