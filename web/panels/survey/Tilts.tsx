import { sunAtMs } from '../../../engine/index.ts';
import { plan } from '../../state/yard.ts';
import { AimButton } from '../parts/AimButton.tsx';
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
  const inDegrees = (degrees: number): string => `${degrees.toFixed(0)}°`;
  return (
    <>
      <p>Stand about as far off as it is high, where you see its foot. Sight along the phone’s long edge.</p>
      <Field
        label="From you to its foot"
        value={away}
        hint="Level, by tape or in counted steps."
        onInput={(text) => onChange({ away: text })}
      />
      <Field
        label="Its top, above the level"
        value={topTilt}
        usual="35°"
        onInput={(text) => onChange({ topTilt: text })}
      />
      <AimButton
        label="Aim at its top, then tap here"
        needs="altitude"
        onAim={(aim) => onChange({ topTilt: inDegrees(aim.altitude) })}
      />
      <Field
        label="Its foot, below the level with a minus"
        value={footTilt}
        usual="−9°"
        onInput={(text) => onChange({ footTilt: text })}
      />
      <AimButton
        label="Aim at its foot, then tap here"
        needs="altitude"
        onAim={(aim) => onChange({ footTilt: inDegrees(aim.altitude) })}
      />
      {altitude > LEAST_SUN && (
        <p class="quiet">
          To check: held along a string from a stick’s tip of shadow to the stick’s top, it should read about{' '}
          {inDegrees(altitude)} now. Never sight at the sun itself.
        </p>
      )}
    </>
  );
}
