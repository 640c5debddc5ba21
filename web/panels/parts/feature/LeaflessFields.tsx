import type { FeatureOf } from '../../../../engine/index.ts';
import { FIELDS } from '../../../common/fields/feature-fields.ts';
import { calledOf, change } from '../../../map/drawing/feature-edits.ts';
import { NumberBox } from '../boxes/NumberBox.tsx';
import { TextBox } from '../boxes/TextBox.tsx';

/** Half a year's bare branches, for a first guess. */
const BARE = { from: '12-01', to: '03-01', openness: 0.7 };
const OPENNESS = { ...FIELDS.tree.find(({ key }) => key === 'openness')!, label: 'Light through, bare' };

/** When a tree stands bare, and how much light passes then. */
export function LeaflessFields({ tree }: { readonly tree: FeatureOf<'tree'> }) {
  const { leafless } = tree;
  const label = `Say when ${calledOf(tree)} is bare`;
  return (
    <fieldset>
      <legend>Leaves</legend>
      <label class="tick">
        <input
          type="checkbox"
          checked={leafless !== undefined}
          onChange={() => change(tree.id, label, { leafless: leafless ? undefined : BARE })}
        />
        Loses its leaves
      </label>
      {leafless && (
        <div class="field-row">
          <TextBox
            label="Bare from (month-day)"
            value={leafless.from}
            onChange={(from) => change(tree.id, label, { leafless: { ...leafless, from } })}
          />
          <TextBox
            label="Until (month-day)"
            value={leafless.to}
            onChange={(to) => change(tree.id, label, { leafless: { ...leafless, to } })}
          />
          <NumberBox
            field={OPENNESS}
            value={leafless.openness}
            onChange={(openness) =>
              change(tree.id, label, { leafless: { ...leafless, openness: openness ?? leafless.openness } })
            }
          />
        </div>
      )}
    </fieldset>
  );
}
