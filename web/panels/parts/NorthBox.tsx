import { setPartHow, setSite, upBearingOf, wrapBearing } from '../../../engine/index.ts';
import type { NumberField } from '../../common/fields/number-field.ts';
import { commitEdit } from '../../state/edit.ts';
import { plan } from '../../state/yard.ts';
import { NumberBox } from './boxes/NumberBox.tsx';

const FIELD: NumberField = {
  key: 'upBearing',
  label: 'The drawing’s top bears',
  unit: 'degrees',
  asked: false,
  least: -360,
  most: 360,
  read: () => undefined,
  write: () => ({}),
};

/** Which way the drawing lies, as a number for whoever knows it: clockwise from true north. */
export function NorthBox() {
  const { site } = plan.value;
  return (
    <div class="north-box">
      <NumberBox field={FIELD} value={upBearingOf(plan.value)} onChange={(typed) => set(typed ?? 0)} />
      <p class="quiet">0° is true north, 90° east.{site.how?.upBearing?.by === 'guess' ? ' Now a guess.' : ''}</p>
    </div>
  );
}

function set(degrees: number): null {
  const upBearing = wrapBearing(degrees);
  commitEdit('Set north', setPartHow(setSite(plan.value, { upBearing }), 'site', 'upBearing', undefined));
  return null;
}
