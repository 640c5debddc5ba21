import { useState } from 'preact/hooks';
import { cautionsFor, parseSide, READING_PROTOCOL } from '../../../../engine/index.ts';
import { commitEdit } from '../../../state/edit.ts';
import { plan } from '../../../state/yard.ts';
import { ChoiceBox } from '../../parts/boxes/ChoiceBox.tsx';
import { SIDE_CHOICES } from '../../parts/side-choices.ts';
import { grounds } from '../grounds.ts';
import { namesById, plantsOf } from '../lists.ts';
import { today } from '../season.ts';
import { TypedBox } from '../TypedBox.tsx';
import { AddForm } from './AddForm.tsx';
import { BOX_WORDS, withReadings } from './reading-edits.ts';
import type { TypedReading } from './reading-edits.ts';

const { all: _all, unknown: _unknown, ...SIDES } = SIDE_CHOICES;

/** A leaf's temperature, or two within five minutes: one open, one under cloth; light too, where there is a meter. */
export function AddReading({ pair, onDone }: { readonly pair: boolean; onDone(): void }) {
  const plants = plantsOf(plan.value);
  const [plant, setPlant] = useState<string | undefined>(plants[0]?.id);
  const [side, setSide] = useState<keyof typeof SIDES>('top');
  const [texts, setTexts] = useState<TypedReading>({
    date: today(),
    time: '15:00',
    open: '',
    covered: '',
    air: '',
    openLight: '',
    coveredLight: '',
  });
  const [fault, setFault] = useState<string | null>(null);

  function save(): void {
    const bearing = parseSide(side);
    const next = withReadings(plan.value, texts, pair, plant, typeof bearing === 'number' ? bearing : 'top');
    if (typeof next === 'string') return setFault(next);
    if (commitEdit(pair ? 'Note a pair of readings' : 'Note a reading', next)) onDone();
  }

  const box = (key: keyof TypedReading, label: string, type: 'text' | 'date' | 'time') => (
    <TypedBox label={label} type={type} value={texts[key]} onInput={(text) => setTexts({ ...texts, [key]: text })} />
  );
  const typedBox = (key: keyof typeof BOX_WORDS) => box(key, BOX_WORDS[key], 'text');
  return (
    <AddForm title={pair ? 'Pair of readings' : 'Reading'} fault={fault} onSave={save} onDone={onDone}>
      <HowToRead />
      <div class="field-row">
        {plants.length > 0 && <ChoiceBox label="On" value={plant} choices={namesById(plants)} onChange={setPlant} />}
        {plants.length > 0 && (
          <ChoiceBox
            label="Leaf on which side"
            value={side}
            choices={SIDES}
            onChange={(next) => next !== undefined && setSide(next)}
          />
        )}
      </div>
      <div class="field-row">
        {box('date', 'Date', 'date')}
        {box('time', 'Clock', 'time')}
      </div>
      <div class="field-row">
        {typedBox('open')}
        {typedBox('covered')}
        {typedBox('air')}
      </div>
      <details>
        <summary>Light too, with a meter held level</summary>
        <div class="field-row">
          {typedBox('openLight')}
          {typedBox('coveredLight')}
        </div>
      </details>
    </AddForm>
  );
}

function HowToRead() {
  return (
    <>
      <details open>
        <summary>How to read a leaf</summary>
        <ol>
          {READING_PROTOCOL.map((step) => (
            <li key={step.text}>
              {step.text} <span class="quiet">({grounds(step)})</span>
            </li>
          ))}
        </ol>
      </details>
      <ul class="year-cautions">
        {cautionsFor(['heat'], plan.value).map(({ id, text }) => (
          <li key={id}>{text}</li>
        ))}
      </ul>
    </>
  );
}
