import type { Plan, PlanPoint } from '../../../plan/types.ts';
import { type GroundMask, groundMask } from '../rules/ground-mask.ts';
import { type LightPlane, lightPlanes, type LightTakers } from '../rules/light-planes.ts';
import type { YardRules } from '../rules/yard-rules.ts';
import type { Contest } from './contest.ts';
import { type HarmPairs } from './harm-pairs.ts';
import type { Lattice } from './lattice.ts';
import { NearestPlaces } from './nearest-places.ts';
import { type PlaneCrossings, planeCrossings } from './plane-sums.ts';
import { type Response, type ShadeAnswers, type TurnedResponse, turnedResponse } from './responses.ts';
import type { Targets } from './targets.ts';
import { type TurnedLattice, turnedLattice } from './turned-lattice.ts';
import { type TurnedRays, turnedRays } from './turned-rays.ts';

/** What the search holds against all candidates. */
export interface Search {
  readonly plan: Plan;
  readonly targets: Targets;
  readonly pairs: HarmPairs;
  readonly shades: ShadeAnswers;
  readonly responses: readonly Response[];
  readonly lattice: Lattice;
  /** Middles of the plants near which cloth is told apart. */
  readonly places: readonly PlanPoint[];
  readonly contest: Contest;
  readonly rules: YardRules;
  /** What roofs take of the plants' light; `null`: it is not guarded. */
  readonly takers: LightTakers | null;
  /** Height cap; Infinity: none. [m] */
  readonly cap: number;
  /** How tall a thing may stand unseen at a point [m]; `null`: it may be seen. */
  readonly hiddenHeight: ((at: PlanPoint) => number) | null;
}

/** One turn of the lattice, laid out. */
export interface Turn extends Search {
  readonly turned: TurnedLattice;
  /** One a density, as `Search.responses`. */
  readonly answers: readonly TurnedResponse[];
  readonly rays: TurnedRays;
  readonly nearest: NearestPlaces;
  readonly mask: GroundMask;
  /** Says how far the search has come. */
  tell(): void;
}

export function layOutTurn(search: Search, turn: number, tell: () => void): Turn {
  const { plan, targets, pairs, places, rules, hiddenHeight, lattice } = search;
  const turned = turnedLattice(plan.site.boundary, turn, lattice.step);
  const rays = turnedRays(targets, pairs, turned);
  const withDrops = lattice.kinds.includes('roof with drops') && lattice.drops.turns.includes(turn);
  return {
    ...search,
    turned,
    rays,
    answers: search.responses.map((response) => turnedResponse(pairs, search.shades, response, rays.across, withDrops)),
    nearest: new NearestPlaces(turned, places),
    mask: groundMask(rules, hiddenHeight ?? (() => Infinity), turned),
    tell,
  };
}

/** The level plane of a roof at one height, on one turn of the lattice. */
export interface Level {
  /** [m] */
  readonly height: number;
  readonly crossings: PlaneCrossings;
  /** Of `GroundMask.blockedAt`. */
  readonly blocked: Int32Array;
  /** Room for `payoffSums`. */
  readonly plane: Float64Array;
  /** What roofs of a density take of the plants' light; `null`: it is not guarded. */
  light(density: number): LightPlane | null;
}

/** Lays out one level after the other in the same room: a level is gone when the next is asked for. */
export function levelsOf({ turned, rays, pairs, mask, takers }: Turn): (height: number) => Level {
  const size = (turned.columns + 1) * (turned.rows + 1);
  const plane = new Float64Array(size);
  const lightAt = takers && lightPlanes(takers, turned);
  return (height) => {
    const lights = new Map<number, LightPlane | null>();
    const lightOf = lightAt && lightAt(height);
    return {
      height,
      crossings: planeCrossings(rays, pairs, height),
      blocked: mask.blockedAt(height),
      plane,
      light(density) {
        let light = lights.get(density);
        if (light === undefined) lights.set(density, (light = lightOf && lightOf(density)));
        return light;
      },
    };
  };
}
