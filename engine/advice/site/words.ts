import { currencyOf } from '../../frame/shop/prices.ts';
import { engineerFrom } from '../../frame/work/cautions.ts';
import { NO_HARM } from '../../load/verdict/harm-of.ts';
import { burnsByFruit } from '../../load/verdict/planted.ts';
import { middleOf } from '../../plan/edit/edit-feature.ts';
import { canopyRing } from '../../plan/geometry/cloth-shapes.ts';
import { pointInRing } from '../../plan/geometry/shapes.ts';
import type { Cloth, Plan } from '../../plan/types.ts';
import { formatLength, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { uncapital } from '../../plan/words/first-letter.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';
import { spokenCount } from '../../plan/words/spoken.ts';
import { seenWords } from '../sight/words.ts';
import type { Standing } from '../words/stands.ts';
import { hungOf, kindOf, legsOf } from './kinds/hung.ts';
import { MOST_DROPS } from './kinds/roof-with-drops.ts';
import type { LaidOut } from './lay-out.ts';
import type { Proposal } from './option.ts';
import type { Standings } from './search/contest.ts';
import type {
  ClothCaution,
  OptionPlant,
  PlantState,
  RulePrice,
  SiteOption,
  SiteResult,
  SiteRule,
  Uncounted,
} from './types.ts';

/** A rule that costs less than this share is not spoken of; one that costs more than the other costs all. */
const PRICED_FROM = 0.01;
const ALL = 0.995;

/** What each rule takes away that kept something better out. */
export function rulePrices(laidOut: LaidOut, { best, without }: Standings): RulePrice[] {
  return without.flatMap(([rule, { cloth, spared }]) => {
    const cost = 1 - best / spared;
    if (cost < PRICED_FROM) return [];
    // What is seen a little may be the best of all that is seen.
    if (rule === 'glimpsed' && without.some(([other, best]) => other === 'hidden' && best.spared === spared)) return [];
    const takes =
      cost > ALL
        ? 'rules out all cloth that would help here'
        : `costs ${formatShare(cost)} of what cloth could do here`;
    const words = `${ruleWords(laidOut, rule)} ${takes}`;
    return [{ rule, spared, cost, sentence: `${words}${isSight(rule) ? whoWouldSee(laidOut, cloth) : ''}.` }];
  });
}

function isSight(rule: SiteRule): boolean {
  return rule === 'hidden' || rule === 'glimpsed';
}

/** Who would see how much of the cloth that spares more. */
function whoWouldSee({ plan, hiding, units }: LaidOut, cloth: Cloth): string {
  const seen = hiding.seenFrom(cloth).filter(({ hidden }) => !hidden);
  return `: what spares more is seen from: ${seen.map((one) => seenWords(plan, one, units)).join('; ')}`;
}

function ruleWords({ plan, hiding, units, cap }: LaidOut, rule: SiteRule): string {
  switch (rule) {
    case 'hidden':
      return `Hiding it from ${hiding.from.map((id) => namedInside(plan, id)).join(', ')}`;
    case 'glimpsed':
      return 'Hiding the last of it';
    case 'height':
      return `Staying no higher than ${formatLength(cap, units)}`;
    case 'setback':
      return `Keeping ${formatLength(plan.site.rules?.setback ?? 0, units)} away from the property line`;
    case 'keepout':
      return 'Keeping clear of the ground where no cloth may hang';
    case 'light':
      return 'Leaving every plant its light';
    case 'density':
      return 'Suiting every plant under it';
    case 'budget':
      return 'Staying within the budget';
  }
}

/** From whom nothing can be hidden here, so that it binds nothing. */
export function unhiddenWords({ plan, hiding }: LaidOut): string[] {
  return hiding.unbound.map(
    ({ id, bare }) =>
      `From ${namedInside(plan, id)} whatever stands on ${formatShare(bare)} of the ground is seen: nothing was ` +
      `hidden from there.`,
  );
}

/** What was not tried. */
export function notesOf({
  request: { maxDrops = MOST_DROPS },
  lattice: { kinds, turns, roof, drops },
}: LaidOut): string[] {
  const fewer =
    drops.turns.length < turns.length ||
    drops.sizes.length < roof.sizes.length ||
    drops.heights.length < roof.heights.length ||
    drops.maxDrops < maxDrops;
  return fewer && kinds.includes('roof with drops')
    ? ['Roofs with drops were tried in fewer forms: ask for one size and height to try them all.']
    : [];
}

/** What it is and how large, with what our own cautions have against it. */
export function titleOf({ features, cautions, ...option }: TitledOption, units: Units): string {
  const what =
    option.kind === 'several'
      ? features
          .map((feature) => whatWords({ ...hungOf(feature).place(), kind: kindOf(feature) }, [feature], units))
          .join(' and ')
      : `${whatWords(option, features, units)}${hangsFromWall(features) ? ', its back hung from the wall' : ''}`;
  return [what, ...cautionWords(cautions, units)].join(', ');
}

function hangsFromWall(features: readonly Cloth[]): boolean {
  return features.some((cloth) => cloth.kind === 'canopy' && cloth.onWall === true);
}

function whatWords({ kind, length, width, height, drops }: Sized, [cloth]: readonly Cloth[], units: Units): string {
  const metres = (value: number) => formatLength(value, units);
  if (kind === 'screen') {
    const legs = cloth?.kind === 'screen' ? legsOf(cloth) : [length];
    const name = legs.length > 1 ? 'Screen with a corner,' : 'Screen';
    return `${name} ${legs.map(metres).join(' and ')} long, ${metres(height)} high`;
  }
  const depths = drops.map(({ depth }) => metres(depth));
  const hung = [...new Set(depths)]
    .map((depth) => ({ depth, many: depths.filter((other) => other === depth).length }))
    .map(({ depth, many }) => (many === 1 ? `, a drop of ${depth}` : `, ${spokenCount(many)} drops of ${depth}`))
    .join('');
  return `Roof ${metres(length)} × ${metres(width)}, ${metres(height)} high${hung}`;
}

type Sized = Pick<Proposal, 'kind' | 'length' | 'width' | 'height' | 'drops'>;
type TitledOption = Sized & Pick<Proposal, 'features' | 'cautions'>;

/** What our own cautions have against cloth, for its title. */
function cautionWords(cautions: readonly ClothCaution[], units: Units): string[] {
  const { area, height } = engineerFrom(units);
  const words: Readonly<Record<ClothCaution, string>> = {
    large: `over ${area}: ask an engineer first`,
    low: 'under head height',
    tall: `posts over ${height}: ask an engineer first`,
  };
  return cautions.map((caution) => words[caution]);
}

/** The answer in a sentence or two. @param besides what is to be said beside it */
export function sentenceOf({ units }: LaidOut, found: Found, besides: string): string {
  const [first] = found.options;
  if (first === undefined) return besides;
  const cost = first.cost === null ? '' : `, for about ${first.cost.toFixed(0)} ${first.currency}`;
  const title = titleOf(first, units);
  const told = `${first.where}${cost}. ${first.why}`;
  // What is not worth building is told after that, as what it is.
  return isNotWorthBuilding(found)
    ? `${besides} The best for its money: ${uncapital(title)}, ${told}`
    : [`${title}, ${told}`, besides].filter(Boolean).join(' ');
}

/** What a search came to, for as much as its sentence hangs on it. */
type Found = Pick<SiteResult, 'harm' | 'options'>;

/** Whether cloth would spare something, and yet is not worth building. */
export function isNotWorthBuilding({ harm, options }: Found): boolean {
  return (
    harm > NO_HARM &&
    options.length > 0 &&
    options[0].spared > 0 &&
    options.some(({ added }) => added.to === null && !added.isWorth)
  );
}

/** As `SiteResult`. */
export function besidesOf(
  { plan, request, cap, hiding }: LaidOut,
  found: Pick<SiteResult, 'harm' | 'options' | 'uncounted' | 'rules'>,
): string {
  const { harm, options, uncounted, rules } = found;
  if (harm <= NO_HARM) return noNeedWords(plan, uncounted);
  const [first] = options;
  if (!first || first.spared <= 0) {
    const ruledOut = rules.filter(({ cost }) => cost > ALL);
    if (ruledOut.some(({ rule }) => rule === 'budget')) return purseWords(plan, request.budget ?? 0);
    // Where each place breaks two of them, no single one rules the best out.
    const isRuled = ruledOut.length > 0 || request.budget !== undefined || hiding.from.length > 0 || cap < Infinity;
    return `No cloth that may stand here${isRuled ? ' under your rules' : ''} spares the plants anything.`;
  }
  if (request.budget !== undefined && first.cost === null)
    return `The budget could not be kept: no prices are known in ${currencyOf(plan)}. Type those of your shop.`;
  if (!isNotWorthBuilding(found)) return '';
  const burns = options.some(({ plants }) => plants.some(({ before }) => before.verdict === 'will burn'));
  return `Cloth is not worth building${burns ? '' : `: ${insteadOfCloth(plan, options)}`}.`;
}

/** What is enough where nothing burns even if watered: fruit is not cooled by water. */
function insteadOfCloth(plan: Plan, options: readonly SiteOption[]): string {
  return options.some(({ served }) => served.some((id) => burnsByFruit(plan, id)))
    ? 'leave every leaf that hangs over the fruit'
    : 'mulch and water do here';
}

/** Where money alone stands between the plants and a frame. */
function purseWords(plan: Plan, budget: number): string {
  return (
    `No cloth that may stand here on a frame of its own is to be had for ${budget.toFixed(0)} ` +
    `${currencyOf(plan)}: on the hottest days hang a sheet or a bare piece of cloth over the plants that burn.`
  );
}

/** Why no cloth is sought. */
function noNeedWords(plan: Plan, uncounted: readonly Uncounted[]): string {
  const named = (because: Uncounted['because']) =>
    uncounted.filter((plant) => plant.because === because).map(({ id }) => namedInside(plan, id));
  const [noNeed, dark] = [named('no shade needed'), named('too dark')];
  const { does } = agreeingWith(...noNeed);
  if (noNeed.length + dark.length === 0) return 'Nothing to shade: no plant is harmed.';
  return [
    'No cloth:',
    [
      ...(noNeed.length > 0 ? [`${listWords(noNeed)} ${does('need')} no shade`] : []),
      ...(dark.length > 0 ? [`for ${listWords(dark)} it is too dark already`] : []),
    ].join('; ') + '.',
  ].join(' ');
}

/** A plant harmed less than this is not missed among those that cloth is for. [K·h/day] */
const MISSED_FROM = 0.5;

/**
 * Which plants were left out of the search and why, or count all the same; and for whom that burns nothing was found.
 * @param helped ids of plants that pots carried, or other forms, are for
 */
export function countingWords(
  plan: Plan,
  { uncounted, countedAllTheSame, options: [first], served }: CountingResult,
  helped: readonly string[],
): string[] {
  const names = (plants: readonly Uncounted[], because: Uncounted['because']) =>
    listWords(plants.filter((plant) => plant.because === because).map(({ id }) => namedInside(plan, id)));
  const told = (plants: readonly Uncounted[], lead: string) =>
    (
      [
        ['no shade needed', 'no shade needed'],
        ['too dark', 'too dark already'],
      ] as const
    ).flatMap(([because, words]) => {
      const who = names(plants, because);
      return who === '' ? [] : [`${lead} ${who} (${words}).`];
    });
  const cared = new Set([...served, ...helped, ...uncounted.map(({ id }) => id)]);
  const missed = (first?.plants ?? []).filter(({ id, before }) => !cared.has(id) && isHarmed(before));
  const whom = (is: (plant: OptionPlant) => boolean) => missed.filter(is).map(({ id }) => namedInside(plan, id));
  const watered = whom(({ id, before }) => waterDecides(plan, id, before));
  const [roofed, burning] = [true, false].map((is) =>
    whom(({ id, before }) => !waterDecides(plan, id, before) && hasRoof(plan, id) === is),
  );
  return [
    ...(burning.length === 0
      ? []
      : [`None of this is for ${listWords(burning)}: search for ${agreeingWith(...burning).them} alone too.`]),
    ...(roofed.length === 0
      ? []
      : [`None of this is for ${listWords(roofed)}: a roof hangs there already, and the verdict says what it lacks.`]),
    ...(watered.length === 0 ? [] : [`None of this is for ${listWords(watered)}: there water decides.`]),
    ...told(uncounted, 'Not sought for'),
    ...told(countedAllTheSame, 'Sought, because you say so, for'),
  ];
}

/** Whether cloth is drawn over its middle. */
function hasRoof({ features }: Plan, id: string): boolean {
  const at = features.find((plant) => plant.id === id);
  return (
    at !== undefined &&
    features.some((feature) => feature.kind === 'canopy' && pointInRing(middleOf(at), canopyRing(feature)))
  );
}

type CountingResult = Pick<SiteResult, 'uncounted' | 'countedAllTheSame' | 'options' | 'served'>;

/** Whether a plant gets by with water: a thirsty leaf burns, a watered one does not; fruit is not cooled by it. */
export function waterDecides(plan: Plan, id: string, { verdict }: PlantState): boolean {
  return verdict === 'at risk' && !burnsByFruit(plan, id);
}

function isHarmed({ verdict, harm }: PlantState): boolean {
  return (verdict === 'will burn' || verdict === 'at risk') && (harm ?? 0) >= MISSED_FROM;
}

/** How the plants that an option is for stand under it, and those that it makes too dark. */
export function standsUnder({ plants, served }: SiteOption): Standing[] {
  return plants
    .filter(({ id, tooDark }) => served.includes(id) || tooDark)
    .map(({ id, before, after }) => ({ id, before: before.verdict, after: after.verdict }));
}
