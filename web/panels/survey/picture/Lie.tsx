import { useState } from 'preact/hooks';
import { lieOf, parseNumber } from '../../../../engine/index.ts';
import type { Underlay } from '../../../../engine/index.ts';
import { say } from '../../../state/speech.ts';
import { findOut } from '../../../state/view.ts';
import { Field } from '../../parts/boxes/Field.tsx';
import { pointOf, pointText } from '../../parts/typed.ts';
import { setUnderlay } from './underlay.ts';

/** Where the picture lies, how it is turned, and how strong it shows. */
export function Lie({ underlay }: { readonly underlay: Underlay }) {
  const [at, setAt] = useState(pointText(underlay.at));
  const [turn, setTurn] = useState(String(lieOf(underlay).turn));
  return (
    <>
      <h3>Where it lies</h3>
      <Field
        label="Its lower left corner"
        value={at}
        onInput={(text) => {
          setAt(text);
          const point = pointOf(text);
          if (point) setUnderlay({ ...underlay, at: point });
        }}
      />
      <Field
        label="Turned clockwise by, in degrees"
        value={turn}
        onInput={(text) => {
          setTurn(text);
          const degrees = parseNumber(text);
          if (degrees !== null && Math.abs(degrees) <= 360) setUnderlay({ ...underlay, turn: degrees });
        }}
      />
      <p class="asked-field">
        <label for="picture-strength">How strong it shows</label>
        <input
          id="picture-strength"
          type="range"
          min="0"
          max="100"
          value={Math.round(lieOf(underlay).opacity * 100)}
          aria-valuetext={`${Math.round(lieOf(underlay).opacity * 100)} %`}
          onChange={(event) => setUnderlay({ ...underlay, opacity: Number(event.currentTarget.value) / 100 })}
        />
      </p>
      <div class="asked-buttons">
        <button type="button" onClick={() => findOut('north')}>
          It is north-up: take north from it
        </button>
        <button type="button" onClick={() => takeAway(underlay)}>
          Take the picture away
        </button>
      </div>
    </>
  );
}

function takeAway(underlay: Underlay): void {
  setUnderlay(undefined);
  say('The picture is gone from under the drawing.', 'done', {
    label: 'Put it back',
    run: () => setUnderlay(underlay),
  });
}
