import { useId, useState } from 'preact/hooks';
import { DAMAGE_PARTS, appendJournal, parseNumber, withoutUndefined } from '../../../../engine/index.ts';
import type { JournalEntry, JournalWhat } from '../../../../engine/index.ts';
import { commitEdit } from '../../../state/edit.ts';
import { plan } from '../../../state/yard.ts';
import { ChoiceBox } from '../../parts/boxes/ChoiceBox.tsx';
import { clothsOf, namesById, plantsOf } from '../lists.ts';
import { ScoreChoice } from './ScoreChoice.tsx';
import { today } from '../season.ts';

const PARTS = Object.fromEntries(DAMAGE_PARTS.map((part) => [part, part]));
/** Most rain in a day that is believed. [mm] */
const MOST_RAIN = 500;

interface Props {
  readonly what: JournalWhat;
  readonly title: string;
  onDone(): void;
}

/** One entry of the diary: the date is today's, the thing the first that fits, so that Save is near. */
export function AddNote({ what, title, onDone }: Props) {
  const id = useId();
  const things = namesById(
    what.startsWith('cloth') ? clothsOf(plan.value) : what === 'damage' || what === 'spray' ? plantsOf(plan.value) : [],
  );
  const [entry, setEntry] = useState<JournalEntry>({
    date: today(),
    what,
    feature: what === 'spray' ? undefined : Object.keys(things)[0],
    ...(what === 'damage' ? { amount: 2, part: 'leaf' } : {}),
  });
  const [rain, setRain] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const set = (change: Partial<JournalEntry>): void => setEntry({ ...entry, ...change });

  function save(): void {
    const amount = what === 'rain' ? parseNumber(rain.replace(/\s*mm\s*$/, '')) : (entry.amount ?? null);
    if (what === 'rain' && (amount === null || amount < 0 || amount > MOST_RAIN))
      return setFault(`"${rain}" is not a rain between 0 and ${MOST_RAIN} mm.`);
    const whole = withoutUndefined({ ...entry, amount: amount ?? undefined, text: entry.text || undefined });
    if (commitEdit(`Note ${title.toLowerCase()}`, appendJournal(plan.value, whole))) onDone();
  }

  return (
    <form
      class="add-form"
      aria-label={title}
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <div class="field-row">
        <div class="number-box">
          <label for={`${id}-date`}>Date</label>
          <input
            id={`${id}-date`}
            type="date"
            required
            value={entry.date}
            onInput={(event) => set({ date: event.currentTarget.value })}
          />
        </div>
        {Object.keys(things).length > 0 && (
          <ChoiceBox
            label="On"
            value={entry.feature}
            none={what === 'spray' ? 'all plants' : undefined}
            choices={things}
            onChange={(feature) => set({ feature })}
          />
        )}
        {what === 'rain' && (
          <div class="number-box">
            <label for={`${id}-rain`}>Rain, mm</label>
            <input
              id={`${id}-rain`}
              type="text"
              inputmode="decimal"
              value={rain}
              onInput={(event) => setRain(event.currentTarget.value)}
            />
          </div>
        )}
      </div>
      {what === 'damage' && (
        <>
          <ScoreChoice score={entry.amount ?? 0} onChange={(amount) => set({ amount })} />
          <ChoiceBox label="Where" value={entry.part} choices={PARTS} onChange={(part) => set({ part })} />
        </>
      )}
      <div class="number-box">
        <label for={`${id}-text`}>Words (may stay empty)</label>
        <input
          id={`${id}-text`}
          type="text"
          dir="auto"
          value={entry.text ?? ''}
          onInput={(event) => set({ text: event.currentTarget.value })}
        />
      </div>
      {fault && (
        <p class="box-said fault" role="alert">
          {fault}
        </p>
      )}
      <div class="editor-buttons">
        <button type="submit" class="main">
          Save
        </button>
        <button type="button" onClick={onDone}>
          Leave it
        </button>
      </div>
    </form>
  );
}
