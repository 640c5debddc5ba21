import { costOf } from '../../frame/sheet.ts';
import { namedInside } from '../../load/verdict/names.ts';
import type { Outcome } from '../../load/types.ts';
import { yardOf } from '../../load/yard.ts';
import type { Canopy, Plan, Screen } from '../../plan/types.ts';
import { formatLength, type Units, unitsOf } from '../../plan/units.ts';
import { Contest, type Scored } from './search/contest.ts';
import { reallyDifferent } from './search/different.ts';
import { harmPairSteps, type Response, responseOf } from './search/harm-pairs.ts';
import { hidingOf } from './rules/hiding.ts';
import { percent } from '../cheaper-first/step.ts';
import { clothSteps } from './cloth-steps.ts';
import { familyCount, type Lattice, type Search, searchLattice } from './search/lattice-search.ts';
import { leafTables } from './scoring/leaf-tables.ts';
import { lightGuardSteps } from './rules/light-left.ts';
import { middleOf, named, optionOf } from './option.ts';
import { standingsOf } from './scoring/plant-states.ts';
import { latticeOf, lowestOf, SITE_DEFAULTS } from './request.ts';
import { bestTogether } from './scoring/several.ts';
import type { ClothKind, RulePrice, SiteOption, SiteProgress, SiteRequest, SiteResult, SiteRule } from './types.ts';
import { mapped } from './search/steps.ts';
import { targetSteps } from './search/targets.ts';
import { togetherScore } from './scoring/together.ts';
import { yardRules } from './rules/yard-rules.ts';

/** Cloth is told apart by which of so many plants it is nearest to, the most harmed ones. */
const PLACES = 6;
/** A rule that costs less than this share is not spoken of. */
const PRICED_FROM = 0.01;
/** The sensible option spares at least this share of the best. Our choice. */
const NEARLY = 0.9;
/** Harm below this is none. [K·h/day] */
const NO_HARM = 1e-6;

/**
 * Where cloth would spare the plants most: the search as steps, so that a worker can let messages in between them and
 * stop asking. Most steps take a few milliseconds, the longest some tens.
 * @returns the options, or what is wrong with the request or the plan
 */
export function* siteSteps(plan: Plan, request: SiteRequest = {}): Generator<SiteProgress, Outcome<SiteResult>, void> {
  const asked = latticeOf(plan, request);
  if (!asked.ok) return asked;
  const { lattice, sizes, densities } = asked;
  const {
    count = SITE_DEFAULTS.count,
    show = SITE_DEFAULTS.show,
    maxScores = SITE_DEFAULTS.maxScores,
    weather,
    budget,
  } = request;
  const units = request.units ?? unitsOf(plan);
  const laidOut = yield* mapped(targetSteps(plan, weather), (done) => ({
    done: 0.04 * done,
    what: 'the sun on the plants',
  }));
  if (!laidOut.ok) return laidOut;
  const targets = laidOut.value;
  const leaves = leafTables(targets);
  const pairs = yield* mapped(harmPairSteps(targets, leaves, 1 - (1 - Math.max(...densities)) ** 2), (done) => ({
    done: 0.04 + 0.02 * done,
    what: 'what harms them',
  }));
  const responses: Response[] = [];
  for (const density of densities) {
    yield { done: 0.06 + (0.02 * responses.length) / densities.length, what: 'what harms them' };
    responses.push(responseOf(targets, pairs, leaves, density, lattice.kinds.includes('roof with drops') ? 2 : 1));
  }
  yield { done: 0.08, what: 'what the rules allow' };
  const hides = request.hidden ?? SITE_DEFAULTS.hidden;
  const hiding = hidingOf(plan, lowestOf(lattice));
  const rules = yardRules(plan, request.maxHeight);
  const keepLight = request.keepLight ?? SITE_DEFAULTS.keepLight;
  yield { done: 0.08, what: 'what the rules allow' };
  const season = yardOf(plan, { kind: 'season' }, weather);
  if (!season.ok) return season;
  const guard = keepLight
    ? yield* mapped(lightGuardSteps(season.value), (done) => ({
        done: 0.08 + 0.02 * done,
        what: 'what the rules allow',
      }))
    : null;
  yield { done: 0.1, what: 'what the rules allow' };

  const priceOf = priceReader(plan);
  const late = (cloth: readonly (Canopy | Screen)[]): 'ground' | SiteRule[] => {
    const costs = cloth.map(priceOf);
    if (costs.includes(Infinity)) return 'ground';
    const broken: SiteRule[] = [];
    if (guard?.darkened(cloth)) broken.push('light');
    if (budget !== undefined && costs.reduce<number>((sum, cost) => sum + (cost ?? 0), 0) > budget)
      broken.push('budget');
    return broken;
  };
  const places = targets.plants.map(({ feature }) => middleOf(feature)).slice(0, PLACES);
  const contest = new Contest(familyCount(Math.max(1, places.length)), {
    objections(cloth) {
      const objections = rules.objections(cloth);
      return objections === 'ground' || !hides || hiding.isHidden(cloth) ? objections : [...objections, 'hidden'];
    },
    lateObjections: (cloth) => late([cloth]),
  });
  const cap = Math.min(plan.site.rules?.maxHeight ?? Infinity, request.maxHeight ?? Infinity);
  const search: Search = {
    plan,
    targets,
    pairs,
    responses,
    lattice,
    places,
    contest,
    rules,
    cap,
    hiddenHeight: hides && hiding.from.length > 0 ? hiding.heightAt : null,
    maxScores,
  };
  let unseen = 0;
  let finished = true;
  if (pairs.harm > NO_HARM) {
    const steps = searchLattice(search);
    for (let step = steps.next(); ; step = steps.next()) {
      if (step.done) {
        ({ unseen, finished } = step.value);
        break;
      }
      yield {
        done: 0.1 + 0.65 * step.value,
        what: `${contest.candidates.toLocaleString('en')} places held against what they could spare at best`,
      };
    }
  }

  const singles = contest.bests
    .filter((scored): scored is Scored => scored !== null)
    .sort((a, b) => b.spared - a.spared);
  const score = togetherScore(targets, pairs, leaves);
  let chosen: { kind: ClothKind | 'several'; cloth: readonly (Canopy | Screen)[]; spared: number }[];
  if (count === 1) {
    const forWhom = new Map<Scored, number>();
    for (const [k, one] of singles.entries()) {
      if (k % 4 === 0) yield { done: 0.75 + (0.05 * k) / singles.length, what: 'which of them differ' };
      forWhom.set(
        one,
        score([one.cloth]).reduce((most, each, plant, all) => (each > all[most] ? plant : most), 0),
      );
    }
    chosen = reallyDifferent(singles, show, (one) => forWhom.get(one) ?? 0).map(({ kind, cloth, spared }) => ({
      kind,
      cloth: [cloth],
      spared,
    }));
  } else {
    yield { done: 0.75, what: 'several together' };
    const total = (cloth: readonly (Canopy | Screen)[]) => score(cloth).reduce((sum, each) => sum + each, 0);
    const groups = yield* mapped(
      bestTogether(singles, count, total, (cloth) => late(cloth).length === 0, show),
      (done) => ({ done: 0.75 + 0.05 * done, what: 'several together' }),
    );
    chosen = groups.map(({ cloth, spared }) => ({ kind: 'several', cloth, spared }));
  }

  yield { done: 0.8, what: 'the yard as it is' };
  const standings = standingsOf(season.value, weather);
  if (!standings.ok) return standings;
  yield { done: 0.8, what: 'the yard as it is' };
  const before = yield* mapped(standings.value.under([]), (done) => ({
    done: 0.8 + 0.02 * done,
    what: 'the yard as it is',
  }));
  const exactHarm = before.reduce((sum, { worth, state }) => sum + worth * (state.harm ?? 0), 0);
  const options: SiteOption[] = [];
  let bedSampleError = Math.abs(exactHarm - pairs.harm);
  for (const [k, { kind, cloth, spared }] of chosen.entries()) {
    const features = named(plan, cloth);
    const after = yield* mapped(standings.value.under(features), (done) => ({
      done: 0.82 + (0.18 * (k + done)) / chosen.length,
      what: `option ${k + 1} of ${chosen.length} in full`,
    }));
    const option = optionOf({ plan, targets, leaves, before, units }, kind, features, after);
    options.push(option);
    bedSampleError = Math.max(bedSampleError, Math.abs(option.spared - spared));
  }
  options.sort((a, b) => b.spared - a.spared);
  const best = options[0]?.spared ?? 0;
  const proven = finished && count === 1;
  const bound = Math.max(
    best,
    count === 1 ? Math.max(contest.best, unseen) : Math.min(exactHarm, count * Math.max(contest.best, unseen)),
  );
  const prices = pricesOf(plan, hiding.from, contest, units, cap);
  const result: SiteResult = {
    options,
    bound,
    gap: bound > 0 ? (bound - best) / bound : 0,
    proven,
    tried: {
      kinds: lattice.kinds,
      sizes,
      heights: lattice.heights,
      densities,
      turns: lattice.turns.length,
      step: lattice.step,
      candidates: contest.candidates,
      outbid: contest.candidates - contest.forbidden - contest.scored,
      forbidden: contest.forbidden,
      scored: contest.scored,
      points: targets.points.length,
      heatDays: targets.heats.length,
      harmfulPairs: pairs.count,
      bedSampleError,
    },
    harm: exactHarm,
    sensible: sensibleOf(options),
    rules: prices,
    ladder: clothSteps(options, exactHarm),
    notes: [
      ...(hides
        ? hiding.impossible.map(
            (id) =>
              `Cloth cannot be hidden from ${namedInside(plan, id)}: it looks in from above on nearly all the ` +
              `ground near the plants. It binds nothing here.`,
          )
        : []),
      ...dropsNote(lattice, request.maxDrops ?? SITE_DEFAULTS.maxDrops),
    ],
    sentence: sentenceOf(exactHarm, options, finished),
  };
  return { ok: true, value: result };
}

/** Says so where roofs with drops were tried in fewer forms than plain roofs, and what was not. */
function dropsNote({ kinds, turns, sizes, heights, box }: Lattice, maxDrops: number): string[] {
  if (!kinds.includes('roof with drops')) return [];
  const fewer = [
    ...(box.turns.length < turns.length ? [`${box.turns.length} of ${turns.length} turns`] : []),
    ...(box.sizes.length < sizes.length ? [`${box.sizes.length} of ${sizes.length} footprints`] : []),
    ...(box.heights.length < heights.length ? [`${box.heights.length} of ${heights.length} heights`] : []),
  ];
  const notes = fewer.length > 0 ? [`Roofs with drops were tried in fewer forms: ${fewer.join(', ')}.`] : [];
  if (box.maxDrops < maxDrops) notes.push('Roofs with drops were tried with one drop, not with two.');
  return notes.length > 0 ? [`${notes.join(' ')} Ask for one size and height to try them all.`] : [];
}

/**
 * The whole search in one go.
 * @param progress called at every step; where it gives false the search stops and says so
 */
export function siteOf(
  plan: Plan,
  request: SiteRequest = {},
  progress?: (step: SiteProgress) => boolean | void,
): Outcome<SiteResult> {
  const steps = siteSteps(plan, request);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (progress?.(step.value) === false)
      return { ok: false, problems: [{ pointer: '', message: 'The search was stopped.', severity: 'error' }] };
  }
}

/**
 * What cloth costs [plan's currency], `null` where no price is known, Infinity where the shop's tube cannot make it.
 * Asked once a form.
 */
function priceReader(plan: Plan): (cloth: Canopy | Screen) => number | null {
  const known = new Map<string, number | null>();
  return (cloth) => {
    const form =
      cloth.kind === 'canopy'
        ? [cloth.length, cloth.width, ...(cloth.drops ?? []).flatMap(({ side, depth }) => [side, depth])]
        : [Math.hypot(cloth.path[1][0] - cloth.path[0][0], cloth.path[1][1] - cloth.path[0][1]).toFixed(3)];
    const key = [cloth.kind, cloth.height, ...form].join(' ');
    let cost = known.get(key);
    if (cost === undefined) {
      const result = costOf(cloth, plan);
      known.set(key, (cost = result.ok ? result.cost.total : Infinity));
    }
    return cost;
  };
}

function pricesOf(plan: Plan, hiddenFrom: readonly string[], contest: Contest, units: Units, cap: number): RulePrice[] {
  return [...contest.without].flatMap(([rule, { spared }]) => {
    const cost = 1 - contest.best / spared;
    return cost < PRICED_FROM
      ? []
      : [
          {
            rule,
            spared,
            cost,
            sentence: `${ruleWords(plan, rule, hiddenFrom, units, cap)} cost ${percent(cost)} of the effect.`,
          },
        ];
  });
}

function ruleWords(plan: Plan, rule: SiteRule, hiddenFrom: readonly string[], units: Units, cap: number): string {
  switch (rule) {
    case 'hidden':
      return `Hiding it from ${hiddenFrom.map((id) => namedInside(plan, id)).join(', ')}`;
    case 'height':
      return `Staying no higher than ${formatLength(cap, units)}`;
    case 'setback':
      return `Keeping ${formatLength(plan.site.rules?.setback ?? 0, units)} away from the property line`;
    case 'keepout':
      return 'Keeping clear of the ground where no cloth may hang';
    case 'light':
      return 'Leaving every plant enough light';
    case 'budget':
      return 'Staying within the budget';
  }
}

/** The cheapest of those that spare nearly as much as the best. */
function sensibleOf(options: readonly SiteOption[]): number | null {
  const near = options
    .map((option, index) => ({ ...option, index }))
    .filter(({ spared, cost }) => cost !== null && spared >= NEARLY * options[0].spared);
  return near.toSorted((a, b) => (a.cost ?? 0) - (b.cost ?? 0))[0]?.index ?? null;
}

function sentenceOf(harm: number, options: readonly SiteOption[], finished: boolean): string {
  if (harm <= NO_HARM) return 'Nothing to shade: no plant is harmed.';
  const [best] = options;
  if (!best || best.spared <= 0) return 'No cloth that may stand here spares the plants anything.';
  const sensible = sensibleOf(options);
  const cheaper =
    sensible !== null && sensible > 0
      ? ` Option ${sensible + 1} spares ${percent(options[sensible].spared / best.spared)} of that for ` +
        `${percent((options[sensible].cost ?? 0) / (best.cost ?? 1))} of the money.`
      : '';
  return (
    `${best.why} That is ${percent(best.sparedShare)} of all ` +
    `harm.${cheaper}${finished ? '' : ' The search was stopped before its end: something better may be found.'}`
  );
}
