import { useState } from 'preact/hooks';
import {
  ELEVATION_NOTE,
  elevationOf,
  knownElevationOf,
  parseLength,
  setSite,
  whereabouts,
} from '../../../engine/index.ts';
import type { Whereabouts, WhereaboutsRequest } from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import { lazily } from '../../common/Lazy.tsx';
import { commitEdit } from '../../state/edit.ts';
import { keptForYard } from '../../state/kept.ts';
import { say } from '../../state/speech.ts';
import { plan, units } from '../../state/yard.ts';
import { Field } from '../parts/boxes/Field.tsx';
import { PlaceField } from '../parts/world/PlaceField.tsx';
import { placeTyped } from '../parts/world/typed-place.ts';
import { useFound } from './use-found.ts';

const WorldPicture = lazily(
  () => import('../parts/world/WorldPicture.tsx').then((part) => part.WorldPicture),
  'The map',
);

const NOTHING = { typed: '', zone: '', elevation: '' };
const given = keptForYard('place', NOTHING);

function type(change: Partial<typeof NOTHING>): void {
  given.value = { ...given.value, ...change };
}

/** Where the yard lies: a town of the list, typed, or as the browser says; its zone shown, to be corrected. */
export function PlaceOfYard() {
  const { site, season } = plan.value;
  const { typed, zone, elevation } = given.value;
  const [fault, setFault] = useState<string | null>(null);
  const read = typed.trim() === '' ? null : placeTyped(typed);
  const at = read?.ok ? read.value : site;
  const timeZone = zone.trim() || undefined;
  const zoneFault =
    timeZone !== undefined && !isZone(timeZone) ? `"${timeZone}" is no time zone: it looks like Europe/Madrid.` : null;
  const value = useFound(
    zoneFault
      ? null
      : {
          latitude: at.latitude,
          longitude: at.longitude,
          year: season.year,
          timeZone: timeZone ?? (read?.ok ? undefined : site.timeZone),
        },
    placeFound,
  );

  function take(): void {
    if (!value) return;
    // The height of the place before says nothing of a new one, and a wrong one would heat or cool its climate.
    const kept = read?.ok ? undefined : knownElevationOf(site);
    const metres = elevation.trim() === '' ? kept : parseLength(elevation, units.value);
    if (metres === null || (metres !== undefined && (metres < -450 || metres > 6000)))
      return setFault(`"${elevation}" is no height above the sea.`);
    setFault(null);
    setPlace({ latitude: at.latitude, longitude: at.longitude, timeZone: value.timeZone, elevation: metres });
  }

  return (
    <>
      <p>
        Now: latitude {site.latitude.toFixed(2)}°, longitude {site.longitude.toFixed(2)}°,{' '}
        {`clocks of ${site.timeZone}, ${elevationOf(site)} m above the sea.`}
      </p>
      <TownBox typed={typed} read={read} at={at} onFault={setFault} />
      {read && !read.ok && <Fault>{read.reason}</Fault>}
      <Field
        label="Time zone, where the one found is not right"
        value={zone}
        usual={value?.timeZone}
        onInput={(text) => type({ zone: text })}
      />
      <Fault>{zoneFault}</Fault>
      <Field
        label="Height above the sea"
        value={elevation}
        usual={read?.ok ? undefined : `${elevationOf(site)} m`}
        hint={ELEVATION_NOTE}
        onInput={(text) => type({ elevation: text })}
      />
      <Fault>{fault}</Fault>
      {value && <PlaceFound value={value} disabled={read !== null && !read.ok} onTake={take} />}
    </>
  );
}

function setPlace(place: Parameters<typeof setSite>[1]): void {
  if (!commitEdit('Set the place', setSite(plan.value, place))) return;
  given.value = NOTHING;
  say('The place is set. Is the climate still the right one?');
}

interface TownProps {
  readonly typed: string;
  readonly read: ReturnType<typeof placeTyped> | null;
  readonly at: { readonly latitude: number; readonly longitude: number };
  readonly onFault: (words: string) => void;
}

/** A town, a coordinate, the browser's own word, or a tap on the map of the world. */
function TownBox({ typed, read, at, onFault }: TownProps) {
  function askBrowser(): void {
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => type({ typed: `${coords.latitude.toFixed(3)}, ${coords.longitude.toFixed(3)}` }),
      () => onFault('The browser does not say where it is: choose a town, or type latitude and longitude.'),
    );
  }
  return (
    <>
      <PlaceField value={typed} read={read} onInput={(text) => type({ typed: text })} />
      {'geolocation' in navigator && window.isSecureContext && (
        <button type="button" onClick={askBrowser}>
          Ask this browser where I am
        </button>
      )}
      <WorldPicture at={at} onTap={(text) => type({ typed: text })} />
    </>
  );
}

interface FoundProps {
  readonly value: Whereabouts;
  readonly disabled: boolean;
  readonly onTake: () => void;
}

function PlaceFound({ value: { timeZone, near, check, notes }, disabled, onTake }: FoundProps) {
  return (
    <section aria-label="Place found" class="found" aria-live="polite">
      <p>
        Clocks of <strong>{timeZone}</strong>; {near.kilometres.toFixed(0)} km from {near.town.name},{' '}
        {near.town.country}.
      </p>
      <p class="sanity">{check}</p>
      {notes.map((note) => (
        <p key={note}>{note}</p>
      ))}
      <button type="button" class="main" disabled={disabled} onClick={onTake}>
        Take this place
      </button>
    </section>
  );
}

const placeFound = async (asked: WhereaboutsRequest | null): Promise<Whereabouts | null> => asked && whereabouts(asked);

function isZone(name: string): boolean {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: name }).resolvedOptions().timeZone !== '';
  } catch {
    return false;
  }
}
