import { compareOptions } from '../../advice/compare/compare.ts';
import type { ComparedChoice, ComparedPlant, CompareResult, PlantStand } from '../../advice/compare/types.ts';
import { darkAnyway, effectCell, servedWords } from '../../advice/compare/words.ts';
import { sideWords } from '../../advice/why/side.ts';
import { groundOf } from '../../frame/layout/ground-of.ts';
import { groundPlace } from '../../frame/strength/grounds.ts';
import { hoursWords } from '../../frame/work/work-words.ts';
import type { Plan } from '../../plan/types.ts';
import { type ClockStretch, formatStretch } from '../../plan/units/clock.ts';
import { formatArea, formatPerArea, formatTemperature, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { heatwaveUp } from '../../sun/sun-up.ts';
import { isRough } from '../../sun/weather/weather.ts';
import { table, wrapped } from '../text/plain-text.ts';
import { planWithOptionsLeft, textsGiven, type Verb, type VerbRequest, type VerbResult } from './verb.ts';

/** Between what is today and what an option makes of it. */
const ARROW = ' → ';
/** A plant of whose heat damage less changes is not told of. */
const WORTH_TELLING = 0.02;

export const compare: Verb = {
  name: 'compare',
  summary: 'today against each option: heat damage, verdicts, cost, work, who sees it',
  plan: 'required',
  common: ['option', 'weather', 'units', 'sources'],
  options: [
    {
      name: 'try',
      kind: 'text',
      placeholder: 'ID+ID',
      summary: 'an option, or several together, instead of each option alone; may be repeated',
      repeatable: true,
    },
  ],
  examples: ['compare demo', 'compare demo --try A --sources', 'compare demo:lane --try B --try B+C --json'],
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
    sources: compareSources(request, outcome.value),
    tellsRough: 'text',
  };
}

/** "A+C" is two options unless one is called so. */
function idsOf(plan: Plan, text: string): string[] {
  return plan.options?.some(({ id }) => id === text) ? [text] : text.split('+').map((id) => id.trim());
}

/** The best in a sentence, the options side by side, what is to be said of each, and the plants that it changes. */
function compareText(
  { units, weather, page }: VerbRequest,
  plan: Plan,
  { choices, served, sentence, weights }: CompareResult,
): string {
  const { columns } = page;
  const rough = isRough(plan, weather) ? ' The climate is rough: every number below is too.' : '';
  const { ground, isSaid } = groundOf(plan);
  const up = heatwaveUp(plan, weather);
  const built = choices.some(({ clothArea }) => clothArea > 0);
  const under = [
    servedWords(plan, served),
    ...(built ? [`Prices hold all of it, anchored ${isSaid ? '' : 'as '}${groundPlace(ground)}.`] : []),
    darkAnyway(plan, choices),
  ].filter((line) => line !== '');
  return `${[
    wrapped(sentence + rough, columns, ''),
    table(
      columns,
      ['', 'option', 'less damage', ...(served.length > 1 ? ['in all'] : []), '±', 'cost', 'work'],
      choices.map((choice) => summaryRow(plan, choice, served)),
      served.length > 1 ? [3, 4, 5] : [2, 3, 4],
    ),
    under.map((line) => wrapped(line, columns, '')).join('\n'),
    ...choices.map((choice) => choiceBlock(choice, units, columns, up)),
    wrapped(weights, columns, ''),
  ].join('\n\n')}\n`;
}

function summaryRow(plan: Plan, choice: ComparedChoice, served: readonly string[]): string[] {
  const { options, together, clothArea, cost } = choice;
  return [
    options.join(' + '),
    options.map((id) => plan.options?.find((option) => option.id === id)?.name ?? '').join(' + '),
    effectCell(choice, served),
    ...(served.length > 1 ? [together === null ? '–' : formatShare(together.share)] : []),
    together === null ? '' : formatShare(together.pm),
    cost.total === null ? 'not known' : `${cost.total.toFixed(0)} ${cost.currency}`,
    clothArea === 0 ? '' : hoursWords(cost.hours),
  ];
}

/** @param up from sunrise to sunset of the heatwave day */
function choiceBlock(
  { name, sentences, plants }: ComparedChoice,
  units: Units,
  columns: number,
  up: ClockStretch | null,
): string {
  const rows = plants.filter(hasChange).map((plant) => plantRow(plant, units, up));
  const changed =
    rows.length === 0
      ? []
      : [
          table(columns, ['', 'less damage', 'heatwave day', 'sun at the top', 'too hot then'], rows, [1]).replaceAll(
            /^/gm,
            '  ',
          ),
        ];
  return [`With ${name}`, ...changed, ...sentences.map((sentence) => wrapped(`- ${sentence}`, columns))].join('\n');
}

function hasChange({ before, after }: ComparedPlant): boolean {
  if (before === null || after === null || before.verdict !== after.verdict) return true;
  const was = before.harm ?? 0;
  return was > 0 && Math.abs(1 - (after.harm ?? 0) / was) >= WORTH_TELLING;
}

/** What an option makes of a plant. */
function plantRow({ name, before, after }: ComparedPlant, units: Units, up: ClockStretch | null): string[] {
  const both = (of: (stand: PlantStand) => string): string => {
    const [was, is] = [before, after].map((stand) => (stand === null ? 'not there' : of(stand)));
    return was === is ? was : was + ARROW + is;
  };
  const less = before?.harm && after ? formatShare(1 - (after.harm ?? 0) / before.harm) : '';
  return [
    name,
    less,
    both(({ verdict }) => verdict ?? 'not judged'),
    both(({ light }) => `${light.sunHours.toFixed(0)} h`),
    after === null ? '' : after.when === null ? 'never' : formatStretch(after.when, units, up),
  ];
}

/** The measure behind the shares, side by side of each plant. */
function compareSources({ units, page }: VerbRequest, { today, choices }: CompareResult): string {
  const { columns } = page;
  const rows = choices.map(({ name, harm, spared, sparedPm, sparedShare, clothArea, payoff }) => [
    name,
    harm.toFixed(1),
    spared.toFixed(1),
    sparedPm.toFixed(1),
    sparedShare === null ? '' : formatShare(sparedShare),
    formatArea(clothArea, units),
    payoff.perSquareMetre === null ? '' : formatPerArea(payoff.perSquareMetre, 'K·h', units),
  ]);
  const measure =
    'Heat damage is the leaf’s excess over its limit, summed over a hot day of each month of the season (K·h a day), ' +
    'times what the plant counts; shares above are of the plants that an option serves, here of all that is planted.';
  return [
    wrapped(measure, columns, ''),
    table(
      columns,
      ['', 'K·h/day', 'spared', '±', 'of all', 'cloth', 'payoff'],
      [['today', today.harm.toFixed(1), '', '', '', '', ''], ...rows],
      [1, 2, 3, 4, 5],
    ),
    ...choices.map(({ name, plants }) => `With ${name}, on the heatwave day\n${sidesTable(plants, units, columns)}`),
  ].join('\n\n');
}

function sidesTable(plants: readonly ComparedPlant[], units: Units, columns: number): string {
  const rows = plants.flatMap(({ name, before, after }) =>
    (after?.sides ?? []).flatMap((side): string[][] => {
      const was = before?.sides.find((candidate) => candidate.side === side.side);
      if (!was || was.scorchDose === null || side.scorchDose === null || was.peak === null || side.peak === null)
        return [];
      const told = [
        [was.scorchDose.toFixed(1), side.scorchDose.toFixed(1)],
        [formatTemperature(was.peak, units), formatTemperature(side.peak, units)],
        [was.hotHours.toFixed(1), side.hotHours.toFixed(1)],
      ] as const;
      const changed = told.some(([then, now]) => then !== now);
      return changed ? [[`${name}, ${sideWords(side.side)}`, ...told.map((pair) => pair.join(ARROW))]] : [];
    }),
  );
  return rows.length === 0
    ? 'No side of any plant changes.'
    : table(columns, ['plant and side', 'K·h', 'peak', 'hot sun, h'], rows);
}
