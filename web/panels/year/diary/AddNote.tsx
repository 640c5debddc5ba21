import { useState } from 'preact/hooks';
import { DAMAGE_PARTS, appendJournal, formatRain, parseRain, withoutUndefined } from '../../../../engine/index.ts';
import type { JournalEntry, JournalWhat } from '../../../../engine/index.ts';
import { commitEdit } from '../../../state/edit.ts';
import { plan, units } from '../../../state/yard.ts';
import { ChoiceBox } from '../../parts/boxes/ChoiceBox.tsx';
import { SIDE_CHOICES, sideKey, sideOfKey } from '../../parts/side-choices.ts';
import { clothsOf, namesById, plantsOf } from '../lists.ts';
import { missing } from '../page.ts';
import { today } from '../season.ts';
import { TypedBox } from '../TypedBox.tsx';
import { AddForm } from './AddForm.tsx';
import { ScoreChoice } from './ScoreChoice.tsx';

const PARTS = Object.fromEntries(DAMAGE_PARTS.map((part) => [part, part]));
/** Most rain in a day that is believed. [mm] */
const MOST_RAIN = 500;
const RAIN_LABEL = { metric: 'Rain, mm', imperial: 'Rain, in' } as const;

interface Props {
  readonly what: JournalWhat;
  readonly title: string;
  onDone(): void;
}

/**
 * One entry of the diary: the date is today's, the thing the one noted last, else the first, so that Save is near.
 */
export function AddNote({ what, title, onDone }: Props) {
  const things = namesById(
    what.startsWith('cloth') ? clothsOf(plan.value) : what === 'damage' || what === 'spray' ? plantsOf(plan.value) : [],
  );
  const [entry, setEntry] = useState<JournalEntry>({
    date: today(),
    what,
    feature: what === 'spray' ? undefined : lastNoted(what, things),
    ...(what === 'damage' ? { amount: 2, part: 'leaf', ...missing.value } : {}),
  });
  const [rain, setRain] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const set = (change: Partial<JournalEntry>): void => setEntry((now) => ({ ...now, ...change }));

  function save(): void {
    const amount = what === 'rain' ? parseRain(rain, units.value) : (entry.amount ?? null);
    if (what === 'rain' && (amount === null || amount < 0 || amount > MOST_RAIN))
      return setFault(`"${rain}" is not a rain between 0 and ${formatRain(MOST_RAIN, units.value)}.`);
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
        {what === 'rain' && (
          <TypedBox label={RAIN_LABEL[units.value]} type="text" keys="decimal" value={rain} onInput={setRain} />
        )}
      </div>
      {what === 'damage' && <DamageFields entry={entry} onChange={set} />}
      <TypedBox label="Words (may stay empty)" type="text" value={entry.text ?? ''} onInput={(text) => set({ text })} />
    </AddForm>
  );
}

function lastNoted(what: JournalWhat, things: Readonly<Record<string, string>>): string | undefined {
  const notes = plan.value.journal?.filter((entry) => entry.what === what && (entry.feature ?? '') in things);
  return notes?.at(-1)?.feature ?? Object.keys(things)[0];
}

function DamageFields({
  entry,
  onChange,
}: {
  readonly entry: JournalEntry;
  onChange(change: Partial<JournalEntry>): void;
}) {
  return (
    <>
      <ScoreChoice score={entry.amount ?? 0} onChange={(amount) => onChange({ amount })} />
      <div class="field-row">
        <ChoiceBox label="Where" value={entry.part} choices={PARTS} onChange={(part) => onChange({ part })} />
        <ChoiceBox
          label="Which side burnt"
          value={sideKey(entry.side)}
          choices={SIDE_CHOICES}
          onChange={(side) => onChange({ side: side && sideOfKey(side) })}
        />
      </div>
    </>
  );
}
