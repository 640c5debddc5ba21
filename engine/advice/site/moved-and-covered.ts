import { worthOf } from '../../plan/defaults.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import { formatShare } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { uncapital } from '../../plan/words/first-letter.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside, namesInside } from '../../plan/words/names.ts';
import type { Progress } from './progress.ts';
import { siteOf } from './site.ts';
import type { ClothSize, SiteOption, SiteRequest, SiteResult } from './types.ts';
import { titleOf } from './words.ts';

/** Where a pot goes. */
export interface PotMove {
  readonly plant: string;
  readonly at: PlanPoint;
}

/** Pots carried to better places, and a small cloth for a plant that cannot go: one answer. */
export interface MovedAndCovered {
  readonly moves: readonly PotMove[];
  /** As it stands in the yard with the pots moved. */
  readonly option: SiteOption;
  /** Ids of the plants moved and covered. */
  readonly helped: readonly string[];
  /** Of the harm of the plants moved and covered, 0 to 1. */
  readonly effect: number;
  /** In the plan's currency; carrying is free. */
  readonly cost: number | null;
  readonly sentence: string;
}

/** Cloth beside moved pots is small: no side is longer, where the person lets the search choose. [m] */
const SMALL = 2;
/** Coarser than the search's own: few forms, quickly tried. [°] */
const TURN_STEP = 45;
/** A plant harmed less than this needs no cloth of its own. [K·h/day] */
const HARMED = 0.5;

/**
 * @param moves what the cheaper cures would carry
 * @param found the search in the yard as it is
 * @returns `null` where nothing else is harmed, where no small cloth is worth building, or where one of the answers
 *   found does as much for no more money
 */
export function movedAndCovered(
  plan: Plan,
  request: SiteRequest,
  moves: readonly PotMove[],
  found: SiteResult,
  progress: Progress = () => undefined,
): MovedAndCovered | null {
  const [first] = found.options;
  if (first === undefined || moves.length === 0 || (request.count ?? 1) > 1) return null;
  const uncounted = new Set(found.uncounted.map(({ id }) => id));
  const carried = new Set(moves.map(({ plant }) => plant));
  const others = first.plants.filter(
    ({ id, before }) => !uncounted.has(id) && !carried.has(id) && (before.harm ?? 0) > HARMED,
  );
  if (others.length === 0) return null;
  const moved = siteOf(withMoved(plan, moves), smaller(request, others, found), progress);
  const [option] = moved.ok ? moved.value.options : [];
  if (option === undefined || !option.added.isWorth) return null;
  const covered = moved.ok ? moved.value.served : [];
  const helped = [...carried, ...covered.filter((id) => !carried.has(id))];
  const worths = new Map(plan.features.map((feature) => [feature.id, worthOf(feature)]));
  const sum = (of: (id: string) => number | null | undefined): number =>
    helped.reduce((all, id) => all + (worths.get(id) ?? 0) * (of(id) ?? 0), 0);
  const before = sum((id) => first.plants.find((plant) => plant.id === id)?.before.harm);
  const after = sum((id) => option.plants.find((plant) => plant.id === id)?.after.harm);
  const spared = before - after;
  const beaten = found.options.some(
    (other) => other.spared >= spared && (other.cost ?? 0) <= (option.cost ?? Infinity),
  );
  if (before <= 0 || beaten) return null;
  const effect = spared / before;
  return {
    moves,
    option,
    helped,
    effect,
    cost: option.cost,
    sentence: togetherSentence(plan, request, moves, option, helped, effect),
  };
}

function withMoved(plan: Plan, moves: readonly PotMove[]): Plan {
  const places = new Map(moves.map(({ plant, at }) => [plant, at]));
  return {
    ...plan,
    features: plan.features.map((feature) => {
      const at = places.get(feature.id);
      return at !== undefined && feature.kind === 'plant' ? { ...feature, at } : feature;
    }),
  };
}

/** The request in a few small forms, for the plants that stay where they are. */
function smaller(request: SiteRequest, others: readonly { readonly id: string }[], found: SiteResult): SiteRequest {
  const sizes = found.tried.sizes.filter(({ length }) => length <= SMALL);
  const heights = found.options.map(({ height }) => height);
  return {
    ...request,
    kinds: found.tried.kinds.filter((kind) => kind !== 'roof with drops'),
    sizes: sizes.length > 0 ? withoutSlivers(sizes) : found.tried.sizes,
    heights: request.heights === undefined || request.heights === 'any' ? [...new Set(heights)] : request.heights,
    forPlants: others.map(({ id }) => id),
    turnStep: Math.max(TURN_STEP, request.turnStep ?? 0),
    ground: found.pricedFor.isSaid ? request.ground : found.pricedFor.ground,
  };
}

/** Of sizes that differ by a hand, the squarer. */
function withoutSlivers(sizes: readonly ClothSize[]): ClothSize[] {
  return sizes.filter(({ length, width }) => width >= length / 2);
}

function togetherSentence(
  plan: Plan,
  request: SiteRequest,
  moves: readonly PotMove[],
  option: SiteOption,
  helped: readonly string[],
  effect: number,
): string {
  const pots = listWords(moves.map(({ plant }) => namedInside(plan, plant)));
  const cloth = titleOf(option, request.units ?? unitsOf(plan));
  const cost = option.cost === null ? '' : `, for about ${option.cost.toFixed(0)} ${option.currency}`;
  return (
    `Move ${pots}, and hang a small ${uncapital(cloth)}, ${option.where}${cost}: ` +
    `${formatShare(effect)} less heat damage to ${namesInside(plan, helped)} together.`
  );
}
