import { shownName } from '../../../../engine/index.ts';
import type { FeatureOf } from '../../../../engine/index.ts';
import { change } from '../../../map/drawing/feature-edits.ts';
import { shownPlan } from '../../../state/yard.ts';
import { ChoiceBox } from '../boxes/ChoiceBox.tsx';
import { TextBox } from '../boxes/TextBox.tsx';

const LABEL = 'Change reading';
const SIDES = {
  top: 'top',
  '0': 'north',
  '45': 'north-east',
  '90': 'east',
  '135': 'south-east',
  '180': 'south',
  '225': 'south-west',
  '270': 'west',
  '315': 'north-west',
} as const;

/**
 * When and on what a reading was taken: the minute on the site's clock, under cloth or open, which plant and side, its
 * partner.
 */
export function ReadingFields({ reading }: { readonly reading: FeatureOf<'reading'> }) {
  const { features } = shownPlan.value;
  const plants = Object.fromEntries(
    features
      .filter(({ kind }) => kind === 'plant' || kind === 'tree' || kind === 'bed')
      .map((each) => [each.id, shownName(each.name ?? each.id)]),
  );
  const partners = Object.fromEntries(
    features
      .filter((each) => each.kind === 'reading' && each.id !== reading.id)
      .map((each) => [each.id, shownName(each.name ?? each.id)]),
  );
  return (
    <>
      <TextBox
        label={`When (clock of ${shownPlan.value.site.timeZone})`}
        value={reading.when.replace('T', ' ')}
        onChange={(when) => change(reading.id, LABEL, { when: when.replace(' ', 'T') })}
      />
      <label class="tick">
        <input
          type="checkbox"
          checked={reading.covered === true}
          onChange={(event) => change(reading.id, LABEL, { covered: event.currentTarget.checked })}
        />
        Under cloth
      </label>
      <ChoiceBox
        label="On"
        value={reading.plant}
        none="no plant"
        choices={plants}
        onChange={(plant) => change(reading.id, LABEL, { plant })}
      />
      <ChoiceBox
        label="Side"
        value={reading.side === undefined ? undefined : String(reading.side)}
        none="not said"
        choices={SIDES}
        onChange={(side) =>
          change(reading.id, LABEL, { side: side === undefined || side === 'top' ? side : Number(side) })
        }
      />
      <ChoiceBox
        label="Pair with"
        value={reading.pair}
        none="no other reading"
        choices={partners}
        onChange={(pair) => change(reading.id, LABEL, { pair })}
      />
      <TextBox
        label="Note"
        value={reading.text ?? ''}
        onChange={(text) => change(reading.id, LABEL, { text: text === '' ? undefined : text })}
      />
    </>
  );
}
