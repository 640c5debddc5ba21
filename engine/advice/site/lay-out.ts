import type { Outcome } from '../../load/types.ts';
import { type Yard, yardOf } from '../../load/yard.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import { type Units, unitsOf } from '../../plan/units.ts';
import { middleOf } from './option.ts';
import { type Progress, stretch } from './progress.ts';
import { type Asked, askedOf } from './request.ts';
import { judgesOf } from './rules/judges.ts';
import { lightGuard } from './rules/light-left.ts';
import { type YardRules, yardRules } from './rules/yard-rules.ts';
import { type LeafTables, leafTables } from './scoring/leaf-tables.ts';
import type { Judges } from './search/contest.ts';
import {
  type HarmPairs,
  harmPairsOf,
  mostHidden,
  type Response,
  responseOf,
  type ShadeAnswers,
  shadeAnswers,
} from './search/harm-pairs.ts';
import { type Targets, targetsOf } from './search/targets.ts';
import type { SiteRequest } from './types.ts';

/** Cloth is told apart by which of so many plants it is nearest to, the first on the plan. */
const PLACES = 6;

/** A yard and a request, laid out for the search: everything that does not depend on the cloth tried. */
export interface LaidOut extends Asked {
  readonly plan: Plan;
  readonly units: Units;
  readonly targets: Targets;
  readonly leaves: LeafTables;
  readonly pairs: HarmPairs;
  readonly shades: ShadeAnswers;
  /** One a density. */
  readonly responses: readonly Response[];
  /** The yard laid out for the season. */
  readonly season: Yard;
  readonly rules: YardRules;
  readonly judges: Judges;
  /** Middles of the plants near which cloth is told apart. */
  readonly places: readonly PlanPoint[];
}

/** @returns the yard laid out, or what is wrong with the request or the plan */
export function layOut(plan: Plan, siteRequest: SiteRequest, progress: Progress): Outcome<LaidOut> {
  const found = askedOf(plan, siteRequest);
  if (!found.ok) return found;
  const { request, hiding } = found.value;
  const { weather, densities, budget } = request;
  const laidOut = targetsOf(plan, weather, stretch(progress, 0, 0.4));
  if (!laidOut.ok) return laidOut;
  const targets = laidOut.value;
  progress(0.4, 'what harms the plants');
  const leaves = leafTables(targets);
  const pairs = harmPairsOf(targets, leaves, mostHidden(Math.max(...densities)));
  const shades = shadeAnswers(targets, pairs, leaves);
  const responses = densities.map((density) => responseOf(pairs, shades, density));
  progress(0.8, 'what the rules allow');
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const rules = yardRules(plan, request.maxHeight);
  const guard = request.keepLight ? lightGuard(season.value, stretch(progress, 0.8, 1)) : null;
  return {
    ok: true,
    value: {
      ...found.value,
      plan,
      units: request.units ?? unitsOf(plan),
      targets,
      leaves,
      pairs,
      shades,
      responses,
      season: season.value,
      rules,
      judges: judgesOf(plan, { rules, hiding, guard, budget }),
      places: targets.plants.map(({ feature }) => middleOf(feature)).slice(0, PLACES),
    },
  };
}
