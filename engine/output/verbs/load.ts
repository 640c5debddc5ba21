import { GRID_DEFAULTS } from '../../load/light/grid-of.ts';
import { loadOf } from '../../load/load-of.ts';
import type { LoadResult, PlantLoad } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import { formatLength } from '../../plan/units.ts';
import { isRough } from '../../sun/weather.ts';
import { monthWord } from '../../plan/dates.ts';
import type { Period } from '../../sun/samples.ts';
import { loadCsv } from '../map/csv.ts';
import { loadGeoJson } from '../map/geo-json.ts';
import { heatMap, heatMapKey, plantLetter } from '../map/heat-map.ts';
import { jsonPieces } from '../text/json-text.ts';
import { wrapped } from '../text/plain-text.ts';
import { CELL_OPTION, HEIGHT_OPTION } from './options.ts';
import { hasFlag, numberGiven, planOf, refuseOption, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

/** The graded yard. */
export const load: Verb = {
  name: 'load',
  summary: 'the graded yard: sun load of every spot, hot spots, a verdict for each plant and bed',
  plan: 'required',
  common: ['date', 'heatwave', 'option', 'weather', 'units'],
  options: [
    CELL_OPTION,
    HEIGHT_OPTION,
    { name: 'csv', kind: 'flag', summary: 'the cells as CSV, in plan metres' },
    {
      name: 'geojson',
      kind: 'flag',
      summary:
        'cells, plants and hot spots as GeoJSON, in longitude and latitude; the plan’s (0, 0) lies at the site’s',
    },
  ],
  examples: [
    'load demo',
    'load demo --heatwave --option A --json',
    'load demo:lane --date 01-21 --cell 0.5 --height 1.2 --csv',
  ],
  run: runLoad,
};

function runLoad(request: VerbRequest): VerbResult {
  if (hasFlag(request, 'csv') && hasFlag(request, 'geojson'))
    return refuseOption('csv', 'Choose one of --csv and --geojson.');
  const plan = planOf(request);
  const { period, weather, units, progress } = request;
  const outcome = loadOf(plan, {
    period,
    weather,
    units,
    progress,
    cell: numberGiven(request, 'cell'),
    height: numberGiven(request, 'height'),
  });
  if (!outcome.ok) return outcome;
  const { value } = outcome;
  if (hasFlag(request, 'csv')) return { ok: true, json: value, text: '', file: loadCsv(value) };
  if (hasFlag(request, 'geojson')) {
    const collection = loadGeoJson(plan, value);
    return { ok: true, json: collection, text: '', file: jsonPieces(collection) };
  }
  return { ok: true, json: value, text: loadText(request, plan, value), tellsRough: 'text' };
}

function loadText(request: VerbRequest, plan: Plan, result: LoadResult): string {
  const { page, units } = request;
  const { season, grid } = result;
  const { columns } = page;
  const name = plan.name ?? 'The yard';
  const head =
    `${name}, ${periodWords(request.period, season.days)}, ` +
    `${formatLength(grid.height, units)} above the ground` +
    (grid.cell > GRID_DEFAULTS.cell ? `, in squares of ${formatLength(grid.cell, units)}` : '');
  const rough = isRough(plan, request.weather) ? '\nThe climate is rough: every number below is too.' : '';
  const open =
    `In the open: ${season.openSunHours.toFixed(1)} h of sun a day, beam dose ` +
    `${season.openBeamDose.toFixed(1)} and hot load ${season.openHotLoad.toFixed(1)} MJ/m² a day.`;
  const key = `${heatMapKey(page.colour)}\n${wrapped(
    'Grades of the hot load, an index of this project’s own; up is ' + 'the plan’s +y, letters are the plants below.',
    columns,
    '',
  )}`;
  const blocks = [`${head}${rough}\n${open}`, heatMap(result, page), key];
  const spots = result.hotSpots.map(({ sentence }) => wrapped(`- ${sentence}`, columns));
  blocks.push(spots.length === 0 ? 'Hot spots: none of grade harsh or scorching.' : `Hot spots\n${spots.join('\n')}`);
  if (result.plants.length > 0)
    blocks.push(
      `Plants, judged on the heatwave ` +
        `day\n${result.plants.map((plant, index) => plantText(plant, index, columns)).join('\n')}`,
    );
  return `${blocks.join('\n\n')}\n`;
}

function plantText(plant: PlantLoad, index: number, columns: number): string {
  const numbers =
    `${plant.sunHours.toFixed(1)} h of sun, ${plant.hotHours.toFixed(1)} hot hours, hot load ` +
    `${plant.hotLoad.toFixed(1)} MJ/m², ` +
    `light ${plant.dailyLight.toFixed(0)} mol/m² a day; ${plant.lightClass}`;
  const pot = plant.pot === null ? '' : `; its pot ${plant.pot.hotHours.toFixed(1)} hot hours`;
  return `${wrapped(
    `${plantLetter(index) || '-'} ${plant.sentence}`,
    columns,
  )}\n${wrapped(`(${numbers}${pot})`, columns, '   ', '  ')}`;
}

function periodWords(period: Period, days: number): string {
  switch (period.kind) {
    case 'season':
      return `mean of the season’s ${days} days`;
    case 'day':
      return `on ${Number(period.date.slice(-2))} ${monthWord(Number(period.date.slice(-5, -3)))}`;
    case 'heatwave':
      return 'on the heatwave day';
    case 'heatDay':
      return `on the heat day of ${monthWord(period.month)}`;
  }
}
