import { setClimate } from '../../../engine/index.ts';
import type { ClimateMonth, Plan, WeatherFile } from '../../../engine/index.ts';
import { askEngine } from '../../state/ask.ts';
import { commitEdit } from '../../state/edit.ts';
import { say } from '../../state/speech.ts';
import { storageTrouble } from '../../state/storage/trouble.ts';
import { findOut } from '../../state/view.ts';
import { keepHours } from '../../state/weather.ts';
import { plan } from '../../state/yard.ts';

const LARGEST_FILE_BYTES = 20e6;

/** Reckons the open yard after a weather file that was dropped or chosen: its hours, and in the plan its months. */
export async function takeWeatherFile(file: File): Promise<void> {
  if (file.size > LARGEST_FILE_BYTES)
    return say(`${file.name} is too large for a weather file (over 20 MB).`, 'problem');
  const bytes = new Uint8Array(await file.arrayBuffer());
  const { site } = plan.value;
  const answer = await askEngine('weatherFile', {
    plan: { ...plan.value, site: { ...site, underlay: undefined } },
    bytes,
  });
  if (!answer.ok) return say(`${file.name}: ${answer.problems[0]?.message ?? 'it cannot be read.'}`, 'problem');
  const { weather, warnings } = answer.value;
  const next = withWeather(plan.value, answer.value, file.name);
  // Its hours first: the yard is reckoned once, after them.
  const lost = await keepHours(next.climate.source ?? '', weather).then(() => null, storageTrouble);
  if (!commitEdit('Take a weather file', next)) return;
  findOut('climate');
  const [warning] = lost === null ? warnings : [`Its hours last until this page closes. ${lost}`];
  say(
    `The yard is reckoned after the hours of ${weather.place.name} now.${warning ? ` ${warning}` : ''}`,
    warning ? 'warning' : 'done',
  );
}

/**
 * What the file does not tell, such as sunshine and turbidity, stays as it was. Files of one name and place may differ
 * in their hours: the source tells them apart.
 */
function withWeather(current: Plan, { weather: { place, months }, mark, hottest }: WeatherFile, name: string): Plan {
  const rounded = (value: number): number => Math.round(value * 10) / 10;
  const rows = months.map(({ month, high, low, humidity, wind }): ClimateMonth => ({
    ...current.climate.months.find((row) => row.month === month),
    month,
    high: rounded(high),
    low: rounded(low),
    ...(Number.isFinite(humidity) ? { humidity: Math.round(humidity) } : {}),
    ...(Number.isFinite(wind) ? { wind: rounded(wind) } : {}),
  }));
  const { months: _, heatwaveHigh: __, ...how } = current.climate.how ?? {};
  return setClimate(current, {
    from: 'file',
    source: `Weather file ${name}: ${place.name} (mark ${mark})`,
    months: rows,
    heatwaveHigh: Math.max(rounded(hottest), ...rows.map(({ high }) => high)),
    how,
  });
}
