import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { crownGuess, crownKindOf } from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import type { NumberField } from '../../common/fields/number-field.ts';
import { showNumber } from '../../common/fields/read-field.ts';
import { siteClock } from '../../common/site-clock.ts';
import { plan, units } from '../../state/yard.ts';
import type { Draft } from '../drawing/draft.ts';
import { addDrawn, escape, stepBack } from '../drawing/drawing.ts';
import { CrownPicker } from './CrownPicker.tsx';
import { PlantPicker } from './PlantPicker.tsx';
import { readAsked, suggestedFor } from './read-asked.ts';

/** Asks the numbers of a shape just drawn. A box left as it was keeps the suggestion and marks it as guessed. */
export function AskedNumbers({ under: { tool } }: { readonly under: Draft }) {
  const form = useRef<HTMLFormElement>(null);
  const [fault, setFault] = useState<string | null>(null);
  const [asks, setAsks] = useState<string | null>(null);
  const [plantRow, setPlantRow] = useState<string | undefined>(undefined);
  const [crown, setCrown] = useState<string | undefined>(undefined);
  const kind = crown === undefined ? undefined : crownKindOf(crown);
  const guess = kind && { ...crownGuess(kind, plan.value.site.latitude), name: kind.name };
  const growing = tool.kind === 'plant' || tool.kind === 'bed' || tool.kind === 'tree';
  useLayoutEffect(() => form.current?.querySelector('input')?.focus(), []);

  function submit(event: Event, confirmed = false): void {
    event.preventDefault();
    const read = readAsked(tool.asked, new FormData(form.current ?? undefined), units.value, guess);
    if (read.kind === 'fault') return setFault(read.message);
    const isOdd = read.unusual !== null && !confirmed;
    setAsks(isOdd ? read.unusual : null);
    if (isOdd) return setFault(null);
    const growsAs = growing && plantRow !== undefined ? { plant: plantRow } : {};
    setFault(addDrawn({ ...read.changes, ...growsAs }, siteClock(plan.value.site.timeZone)));
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
            placeholder={shown(field, suggestedFor(field, guess))}
            onInput={() => setAsks(null)}
          />
        </label>
      ))}
      {growing && <PlantPicker value={plantRow} onChange={setPlantRow} />}
      <NameBox noun={tool.noun} />
      {tool.asked.some((field) => field.suggested !== undefined) && (
        <p class="asked-note">A box left empty takes the number shown in it and is marked as guessed.</p>
      )}
      <Said fault={fault} asks={asks} onKeep={(event) => submit(event, true)} />
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

function NameBox({ noun }: { readonly noun: string }) {
  return (
    <label>
      <span>Name</span>
      <input
        name="name"
        type="text"
        autocomplete="off"
        enterkeyhint="done"
        placeholder={`My ${noun}`}
        maxLength={200}
      />
    </label>
  );
}

interface SaidProps {
  readonly fault: string | null;
  /** A question about a number that is odd. */
  readonly asks: string | null;
  readonly onKeep: (event: Event) => void;
}

function Said({ fault, asks, onKeep }: SaidProps) {
  return (
    <>
      <Fault>{fault}</Fault>
      {asks && (
        <p class="box-said" role="alert">
          {asks}{' '}
          <button type="button" onClick={onKeep}>
            Yes, keep it
          </button>
        </p>
      )}
    </>
  );
}

function shown(field: NumberField, suggested: number | undefined): string {
  return suggested === undefined ? 'not read' : showNumber(field, suggested, units.value);
}
