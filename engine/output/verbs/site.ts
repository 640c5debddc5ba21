import { cheaperFirst } from '../../advice/cheaper-first/cheaper-first.ts';
import { hiddenHeights } from '../../advice/sight/hidden-heights.ts';
import { moreForms } from '../../advice/site/more-forms.ts';
import { siteOf } from '../../advice/site/site.ts';
import type { ClothSize, SiteRequest } from '../../advice/site/types.ts';
import { ROD_MEETS } from '../../frame/strength/grounds.ts';
import { plantFeatures } from '../../load/verdict/planted.ts';
import { changeFeature, featureOf } from '../../plan/edit/edit-feature.ts';
import { refuseOption } from '../../plan/problems.ts';
import type { Feature, Plan } from '../../plan/types.ts';
import { parseLength, parseNumber } from '../../plan/units/typed.ts';
import { hiddenText } from '../text/hidden-text.ts';
import { type SitePage, siteSources, siteText } from '../text/site-text.ts';
import {
  featuresGiven,
  hasFlag,
  numberGiven,
  planOf,
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
  const on: SitePage = { plan: planOf(request), units: request.units, columns: request.page.columns };
  const value = { ...outcome.value, ...more.value, ladder: [...free, ...outcome.value.ladder] };
  return {
    ok: true,
    json: value,
    text: siteText(outcome.value, free, more.value, on),
    sources: siteSources(outcome.value, more.value, on),
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
