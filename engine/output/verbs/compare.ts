import { compareOptions } from '../../advice/compare/compare.ts';
import type { ComparedChoice, ComparedPlant, CompareResult, PlantStand } from '../../advice/compare/types.ts';
import { hoursWords } from '../../advice/compare/words.ts';
import { sideWords } from '../../advice/why/side.ts';
import type { Plan } from '../../plan/types.ts';
import { formatArea, formatPerArea, formatTemperature, type Units } from '../../plan/units.ts';
import { isRough } from '../../sun/weather.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { planWithOptionsLeft, textsGiven, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

/** Between what is today and what an option makes of it. */
const ARROW = ' → ';

export const compare: Verb = {
  name: 'compare',
  summary: 'today against each option: loads, verdicts, light left, cost, payoff, who sees it',
  plan: 'required',
  common: ['option', 'weather', 'units'],
  options: [
    {
      name: 'try',
      kind: 'text',
      placeholder: 'ID+ID',
      summary: 'an option, or several together, instead of each option alone; may be repeated',
      repeatable: true,
    },
  ],
  examples: ['compare demo', 'compare demo:lane --try B --try B+C --json'],
  run: runCompare,
};

function runCompare(request: VerbRequest): VerbResult {
  const { plan, notes } = planWithOptionsLeft(request);
  const tried = textsGiven(request, 'try');
  const { weather, units, progress } = request;
  const choices = tried.length === 0 ? undefined : tried.map((text) => idsOf(plan, text));
  const outcome = compareOptions(plan, { choices, weather, units, progress });
  if (!outcome.ok) return outcome;
  return {
    ok: true,
    notes,
    json: outcome.value,
    text: compareText(request, plan, outcome.value),
    tellsRough: 'text',
  };
}

/** "A+C" is two options unless one is called so. */
function idsOf(plan: Plan, text: string): string[] {
  return plan.options?.some(({ id }) => id === text) ? [text] : text.split('+').map((id) => id.trim());
}

function compareText(
  { units, weather, page }: VerbRequest,
  plan: Plan,
  { today, choices, ranked, weights }: CompareResult,
): string {
  const { columns } = page;
  const rough = isRough(plan, weather) ? ['The climate is rough: every number below is too.'] : [];
  const head = [
    `${plan.name ?? 'The yard'}: today against ${choices.map(({ name }) => name).join(', ')}.`,
    weights,
    ...rough,
  ].join(' ');
  const summary = table(
    columns,
    ['', 'harm K·h/day', 'spared', '±', 'of it', 'cloth', 'cost', 'work', 'payoff', 'too dark', 'seen'],
    [
      ['today', today.harm.toFixed(1), '', '', '', '', '', '', '', '', ''],
      ...choices.map((choice) => summaryRow(choice, units)),
    ],
    [1, 2, 3, 4, 5, 6, 7, 8],
  );
  const order = `Most spared first: ${ranked.join(', ')}.`;
  const blocks = choices.map((choice) =>
    [
      ...choice.sentences.map((sentence) => wrapped(`- ${sentence}`, columns)),
      plantsTable(choice.plants, units, columns),
    ].join('\n'),
  );
  return `${[wrapped(head, columns, ''), summary, order, ...blocks].join('\n\n')}\n`;
}

function summaryRow(
  { name, harm, spared, sparedPm, sparedShare, clothArea, cost, payoff, tooDark, seenFrom }: ComparedChoice,
  units: Units,
): string[] {
  return [
    name,
    harm.toFixed(1),
    spared.toFixed(1),
    sparedPm.toFixed(1),
    sparedShare === null ? '' : `${Math.round(100 * sparedShare)} %`,
    formatArea(clothArea, units),
    cost.total === null ? 'not known' : `${cost.total.toFixed(0)} ${cost.currency}`,
    clothArea === 0 ? '' : hoursWords(cost),
    payoff.perSquareMetre === null ? '' : formatPerArea(payoff.perSquareMetre, 'K·h', units),
    tooDark.length === 0 ? 'none' : tooDark.join(', '),
    seenFrom
      .filter(({ hidden }) => !hidden)
      .map(({ eye }) => eye)
      .join(', ') || 'by nobody',
  ];
}

/** Before → after; of a plant whose numbers, as they are written, all stay only the name. */
function plantsTable(plants: readonly ComparedPlant[], units: Units, columns: number): string {
  const changed = plants.filter(
    (plant) =>
      plant.before === null ||
      plant.after === null ||
      [plantRow(plant, units), ...sideRows(plant, units)].some(hasChange),
  );
  const rows = changed.flatMap((plant) => [plantRow(plant, units), ...sideRows(plant, units)]);
  const same = plants.filter((plant) => !changed.includes(plant)).map(({ name }) => name);
  const unchanged = same.length === 0 ? '' : `\nUnchanged: ${same.join(', ')}.`;
  const head = ['plant', 'harm K·h/day', 'heatwave K·h', 'peak', 'hot h/day', 'sun h/day', 'light mol/m²', 'verdict'];
  return `${table(columns, head, rows, [1, 2, 3, 4, 5, 6])}${unchanged}`;
}

function hasChange(cells: readonly string[]): boolean {
  return cells.some((cell) => {
    const [before, after] = cell.split(ARROW);
    return after !== undefined && before !== after;
  });
}

function plantRow({ name, before, after }: ComparedPlant, units: Units): string[] {
  const both = (of: (stand: PlantStand) => string) =>
    [before, after].map((stand) => (stand === null ? 'not there' : of(stand))).join(ARROW);
  const number = (value: number | null) => (value === null ? '?' : value.toFixed(1));
  return [
    name,
    both(({ harm }) => number(harm)),
    both(({ scorchDose }) => number(scorchDose)),
    both(({ peak }) => (peak === null ? '?' : formatTemperature(peak, units))),
    both(({ hotHours }) => number(hotHours)),
    both(({ light }) => number(light.sunHours)),
    both(({ light }) => number(light.dailyLight)),
    both(({ verdict }) => verdict ?? 'not judged'),
  ];
}

function sideRows({ before, after }: ComparedPlant, units: Units): string[][] {
  return (after?.sides ?? []).flatMap((side) => {
    const was = before?.sides.find((candidate) => candidate.side === side.side);
    if (!was || was.scorchDose === null || side.scorchDose === null || was.peak === null || side.peak === null)
      return [];
    return [
      [
        `· ${sideWords(side.side)}`,
        '',
        `${was.scorchDose.toFixed(1)}${ARROW}${side.scorchDose.toFixed(1)}`,
        `${formatTemperature(was.peak, units)}${ARROW}${formatTemperature(side.peak, units)}`,
        `${was.hotHours.toFixed(1)}${ARROW}${side.hotHours.toFixed(1)}`,
        '',
        '',
        '',
      ],
    ];
  });
}
