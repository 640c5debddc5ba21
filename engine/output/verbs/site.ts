import { cheaperFirst } from '../../advice/cheaper-first/cheaper-first.ts';
import { type LadderStep, percent } from '../../advice/cheaper-first/step.ts';
import {
  addedWords,
  adviceSentence,
  freeWords,
  moneyWords,
  pricedWords,
  roleWords,
} from '../../advice/site/advice-words.ts';
import type { LivingScreen } from '../../advice/site/living-screen.ts';
import { type MoreForms, moreForms } from '../../advice/site/more-forms.ts';
import { siteOf } from '../../advice/site/site.ts';
import type { ClothSize, SiteOption, SiteRequest, SiteResult } from '../../advice/site/types.ts';
import { countingWords, titleOf } from '../../advice/site/words.ts';
import { standWords } from '../../advice/words/stands.ts';
import { plantFeatures } from '../../load/verdict/planted.ts';
import { hiddenHeights } from '../../advice/sight/hidden-heights.ts';
import { ROD_MEETS } from '../../frame/strength/grounds.ts';
import { cautionsFor, SHORT_CAUTIONS } from '../../frame/work/cautions.ts';
import { changeFeature, featureOf } from '../../plan/edit/edit-feature.ts';
import { listWords } from '../../plan/list-words.ts';
import { namedInside } from '../../plan/names.ts';
import type { Feature, Plan } from '../../plan/types.ts';
import { formatArea, formatLength, formatPerArea, parseLength, parseNumber, type Units } from '../../plan/units.ts';
import { hiddenText } from '../text/hidden-text.ts';
import { table, wrapped } from '../text/plain-text.ts';
import {
  featuresGiven,
  hasFlag,
  numberGiven,
  planOf,
  refuseOption,
  textGiven,
  textsGiven,
  type Verb,
  type VerbRequest,
  type VerbResult,
} from './verb.ts';

/** Where cloth pays. */
export const site: Verb = {
  name: 'site',
  summary: 'where a roof or a screen spares the plants most, and what it pays off',
  plan: 'required',
  common: ['option', 'weather', 'units', 'sources'],
  options: [
    {
      name: 'size',
      kind: 'text',
      placeholder: 'LxW',
      summary: 'size of the roof in metres, as 3x3, again for more, or any: up to 4 × 4 m',
      repeatable: true,
    },
    {
      name: 'height',
      kind: 'text',
      placeholder: 'M',
      summary: 'height of the cloth, again for more, or any',
      repeatable: true,
    },
    {
      name: 'density',
      kind: 'share',
      placeholder: 'SHARE',
      summary: 'share of the light that the cloth blocks, as 0.5 or 50%; again for more; 0.3, 0.5 and 0.7 unless said',
      repeatable: true,
    },
    {
      name: 'count',
      kind: 'number',
      placeholder: 'N',
      summary: 'how many things to build together',
      min: 1,
      minIncluded: true,
      max: 4,
      integer: true,
    },
    { name: 'max-height', kind: 'length', placeholder: 'M', summary: 'no cloth higher than this', min: 0 },
    {
      name: 'budget',
      kind: 'number',
      placeholder: 'MONEY',
      summary: 'no option dearer than this, in the plan’s currency; unless said, the plan’s own budget',
      min: 0,
    },
    {
      name: 'for',
      kind: 'text',
      placeholder: 'ID',
      summary: 'for this plant or bed, also one that needs no shade; again for more; unless said, all that may gain',
      repeatable: true,
    },
    {
      name: 'ground',
      kind: 'text',
      placeholder: 'WORD',
      summary:
        'what a steel rod pushed by hand meets: soft (goes in deep), firm, rock, or paving; unless said, as the plan ' +
        'says',
      choices: ['soft', 'firm', 'rock', 'paving'],
    },
    { name: 'gust', kind: 'number', placeholder: 'M/S', summary: 'strongest gust to anchor for', min: 0, max: 120 },
    {
      name: 'kind',
      kind: 'text',
      placeholder: 'KIND',
      summary: 'roof, drops or screen; again for more; all unless said',
      choices: ['roof', 'drops', 'screen'],
      repeatable: true,
    },
    {
      name: 'hang-from',
      kind: 'text',
      placeholder: 'ID',
      summary:
        'a wall or building that a roof may hang from, two posts fewer; again for more; else those the plan says',
      repeatable: true,
    },
    { name: 'seen', kind: 'flag', summary: 'the cloth may be seen by the onlookers drawn on the plan' },
    {
      name: 'seen-little',
      kind: 'flag',
      summary: 'a little may be seen: from a tenth of an onlooker’s line, or its uppermost 0.2 m',
    },
    {
      name: 'hide-from',
      kind: 'text',
      placeholder: 'ID',
      summary: 'hidden from this eye, whatever it costs; again for more; else from all from which most can be hidden',
      repeatable: true,
    },
    {
      name: 'hidden-heights',
      kind: 'flag',
      summary: 'instead of a search: how tall a thing may stand in every cell unseen by the plan’s onlookers',
    },
    { name: 'eye', kind: 'text', placeholder: 'ID', summary: 'with --hidden-heights: from this one eye' },
    { name: 'dim', kind: 'flag', summary: 'plants may lose the light they need' },
  ],
  examples: [
    'site demo --size 2x2 --height 2.2 --density 0.5 --kind roof',
    'site demo --hidden-heights',
    'site demo:lane --size 3x3 --height 2 --density 0.5 --kind screen --json',
  ],
  run: runSite,
};

/** A plant that is spared less than this share of the whole is not listed. */
const LISTED_FROM = 0.02;

/** Tables are no wider. [characters] */
const WIDEST = 100;

const KINDS = { roof: 'roof', drops: 'roof with drops', screen: 'screen' } as const;

function runSite(request: VerbRequest): VerbResult {
  if (hasFlag(request, 'hidden-heights')) return heightsHidden(request);
  const sizes = sizesGiven(request);
  if (typeof sizes === 'string') return refuseOption('size', sizes);
  const heights = heightsGiven(request);
  if (typeof heights === 'string') return refuseOption('height', heights);
  const densities = (request.values.density ?? []).filter((value): value is number => typeof value === 'number');
  const forGiven = featuresGiven(request, 'for');
  const unknown = forGiven.find((id) => !plantFeatures(planOf(request)).some((plant) => plant.id === id));
  if (unknown !== undefined) return refuseOption('for', `There is no plant or bed "${unknown}" on the plan.`);
  const walls = textsGiven(request, 'hang-from');
  const noWall = walls.find((id) => !mayHold(featureOf(planOf(request), id)));
  if (noWall !== undefined) return refuseOption('hang-from', `There is no wall or building "${noWall}" on the plan.`);
  const plan = holding(planOf(request), walls);
  const kinds = textsGiven(request, 'kind').map((kind) => KINDS[kind as keyof typeof KINDS]);
  const asked: SiteRequest = {
    sizes,
    heights,
    densities: densities.length > 0 ? densities : undefined,
    kinds: kinds.length > 0 ? kinds : undefined,
    count: numberGiven(request, 'count'),
    maxHeight: numberGiven(request, 'max-height'),
    budget: numberGiven(request, 'budget'),
    forPlants: forGiven.length > 0 ? forGiven : undefined,
    ground: textsGiven(request, 'ground').map((word) => ROD_MEETS[word as keyof typeof ROD_MEETS])[0],
    gust: numberGiven(request, 'gust'),
    hideFrom: hideFromGiven(request),
    seenLittle: hasFlag(request, 'seen-little'),
    keepLight: !hasFlag(request, 'dim'),
    weather: request.weather,
    units: request.units,
  };
  const outcome = siteOf(plan, asked, (done, what) => request.progress(0.7 * done, what));
  if (!outcome.ok) return outcome;
  const cheaper = cheaperFirst(planOf(request), { weather: request.weather, units: request.units });
  if (!cheaper.ok) return cheaper;
  const free = cheaper.value.steps;
  const moves = free.flatMap((step) => step.moves ?? []);
  const more = moreForms(plan, asked, moves, outcome.value, (done, what) => request.progress(0.7 + 0.3 * done, what));
  if (!more.ok) return more;
  const value = { ...outcome.value, ...more.value, ladder: [...free, ...outcome.value.ladder] };
  return {
    ok: true,
    json: value,
    text: siteText(outcome.value, free, more.value, request),
    sources: sourcesText(outcome.value, more.value, request),
  };
}

function mayHold(feature: Feature | undefined): boolean {
  return feature?.kind === 'wall' || feature?.kind === 'building';
}

/** The plan with walls that cloth may hang from. */
function holding(plan: Plan, ids: readonly string[]): Plan {
  return ids.reduce((all, id) => changeFeature(all, id, { holdsCloth: true }), plan);
}

function heightsHidden(request: VerbRequest): VerbResult {
  const plan = planOf(request);
  const eye = textGiven(request, 'eye') ?? null;
  if (eye !== null && featureOf(plan, eye)?.kind !== 'eye')
    return refuseOption('eye', `There is no onlooker "${eye}" on the plan.`);
  const value = hiddenHeights(plan, eye);
  // JSON knows no infinity: null is hidden at any height.
  const heights = Array.from(value.heights, (height) => (height === Infinity ? null : height));
  const tops = value.tops.map((top) => ({ ...top, hidden: top.hidden === Infinity ? null : top.hidden }));
  return {
    ok: true,
    json: { ...value, heights, tops },
    text: hiddenText(plan, value, request.units, request.page.columns),
  };
}

function hideFromGiven(request: VerbRequest): readonly string[] | undefined {
  if (hasFlag(request, 'seen')) return [];
  const ids = textsGiven(request, 'hide-from');
  return ids.length > 0 ? ids : undefined;
}

function sizesGiven(request: VerbRequest): ClothSize[] | undefined | string {
  const typed = textsGiven(request, 'size');
  if (typed.length === 0 || typed.includes('any')) return undefined;
  const sizes: ClothSize[] = [];
  for (const text of typed) {
    const [length, width, ...more] = text.split(/[x×]/i).map((part) => parseLength(part, 'metric'));
    if (length === null || width === null || width === undefined || more.length > 0)
      return `--size wants length and width in metres with an x between, as 3x2.5, or any; got "${text}".`;
    sizes.push({ length, width });
  }
  return sizes;
}

function heightsGiven(request: VerbRequest): number[] | undefined | string {
  const typed = textsGiven(request, 'height');
  if (typed.length === 0 || textGiven(request, 'height') === 'any') return undefined;
  const heights: number[] = [];
  for (const text of typed) {
    const height = parseLength(text, 'metric') ?? parseNumber(text);
    if (height === null) return `--height wants a length, as 2.2, or any; got "${text}".`;
    heights.push(height);
  }
  return heights;
}

function siteText(result: SiteResult, free: readonly LadderStep[], more: MoreForms, request: VerbRequest): string {
  const { units, page } = request;
  const columns = Math.min(page.columns, WIDEST);
  const line = (text: string) => wrapped(text, columns);
  const { cost, gust, ...footing } = pricedWords(result, units);
  const blocks = [
    line(adviceSentence(planOf(request), result, free)),
    ...(free.length > 0
      ? [`First, without cloth, in the whole yard\n${free.map((step) => line(`- ${freeWords(step)}`)).join('\n')}`]
      : []),
  ];
  if (result.options.length > 0) {
    blocks.push(
      `Then cloth\n${answersTable(result, columns, units)}\n${line(servedWords(planOf(request), result))}`,
      result.options.map((option, k) => optionText(option, k, planOf(request), columns)).join('\n'),
      [...(cost === '' ? [] : [cost]), footing.ground, gust].map(line).join('\n'),
    );
  }
  blocks.push(...moreBlocks(more, columns));
  const told = [
    ...countingWords(planOf(request), result),
    ...result.rules.filter(({ rule }) => rule !== 'density').map(({ sentence }) => sentence),
  ];
  if (told.length > 0) blocks.push(told.map(line).join('\n'));
  const care = [
    ...(result.options.length > 0 ? [SHORT_CAUTIONS.wind] : []),
    ...(result.options.length + free.length > 0 ? [SHORT_CAUTIONS.heat] : []),
    ...(free.some(({ id }) => id === 'clay') ? [SHORT_CAUTIONS.spray] : []),
    ...(planOf(request).cautions ?? []).map(({ text }) => text),
  ];
  if (care.length > 0) blocks.push(line(care.join(' ')));
  return `${blocks.join('\n\n')}\n`;
}

/** Answers that are no single cloth. */
function moreBlocks({ together, living }: MoreForms, columns: number): string[] {
  return [
    ...(together === null ? [] : [wrapped(together.sentence, columns)]),
    ...(living === null ? [] : [livingBlock(living, columns)]),
  ];
}

function livingBlock({ sentence, climbers, price, notes }: LivingScreen, columns: number): string {
  const rows = climbers.map(({ name, summers }) => [name, ...summers.map(({ effect }) => percent(effect))]);
  const money =
    price === null ? '' : ` Roughly ${price.from} to ${price.to} ${price.currency}, trellis, posts and plants.`;
  return [
    wrapped(`${sentence}${money}`, columns),
    table(columns, ['damage off, summer by summer', '1st', '2nd', '3rd', '4th'], rows, [1, 2, 3, 4]),
    ...notes.map((note) => wrapped(note, columns)),
  ].join('\n');
}

/** What each climber takes of the light and drinks, and where that is from. */
function livingSources({ climbers, sources }: LivingScreen): string[] {
  const each = climbers.map(
    ({ name, leaves, water, summers }) =>
      `${name}: ${leaves}; ${water} litres a week for each plant; it stops ` +
      `${summers.map(({ stops }) => percent(stops)).join(', ')} of the light, summer by summer.`,
  );
  return [...each, sources];
}

/** Whose damage the table tells of. */
function servedWords(plan: Plan, { served }: SiteResult): string {
  const together = served.length > 1 ? ', together' : '';
  return `Damage off: of today’s heat damage to ${listWords(served.map((id) => namedInside(plan, id)))}${together}.`;
}

function answersTable(result: SiteResult, columns: number, units: Units): string {
  const { options } = result;
  return table(
    columns,
    ['', 'what', 'cloth', 'damage off', 'cost', 'adds'],
    options.map((option, k) => [
      String(k + 1),
      `${roleWords(option.roles)}: ${titleOf(option, units)}`,
      percent(option.density),
      percent(option.effect),
      moneyWords(option.cost, option.currency),
      addedWords(option, options),
    ]),
    [2, 3, 4],
  );
}

/** How the plants stand then, and what sun still comes. */
function optionText(option: SiteOption, index: number, plan: Plan, columns: number): string {
  const stand = option.plants
    .filter(({ spared, tooDark }) => spared >= LISTED_FROM * option.spared || tooDark)
    .map(({ id, before, after }) => standWords(namedInside(plan, id), before, after));
  const [low] = option.plants.flatMap(({ lowSun }) => (lowSun ? [lowSun.sentence] : []));
  return wrapped(
    [`${index + 1}, ${option.where}: ${stand.join('; ')}.`, ...(low === undefined ? [] : [low]), ...option.notes].join(
      ' ',
    ),
    columns,
  );
}

/** What only those who want to check it need. */
function sourcesText(result: SiteResult, { living }: MoreForms, request: VerbRequest): string {
  const { units, page } = request;
  const columns = Math.min(page.columns, WIDEST);
  const rows = result.options.map((option, k) => [
    String(k + 1),
    option.center.map((each) => formatLength(each, units)).join(', '),
    `${option.turn.toFixed(0)}°`,
    formatArea(option.area, units),
    `${option.spared.toFixed(1)} K·h`,
    formatPerArea(option.payoff.perArea, 'K·h', units),
  ]);
  const cautions = cautionsFor(['wind', 'spray', 'heat'], planOf(request).cautions);
  return [
    table(columns, ['', 'middle: x, y', 'turned', 'cloth', 'spared a day', 'payoff'], rows, [2, 3, 4, 5]),
    ...[...result.notes, searchedWords(result), ...(living === null ? [] : livingSources(living))].map((text) =>
      wrapped(text, columns),
    ),
    `Take care\n${cautions.map(({ text }) => wrapped(`- ${text}`, columns)).join('\n')}`,
  ].join('\n\n');
}

function searchedWords({ tried, bound, gap, proven }: SiteResult): string {
  const count = (value: number) => value.toLocaleString('en');
  const end = proven
    ? 'none of them spares more than the first'
    : `the best may be ${(100 * gap).toFixed(1)} % better at most`;
  const between =
    tried.between > 0
      ? `Between these steps ${count(tried.between)} more places were tried round the best: what is found ` +
        `there is not proven the best. `
      : '';
  return (
    `Searched ${count(tried.candidates)} places in steps of ${tried.step} m and ${tried.turns} turns: ` +
    `${count(tried.forbidden)} forbidden, ${count(tried.scored)} scored in full; ${end} ` +
    `(bound ${bound.toFixed(1)} K·h a day). ${between}` +
    `Harm is the leaf’s excess over its limit, summed over a hot day of ` +
    `each month; beds were searched on samples of their cells, off by ${tried.bedSampleError.toFixed(2)} K·h at most.`
  );
}
