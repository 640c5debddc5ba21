import { costOf } from '../../frame/sheet.ts';
import { currencyOf } from '../../frame/shop/prices.ts';
import type { PlantFeature } from '../../load/verdict/planted.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { middleOf } from '../../plan/edit/edit-feature.ts';
import { headingOf } from '../../plan/geometry/angles.ts';
import { distance } from '../../plan/geometry/shapes.ts';
import type { Cloth, Plan } from '../../plan/types.ts';
import { formatDistance } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { compassWord } from '../../plan/words/compass-word.ts';
import { capital } from '../../plan/words/first-letter.ts';
import { namedInside, nameOf, namesInside } from '../../plan/words/names.ts';
import { drawnAnywhere } from '../../plan/yards/options.ts';
import { clothArea } from '../compare/cost.ts';
import { offWords } from '../words/effect-words.ts';
import { type Effect, effectOn } from '../words/served.ts';
import { hungOf } from './kinds/hung.ts';
import { cautionsOn } from './rules/cautions-on.ts';
import type { LeafTables } from './scoring/leaf-tables.ts';
import { lowSunOn } from './scoring/low-sun.ts';
import type { PlantStanding } from './scoring/plant-states.ts';
import type { Targets } from './search/targets.ts';
import type { ClothKind, LowSun, OptionPlant, SiteOption } from './types.ts';

/** Nearer than this to a plant's middle, cloth hangs "over" it. [m] */
const OVER_WITHIN = 0.3;

export interface OptionContext {
  readonly plan: Plan;
  readonly targets: Targets;
  readonly leaves: LeafTables;
  readonly before: readonly PlantStanding[];
  readonly units: Units;
}

/** One proposal, before it is held against others. */
export type Proposal = Omit<SiteOption, 'roles' | 'added' | 'together'>;

/**
 * Everything about one proposal, exact: the yard is cast anew with it.
 * @param features of `named`
 * @param after how the plants stand under them
 */
export function optionOf(
  context: OptionContext,
  kind: ClothKind | 'several',
  features: readonly Cloth[],
  after: readonly PlantStanding[],
): Proposal {
  const { plan, before, units } = context;
  const changed = before.map((was, k) => optionPlant(plan, was, after[k]));
  const spared = changed.reduce((sum, plant) => sum + plant.spared, 0);
  const effect = effectOn(
    before.map(({ id, worth, state }, k) => ({
      id,
      worth,
      before: state.harm ?? 0,
      after: after[k].state.harm ?? 0,
    })),
  );
  const served = effect.plants.map(({ id }) => id);
  const plants = changed.map((plant) =>
    served.includes(plant.id) ? { ...plant, lowSun: lowSunAfter(context, plant.id, features) } : plant,
  );
  const harm = before.reduce((sum, { worth, state }) => sum + worth * (state.harm ?? 0), 0);
  const area = features.reduce((sum, feature) => sum + clothArea(feature), 0);
  const costs = features.map((feature) => costOf(feature, plan));
  const cost = costs.reduce<number | null>(
    (sum, result) => (sum === null || !result.ok || result.cost.total === null ? null : sum + result.cost.total),
    0,
  );
  const dark = plants.filter(({ tooDark }) => tooDark).map(({ id }) => namedInside(plan, id));
  const notes = [
    ...costs.flatMap((result) => (result.ok ? [] : result.problems.map(({ message }) => message))),
    ...(dark.length > 0 ? [`Too little light would be left for ${dark.join(', ')}.`] : []),
  ];
  const [first] = features;
  return {
    kind,
    features: calledAfter(plan, served, features),
    ...hungOf(first).place(),
    spared,
    sparedShare: harm > 0 ? spared / harm : 0,
    served,
    effect: effect.share,
    area,
    cost,
    currency: currencyOf(plan),
    payoff: { perArea: spared / area, perMoney: cost !== null && cost > 0 ? spared / cost : null },
    plants,
    cautions: [...new Set(features.flatMap(cautionsOn))],
    where: whereOf(context, effect, features, units),
    why: whyThere(context, effect),
    notes,
  };
}

/** Fresh ids. */
export function named(plan: Plan, cloth: readonly Cloth[]): Cloth[] {
  const taken = new Set(drawnAnywhere(plan).map(({ id }) => id));
  return cloth.map((one) => {
    const { word } = hungOf(one);
    let number = 1;
    while (taken.has(`${word}-${number}`)) number++;
    taken.add(`${word}-${number}`);
    return { ...one, id: `${word}-${number}` };
  });
}

/** Named after whom they serve: "Roof for the lemon pot". */
function calledAfter(plan: Plan, served: readonly string[], features: readonly Cloth[]): Cloth[] {
  const whom = served.length > 2 || served.length === 0 ? 'plants' : namesInside(plan, served);
  return features.map((one, k) => {
    const name = `${capital(hungOf(one).word)} for ${whom}`;
    return { ...one, name: features.length > 1 ? `${name}, ${k + 1}` : name };
  });
}

function optionPlant(plan: Plan, was: PlantStanding, is: PlantStanding): OptionPlant {
  const spared = was.worth * ((was.state.harm ?? 0) - (is.state.harm ?? 0));
  return {
    id: was.id,
    name: nameOf(plan, was.id),
    before: was.state,
    after: is.state,
    spared,
    tooDark: is.tooDark && !was.tooDark,
    lowSun: null,
  };
}

function lowSunAfter({ plan, targets, leaves }: OptionContext, id: string, cloth: readonly Cloth[]): LowSun | null {
  const target = targets.plants.findIndex(({ feature }) => feature.id === id);
  return target < 0 ? null : lowSunOn(plan, targets, leaves, target, cloth);
}

/** What it spares whom. */
function whyThere({ plan }: OptionContext, { plants }: Effect): string {
  return plants.length === 0 ? 'It spares no plant anything worth naming.' : `It takes ${offWords(plan, plants)}.`;
}

/** Where it hangs, seen from the plant it spares most. */
function whereOf(
  { plan, targets }: OptionContext,
  { plants: [most] }: Effect,
  features: readonly Cloth[],
  units: Units,
): string {
  const feature = targets.plants.find((plant) => plant.feature.id === most?.id)?.feature;
  return feature ? features.map((one) => whereWords(plan, one, feature, units)).join(' and ') : '';
}

function whereWords(plan: Plan, cloth: Cloth, feature: PlantFeature, units: Units): string {
  const middle = middleOf(feature);
  const { center } = hungOf(cloth).place();
  const away = distance(center, middle);
  const name = namedInside(plan, feature.id);
  if (away < OVER_WITHIN) return `${nearWords(cloth)} ${name}`;
  const bearing = headingOf(middle, center) + upBearingOf(plan);
  return `${formatDistance(away, units)} ${compassWord(bearing)} of ${name}`;
}

/** Of cloth whose middle is that of the plant: upright cloth hangs over nothing. */
function nearWords(cloth: Cloth): string {
  if (cloth.kind === 'canopy') return 'right over';
  return cloth.path.length > 2 ? 'round' : 'close beside';
}
