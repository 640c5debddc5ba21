import { askedMonth, MONTHS } from '../../../../engine/index.ts';
import { plan } from '../../../state/yard.ts';
import { Field } from '../../parts/boxes/Field.tsx';
import { placeTyped } from '../../parts/world/typed-place.ts';
import { answer, answers } from '../answers.ts';
import { askedUnits } from './asked-units.ts';

/** What no air has reached, in °C: °F was meant. The world's record is under it (WMO: 56.7 °C, Death Valley, 1913). */
const NO_CELSIUS = 57;

export function SummerQuestion() {
  const { high, low, hottest, place } = answers.value;
  const metric = askedUnits() === 'metric';
  const fahrenheit = metric ? [high, hottest].find((text) => Number(text) > NO_CELSIUS) : undefined;
  const read = placeTyped(place);
  const month = MONTHS[askedMonth(read.ok ? read.value.latitude : plan.value.site.latitude) - 1];
  return (
    <>
      <Field
        label={`Usual high in ${month}`}
        value={high}
        usual={metric ? '36 °C' : '97 °F'}
        onInput={(text) => answer({ high: text })}
      />
      <Field
        label={`Usual low in ${month}`}
        value={low}
        usual={metric ? '19 °C' : '66 °F'}
        onInput={(text) => answer({ low: text })}
      />
      <Field
        label="The hottest day last year"
        value={hottest}
        usual={metric ? '43 °C' : '109 °F'}
        onInput={(text) => answer({ hottest: text })}
      />
      {fahrenheit !== undefined && (
        <p class="box-said" role="status">
          {fahrenheit} is no °C.{' '}
          <button type="button" onClick={() => answer({ units: 'imperial' })}>
            It is °F: use °F and feet
          </button>
        </p>
      )}
    </>
  );
}
