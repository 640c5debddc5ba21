import { lazily } from '../../../common/Lazy.tsx';
import { Choices } from '../../parts/boxes/Field.tsx';
import { PlaceField } from '../../parts/world/PlaceField.tsx';
import { SEA_CHOICES } from '../../parts/world/sea.ts';
import { placeTyped } from '../../parts/world/typed-place.ts';
import { answer, answers } from '../answers.ts';

const WorldPicture = lazily(
  () => import('../../parts/world/WorldPicture.tsx').then((part) => part.WorldPicture),
  'The map',
);

export function PlaceQuestion() {
  const typed = answers.value.place;
  const read = typed.trim() === '' ? null : placeTyped(typed);
  return (
    <>
      <PlaceField value={typed} read={read} onInput={(place) => answer({ place })} />
      {read && (
        <p class="quiet" role="status">
          {read.ok
            ? `${read.value.latitude.toFixed(2)}°, ${read.value.longitude.toFixed(2)}°, clocks of ` +
              `${read.value.timeZone}`
            : read.reason}
        </p>
      )}
      {'geolocation' in navigator && window.isSecureContext && (
        <button
          type="button"
          onClick={() =>
            navigator.geolocation.getCurrentPosition(
              ({ coords }) => answer({ place: `${coords.latitude.toFixed(3)}, ${coords.longitude.toFixed(3)}` }),
              () => {},
            )
          }
        >
          Ask this browser where I am
        </button>
      )}
      {read?.ok && (
        <Choices
          legend="Is the open sea within 20 km?"
          name="sea"
          value={answers.value.sea}
          choices={SEA_CHOICES}
          onChange={(sea) => answer({ sea })}
        />
      )}
      <WorldPicture at={read?.ok ? read.value : null} onTap={(place) => answer({ place })} />
    </>
  );
}
