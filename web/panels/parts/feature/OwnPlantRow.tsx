import { changeFeature, fruitWidthOf, plantRowOf, setPlantRow } from '../../../../engine/index.ts';
import type { AfternoonShade, Feature, FeatureOf, PlantRow } from '../../../../engine/index.ts';
import type { NumberField } from '../../../common/fields/number-field.ts';
import { calledOf } from '../../../map/drawing/feature-edits.ts';
import { commitEdit } from '../../../state/edit.ts';
import { plan } from '../../../state/yard.ts';
import { ChoiceBox } from '../boxes/ChoiceBox.tsx';
import { NumberBox } from '../boxes/NumberBox.tsx';
import { TextBox } from '../boxes/TextBox.tsx';

const SHADE: Readonly<Record<AfternoonShade, string>> = {
  yes: 'wanted',
  young: 'only while young',
  fruit: 'for the fruit',
  no: 'not needed',
};
const PARTS = { leaf: 'the leaf', fruit: 'the fruit' } as const;
/** Limits outside this are asked about: no known crop plant's lies there. [°C] */
const USUAL_LIMIT = { least: 35, most: 65 };

function rowField(key: string, label: string, unit: NumberField['unit'], least: number, most: number): NumberField {
  return { key, label, unit, asked: false, least, most, read: () => undefined, write: () => ({}) };
}

const LIMIT = {
  ...rowField('heatLimit', 'Harmed from', 'temperature', 20, 80),
  unusualBelow: USUAL_LIMIT.least,
  unusualAbove: USUAL_LIMIT.most,
};
const LEAF_WIDTH = rowField('leafWidth', 'Leaf width', 'length', 0.001, 1);
const FRUIT_WIDTH = rowField('fruitWidth', 'Fruit width', 'length', 0.001, 0.5);
const SUN_LEAST = rowField('sun-least', 'Sun wanted, at least (h a day)', 'count', 0, 14);
const SUN_MOST = rowField('sun-most', 'Sun wanted, at most (h a day)', 'count', 0, 14);

/** The person's own numbers for a plant: begun as a copy of the catalogue's row that is most like it. */
export function OwnPlantRow({
  feature,
}: {
  readonly feature: FeatureOf<'tree'> | FeatureOf<'plant'> | FeatureOf<'bed'>;
}) {
  const row = feature.plant === undefined ? undefined : plantRowOf(plan.value, feature.plant);
  if (!row) return null;
  const own = plan.value.plants?.some(({ id }) => id === row.id) ?? false;
  return own ? (
    <OwnRowFields row={row} />
  ) : (
    <button type="button" class="plain" onClick={() => copyRow(feature, row)}>
      Use my own numbers for it
    </button>
  );
}

function copyRow(feature: Feature, row: PlantRow): void {
  const taken = new Set((plan.value.plants ?? []).map(({ id }) => id));
  let id = `my-${row.id}`;
  for (let n = 2; taken.has(id); n += 1) id = `my-${row.id}-${n}`;
  const copy: PlantRow = {
    ...row,
    id,
    name: `My ${row.name.toLowerCase()}`,
    limitBasis: 'my own',
    sources: [],
    note: `Begun as a copy of ${row.name}.`,
  };
  commitEdit(
    `Write own numbers for ${calledOf(feature)}`,
    changeFeature(setPlantRow(plan.value, copy), feature.id, { plant: id }),
  );
}

/** @returns why it cannot be changed */
type SetRow = (changes: Partial<PlantRow>) => string | null;

function OwnRowFields({ row }: { readonly row: PlantRow }) {
  const set: SetRow = (changes) =>
    commitEdit(`Change own numbers of ${row.name}`, setPlantRow(plan.value, { ...row, ...changes }))
      ? null
      : 'This yard can be looked at here, not changed.';
  return (
    <fieldset>
      <legend>My own numbers</legend>
      <TextBox
        label="Called"
        value={row.name}
        onChange={(name) => (name === '' ? 'A row needs a name.' : set({ name }))}
      />
      <div class="field-row">
        <NumberBox
          field={LIMIT}
          value={row.heatLimit}
          onChange={(heatLimit) => set({ heatLimit: heatLimit ?? row.heatLimit })}
        />
        <ChoiceBox
          label="Limit of"
          value={row.limitOf}
          choices={PARTS}
          onChange={(limitOf) => set({ limitOf: limitOf ?? row.limitOf })}
        />
      </div>
      <SunWanted sunHours={row.sunHours} set={set} />
      <div class="field-row">
        {row.limitOf === 'fruit' ? (
          <NumberBox field={FRUIT_WIDTH} value={fruitWidthOf(row)} onChange={(fruitWidth) => set({ fruitWidth })} />
        ) : (
          <NumberBox
            field={LEAF_WIDTH}
            value={row.leafWidth}
            onChange={(leafWidth) => set({ leafWidth: leafWidth ?? row.leafWidth })}
          />
        )}
        <ChoiceBox
          label="Afternoon shade"
          value={row.afternoonShade}
          choices={SHADE}
          onChange={(afternoonShade) => set({ afternoonShade: afternoonShade ?? row.afternoonShade })}
        />
      </div>
    </fieldset>
  );
}

function SunWanted({
  sunHours: [least, most],
  set,
}: {
  readonly sunHours: PlantRow['sunHours'];
  readonly set: SetRow;
}) {
  return (
    <div class="field-row">
      <NumberBox
        field={SUN_LEAST}
        value={least}
        onChange={(value) =>
          (value ?? least) > most ? 'The least must not be above the most.' : set({ sunHours: [value ?? least, most] })
        }
      />
      <NumberBox
        field={SUN_MOST}
        value={most}
        onChange={(value) =>
          (value ?? most) < least ? 'The most must not be below the least.' : set({ sunHours: [least, value ?? most] })
        }
      />
    </div>
  );
}
