import { briefOf, DEFAULT_GUST } from '../../frame/layout/brief.ts';
import { groundOf } from '../../frame/layout/ground-of.ts';
import type { Outcome } from '../../load/types.ts';
import { yardOf } from '../../load/yard.ts';
import { middleOf } from '../../plan/edit/edit-feature.ts';
import { ROUNDING } from '../../plan/numbers/tolerances.ts';
import type { Cloth, Plan, PlanPoint, PlantRow } from '../../plan/types.ts';
import { type Units, unitsOf } from '../../plan/units/units.ts';
import { hungOf } from './kinds/hung.ts';
import { type Progress, stretch } from './progress.ts';
import { type Asked, askedOf } from './request.ts';
import { judgesOf } from './rules/judges.ts';
import { type LightGuard, lightGuard } from './rules/light-left.ts';
import { type Prices, pricesOf } from './rules/price-of.ts';
import { densestFor, densitiesFor } from './rules/suits.ts';
import { wayReader } from './rules/way-left.ts';
import { whoCounts, type WhoCounts } from './rules/who-counts.ts';
import { type YardRules, yardRules } from './rules/yard-rules.ts';
import { type LeafTables, leafTables } from './scoring/leaf-tables.ts';
import { type PlantStanding, type Standings, standingsOf } from './scoring/plant-states.ts';
import type { Judges } from './search/contest.ts';
import { type HarmPairs, harmPairsOf } from './search/harm-pairs.ts';
import { mostHidden, type Response, responseOf, type ShadeAnswers, shadeAnswers } from './search/responses.ts';
import { type Targets, targetsOf } from './search/targets.ts';
import type { PricedFor, SiteRequest } from './types.ts';

/** Cloth is told apart by which of so many plants it is nearest to, the most harmed. */
const PLACES = 6;

/** A yard and a request, laid out for the search: everything that does not depend on the cloth tried. */
export interface LaidOut extends Asked {
  readonly plan: Plan;
  readonly units: Units;
  readonly targets: Targets;
  readonly leaves: LeafTables;
  readonly pairs: HarmPairs;
  readonly shades: ShadeAnswers;
  /** Of the cloth tried, the thinnest first. */
  readonly densities: readonly number[];
  /** One a density. */
  readonly responses: readonly Response[];
  /** How its plants stand under any cloth; and as it is, what does not count being worth nothing. */
  readonly standings: Standings;
  readonly before: readonly PlantStanding[];
  readonly counting: WhoCounts;
  readonly rules: YardRules;
  readonly prices: Prices;
  readonly pricedFor: PricedFor;
  /** `null`: the plants' light is not guarded. */
  readonly guard: LightGuard | null;
  readonly judges: Judges;
  /** Middles of the plants near which cloth is told apart; empty: nowhere. */
  readonly places: readonly PlanPoint[];
}

/** @returns the yard laid out, or what is wrong with the request or the plan */
export function layOut(plan: Plan, siteRequest: SiteRequest, progress: Progress): Outcome<LaidOut> {
  const found = askedOf(plan, siteRequest);
  if (!found.ok) return found;
  const { request, hiding } = found.value;
  const { weather, budget } = request;
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const standings = standingsOf(season.value, weather);
  if (!standings.ok) return standings;
  const before = standings.value.under([], (done) => progress(0.3 * done, 'the yard as it is'));
  const counting = whoCounts(before, request.forPlants);
  const laidOut = targetsOf(plan, weather, stretch(progress, 0.3, 0.6), counting.ids);
  if (!laidOut.ok) return laidOut;
  const targets = laidOut.value;
  const densities = request.densities ?? densitiesFor(rowsFor(targets, counting));
  progress(0.6, 'what harms the plants');
  const leaves = leafTables(targets);
  const pairs = harmPairsOf(targets, leaves, mostHidden(Math.max(...densities)));
  const shades = shadeAnswers(targets, pairs, leaves);
  const suits = request.densities === undefined;
  const responses = densities.map((density) =>
    responseOf(pairs, shades, density, ({ point }) => !suits || density <= densestOver(targets, point) + ROUNDING),
  );
  progress(0.8, 'what the rules allow');
  const pricedFor = pricedForOf(plan, request);
  const prices = pricesOf(plan, { soil: pricedFor.ground, gust: request.gust });
  const rules = yardRules(plan, request.maxHeight, bayReader(plan, prices));
  const guard = request.keepLight ? lightGuard(season.value, suits, stretch(progress, 0.8, 1)) : null;
  return {
    ok: true,
    value: {
      ...found.value,
      plan,
      units: request.units ?? unitsOf(plan),
      densities,
      counting,
      before: before.map((plant) => (counting.ids.has(plant.id) ? plant : { ...plant, worth: 0 })),
      standings: standings.value,
      targets,
      leaves,
      pairs,
      shades,
      responses,
      rules,
      prices,
      pricedFor,
      guard,
      judges: judgesOf({ rules, hiding, guard, prices, leavesWay: wayReader(plan), budget }),
      places: request.count === 1 ? [] : mostHarmed(targets, pairs),
    },
  };
}

/** Middles of the plants that are harmed most, the worst first. */
function mostHarmed({ plants, points }: Targets, { count, view, views, weight, excess }: HarmPairs): PlanPoint[] {
  const harm = new Float64Array(plants.length);
  for (let p = 0; p < count; p++) harm[points[views[view[p]].point].plant] += weight[p] * Math.max(0, excess[p]);
  return [...plants.keys()]
    .filter((plant) => harm[plant] > 0)
    .sort((a, b) => harm[b] - harm[a])
    .slice(0, PLACES)
    .map((plant) => middleOf(plants[plant].feature));
}

/** Of the plant at a point of the search. */
function densestOver({ plants, points }: Targets, point: number): number {
  return densestFor(plants[points[point].plant].row);
}

function rowsFor({ plants }: Targets, { ids }: WhoCounts): PlantRow[] {
  return plants.filter(({ feature }) => ids.has(feature.id)).map(({ row }) => row);
}

/** The longest bay of the frame that a cloth gets. [m] */
function bayReader(plan: Plan, prices: Prices): (cloth: Cloth) => number {
  const usual = new Map<string, number>();
  const known = new Map<string, number>();
  const bayOf = (cloth: Cloth): number => {
    // A brief is dear, and the same for all of a form with the same frame.
    const key = `${hungOf(cloth).form()} ${JSON.stringify(cloth.frame)}`;
    let bay = known.get(key);
    if (bay === undefined) {
      const read = briefOf(cloth, plan);
      known.set(key, (bay = read.ok ? read.brief.maxBay : Infinity));
    }
    return bay;
  };
  return (cloth) => {
    const bay = usual.get(cloth.kind) ?? bayOf(cloth);
    usual.set(cloth.kind, bay);
    const { length, width } = hungOf(cloth).place();
    return Math.max(length, width) <= bay ? bay : bayOf(prices.fit(cloth)?.cloth ?? cloth);
  };
}

/** Ground and gust: what is asked, else what the plan says. */
function pricedForOf(plan: Plan, { ground, gust }: SiteRequest): PricedFor {
  const standing = ground === undefined ? groundOf(plan) : { ground, isSaid: true };
  return { ...standing, gust: gust ?? plan.climate.gust ?? DEFAULT_GUST };
}
