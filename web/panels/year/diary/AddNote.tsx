import { useState } from 'preact/hooks';
import { DAMAGE_PARTS, appendJournal, parseNumber, withoutUndefined } from '../../../../engine/index.ts';
import type { JournalEntry, JournalWhat } from '../../../../engine/index.ts';
import { commitEdit } from '../../../state/edit.ts';
import { plan } from '../../../state/yard.ts';
import { ChoiceBox } from '../../parts/boxes/ChoiceBox.tsx';
import { clothsOf, namesById, plantsOf } from '../lists.ts';
import { today } from '../season.ts';
import { TypedBox } from '../TypedBox.tsx';
import { AddForm } from './AddForm.tsx';
import { ScoreChoice } from './ScoreChoice.tsx';

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
    <AddForm title={title} fault={fault} onSave={save} onDone={onDone}>
      <div class="field-row">
        <TypedBox label="Date" type="date" value={entry.date} onInput={(date) => set({ date })} />
        {Object.keys(things).length > 0 && (
          <ChoiceBox
            label="On"
            value={entry.feature}
            none={what === 'spray' ? 'all plants' : undefined}
            choices={things}
            onChange={(feature) => set({ feature })}
          />
        )}
        {what === 'rain' && <TypedBox label="Rain, mm" type="text" keys="decimal" value={rain} onInput={setRain} />}
      </div>
      {what === 'damage' && (
        <>
          <ScoreChoice score={entry.amount ?? 0} onChange={(amount) => set({ amount })} />
          <ChoiceBox label="Where" value={entry.part} choices={PARTS} onChange={(part) => set({ part })} />
        </>
      )}
      <TypedBox label="Words (may stay empty)" type="text" value={entry.text ?? ''} onInput={(text) => set({ text })} />
    </AddForm>
  );
}
