import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { crownGuess, crownKindOf } from '../../../engine/index.ts';
import type { FeatureChanges, Knowledge } from '../../../engine/index.ts';
import { plan, units } from '../../state/yard.ts';
import { addDrawn, escape, stepBack } from '../drawing/drawing.ts';
import type { Draft } from '../drawing/draft.ts';
import { guessed, readField, showNumber } from '../../common/fields.ts';
import type { NumberField } from '../../common/fields.ts';
import { CrownPicker } from './CrownPicker.tsx';
import { PlantPicker } from './PlantPicker.tsx';
import { siteClock } from '../../common/site-clock.ts';

/** Asks the numbers of a shape just drawn. A box left as it was keeps the suggestion and marks it as guessed. */
export function AskedNumbers({ under }: { readonly under: Draft }) {
  const { tool } = under;
  const form = useRef<HTMLFormElement>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [asks, setAsks] = useState<string | null>(null);
  const [plantRow, setPlantRow] = useState<string | undefined>(undefined);
  const [crown, setCrown] = useState<string | undefined>(undefined);
  const kind = crown === undefined ? undefined : crownKindOf(crown);
  const guess = kind && crownGuess(kind, plan.value.site.latitude);
  const suggested = ({ key, suggested: usual }: NumberField): number | undefined =>
    key === 'openness' && guess ? guess.openness : usual;
  const growing = tool.kind === 'plant' || tool.kind === 'bed' || tool.kind === 'tree';
  useLayoutEffect(() => form.current?.querySelector('input')?.focus(), []);

  function submit(event: Event, confirmed = false): void {
    event.preventDefault();
    const typed = new FormData(form.current ?? undefined);
    const numbers: Record<string, unknown> = {};
    const how: Record<string, Knowledge> = {};
    const name = String(typed.get('name') ?? '').trim();
    if (name !== '') numbers.name = name;
    for (const field of tool.asked) {
      const text = String(typed.get(field.key) ?? '').trim();
      const first = suggested(field);
      if (text === '' && first !== undefined) {
        numbers[field.key] = first;
        how[field.key] = (field.key === 'openness' ? guess?.how.openness : undefined) ?? guessed(first);
        continue;
      }
      const entry = readField(field, text, units.value);
      if (!entry.ok) return setFault(entry.message);
      if (entry.unusual !== null && !confirmed) {
        setFault(null);
        return setAsks(entry.unusual);
      }
      if (entry.value !== undefined) numbers[field.key] = entry.value;
    }
    if (growing && plantRow !== undefined) numbers.plant = plantRow;
    if (guess) {
      numbers.shape = guess.shape;
      if (guess.leafless) numbers.leafless = guess.leafless;
      numbers.name ??= kind?.name;
    }
    if (Object.keys(how).length > 0) numbers.how = how;
    setAsks(null);
    setFault(addDrawn(numbers as FeatureChanges, siteClock(plan.value.site.timeZone)));
  }

  return (
    <form ref={form} class="asked-numbers" onSubmit={submit}>
      {tool.kind === 'tree' && <CrownPicker value={crown} onChange={setCrown} />}
      {tool.asked.map((field) => (
        <label key={field.key}>
          <span>{field.label}</span>
          <input
            name={field.key}
            type="text"
            autocomplete="off"
            enterkeyhint="next"
            placeholder={shown(field, suggested(field))}
            onInput={() => setAsks(null)}
          />
        </label>
      ))}
      {growing && <PlantPicker value={plantRow} onChange={setPlantRow} />}
      <label>
        <span>Name</span>
        <input
          name="name"
          type="text"
          autocomplete="off"
          enterkeyhint="done"
          placeholder={`My ${tool.noun}`}
          maxLength={200}
        />
      </label>
      {tool.asked.some((field) => field.suggested !== undefined) && (
        <p class="asked-note">A box left empty takes the number shown in it and is marked as guessed.</p>
      )}
      {fault && (
        <p class="box-said fault" role="alert">
          {fault}
        </p>
      )}
      {asks && (
        <p class="box-said" role="alert">
          {asks}{' '}
          <button type="button" onClick={(event) => submit(event, true)}>
            Yes, keep it
          </button>
        </p>
      )}
      <div class="draft-buttons">
        <button type="submit" class="main">
          Add it to the plan
        </button>
        <button type="button" onClick={stepBack}>
          Back to the shape
        </button>
        <button type="button" onClick={escape}>
          Cancel
        </button>
      </div>
    </form>
  );
}

function shown(field: NumberField, suggested: number | undefined): string {
  return suggested === undefined ? 'not read' : showNumber(field, suggested, units.value);
}
