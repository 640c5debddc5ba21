import { layOut } from '../../engine/advice/site/lay-out.ts';
import { leafTables } from '../../engine/advice/site/scoring/leaf-tables.ts';
import { standingsOf } from '../../engine/advice/site/scoring/plant-states.ts';
import { boundParts, sparedByCloth } from '../../engine/advice/site/scoring/score.ts';
import { togetherScore } from '../../engine/advice/site/scoring/together.ts';
import { createTrial, type Trial } from '../../engine/advice/site/scoring/trial.ts';
import { searchYard } from '../../engine/advice/site/search-yard.ts';
import { screenOf } from '../../engine/advice/site/search/candidates.ts';
import { harmPairsOf } from '../../engine/advice/site/search/harm-pairs.ts';
import { responseOf, shadeAnswers, turnedResponse } from '../../engine/advice/site/search/responses.ts';
import { targetsOf } from '../../engine/advice/site/search/targets.ts';
import { turnedLattice } from '../../engine/advice/site/search/turned-lattice.ts';
import { turnedRays } from '../../engine/advice/site/search/turned-rays.ts';
import { lookOver, siteOf } from '../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../engine/advice/site/types.ts';
import { gridOf } from '../../engine/load/light/grid-of.ts';
import { plantLoadsOf } from '../../engine/load/load-of.ts';
import { harmOf } from '../../engine/load/verdict/harm-of.ts';
import { yardOf } from '../../engine/load/yard.ts';
import { demoPlan, type DemoName } from '../../engine/plan/demos/index.ts';
import type { Canopy, Plan } from '../../engine/plan/types.ts';
import { valueOf } from '../parts/outcome.ts';
import type { BenchCase, Variant } from './harness.ts';

const ONE: SiteRequest = { kinds: ['roof'], sizes: [{ length: 3, width: 3 }], heights: [2.2] };

/** Search and trial on the demo yards, each claim beside what it is held against. */
export function casesOf(): BenchCase[] {
  return [
    {
      name: 'site, one size and height',
      note: 'wanted: under 300 ms for the search; the options in full come on top',
      variants: [
        { name: 'courtyard, search', run: () => search('courtyard', ONE) },
        { name: 'courtyard, with one option in full', run: () => whole('courtyard', { ...ONE }) },
      ],
    },
    {
      name: 'site, all roofs',
      note: 'sizes to 4 × 4 m, turns of 5°, five heights, three densities; wanted: under 3 s',
      variants: [{ name: 'courtyard, search', run: () => search('courtyard', { kinds: ['roof'] }) }],
    },
    {
      name: 'site, the usual request',
      note: 'roofs, roofs with drops and screens of every size, options in full',
      variants: [
        ...(['courtyard', 'lane'] as const).map((name) => ({ name, run: () => whole(name, {}) })),
        ...plainlyTried(),
      ],
      ratios: [
        { of: 'courtyard', to: 'every place of the courtyard, scored ray by ray', target: 'at most 1/3000' },
        { of: 'lane', to: 'every place of the lane, scored ray by ray', target: 'at most 1/20000' },
      ],
    },
    {
      name: 'site, the yard laid out',
      note: 'what every search asks first; the page has it asked while the form is filled in',
      variants: (['courtyard', 'lane'] as const).flatMap(yardLaidOut),
      ratios: [
        { of: 'courtyard, looked over before', to: 'courtyard, never seen' },
        { of: 'lane, looked over before', to: 'lane, never seen' },
      ],
    },
    {
      name: 'site, one screen scored',
      variants: screenScored(),
      ratios: [{ of: 'by the tables of the search', to: 'by the leaf of each ray' }],
    },
    {
      name: 'site, one option in full',
      variants: optionInFull(),
      ratios: [{ of: 'the yard laid out once', to: 'a yard never seen' }],
    },
    {
      name: 'trial, one move',
      note: 'map of the season at 0.25 m, verdicts, payoff, what the cloth changes of the walls’ shine',
      variants: [moveOn('courtyard'), moveOn('lane'), inFullOn('courtyard'), inFullOn('lane')],
      ratios: [
        { of: 'courtyard', to: 'courtyard, its plants in full' },
        { of: 'lane', to: 'lane, its plants in full' },
      ],
    },
  ];
}

/** The search alone, without the options in full. */
function search(name: DemoName, request: SiteRequest): number {
  return searchYard(valueOf(layOut(demoPlan(name), request, () => undefined)), () => undefined).best;
}

function whole(name: DemoName, request: SiteRequest): number {
  return valueOf(siteOf(demoPlan(name), request)).bound;
}

function yardLaidOut(name: DemoName): Variant[] {
  const known = once(() => {
    const plan = demoPlan(name);
    lookOver(plan);
    return plan;
  });
  const laidOut = (plan: Plan): number => valueOf(layOut(plan, {}, () => undefined)).pairs.count;
  return [
    { name: `${name}, never seen`, run: () => laidOut(structuredClone(demoPlan(name))) },
    { name: `${name}, looked over before`, run: () => laidOut(known()) },
  ];
}

/** Places of the search of which the plain trial scores one in so many. */
const PLAINLY = 100;

/** What trying every place of the usual request by the leaf of each ray would take, told from a hundred of them. */
function plainlyTried(): Variant[] {
  return (['courtyard', 'lane'] as const).map((name) => {
    const laidOut = once(() => {
      const all = valueOf(layOut(demoPlan(name), {}, () => undefined));
      const { targets, pairs, leaves, lattice } = all;
      const [cx, cy] = [targets.points[0].at[0], targets.points[0].at[1]];
      return {
        places: searchYard(all, () => undefined).candidates,
        score: togetherScore(targets, pairs, leaves),
        cloths: Array.from({ length: PLAINLY }, (_, k): Canopy => ({
          id: 'tried',
          kind: 'canopy',
          center: [cx + 0.25 * ((k % 10) - 5), cy + 0.25 * (Math.floor(k / 10) - 5)],
          length: 2.5,
          width: 2,
          height: lattice.roof.heights[0],
          density: 0.5,
        })),
      };
    });
    return {
      name: `every place of the ${name}, scored ray by ray`,
      run: () => {
        const { score, cloths } = laidOut();
        return cloths.reduce((sum, cloth) => sum + score([cloth]).reduce((all, each) => all + each, 0), 0);
      },
      get scale() {
        return laidOut().places / PLAINLY;
      },
    };
  });
}

/** Screens about the lane yard, two hundred a round. */
function screenScored(): Variant[] {
  const laidOut = once(() => {
    const targets = valueOf(targetsOf(demoPlan('lane')));
    const leaves = leafTables(targets);
    const pairs = harmPairsOf(targets, leaves, 1);
    const lattice = turnedLattice(targets.plan.site.boundary, 0, 0.25);
    const rays = turnedRays(targets, pairs, lattice);
    const shades = shadeAnswers(targets, pairs, leaves);
    const roof = responseOf(pairs, shades, 0.5);
    const places = Array.from({ length: 200 }, (_, k) => ({
      along: k % 2 === 0 ? ('u' as const) : ('v' as const),
      line: 20 + (k % 30),
      from: 10 + (k % 23),
      cells: 12,
      bottom: 0.2,
      top: 1.8,
    }));
    return {
      pairs,
      lattice,
      places,
      rays,
      response: turnedResponse(pairs, shades, roof, rays.across, false),
      together: togetherScore(targets, pairs, leaves),
    };
  });
  return [
    {
      name: 'by the tables of the search',
      run: () => {
        const { rays, pairs, response, places } = laidOut();
        const parts = { u: boundParts(response.screens.u), v: boundParts(response.screens.v) };
        return places.reduce(
          (sum, place) =>
            sum + sparedByCloth(rays, pairs, response, null, [place], parts[place.along], Infinity, -Infinity),
          0,
        );
      },
      scale: 1 / 200,
    },
    {
      name: 'by the leaf of each ray',
      run: () => {
        const { lattice, places, together } = laidOut();
        return places.reduce(
          (sum, place) => sum + together([screenOf(lattice, place, 0.5)]).reduce((all, each) => all + each, 0),
          0,
        );
      },
      scale: 1 / 200,
    },
  ];
}

function optionInFull(): Variant[] {
  const plan = demoPlan('courtyard');
  const cloth: Canopy = {
    id: 'tried',
    kind: 'canopy',
    center: [9.3, 6.1],
    length: 2.5,
    width: 2.5,
    height: 2.2,
    density: 0.5,
  };
  // Never the same object, of which all would be known.
  const built = (): Plan => ({ ...plan, features: [...plan.features, { ...cloth }] });
  const standings = once(() => valueOf(standingsOf(valueOf(yardOf(plan, { kind: 'season' })))));
  return [
    { name: 'the yard laid out once', run: () => standings().under([cloth]).length },
    { name: 'a yard that differs in it', run: () => inFull(built()) },
    { name: 'a yard never seen', run: () => inFull(structuredClone(built())) },
  ];
}

function inFull(plan: Plan): number {
  return valueOf(harmOf(plan)).length + valueOf(plantLoadsOf(plan)).length;
}

function moveOn(name: DemoName): Variant {
  const plan = demoPlan(name);
  const trial = once(() => laidOutTrial(plan));
  let at = 0;
  const move = (): number => trial().score([triedOn(name, 0.05 * (at++ % 20))]).spared;
  // Twenty moves a round: one alone is lost in the collector's noise.
  return { name, run: () => Array.from({ length: 20 }, move)[19], scale: 1 / 20 };
}

function inFullOn(name: DemoName): Variant {
  const standings = once(() => valueOf(standingsOf(valueOf(yardOf(demoPlan(name), { kind: 'season' })))));
  return { name: `${name}, its plants in full`, run: () => standings().under([triedOn(name)]).length };
}

function triedOn(name: DemoName, moved = 0): Canopy {
  const [x, y] = name === 'lane' ? [6.3, 9.7] : [8.6, 6.1];
  return {
    id: 'tried',
    kind: 'canopy',
    center: [x + moved, y],
    length: 2.5,
    width: 2.5,
    height: 2.2,
    density: 0.5,
  };
}

function laidOutTrial(plan: Plan): Trial {
  return valueOf(createTrial(plan, { kind: 'season' }, gridOf(plan, { cell: 0.25, height: 0.5 })));
}

/** Lays something out when it is first asked for. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
}
