import { currencyOf } from '../../frame/shop/prices.ts';
import { surfaceUnder } from '../../load/leaf/ground.ts';
import { harmOf, weighedHarm } from '../../load/verdict/harm-of.ts';
import { freshId } from '../../plan/edit/edit-feature.ts';
import { pathLength } from '../../plan/geometry/shapes.ts';
import { toCentimetre } from '../../plan/numbers/rounding.ts';
import type { Hedge, Plan, Screen } from '../../plan/types.ts';
import { formatLength, formatShare } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { agreeingWith } from '../../plan/words/agreement.ts';
import { listWords } from '../../plan/words/list-words.ts';
import { namedInside } from '../../plan/words/names.ts';
import { buildScene } from '../../scene/build.ts';
import {
  type Climber,
  CLIMBER,
  CLIMBERS,
  DEEP,
  LIVING_SOURCES,
  planterWords,
  STILL_AIR,
  treeInstead,
  TRELLIS_A_METRE,
  TRELLIS_CARE,
} from './climbers.ts';
import type { Progress } from './progress.ts';
import { mostSparing } from './site.ts';
import type { SiteRequest, SiteResult } from './types.ts';

/** One climber on the trellis, summer by summer. */
interface LivingYears {
  readonly name: string;
  readonly leaves: string;
  /** Litres a week for each plant. */
  readonly water: string;
  /** Of the first four summers: share of light stopped, and taken off the harm of the plants that it is for. */
  readonly summers: readonly { readonly stops: number; readonly effect: number }[];
}

/** A trellis with climbers where a screen would do most: told by years, to be tried as it is when grown. */
export interface LivingScreen {
  /** As it is when grown, for an option. */
  readonly feature: Hedge;
  readonly where: string;
  /** Ids of the plants that it is for, the one that gains most first. */
  readonly served: readonly string[];
  readonly climbers: readonly LivingYears[];
  /** Trellis, posts and plants, in the plan's currency; `null` where no price is known in it. */
  readonly price: { readonly from: number; readonly to: number; readonly currency: string } | null;
  readonly sentence: string;
  readonly notes: readonly string[];
  readonly sources: string;
}

/** Coarser than the search's own. [°] */
const TURN_STEP = 45;
const TOPS = [1.8, 2.1] as const;
/** One that spares less when grown is not worth growing. */
const WORTH_GROWING = 0.15;

/**
 * Looks for the best place of a screen as dense as grown leaves, and tells what grows there by years.
 * @param carried ids of pots that the cheaper cures would carry: no leaves are grown for a pot that goes away
 * @returns `null` where nothing is harmed, or where it would not be worth growing
 */
export function livingScreen(
  plan: Plan,
  request: SiteRequest,
  found: SiteResult,
  carried: readonly string[] = [],
  progress: Progress = () => undefined,
): LivingScreen | null {
  if (found.options.length === 0 || (request.kinds && !request.kinds.includes('screen'))) return null;
  const grown = Math.max(...CLIMBERS.flatMap(({ stops }) => stops));
  const searched = mostSparing(
    plan,
    {
      ...request,
      kinds: ['screen'],
      sizes: found.tried.sizes.filter(({ length, width }) => width === Math.min(length, 1) || length === width),
      heights: request.heights === undefined || request.heights === 'any' ? TOPS : request.heights,
      densities: [grown],
      turnStep: Math.max(TURN_STEP, request.turnStep ?? 0),
      count: 1,
      budget: undefined,
      betweenSteps: false,
    },
    progress,
  );
  if (!searched.ok || searched.value === null) return null;
  const best = searched.value;
  const [cloth] = best.features;
  if (cloth.kind !== 'screen') return null;
  const served = best.served;
  const hedge = (stops: number): Hedge => trellisAt(plan, cloth, stops);
  const effects = effectsOf(plan, new Set(served), hedge, request);
  const climbers = CLIMBERS.map((climber) => yearsOf(climber, effects));
  const most = Math.max(...climbers.flatMap(({ summers }) => summers.map(({ effect }) => effect)));
  if (!(most >= WORTH_GROWING)) return null;
  // As it is offered to be tried.
  const isBestGrown = effects(grown) === most;
  const units = request.units ?? unitsOf(plan);
  const length = pathLength(cloth.path);
  const names = served.map((id) => namedInside(plan, id));
  return {
    feature: hedge(grown),
    where: best.where,
    served,
    climbers,
    price: priceOf(plan, length),
    sentence:
      `${leadWords(served, names, found, carried)}: a trellis ${formatLength(length, units)} long and ` +
      `${formatLength(cloth.height, units)} high, ${best.where}, with a climber. ` +
      `${isBestGrown ? 'Grown it takes' : 'It takes up to'} ${formatShare(most)} of the heat damage off ` +
      `${listWords(names)}.`,
    notes: [
      ...(isPaved(plan, cloth) ? [planterWords(units)] : []),
      ...(isBestGrown ? [] : [STILL_AIR]),
      TRELLIS_CARE,
      ...(isPaved(plan, cloth) ? [] : [treeInstead(units)]),
    ],
    sources: LIVING_SOURCES,
  };
}

/** Where a screen would hang, with leaves that stop so much of the light. */
function trellisAt(plan: Plan, { path, height }: Screen, stops: number): Hedge {
  return {
    id: freshId(plan, 'trellis'),
    kind: 'hedge',
    name: 'Trellis with a climber, grown',
    path: path.map(([x, y]) => [toCentimetre(x), toCentimetre(y)] as const),
    height,
    thickness: DEEP,
    openness: Math.round((1 - stops) * 100) / 100,
  };
}

/** In the stead of the cloth only where it is for the same plants; of a pot that would be carried, only if it stays. */
function leadWords(
  served: readonly string[],
  names: readonly string[],
  found: SiteResult,
  carried: readonly string[],
): string {
  if (served.every((id) => carried.includes(id)))
    return `Or, if ${listWords(names)} ${agreeingWith(...names).does('stay')}, let it grow`;
  return served.some((id) => found.served.includes(id)) ? 'Or let it grow' : 'Elsewhere, let it grow';
}

/** Whether either end of its foot stands on paving. */
function isPaved(plan: Plan, { path }: Screen): boolean {
  const scene = buildScene(plan);
  return path.some((at) => surfaceUnder(scene, at) === 'paving');
}

/** What a trellis spares of the harm by how much light its leaves stop; each density is worked out once. */
function effectsOf(
  plan: Plan,
  served: ReadonlySet<string>,
  hedge: (stops: number) => Hedge,
  { weather }: SiteRequest,
): (stops: number) => number {
  const known = new Map<number, number>();
  const harmWith = (features: Plan['features']): number => {
    const harms = harmOf({ ...plan, features }, weather, served);
    return harms.ok ? weighedHarm(harms.value) : NaN;
  };
  const today = harmWith(plan.features);
  return (stops) => {
    let effect = known.get(stops);
    if (effect === undefined) {
      effect = today > 0 ? Math.max(0, 1 - harmWith([...plan.features, hedge(stops)]) / today) : 0;
      known.set(stops, effect);
    }
    return effect;
  };
}

function yearsOf({ name, leaves, water, stops }: Climber, effectOf: (stops: number) => number): LivingYears {
  return { name, leaves, water, summers: stops.map((share) => ({ stops: share, effect: effectOf(share) })) };
}

/** By the metre, and so many plants. */
function priceOf(plan: Plan, length: number): LivingScreen['price'] {
  const currency = currencyOf(plan);
  if (currency !== 'EUR' && currency !== 'USD') return null;
  const plants = Math.max(1, Math.ceil(length / CLIMBER.apart));
  const at = (end: 'from' | 'to'): number =>
    Math.round((length * TRELLIS_A_METRE[end] + plants * CLIMBER[end]) / 10) * 10;
  return { from: at('from'), to: at('to'), currency };
}
