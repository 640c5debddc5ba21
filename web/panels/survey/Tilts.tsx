import { sunAtMs } from '../../../engine/index.ts';
import { plan } from '../../state/yard.ts';
import { AimedField } from '../parts/AimedField.tsx';
import { Field } from '../parts/boxes/Field.tsx';
import type { Measuring } from './measuring.ts';

interface Props {
  readonly measuring: Measuring;
  readonly onChange: (next: Partial<Measuring>) => void;
}

/** Lower, and no shadow's tip is in the yard. [°] */
const LEAST_SUN = 10;

/** Top and foot of a thing, sighted along the phone's edge from a known way off. */
export function Tilts({ measuring: { away, topTilt, footTilt }, onChange }: Props) {
  const { altitude } = sunAtMs(Date.now(), plan.value.site);
  return (
    <>
      <p>Stand about as far off as it is high, where you see its foot. Sight along the phone’s long edge.</p>
      <Field
        label="From you to its foot"
        value={away}
        hint="Level, by tape or in counted steps."
        onInput={(text) => onChange({ away: text })}
      />
      <AimedField
        label="Its top, above the level"
        value={topTilt}
        usual="35°"
        angle="altitude"
        aim="Aim at its top, then tap here"
        onInput={(text) => onChange({ topTilt: text })}
      />
      <AimedField
        label="Its foot, below the level with a minus"
        value={footTilt}
        usual="−9°"
        angle="altitude"
        aim="Aim at its foot, then tap here"
        onInput={(text) => onChange({ footTilt: text })}
      />
      {altitude > LEAST_SUN && (
        <p class="quiet">
          To check: held along a string from a stick’s tip of shadow to the stick’s top, it should read about{' '}
          {altitude.toFixed(0)}° now. Never sight at the sun itself.
        </p>
      )}
    </>
  );
}
