import { setClimate } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { findOut } from '../../state/view.ts';
import { fileOf, weatherInUse } from '../../state/weather.ts';
import { plan } from '../../state/yard.ts';

/** Beside every result: that the climate is rough, or which weather file it is reckoned after. */
export function ClimateNote() {
  if (plan.value.climate.from === 'rough') {
    return (
      <p class="climate-note rough-climate">
        <strong>Rough climate:</strong>{' '}
        <button type="button" onClick={() => findOut('climate')}>
          Make it yours
        </button>
      </p>
    );
  }
  const source = fileOf(plan.value);
  if (source === null) return null;
  const file = <bdi>{source.replace(/^Weather file | \(mark \w+\)$/g, '')}</bdi>;
  return weatherInUse.value ? (
    <p class="climate-note">
      <strong>After the weather file</strong> {file}, hour by hour; the heatwave day is made from its months.{' '}
      <button type="button" onClick={() => takeOff(source)}>
        Take the file off
      </button>
    </p>
  ) : (
    <p class="climate-note">
      <strong>After the months of the weather file</strong> {file}: its hours are not in this browser. Drop the file on
      the page to reckon by them.
    </p>
  );
}

/** Its months stay in the plan; undo takes the hours into use again. */
function takeOff(source: string): void {
  commitEdit(
    'Take the weather file off',
    setClimate(plan.value, { from: 'months', source: `Months of the ${source.replace(/^W/, 'w')}` }),
  );
}
