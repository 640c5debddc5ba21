import { useId, useState } from 'preact/hooks';
import { addFeature, freshId, middleOf, parseTemperature } from '../../../engine/index.ts';
import type { FeatureOf, PlanPoint } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { plan, units } from '../../state/yard.ts';
import { ChoiceBox } from '../draw/ChoiceBox.tsx';
import { namesById, plantsOf } from './lists.ts';
import { today } from './season.ts';

/** Hottest and coldest that a leaf or the air is believed to be. [°C] */
const BELIEVED = [-30, 75] as const;

/** A leaf's temperature, or two within five minutes: one open, one under cloth. */
export function AddReading({ pair, onDone }: { readonly pair: boolean; onDone(): void }) {
  const plants = plantsOf(plan.value);
  const [plant, setPlant] = useState<string | undefined>(plants[0]?.id);
  const [texts, setTexts] = useState({ date: today(), time: '15:00', open: '', covered: '', air: '' });
  const [fault, setFault] = useState<string | null>(null);

  function save(): void {
    const degrees = { open: parseTemperature(texts.open, units.value), covered: parseTemperature(texts.covered, units.value), air: parseTemperature(texts.air, units.value) };
    const wrong = ([['open', 'Leaf in the open'], ['covered', 'Leaf under cloth'], ['air', 'Air in the shade']] as const).find(([key]) => {
      const value = degrees[key];
      const wanted = key === 'air' ? texts.air !== '' : pair || texts[key] !== '';
      return wanted && (value === null || value < BELIEVED[0] || value > BELIEVED[1]);
    });
    if (wrong) return setFault(`${wrong[1]}: type a temperature, such as 42 °C.`);
    if (degrees.open === null && degrees.covered === null) return setFault('Type what the thermometer says, in the open or under cloth.');
    const thing = plants.find(({ id }) => id === plant);
    const at: PlanPoint = thing ? middleOf(thing) : plan.value.site.boundary[0];
    const base = { kind: 'reading', at, when: `${texts.date}T${texts.time}`, ...(plant === undefined ? {} : { plant }), ...(degrees.air === null ? {} : { air: degrees.air }) } as const;
    const openId = freshId(plan.value, 'reading');
    let next = plan.value;
    if (degrees.open !== null) next = addFeature(next, { ...base, id: openId, leaf: degrees.open, covered: false } satisfies FeatureOf<'reading'>);
    if (degrees.covered !== null) next = addFeature(next, { ...base, id: freshId(next, 'reading'), leaf: degrees.covered, covered: true, ...(degrees.open === null ? {} : { pair: openId }) } satisfies FeatureOf<'reading'>);
    if (commitEdit(pair ? 'Note a pair of readings' : 'Note a reading', next)) onDone();
  }

  const box = (key: keyof typeof texts, label: string, type: 'text' | 'date' | 'time') => <Box label={label} type={type} value={texts[key]} onInput={(text) => setTexts({ ...texts, [key]: text })} />;
  return (
    <form class="add-form" aria-label={pair ? 'Pair of readings' : 'Reading'} onSubmit={(event) => { event.preventDefault(); save(); }}>
      <details open>
        <summary>How to read a leaf</summary>
        <ol>
          <li>Take a leaf that faces the sun, in the hottest hours, {pair && 'one in the open and one under cloth, on the same plant if you can, within five minutes; '}your own head and hands in the shade.</li>
          <li>Hold the thermometer 0.1 to 0.3 m (4 to 12 in) off and square to the leaf, its emissivity set to 0.97. No ground may show behind the leaf.</li>
          <li>Shade the spot you read with your hand for a second or two and read at once: sunlight thrown back by the leaf falsifies by more than 2 K. <span class="quiet">(Leigh et al. 2006, Functional Plant Biology 33: 515–519; emissivity: López et al. 2012, Scientia Horticulturae 137: 49–58.)</span></li>
          <li>Read the air in the shade, 1.5 m (5 ft) up, at the same time.</li>
        </ol>
      </details>
      <div class="field-row">
        {plants.length > 0 && <ChoiceBox label="On" value={plant} choices={namesById(plants)} onChange={setPlant} />}
        {box('date', 'Date', 'date')}
        {box('time', 'Clock', 'time')}
      </div>
      <div class="field-row">
        {box('open', 'Leaf in the open', 'text')}
        {box('covered', 'Leaf under cloth', 'text')}
        {box('air', 'Air in the shade', 'text')}
      </div>
      {fault && <p class="box-said fault" role="alert">{fault}</p>}
      <div class="editor-buttons"><button type="submit" class="main">Save</button><button type="button" onClick={onDone}>Leave it</button></div>
    </form>
  );
}

function Box({ label, type, value, onInput }: { readonly label: string; readonly type: 'text' | 'date' | 'time'; readonly value: string; onInput(text: string): void }) {
  const id = useId();
  return (
    <div class="number-box">
      <label for={id}>{label}</label>
      {/* The types know one kind of input at a time. */}
      <input id={id} type={type as 'text'} required={type !== 'text'} autocomplete="off" value={value} onInput={(event) => onInput(event.currentTarget.value)} />
    </div>
  );
}
