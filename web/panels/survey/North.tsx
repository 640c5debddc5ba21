import { setPartHow, setSite } from '../../../engine/index.ts';
import type { KnownBy, NorthObservation, AllNorth } from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { plan } from '../../state/yard.ts';
import { AimedField } from '../parts/AimedField.tsx';
import { Choices } from '../parts/boxes/Field.tsx';
import { WhenFields } from '../parts/boxes/WhenFields.tsx';
import { NorthBox } from '../parts/NorthBox.tsx';
import { siteNow } from '../parts/typed.ts';
import { useAnswer } from '../parts/use-answer.ts';
import { PointField } from './PointField.tsx';
import { ShadowRose } from './ShadowRose.tsx';
import { readSighting, typedSighting } from './sighting.ts';
import type { Sighting, Way } from './sighting.ts';

const WAYS: Readonly<Record<Way, string>> = {
  shadow: "A pole's shadow",
  vanish: 'A wall without shadow',
  compass: 'A compass',
  picture: 'A north-up picture',
};
const HOW_TO: Readonly<Record<Way, string>> = {
  shadow:
    'Stand a pole plumb (a string with a weight beside it). Mark the tip of its shadow and note the minute. A ' +
    "wall's upright end does as well.",
  vanish: 'Note the minute at which a straight wall has no shadow on either side: the sun then stands over its line.',
  compass: 'Lay the compass along a line of the drawing, 2 m from steel, cars and reinforced walls.',
  picture: 'The picture under the drawing has north at its top, as pictures from above mostly have.',
};

/** Which way the drawing lies: one sighting or several, each with its ±, and the sun to check them by. */
export function North() {
  const typed = typedSighting.value;
  const current = plan.value;
  const kept = current.site.northFrom ?? [];
  const read = readSighting(typed);
  const fresh = 'observation' in read ? [read.observation] : [];
  const { value, fault } = useAnswer('north', {
    plan: { ...current, features: [] },
    observations: [...kept, ...fresh],
    date: typed.when.date || siteNow().date,
  });
  const change = (next: Partial<Sighting>): void => {
    typedSighting.value = { ...typed, ...next };
  };
  const { by } = typed;
  return (
    <>
      <NorthBox />
      <Choices
        legend="Find it by"
        name="north-way"
        value={by}
        choices={WAYS}
        class="choices-ways"
        onChange={(next) => change({ by: next })}
      />
      <p>{HOW_TO[by]}</p>
      {by !== 'picture' && <LineBoxes typed={typed} change={change} value={value} />}
      {'lacks' in read && (
        <p class="quiet" role="status">
          {read.lacks}
        </p>
      )}
      <Fault>{fault}</Fault>
      {value && value.findings.length === kept.length + fresh.length && (
        <Result value={value} observations={[...kept, ...fresh]} keptCount={kept.length} />
      )}
      {value && by === 'shadow' && <ShadowRose shadows={value.shadows} />}
    </>
  );
}

interface LineProps {
  readonly typed: Sighting;
  readonly change: (next: Partial<Sighting>) => void;
  readonly value: AllNorth | null;
}

/** The line that is sighted along, and by what: the minute, or the compass's reading. */
function LineBoxes({ typed, change, value }: LineProps) {
  const isShadow = typed.by === 'shadow';
  return (
    <>
      {value && isShadow && <BestTimes value={value} />}
      <PointField
        label={isShadow ? "Pole's foot" : 'One end of the line'}
        value={typed.from}
        onInput={(from) => change({ from })}
      />
      <PointField
        label={isShadow ? 'Tip of its shadow' : 'Other end of the line'}
        value={typed.to}
        onInput={(to) => change({ to })}
      />
      {typed.by === 'compass' ? (
        <AimedField
          label="Compass reading, from the one end to the other"
          value={typed.reading}
          usual="20°"
          hint={
            value
              ? `Here the needle points ${Math.abs(value.declination).toFixed(1)}° ` +
                `${value.declination < 0 ? 'west' : 'east'} of true north; that is taken into account.`
              : undefined
          }
          angle="bearing"
          aim="This phone’s compass: lay it flat along the line, its top to the other end, then tap here"
          onInput={(reading) => change({ reading })}
        />
      ) : (
        <WhenFields value={typed.when} onChange={(when) => change({ when })} />
      )}
    </>
  );
}

function BestTimes({ value: { windows } }: { readonly value: AllNorth }) {
  return (
    <p class="best-times">
      {windows.length === 0 ? (
        'No shadow tells north this day.'
      ) : (
        <>
          Works best <strong>{windows.map(({ from, to }) => `${from} to ${to}`).join(' or ')}</strong> that day.
        </>
      )}{' '}
      Around midday the sun swings too fast.
    </p>
  );
}

interface ResultProps {
  readonly value: AllNorth;
  readonly observations: readonly NorthObservation[];
  readonly keptCount: number;
}

function Result({ value, observations, keptCount }: ResultProps) {
  if (observations.length === 0) return null;
  return (
    <section aria-label="North found" class="found" aria-live="polite">
      <ul class="sightings">
        {value.findings.map((finding, index) => (
          <li key={index}>
            <strong>{WAYS[observations[index].by]}</strong>
            {index < keptCount ? ' (kept)' : ''}: <Told finding={finding} />
            {index < keptCount && (
              <button
                type="button"
                onClick={() =>
                  commitEdit(
                    'Drop a sighting of north',
                    setSite(plan.value, {
                      northFrom: observations.filter((_, other) => other !== index && other < keptCount),
                    }),
                  )
                }
              >
                Drop it
              </button>
            )}
          </li>
        ))}
      </ul>
      <Together value={value} observations={observations} />
    </section>
  );
}

/** What one sighting says, and where the sun stood. */
function Told({ finding }: { readonly finding: AllNorth['findings'][number] }) {
  if (!finding.ok) return <span class="fault">{finding.reason}</span>;
  const { upBearing, sun } = finding.value;
  return (
    <>
      {`${upBearing.value.toFixed(1)}° ± ${upBearing.pm.toFixed(1)}°`}
      {sun && (
        <span class="quiet">
          {' '}
          Sun at {sun.azimuth.toFixed(1)}°, {sun.altitude.toFixed(1)}° high.
        </span>
      )}
      {finding.notes.map((note) => (
        <span key={note} class="quiet">
          {' '}
          {note}
        </span>
      ))}
    </>
  );
}

/** The bearing of all sightings, to be taken; where they lie apart, each of the two to choose from. */
function Together({ value: { findings, together, check }, observations }: Pick<ResultProps, 'value' | 'observations'>) {
  if (!together) return null;
  const good = observations.filter((_, index) => findings[index].ok);
  return (
    <>
      <p class="found-number">
        The drawing's top bears {together.upBearing.value.toFixed(1)}° ± {together.upBearing.pm.toFixed(1)}°
      </p>
      <p class="sanity">{check}</p>
      {together.apart === null ? (
        <button type="button" class="main" onClick={() => take(good, together.upBearing)}>
          Take north as {together.upBearing.value.toFixed(1)}°
        </button>
      ) : (
        <>
          {together.notes.map((note) => (
            <p key={note} class="box-said">
              {note}
            </p>
          ))}
          {together.apart.map((index) => {
            const finding = findings.filter(({ ok }) => ok)[index];
            return (
              finding.ok && (
                <button key={index} type="button" onClick={() => take([good[index]], finding.value.upBearing)}>
                  Keep {finding.value.upBearing.value.toFixed(1)}°, by {WAYS[good[index].by].toLowerCase()}
                </button>
              )
            );
          })}
        </>
      )}
    </>
  );
}

function take(chosen: readonly NorthObservation[], bearing: { readonly value: number; readonly pm: number }): void {
  const known: KnownBy =
    chosen.length > 0 && chosen.every(({ by }) => by === chosen[0].by) ? knownBy(chosen[0].by) : 'shadow';
  const upBearing = Math.round(bearing.value * 10) / 10;
  const next = setPartHow(setSite(plan.value, { upBearing, northFrom: chosen }), 'site', 'upBearing', {
    by: known,
    pm: Math.round(bearing.pm * 10) / 10,
  });
  if (!commitEdit('Set north', next)) return;
  typedSighting.value = { ...typedSighting.value, from: '', to: '', reading: '' };
  say(`The drawing's top now bears ${upBearing.toFixed(1)}°.`);
}

function knownBy(by: Way): KnownBy {
  return by === 'vanish' ? 'shadow' : by;
}
