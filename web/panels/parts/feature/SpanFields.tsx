import type { Cloth } from '../../../../engine/index.ts';
import { calledOf, change } from '../../../map/drawing/feature-edits.ts';
import { TextBox } from '../boxes/TextBox.tsx';

const USUAL = { from: '05-10', to: '09-20' };

/** When the cloth hangs each year; without dates it hangs all year. */
export function SpanFields({ feature }: { readonly feature: Cloth }) {
  const { up } = feature;
  const label = `Say when ${calledOf(feature)} is up`;
  return (
    <fieldset>
      <legend>When the cloth hangs</legend>
      <label class="tick">
        <input
          type="checkbox"
          checked={up === undefined}
          onChange={() => change(feature.id, label, { up: up ? undefined : USUAL })}
        />
        All year
      </label>
      {up && (
        <div class="field-row">
          <TextBox
            label="Up on (month-day)"
            value={up.from}
            onChange={(from) => change(feature.id, label, { up: { ...up, from } })}
          />
          <TextBox
            label="Down on (month-day)"
            value={up.to}
            onChange={(to) => change(feature.id, label, { up: { ...up, to } })}
          />
        </div>
      )}
    </fieldset>
  );
}
