import { heatHeadline } from '../../advice/words/yard-headlines.ts';
import { GRID_DEFAULTS } from '../../load/light/grid-of.ts';
import { loadOf } from '../../load/load-of.ts';
import type { LoadResult } from '../../load/types.ts';
import { worstFirst } from '../../load/verdict/worst-first.ts';
import { monthWord } from '../../plan/dates/dates.ts';
import { worthOf } from '../../plan/defaults.ts';
import { refuseOption } from '../../plan/problems.ts';
import type { Plan } from '../../plan/types.ts';
import { formatLength } from '../../plan/units/shown.ts';
import type { Period } from '../../sun/samples.ts';
import { heatwaveUp } from '../../sun/sun-up.ts';
import { isRough } from '../../sun/weather/weather.ts';
import { loadCsv } from '../map/csv.ts';
import { loadGeoJson } from '../map/geo-json.ts';
import { heatMap, heatMapKey, plantLetter } from '../map/heat-map.ts';
import { jsonPieces } from '../text/json-text.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { CELL_OPTION, HEIGHT_OPTION } from './options.ts';
import { hasFlag, numberGiven, planOf, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

/** The graded yard. */
export const load: Verb = {
  name: 'load',
  summary: 'the graded yard: sun load of every spot, hot spots, a verdict for each plant and bed',
  plan: 'required',
  common: ['date', 'heatwave', 'option', 'weather', 'units', 'sources'],
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
  return {
    ok: true,
    json: value,
    text: loadText(request, plan, value),
    sources: loadSources(request, value),
    tellsRough: 'text',
  };
}

/** What the sun does in one sentence, each plant from the worst on, and the map that shows it. */
function loadText({ page, period, units, weather }: VerbRequest, plan: Plan, result: LoadResult): string {
  const { columns } = page;
  const { height, cell } = result.grid;
  const rough = isRough(plan, weather) ? ' The climate is rough: every number below is too.' : '';
  const letters = new Map(result.plants.map(({ id }, index) => [id, plantLetter(index)]));
  const worths = new Map(plan.features.map((feature) => [feature.id, worthOf(feature)]));
  const ranked = worstFirst(result.plants, (id) => worths.get(id) ?? 0);
  const plants = ranked.map(({ id, sentence }) => wrapped(`${letters.get(id) || '-'} ${sentence}`, columns));
  const spots = result.hotSpots.map(({ sentence }) => wrapped(`- ${sentence}`, columns));
  const key = `${heatMapKey(page.colour)}\n${wrapped(
    `${plan.name ?? 'The yard'}: heat of the sun ${formatLength(height, units)} above the ground, ` +
      periodWords(period, result.season.days) +
      `${cell > GRID_DEFAULTS.cell ? `, in squares of ${formatLength(cell, units)}` : ''}; up is the plan’s +y.`,
    columns,
    '',
  )}`;
  return `${[
    wrapped(heatHeadline(plan, ranked, heatwaveUp(plan, weather)) + rough, columns, ''),
    ...(plants.length === 0 ? [] : [plants.join('\n')]),
    heatMap(result, page),
    key,
    ...(spots.length === 0 ? [] : [`Hot spots\n${spots.join('\n')}`]),
  ].join('\n\n')}\n`;
}

/** The numbers behind the sentences, and how they were reckoned. */
function loadSources({ page, units }: VerbRequest, { season, grid, plants }: LoadResult): string {
  const { columns } = page;
  const rows = plants.map((plant, index) => {
    const { sunHours, dailyLight } = plant.sides?.[0] ?? plant;
    return [
      `${plantLetter(index) || '-'} ${plant.id}`,
      sunHours.toFixed(1),
      plant.hotHours.toFixed(1),
      plant.hotLoad.toFixed(1),
      dailyLight.toFixed(0),
      plant.lightClass,
    ];
  });
  const head = ['plant', 'sun at the top h/day', 'hot h/day', 'hot sun MJ/m²', 'light mol/m²', 'light'];
  return `${[
    ...(rows.length === 0 ? [] : [table(columns, head, rows, [1, 2, 3, 4])]),
    wrapped(
      `In the open: ${season.openSunHours.toFixed(1)} h of sun a day, beam dose ${season.openBeamDose.toFixed(1)} ` +
        `and hot sun ${season.openHotLoad.toFixed(1)} MJ/m² a day. Cells ${formatLength(grid.height, units)} above ` +
        `the ground. Hot sun and its grades are an index of this project’s own; plants are judged on the ` +
        `heatwave day at nine points round their crown, by a leaf’s energy balance (README, Accuracy).`,
      columns,
      '',
    ),
  ].join('\n\n')}\n`;
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
