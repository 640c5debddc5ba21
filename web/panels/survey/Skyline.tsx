import { parseNumber, setSite, skylineFrom } from '../../../engine/index.ts';
import type { SkylineSighting } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { keptForYard } from '../../state/kept.ts';
import { say } from '../../state/speech.ts';
import { plan } from '../../state/yard.ts';
import { AimButton } from '../parts/AimButton.tsx';
import { Field } from '../parts/boxes/Field.tsx';
import { siteNow } from '../parts/typed.ts';
import { useAnswer } from '../parts/use-answer.ts';

interface Looks {
  readonly bearing: string;
  readonly altitude: string;
  readonly taken: readonly SkylineSighting[];
}

const NOTHING_YET: Looks = { bearing: '', altitude: '', taken: [] };
const looks = keptForYard<Looks>('skyline', NOTHING_YET);

/** How far hills, roofs and trees beyond the plan reach into the sky, look by look round the compass. */
export function Skyline() {
  const { bearing, altitude, taken } = looks.value;
  const change = (next: Partial<Looks>): void => {
    looks.value = { ...looks.value, ...next };
  };
  const typed = readLook(bearing, altitude);
  const drawn = plan.value.site.skyline;
  const add = (look: SkylineSighting): void => change({ taken: [...taken, look], bearing: '', altitude: '' });
  return (
    <>
      <p>
        Only for what stands far beyond the drawing. From the yard’s middle look along its upper edge, every 20° or so.
        {drawn && ` The plan has ${drawn.length} points of it now.`}
      </p>
      <Field
        label="Bearing by the compass"
        value={bearing}
        usual="0 to 360°"
        onInput={(text) => change({ bearing: text })}
      />
      <Field
        label="Height above the level"
        value={altitude}
        usual="12°"
        hint="A hand’s breadth at arm’s length is about 10°."
        onInput={(text) => change({ altitude: text })}
      />
      <button type="button" disabled={typed === null} onClick={() => typed && add(typed)}>
        Add this look
      </button>
      <AimButton
        label="Sight along the phone’s long edge at the skyline, then tap here; turn on and tap again"
        needs="bearing"
        onAim={(aim) => add({ bearing: Math.round(aim.bearing ?? 0), altitude: Math.round(aim.altitude) })}
      />
      {taken.length > 0 && <Taken looks={taken} onRemove={(index) => change({ taken: taken.toSpliced(index, 1) })} />}
      {drawn && (
        <button
          type="button"
          onClick={() => commitEdit('Take the skyline off', setSite(plan.value, { skyline: undefined }))}
        >
          Take the skyline off the plan
        </button>
      )}
    </>
  );
}

/** The looks so far, and the skyline that they make. */
function Taken({
  looks: taken,
  onRemove,
}: {
  readonly looks: readonly SkylineSighting[];
  readonly onRemove: (index: number) => void;
}) {
  // The needle's error at the place: the engine knows it with north.
  const { value: north } = useAnswer('north', {
    plan: { ...plan.value, features: [] },
    observations: [],
    date: siteNow().date,
  });
  const found = skylineFrom(taken, north?.declination ?? 0);
  const use = (): void => {
    if (!found.ok || !commitEdit('Set the skyline', setSite(plan.value, { skyline: found.value }))) return;
    looks.value = NOTHING_YET;
    say('The skyline is on the plan: low sun behind it no longer counts.');
  };
  return (
    <>
      <ul aria-label="Looks taken">
        {taken.map((look, index) => (
          <li key={index}>
            {look.bearing}°: {look.altitude}° high{' '}
            <button type="button" aria-label={`Remove the look at ${look.bearing}°`} onClick={() => onRemove(index)}>
              Remove
            </button>
          </li>
        ))}
      </ul>
      <p role="status" class="quiet">
        {found.ok ? [`Good to about 10° in bearing and 2° in height.`, ...found.notes].join(' ') : found.reason}
      </p>
      {found.ok && (
        <button type="button" class="main" onClick={use}>
          Use this skyline
        </button>
      )}
    </>
  );
}

/** A typed look; `null` while it is none. */
function readLook(bearing: string, altitude: string): SkylineSighting | null {
  const [turn, up] = [bearing, altitude].map((text) => parseNumber(text.replace('°', '')));
  if (turn === null || up === null || turn < 0 || turn > 360 || Math.abs(up) > 90) return null;
  return { bearing: turn, altitude: up };
}
