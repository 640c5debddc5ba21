import type { ComponentType } from 'preact';
import { CATALOGUE, TOWNS, askedMonth, parseLength, townWords, MONTHS } from '../../../engine/index.ts';
import type { Units } from '../../../engine/index.ts';
import { lazily } from '../../common/Lazy.tsx';
import { FIELDS, readField } from '../../common/fields.ts';
import { plan, units } from '../../state/yard.ts';
import { SHAPES, answer, answers } from './answers.ts';
import type { Shape, StepName } from './answers.ts';
import { AimedField } from '../parts/AimedField.tsx';
import { Choices, Field } from '../parts/boxes/Field.tsx';
import { placeOf } from '../parts/world/place-of.ts';
import { TownEcho } from '../parts/world/TownEcho.tsx';
import { SEA_CHOICES } from '../parts/world/sea.ts';
import { ShapePicture } from './ShapePicture.tsx';
import { AMOUNT_CHOICES, PART_CHOICES, SIDE_CHOICES } from '../parts/side-choices.ts';
import { NORTH_WAYS, SHEET_WAYS } from './north-of.ts';
import { USUAL } from './usual.ts';

export interface Question {
  readonly title: string;
  /** What is used instead when it is passed over. */
  readonly skip: string;
  readonly Body: ComponentType;
}

export const QUESTIONS: Readonly<Record<StepName, Question>> = {
  place: { title: 'Where is it?', skip: 'use the place of the open yard', Body: PlaceQuestion },
  summer: { title: 'How hot does it get?', skip: 'use rough numbers', Body: SummerQuestion },
  ground: { title: 'What shape is it?', skip: `use ${USUAL.across} by ${USUAL.deep} m`, Body: GroundQuestion },
  north: { title: 'Which way does it lie?', skip: 'find north later', Body: NorthQuestion },
  walls: {
    title: 'How high are the walls, fences and the house?',
    skip: `use ${USUAL.wallHeight} m`,
    Body: WallsQuestion,
  },
  plant: { title: 'Which plant?', skip: `use ${USUAL.plantHeight} m`, Body: PlantQuestion },
  damage: { title: 'What burnt, and when?', skip: 'say nothing of a burn', Body: DamageQuestion },
};

const WorldPicture = lazily(
  () => import('../parts/world/WorldPicture.tsx').then((part) => part.WorldPicture),
  'The map',
);

function PlaceQuestion() {
  const typed = answers.value.place;
  const read = typed.trim() === '' ? null : placeOf(typed);
  return (
    <>
      <Field
        label="Town, or latitude and longitude"
        value={typed}
        usual="Phoenix, or 33.4, −112"
        list="first-towns"
        onInput={(place) => answer({ place })}
        hint="Half a degree is near enough. Nothing of it leaves this machine."
      />
      <datalist id="first-towns">
        {TOWNS.map((town) => (
          <option key={townWords(town)} value={townWords(town)} />
        ))}
      </datalist>
      {read?.ok && <TownEcho place={read.value} onChoose={(place) => answer({ place })} />}
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

/** What no air has reached, in °C: °F was meant. The world's record is under it (WMO: 56.7 °C, Death Valley, 1913). */
const NO_CELSIUS = 57;

function SummerQuestion() {
  const { high, low, hottest, place } = answers.value;
  const metric = askedUnits() === 'metric';
  const fahrenheit = metric ? [high, hottest].find((text) => Number(text) > NO_CELSIUS) : undefined;
  const read = placeOf(place);
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

/** The units answers are typed in: as chosen here, else as the open yard has them. */
function askedUnits(): Units {
  return answers.value.units === '' ? units.value : answers.value.units;
}

function GroundQuestion() {
  const { shape, across, deep, measure } = answers.value;
  const pictures = Object.fromEntries(
    Object.entries(SHAPES).map(([key, words]): [string, preact.JSX.Element] => [
      key,
      <>
        <ShapePicture shape={key as Shape} />
        {words}
      </>,
    ]),
  ) as Record<Shape, preact.JSX.Element>;
  return (
    <>
      <Choices
        legend="Nearest to"
        name="shape"
        value={shape}
        choices={pictures}
        class="choices-shapes"
        onChange={(next) => answer({ shape: next })}
      />
      <Choices
        legend="Measured in"
        name="measure"
        value={measure}
        choices={{ length: askedUnits() === 'metric' ? 'metres' : 'feet', steps: `steps of about ${USUAL.step} m` }}
        onChange={(next) => answer({ measure: next })}
      />
      <Field label="Across" value={across} usual={String(USUAL.across)} onInput={(text) => answer({ across: text })} />
      <Field label="Deep" value={deep} usual={String(USUAL.deep)} onInput={(text) => answer({ deep: text })} />
    </>
  );
}

function WallsQuestion() {
  const { wallHeight, wallsKnown, shape, floors } = answers.value;
  const [field] = FIELDS.wall;
  const read = parseLength(wallHeight, askedUnits()) ? readField(field, wallHeight, askedUnits()) : null;
  return (
    <>
      <Field
        label="Walls or fences"
        value={wallHeight}
        usual={String(USUAL.wallHeight)}
        hint="A guess is fine. 0: there are none."
        onInput={(text) => answer({ wallHeight: text })}
      />
      {read?.ok && read.unusual !== null && (
        <p class="box-said" role="status">
          {read.unusual}
        </p>
      )}
      <Choices
        legend="How do you know it?"
        name="known"
        value={wallsKnown}
        choices={{ guess: 'by guess', tape: 'by tape' }}
        onChange={(next) => answer({ wallsKnown: next })}
      />
      {shape !== 'walled' && (
        <Choices
          legend={shape === 'passage' ? 'Floors of the houses' : 'Floors of the house'}
          name="floors"
          value={String(floors) as keyof typeof FLOORS}
          choices={FLOORS}
          onChange={(next) => answer({ floors: Number(next) })}
        />
      )}
    </>
  );
}

/** Without what only a side of a plant can be. */
const FACING = (({ NW, N, NE, W, E, SW, S, SE }) => ({ NW, N, NE, W, E, SW, S, SE }))(SIDE_CHOICES);

const FLOORS = { '1': 'one', '2': 'two', '3': 'three' } as const;

function NorthQuestion() {
  const { northBy, facing, shadowTo, heading } = answers.value;
  return (
    <>
      <Choices
        legend="How can you tell?"
        name="north-by"
        value={northBy}
        choices={NORTH_WAYS}
        onChange={(next) => answer({ northBy: next, shadowAtMs: Date.now() })}
      />
      {northBy === 'unknown' && <p class="quiet">Until you find out, an answer about one side is only “could be”.</p>}
      {northBy === 'facing' && (
        <Choices
          legend="Stand at the bottom of the sheet and look to its top. You look"
          name="facing"
          value={facing}
          choices={FACING}
          class="choices-rose"
          onChange={(next) => answer({ facing: next })}
        />
      )}
      {northBy === 'shadow' && (
        <Choices
          legend="On the sheet, your shadow now falls"
          name="shadow-to"
          value={shadowTo}
          choices={SHEET_WAYS}
          class="choices-rose"
          onChange={(next) => answer({ shadowTo: next, shadowAtMs: Date.now() })}
        />
      )}
      {northBy === 'phone' && <CompassField heading={heading} />}
    </>
  );
}

function CompassField({ heading }: { readonly heading: string }) {
  return (
    <AimedField
      label="It reads, towards the top of the sheet"
      value={heading}
      usual="0 to 360°"
      hint="Two metres from cars, steel and reinforced walls."
      angle="bearing"
      aim="Lay the phone flat, its top to the top of the sheet, then tap here"
      onInput={(text) => answer({ heading: text })}
    />
  );
}

const ROWS = ['bottom', 'middle', 'top'] as const;
const COLUMNS = ['left', 'middle', 'right'] as const;

function PlantQuestion() {
  const { plant, plantHeight, pot, spot } = answers.value;
  return (
    <>
      <p class="asked-field">
        <label for="first-plant">Plant, or the one most like it</label>
        <select id="first-plant" value={plant} onChange={(event) => answer({ plant: event.currentTarget.value })}>
          {CATALOGUE.toSorted((a, b) => a.name.localeCompare(b.name)).map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <Field
        label="How tall is it?"
        value={plantHeight}
        usual={String(USUAL.plantHeight)}
        hint="From the ground to its top."
        onInput={(text) => answer({ plantHeight: text })}
      />
      <label class="choice">
        <input type="checkbox" checked={pot} onChange={(event) => answer({ pot: event.currentTarget.checked })} />
        It stands in a pot
      </label>
      <fieldset class="asked-choices choices-nine">
        <legend>Where does it stand on the sheet?</legend>
        {[2, 1, 0].flatMap((row) =>
          [0, 1, 2].map((column) => {
            const words = row === 1 && column === 1 ? 'in the middle' : `${ROWS[row]} ${COLUMNS[column]}`;
            const chosen = spot[0] === column && spot[1] === row;
            return (
              <label key={words} class="choice">
                <input type="radio" name="spot" checked={chosen} onChange={() => answer({ spot: [column, row] })} />
                {words}
              </label>
            );
          }),
        )}
      </fieldset>
    </>
  );
}

function DamageQuestion() {
  const { side, part, month, third, amount, northBy, skipped } = answers.value;
  const onSheet = northBy === 'unknown' || skipped.includes('north');
  return (
    <>
      <Choices
        legend={onSheet ? 'Which side, on the sheet?' : 'Which side?'}
        name="side"
        value={side as keyof typeof SIDE_CHOICES}
        choices={onSheet ? { ...SIDE_CHOICES, ...SHEET_WAYS } : SIDE_CHOICES}
        class="choices-rose"
        onChange={(next) => answer({ side: next })}
      />
      <Choices
        legend="Which part?"
        name="part"
        value={part as keyof typeof PART_CHOICES}
        choices={PART_CHOICES}
        onChange={(next) => answer({ part: next })}
      />
      <p class="asked-field">
        <label for="first-month">Month</label>
        <select
          id="first-month"
          value={month}
          onChange={(event) => answer({ month: Number(event.currentTarget.value) })}
        >
          {MONTHS.map((name, index) => (
            <option key={name} value={index + 1}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <Choices
        legend="When in it?"
        name="third"
        value={third}
        choices={{ early: 'early', mid: 'in the middle', late: 'late' }}
        onChange={(next) => answer({ third: next })}
      />
      <Choices
        legend="How bad?"
        name="amount"
        value={String(amount) as keyof typeof AMOUNT_CHOICES}
        choices={AMOUNT_CHOICES}
        onChange={(next) => answer({ amount: Number(next) })}
      />
    </>
  );
}
