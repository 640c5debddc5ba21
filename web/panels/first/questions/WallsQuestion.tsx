import { parseLength } from '../../../../engine/index.ts';
import { FIELDS } from '../../../common/fields/feature-fields.ts';
import { readField } from '../../../common/fields/read-field.ts';
import { Choices, Field } from '../../parts/boxes/Field.tsx';
import { answer, answers } from '../answers.ts';
import { USUAL } from '../usual.ts';
import { askedUnits, inAsked } from './asked-units.ts';

const FLOORS = { '1': 'one', '2': 'two', '3': 'three' } as const;

export function WallsQuestion() {
  const { wallHeight, wallsKnown, shape, floors } = answers.value;
  const [field] = FIELDS.wall;
  const read = parseLength(wallHeight, askedUnits()) ? readField(field, wallHeight, askedUnits()) : null;
  return (
    <>
      <Field
        label="Walls or fences"
        value={wallHeight}
        usual={inAsked(USUAL.wallHeight)}
        hint="A guess is fine. 0: there are none."
        onInput={(text) => answer({ wallHeight: text })}
      />
      {read?.ok && read.unusual !== null && (
        <p class="box-said" role="status">
          {read.unusual}
        </p>
      )}
      <Choices
        legend="How do you know it?"
        name="known"
        value={wallsKnown}
        choices={{ guess: 'by guess', tape: 'by tape' }}
        onChange={(next) => answer({ wallsKnown: next })}
      />
      {shape !== 'walled' && (
        <Choices
          legend={shape === 'passage' ? 'Floors of the houses' : 'Floors of the house'}
          name="floors"
          value={String(floors) as keyof typeof FLOORS}
          choices={FLOORS}
          onChange={(next) => answer({ floors: Number(next) })}
        />
      )}
    </>
  );
}
