import { setHow } from '../../../../engine/index.ts';
import type { Feature, KnownBy } from '../../../../engine/index.ts';
import { KNOWN_BY_WORDS, knownAs } from '../../../common/fields/known-by.ts';
import type { NumberField } from '../../../common/fields/number-field.ts';
import { calledOf } from '../../../map/drawing/feature-edits.ts';
import { commitEdit } from '../../../state/edit.ts';
import { plan } from '../../../state/yard.ts';
import { NumberBox } from '../boxes/NumberBox.tsx';

interface Props {
  readonly feature: Feature;
  readonly field: NumberField;
}

/** How a number is known, and how far it may be off. It changes no result, only how sure the answers are. */
export function HowKnown({ feature, field }: Props) {
  const known = feature.how?.[field.key];
  const by: KnownBy = known?.by ?? 'tape';
  const value = field.read(feature);
  const label = `${field.label}: how known`;

  function change(next: KnownBy): void {
    const knowledge = next === 'tape' ? undefined : knownAs(next, value ?? 0, field.unit);
    commitEdit(
      `Say how ${calledOf(feature)}'s ${field.label.toLowerCase()} is known`,
      setHow(plan.value, feature.id, field.key, knowledge),
    );
  }

  return (
    <div class={by === 'guess' ? 'how-known guessed' : 'how-known'}>
      <select aria-label={label} value={by} onChange={(event) => change(event.currentTarget.value as KnownBy)}>
        {Object.entries(KNOWN_BY_WORDS).map(([key, words]) => (
          <option key={key} value={key}>
            {words}
          </option>
        ))}
      </select>
      {by !== 'tape' && (
        <NumberBox
          field={{
            ...field,
            key: `${field.key}-pm`,
            label: '±',
            least: 0,
            suggested: undefined,
            unusualAbove: undefined,
          }}
          value={known?.pm}
          onChange={(pm) => {
            commitEdit(
              `Say how far ${calledOf(feature)}'s ${field.label.toLowerCase()} may be off`,
              setHow(plan.value, feature.id, field.key, { by, pm }),
              'merge',
            );
            return null;
          }}
        />
      )}
    </div>
  );
}
