import { changeFeature, middleOf, setHow, turnFeature } from '../../../../engine/index.ts';
import type { Feature } from '../../../../engine/index.ts';
import { fieldsOf, isSaid } from '../../../common/fields/feature-fields.ts';
import type { NumberField } from '../../../common/fields/number-field.ts';
import { calledOf, change, commitChecked, deleteFeatures, duplicate } from '../../../map/drawing/feature-edits.ts';
import { sized } from '../../../map/drawing/in-hand.ts';
import { showOnMap } from '../../../map/laid-on/overlays.ts';
import { commitEdit } from '../../../state/edit.ts';
import { askWhy } from '../../../state/view.ts';
import { plan } from '../../../state/yard.ts';
import { NumberBox } from '../boxes/NumberBox.tsx';
import { TextBox } from '../boxes/TextBox.tsx';
import { HowKnown } from './HowKnown.tsx';
import { KindFields } from './KindFields.tsx';
import { PlaceFields } from './PlaceFields.tsx';

/** Turned clockwise by so much, from the buttons. [°] */
const TURN_STEP = 15;

/**
 * Everything about one thing, edited in place: numbers with how they are known, place, words, and what can be done with
 * it.
 */
export function FeatureEditor({ feature }: { readonly feature: Feature }) {
  const name = calledOf(feature);
  const label = `Change ${name}`;

  /** A number typed over a guess is the person's own: it counts as measured until they say otherwise. */
  function take(field: NumberField, value: number | undefined): string | null {
    const next = changeFeature(plan.value, feature.id, field.write(value, feature));
    return commitChecked(
      label,
      feature.how?.[field.key]?.by === 'guess' ? setHow(next, feature.id, field.key, undefined) : next,
      feature.id,
    );
  }

  return (
    <div class="feature-editor" role="group" aria-label={`Numbers of ${name}`}>
      <TextBox
        label="Name"
        value={feature.name ?? ''}
        onChange={(text) => change(feature.id, label, { name: text === '' ? undefined : text })}
      />
      {fieldsOf(feature).map((field) => (
        <div key={field.key} class="field-row">
          <NumberBox field={field} value={field.read(feature)} onChange={(value) => take(field, value)} />
          {field.unit !== 'count' &&
            feature.kind !== 'reading' &&
            (isSaid(feature, field) ? (
              <HowKnown feature={feature} field={field} />
            ) : (
              <span class="quiet">the usual, not said</span>
            ))}
        </div>
      ))}
      <KindFields feature={feature} />
      <PlaceFields feature={feature} />
      <EditorButtons feature={feature} />
    </div>
  );
}

/** What can be done with a thing. */
function EditorButtons({ feature }: { readonly feature: Feature }) {
  const name = calledOf(feature);
  const turns = feature.kind !== 'tree' && feature.kind !== 'plant' && feature.kind !== 'reading';
  return (
    <div class="editor-buttons">
      <button type="button" onClick={() => showOnMap(middleOf(feature))}>
        Show on the drawing
      </button>
      {(feature.kind === 'tree' || feature.kind === 'plant') && <SizeButton id={feature.id} />}
      {turns && (
        <button
          type="button"
          onClick={() => commitEdit(`Turn ${name}`, turnFeature(plan.value, feature.id, TURN_STEP), 'merge')}
        >
          Turn {TURN_STEP}°
        </button>
      )}
      {(feature.kind === 'plant' || feature.kind === 'tree' || feature.kind === 'bed') && (
        <button type="button" onClick={() => askWhy(feature.id)}>
          It burnt: why?
        </button>
      )}
      <button type="button" onClick={() => duplicate(feature.id)}>
        Duplicate
      </button>
      <button type="button" class="delete" onClick={() => deleteFeatures([feature.id])}>
        Delete
      </button>
    </div>
  );
}

/** Gives a round thing its grip on the drawing, and takes it away again. */
function SizeButton({ id }: { readonly id: string }) {
  const on = sized.value === id;
  return (
    <button type="button" aria-pressed={on} onClick={() => (sized.value = on ? null : id)}>
      Change its size
    </button>
  );
}
