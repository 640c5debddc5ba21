import { useState } from 'preact/hooks';
import {
  formatClock,
  formatRain,
  formatTemperature,
  removeFeature,
  removeJournalEntry,
  dateOfMoment,
  clockOfMoment,
  dateWords,
} from '../../../../engine/index.ts';
import type { CivilDate, FeatureOf, JournalEntry } from '../../../../engine/index.ts';
import { commitEdit } from '../../../state/edit.ts';
import { plan, units } from '../../../state/yard.ts';
import { SIDE_CHOICES, sideKey } from '../../parts/side-choices.ts';
import { timesIn } from '../../parts/times.ts';
import { clothsOf, namesById, plantsOf } from '../lists.ts';
import { missing, page } from '../page.ts';
import { AddNote } from './AddNote.tsx';
import { AddReading } from './AddReading.tsx';

const KINDS = {
  pair: 'Pair of readings',
  reading: 'Reading',
  damage: 'Damage',
  spray: 'Spray',
  rain: 'Rain',
  'cloth-up': 'Cloth up',
  'cloth-down': 'Cloth down',
  note: 'Note',
} as const;
type Kind = keyof typeof KINDS;

interface Line {
  readonly key: string;
  readonly date: CivilDate;
  readonly text: string;
  remove(): void;
}

/** The diary: what happened in the yard, newest first, and a button a thing to add. */
export function Diary() {
  const [adds, setAdds] = useState<Kind | null>(missing.value && 'damage');
  function close(): void {
    setAdds(null);
    if (missing.value !== null) page.value = 'Did it work?';
    missing.value = null;
  }
  const lines = linesOf();
  return (
    <section aria-label="Diary">
      <h2 class="unseen">Diary</h2>
      <div class="diary-adds" role="group" aria-label="Add to the diary">
        {(Object.keys(KINDS) as Kind[]).map((kind) => (
          <button
            key={kind}
            type="button"
            aria-pressed={adds === kind}
            onClick={() => setAdds(adds === kind ? null : kind)}
          >
            {KINDS[kind]}
          </button>
        ))}
      </div>
      {adds === 'pair' || adds === 'reading' ? (
        <AddReading pair={adds === 'pair'} onDone={close} />
      ) : (
        adds !== null && <AddNote key={adds} what={adds} title={KINDS[adds]} onDone={close} />
      )}
      {lines.length === 0 && <p>Nothing noted yet. The first thing worth noting is the day the cloth goes up.</p>}
      <ul class="diary">
        {lines.map(({ key, date, text, remove }) => (
          <li key={key}>
            <span>
              <strong>{dateWords(date)}</strong> {text}
            </span>
            <button type="button" aria-label={`Remove: ${text}`} onClick={remove}>
              Remove
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function linesOf(): readonly Line[] {
  const { journal = [], features } = plan.value;
  const names = namesById([...plantsOf(plan.value), ...clothsOf(plan.value)]);
  const notes = journal.map((entry, index): Line => {
    const text = entryWords(entry, names);
    return {
      key: `note-${index}`,
      date: entry.date,
      text,
      remove: () => void commitEdit('Remove a note', removeJournalEntry(plan.value, index)),
    };
  });
  const readings = features
    .filter((feature): feature is FeatureOf<'reading'> => feature.kind === 'reading')
    .map((reading): Line => ({
      key: reading.id,
      date: dateOfMoment(reading.when),
      text: readingWords(reading, names),
      remove: () => void commitEdit('Remove a reading', removeFeature(plan.value, reading.id)),
    }));
  return [...notes, ...readings].toSorted((a, b) => b.date.localeCompare(a.date));
}

/** ", west side"; nothing where the side is not known. */
function sideSaid(side: JournalEntry['side']): string {
  const key = sideKey(side);
  if (key === 'unknown') return '';
  return key === 'top' || key === 'all' ? `, ${SIDE_CHOICES[key]}` : `, ${SIDE_CHOICES[key]} side`;
}

function entryWords(
  { what, feature, amount, part, side, text }: JournalEntry,
  names: Readonly<Record<string, string>>,
): string {
  const of = feature === undefined ? '' : ` ${names[feature] ?? feature}`;
  const size =
    amount === undefined
      ? ''
      : what === 'damage'
        ? `, ${amount} of 5${part === undefined ? '' : ` on the ${part}`}${sideSaid(side)}`
        : what === 'rain'
          ? ` ${formatRain(amount, units.value)}`
          : '';
  const word = what === 'moved' ? 'Moved' : KINDS[what];
  return `${word}${of}${size}${text === undefined ? '' : `: ${text}`}`;
}

function readingWords(
  { when, plant, leaf, air, covered }: FeatureOf<'reading'>,
  names: Readonly<Record<string, string>>,
): string {
  const degrees = (what: string, value: number | undefined): string =>
    value === undefined ? '' : `, ${what} ${formatTemperature(value, units.value, 1)}`;
  const clock = timesIn(formatClock(clockOfMoment(when), units.value));
  return (
    `Reading at ${clock}${plant === undefined ? '' : `, ${names[plant] ?? plant}`}, ` +
    `${covered === true ? 'under cloth' : 'open'}${degrees('leaf', leaf)}${degrees('air', air)}`
  );
}
