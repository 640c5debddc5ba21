import { useState } from 'preact/hooks';
import {
  CLIMATE_TYPES,
  askedMonth,
  climateOfPlace,
  formatTemperature,
  knownElevationOf,
  parseTemperature,
  setClimate,
  setClimateMonth,
  MONTHS,
} from '../../../engine/index.ts';
import { Fault } from '../../common/Fault.tsx';
import { commitEdit } from '../../state/edit.ts';
import { isTexts, keptForYard } from '../../state/kept.ts';
import { plan, units } from '../../state/yard.ts';
import { Choices, Field } from '../parts/boxes/Field.tsx';
import { SEA_CHOICES, type SeaAnswer, bySeaOf } from '../parts/world/sea.ts';
import { useFound } from './use-found.ts';
import { takeWeatherFile } from './weather-file.ts';

const FROM = { rough: 'Rough, not measured here', months: 'Typed by month', file: 'From a weather file' } as const;

/** What the first typed month takes the place of. */
const OVER = { rough: 'a rough climate', months: null, file: 'those of a weather file' } as const;

/** Temperatures as they are being typed, by month and box, "7/high", or "hottest". */
const typedMonths = keptForYard<Readonly<Record<string, string>>>('months', {}, isTexts);

const typedRough = keptForYard('rough-climate', {
  type: '',
  sea: 'unknown' as SeaAnswer,
  high: '',
  low: '',
  hottest: '',
});

/** How hot it gets: by month as typed, from a weather file, or roughly from the towns near by. */
export function ClimateHelper() {
  const { climate } = plan.value;
  return (
    <>
      <p>
        <strong>{FROM[climate.from ?? 'months']}.</strong> {climate.source}
      </p>
      <h3>By month</h3>
      <p>
        Mean daily high and low, from your weather service's page. A typed month makes the climate yours
        {climate.from === 'file' && ', and takes the weather file off'}.
      </p>
      <table class="months">
        <thead>
          <tr>
            <th scope="col">Month</th>
            <th scope="col">High</th>
            <th scope="col">Low</th>
          </tr>
        </thead>
        <tbody>
          {MONTHS.map((name, index) => (
            <MonthRow key={name} name={name} month={index + 1} />
          ))}
        </tbody>
      </table>
      <Hottest />
      <h3>From a weather file</h3>
      <p>
        A year of hours as an EPW file: drop it anywhere on the page, or choose it. The yard is reckoned after its
        hours; its months and its hottest hour go into the plan.
      </p>
      <label class="button files-open">
        Choose a weather file…
        <input
          type="file"
          class="unseen"
          accept=".epw"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            event.currentTarget.value = '';
            if (file) void takeWeatherFile(file);
          }}
        />
      </label>
      <Rough />
    </>
  );
}

function MonthRow({ name, month }: { readonly name: string; readonly month: number }) {
  const row = plan.value.climate.months.find((one) => one.month === month);
  const typed = { high: typedMonths.value[`${month}/high`], low: typedMonths.value[`${month}/low`] };
  const [fault, setFault] = useState<string | null>(null);
  const shown = (key: 'high' | 'low'): string => typed[key] ?? (row ? formatTemperature(row[key], units.value, 1) : '');

  function take(): void {
    if (typed.high === undefined && typed.low === undefined) return;
    const high = parseTemperature(shown('high'), units.value);
    const low = parseTemperature(shown('low'), units.value);
    // The other box of a new month is still to come.
    if (shown('high').trim() === '' || shown('low').trim() === '') return;
    if (high === null || low === null || high > 58 || low < -40)
      return setFault(
        `${name}: "${high === null ? shown('high') : shown('low')}" is no mean temperature such as 36 °C.`,
      );
    if (low >= high) return setFault(`${name}: a low of ${low} °C is not below a high of ${high} °C.`);
    setFault(null);
    const { [`${month}/high`]: _, [`${month}/low`]: __, ...rest } = typedMonths.value;
    typedMonths.value = rest;
    const over = OVER[plan.value.climate.from ?? 'months'];
    const mine = over ? setClimate(plan.value, { from: 'months', source: `Typed by month over ${over}.` }) : plan.value;
    commitEdit(`Set the climate of ${name}`, setClimateMonth(mine, month, { high, low }));
  }

  return (
    <tr>
      <th scope="row">{name}</th>
      {(['high', 'low'] as const).map((key) => (
        <td key={key}>
          <input
            aria-label={`${name}: mean daily ${key}`}
            type="text"
            autocomplete="off"
            value={shown(key)}
            onInput={(event) =>
              (typedMonths.value = { ...typedMonths.value, [`${month}/${key}`]: event.currentTarget.value })
            }
            onBlur={take}
            onKeyDown={(event) => event.key === 'Enter' && take()}
          />
          {key === 'low' && fault && <Fault>{fault}</Fault>}
        </td>
      ))}
    </tr>
  );
}

function Hottest() {
  const { climate } = plan.value;
  const { hottest: typed, ...rest } = typedMonths.value;
  const [fault, setFault] = useState<string | null>(null);
  function take(): void {
    if (typed === undefined) return;
    const high = parseTemperature(typed, units.value);
    const least = Math.max(...climate.months.map((row) => row.high));
    if (high === null || high > 60 || high < least)
      return setFault(
        `"${typed}" must be from ${formatTemperature(least, units.value)}, the hottest month's high, to ` +
          `${formatTemperature(60, units.value)}.`,
      );
    setFault(null);
    typedMonths.value = rest;
    commitEdit('Set the hottest day', setClimate(plan.value, { heatwaveHigh: high }));
  }
  return (
    <p class="asked-field">
      <label for="hottest-day">High of the hottest day of most years</label>
      <input
        id="hottest-day"
        type="text"
        autocomplete="off"
        value={typed ?? formatTemperature(climate.heatwaveHigh, units.value, 1)}
        onInput={(event) => (typedMonths.value = { ...rest, hottest: event.currentTarget.value })}
        onBlur={take}
        onKeyDown={(event) => event.key === 'Enter' && take()}
      />
      {fault && (
        <span class="box-said fault" role="alert">
          {fault}
        </span>
      )}
    </p>
  );
}

function Rough() {
  const { latitude, longitude, timeZone } = plan.value.site;
  const typed = typedRough.value;
  const change = (next: Partial<typeof typed>): void => {
    typedRough.value = { ...typed, ...next };
  };
  const month = MONTHS[askedMonth(latitude) - 1];
  const [high, low, hottest] = [typed.high, typed.low, typed.hottest].map((text) =>
    parseTemperature(text, units.value),
  );
  const known = high !== null && low !== null && hottest !== null ? { high, low, hottest } : undefined;
  const finding = useFound(
    {
      latitude,
      longitude,
      elevation: knownElevationOf(plan.value.site),
      timeZone,
      bySea: bySeaOf(typed.sea),
      type: typed.type || undefined,
      known,
    },
    climateOfPlace,
  );
  return (
    <>
      <h3>Roughly</h3>
      <TypeChoice typed={typed} change={change} />
      <Field label={`Usual high in ${month}, if you know it`} value={typed.high} onInput={(high) => change({ high })} />
      <Field label={`Usual low in ${month}`} value={typed.low} onInput={(low) => change({ low })} />
      <Field
        label="The hottest day last year"
        value={typed.hottest}
        hint="All three shift the months to your place."
        onInput={(hottest) => change({ hottest })}
      />
      {finding && <RoughFound finding={finding} />}
    </>
  );
}

interface TypeProps {
  readonly typed: typeof typedRough.value;
  readonly change: (next: Partial<typeof typedRough.value>) => void;
}

/** What the months are taken from: the towns near by, or a type of climate. */
function TypeChoice({ typed, change }: TypeProps) {
  return (
    <>
      <p class="asked-field">
        <label for="climate-type">Most like</label>
        <select id="climate-type" value={typed.type} onChange={(event) => change({ type: event.currentTarget.value })}>
          <option value="">the towns near by</option>
          {CLIMATE_TYPES.map((one) => (
            <option key={one.id} value={one.id}>
              {one.name}
            </option>
          ))}
        </select>
      </p>
      {typed.type === '' && (
        <Choices
          legend="Is the open sea within 20 km?"
          name="climate-sea"
          value={typed.sea}
          choices={SEA_CHOICES}
          onChange={(sea) => change({ sea })}
        />
      )}
    </>
  );
}

function RoughFound({ finding }: { readonly finding: Awaited<ReturnType<typeof climateOfPlace>> }) {
  if (!finding.ok) return <Fault>{finding.reason}</Fault>;
  return (
    <>
      {finding.notes.map((note) => (
        <p key={note} class="quiet">
          {note}
        </p>
      ))}
      <button
        type="button"
        onClick={() => commitEdit('Take a rough climate', setClimate(plan.value, finding.value.climate))}
      >
        Take this rough climate
      </button>
    </>
  );
}
