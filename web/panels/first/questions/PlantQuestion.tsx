import { CATALOGUE } from '../../../../engine/index.ts';
import { Field } from '../../parts/boxes/Field.tsx';
import { answer, answers } from '../answers.ts';
import { USUAL } from '../usual.ts';
import { inAsked } from './asked-units.ts';

const ROWS = ['bottom', 'middle', 'top'] as const;
const COLUMNS = ['left', 'middle', 'right'] as const;

export function PlantQuestion() {
  const { plant, plantHeight, pot, spot } = answers.value;
  return (
    <>
      <p class="asked-field">
        <label for="first-plant">Plant, or the one most like it</label>
        <select id="first-plant" value={plant} onChange={(event) => answer({ plant: event.currentTarget.value })}>
          {CATALOGUE.toSorted((a, b) => a.name.localeCompare(b.name)).map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <Field
        label="How tall is it?"
        value={plantHeight}
        usual={inAsked(USUAL.plantHeight)}
        hint="From the ground to its top."
        onInput={(text) => answer({ plantHeight: text })}
      />
      <label class="choice">
        <input type="checkbox" checked={pot} onChange={(event) => answer({ pot: event.currentTarget.checked })} />
        It stands in a pot
      </label>
      <fieldset class="asked-choices choices-nine">
        <legend>Where does it stand on the sheet?</legend>
        {[2, 1, 0].flatMap((row) =>
          [0, 1, 2].map((column) => {
            const words = row === 1 && column === 1 ? 'in the middle' : `${ROWS[row]} ${COLUMNS[column]}`;
            const chosen = spot[0] === column && spot[1] === row;
            return (
              <label key={words} class="choice">
                <input type="radio" name="spot" checked={chosen} onChange={() => answer({ spot: [column, row] })} />
                {words}
              </label>
            );
          }),
        )}
      </fieldset>
    </>
  );
}
