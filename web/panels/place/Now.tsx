import { useEffect, useRef } from 'preact/hooks';
import { pointToMillimetre } from '../../../engine/index.ts';
import type { FeatureOf } from '../../../engine/index.ts';
import { NudgePad } from '../../map/controls/NudgePad.tsx';
import { moveMeaning } from '../../map/drawing/move-meaning.ts';
import { preview } from '../../state/yard.ts';
import { NumberBox } from '../parts/boxes/NumberBox.tsx';
import { coordinateField, withCoordinate } from '../parts/feature/place-fields.ts';
import { openOptionId, haveMoved, putBack, tryThere, withPotThere } from './place-edits.ts';
import { elsewhere, followPot, isRough, potAt, there, triedWords } from './there.ts';

/**
 * The pot where it is on the drawing, also while it is dragged; and its place as numbers, for whoever does not drag.
 */
export function Now({ pot }: { readonly pot: FeatureOf<'plant'> }) {
  useEffect(followPot, []);
  useEffect(() => {
    moveMeaning.value = { plan: withPotThere, commit: tryThere };
    return () => {
      moveMeaning.value = null;
    };
  }, []);
  const at = potAt.value;
  const option = openOptionId.value;
  const reason = there.value?.reason ?? null;
  const told = useRef<HTMLElement>(null);
  const isTried = elsewhere.value;
  useEffect(() => {
    // On a phone it is tried from a place further down.
    if (isTried && preview.peek() === null) told.current?.scrollIntoView({ block: 'nearest' });
  }, [isTried]);
  return (
    <section ref={told} class="pot-now" aria-label="Where it is on the drawing" aria-busy={isRough.value}>
      {elsewhere.value && (
        <p class="finding">
          {isRough.value && '~ '}
          Tried there{option === null ? '' : `, in option ${option}`}. {triedWords.value}
        </p>
      )}
      {reason !== null && (
        <p class="said problem" role="status">
          It may not stand there: {reason}.
        </p>
      )}
      {elsewhere.value && at !== null && option !== null && (
        <p class="paper-buttons">
          <button type="button" onClick={() => haveMoved(pot, at, null)}>
            I have moved it there
          </button>
          <button type="button" onClick={() => putBack(pot)}>
            Put it back
          </button>
        </p>
      )}
      <details>
        <summary>Type where</summary>
        {at && (
          <div class="pot-place">
            {([0, 1] as const).map((axis) => (
              <NumberBox
                key={axis}
                field={coordinateField(axis)}
                value={at[axis]}
                onChange={(value) => (tryThere(pot.id, withCoordinate(at, axis, value ?? 0), 'now'), null)}
              />
            ))}
            <NudgePad onNudge={([dx, dy]) => tryThere(pot.id, pointToMillimetre([at[0] + dx, at[1] + dy]), 'merge')} />
          </div>
        )}
      </details>
    </section>
  );
}
