import { cheaperFirst } from '../../advice/cheaper-first/cheaper-first.ts';
import { siteOf } from '../../advice/site/site.ts';
import type { ClothSize, SiteOption, SiteResult } from '../../advice/site/types.ts';
import { hiddenHeights } from '../../advice/sight/hidden-heights.ts';
import { cautionsFor } from '../../frame/work/cautions.ts';
import { featureOf } from '../../plan/edit/edit-feature.ts';
import { formatArea, formatLength, formatPerArea, parseLength, parseNumber, type Units } from '../../plan/units.ts';
import { hiddenText } from '../text/hidden-text.ts';
import { table, wrapped } from '../text/plain-text.ts';
import {
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
  common: ['option', 'weather', 'units'],
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
      summary: 'no option dearer than this, in the plan’s currency',
      min: 0,
    },
    {
      name: 'kind',
      kind: 'text',
      placeholder: 'KIND',
      summary: 'roof, drops or screen; again for more; all unless said',
      choices: ['roof', 'drops', 'screen'],
      repeatable: true,
    },
    { name: 'seen', kind: 'flag', summary: 'the cloth may be seen by the onlookers drawn on the plan' },
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
    { name: 'dim', kind: 'flag', summary: 'plants may fall below their range of light' },
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

const KINDS = { roof: 'roof', drops: 'roof with drops', screen: 'screen' } as const;

function runSite(request: VerbRequest): VerbResult {
  if (hasFlag(request, 'hidden-heights')) return heightsHidden(request);
  const sizes = sizesGiven(request);
  if (typeof sizes === 'string') return refuseOption('size', sizes);
  const heights = heightsGiven(request);
  if (typeof heights === 'string') return refuseOption('height', heights);
  const densities = (request.values.density ?? []).filter((value): value is number => typeof value === 'number');
  const kinds = textsGiven(request, 'kind').map((kind) => KINDS[kind as keyof typeof KINDS]);
  const outcome = siteOf(
    planOf(request),
    {
      sizes,
      heights,
      densities: densities.length > 0 ? densities : undefined,
      kinds: kinds.length > 0 ? kinds : undefined,
      count: numberGiven(request, 'count'),
      maxHeight: numberGiven(request, 'max-height'),
      budget: numberGiven(request, 'budget'),
      hideFrom: hideFromGiven(request),
      keepLight: !hasFlag(request, 'dim'),
      weather: request.weather,
      units: request.units,
    },
    (done, what) => request.progress(done, what),
  );
  if (!outcome.ok) return outcome;
  const cheaper = cheaperFirst(planOf(request), { weather: request.weather, units: request.units });
  if (!cheaper.ok) return cheaper;
  const value = { ...outcome.value, ladder: [...cheaper.value.steps, ...outcome.value.ladder] };
  return { ok: true, json: value, text: siteText(value, request), notes: value.notes };
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

function siteText(result: SiteResult, request: VerbRequest): string {
  const { units, page } = request;
  const { columns } = page;
  const blocks = [wrapped(result.sentence, columns)];
  if (result.options.length > 0) {
    const head = ['', 'what', 'middle: x, y', 'size', 'height', 'cloth', 'spares', 'of all', 'area', 'cost', 'payoff'];
    blocks.push(
      table(
        columns,
        head,
        result.options.map((option, k) => rowOf(option, k, units)),
        [4, 5, 6, 7, 8, 9, 10],
      ),
    );
    blocks.push(result.options.map((option, k) => optionText(option, k, columns)).join('\n\n'));
  }
  if (result.rules.length > 0) blocks.push(result.rules.map(({ sentence }) => wrapped(sentence, columns)).join('\n'));
  if (result.ladder.length > 0)
    blocks.push(
      `Cheaper first\n${result.ladder
        .map(({ name, effect, sentence }) => wrapped(`- ${name}: ${effect}. ${sentence}`, columns))
        .join('\n')}`,
    );
  const cautions = cautionsFor(['wind', 'spray', 'heat'], planOf(request).cautions).map(({ text }) =>
    wrapped(`- ${text}`, columns),
  );
  blocks.push(wrapped(searchedWords(result), columns), `Take care\n${cautions.join('\n')}`);
  return `${blocks.join('\n\n')}\n`;
}

function rowOf(option: SiteOption, index: number, units: Units): string[] {
  const drops = option.drops.map(({ side, depth }) => `${side} ${formatLength(depth, units)}`).join(', ');
  return [
    String(index + 1),
    drops === '' ? option.kind : `roof, drops ${drops}`,
    option.center.map((each) => formatLength(each, units)).join(', '),
    `${formatLength(option.length, units)}${option.width > 0 ? ` × ${formatLength(option.width, units)}` : ''}, ` +
      `turned ${option.turn.toFixed(0)}°`,
    formatLength(option.height, units),
    `${(100 * option.density).toFixed(0)} %`,
    `${option.spared.toFixed(1)} K·h`,
    `${(100 * option.sparedShare).toFixed(0)} %`,
    formatArea(option.area, units),
    option.cost === null ? 'no price' : `${option.cost.toFixed(0)} ${option.currency}`,
    formatPerArea(option.payoff.perArea, 'K·h', units),
  ];
}

function optionText(option: SiteOption, index: number, columns: number): string {
  const plants = option.plants
    .filter(({ spared, tooDark }) => Math.abs(spared) >= LISTED_FROM * option.spared || tooDark)
    .map(({ name, before, after, tooDark }) => {
      const dark = tooDark ? ', too dark' : '';
      const light = `light ${before.topLight.toFixed(0)} to ${after.topLight.toFixed(0)} mol/m²${dark}`;
      return (
        `${name}: harm ${(before.harm ?? 0).toFixed(1)} to ${(after.harm ?? 0).toFixed(1)} K·h, hot hours ` +
        `${before.hotHours.toFixed(1)} to ${after.hotHours.toFixed(1)} h, ${light} a day.`
      );
    });
  const low = option.plants.flatMap(({ lowSun }) => (lowSun ? [lowSun.sentence] : []));
  return [
    wrapped(`${index + 1}. ${option.why}`, columns),
    ...[...plants, ...low, ...option.notes].map((line) => wrapped(`   ${line}`, columns)),
  ].join('\n');
}

function searchedWords({ tried, bound, gap, proven }: SiteResult): string {
  const count = (value: number) => value.toLocaleString('en');
  const end = proven
    ? 'none of them spares more than the first'
    : `the best may be ${(100 * gap).toFixed(1)} % better at most`;
  return (
    `Searched ${count(tried.candidates)} places in steps of ${tried.step} m and ${tried.turns} turns: ` +
    `${count(tried.forbidden)} forbidden, ${count(tried.scored)} scored in full; ${end} ` +
    `(bound ${bound.toFixed(1)} K·h a day). Harm is the leaf’s excess over its limit, summed over a hot day of ` +
    `each month; beds were searched on samples of their cells, off by ${tried.bedSampleError.toFixed(2)} K·h at most.`
  );
}
