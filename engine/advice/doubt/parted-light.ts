/** What reaches many points of a yard caster by caster, and again when a single one of them is not as drawn. */

import { type Directions, directionsOf } from '../../cast/passes.ts';
import { createDirectionCaster, createStandingCaster } from '../../cast/points/point-caster.ts';
import { placeKey } from '../../cast/points/remembering-caster.ts';
import { mayDim, type Standing, standingSolids } from '../../cast/points/standing.ts';
import { groundRise } from '../../load/leaf/ground.ts';
import type { WallGlow } from '../../load/leaf/surroundings.ts';
import type { WallsRound } from '../../load/leaf/walls/walls-round.ts';
import { distanceToEdge, distanceToPath } from '../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Feature } from '../../plan/types.ts';
import { sceneOfOne } from '../../scene/build.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import type { HeatRays } from './heat-rays.ts';
import { emptyLit, type Lit, lookRound } from './light.ts';

/** A wall farther off than this is taken to shine as drawn, whatever it is. [m] */
const SHINES_AS_FAR = 2;

/**
 * What a point gets, and what each shadow caster alone lets through to it; one that takes nothing from it has no entry.
 */
export interface PartedLit extends Lit {
  readonly parts: ReadonlyMap<string, Part>;
}

/** The rays of which one shadow caster takes something, rising, and the share of each that it alone lets through. */
interface Part {
  readonly rays: Int32Array;
  readonly left: Float64Array;
}

/** The plant's own crown among the parts: no feature has an empty id. */
const OWN = '';

/**
 * Lights points of one scene caster by caster, so that one of them can be exchanged without casting the others again.
 */
export interface PartedLighter {
  readonly scene: Scene;
  readonly rays: HeatRays;
  at(point: SpacePoint, own?: OwnCrown): PartedLit;
  /** What it found at a point. */
  known(point: SpacePoint, own?: OwnCrown): PartedLit | undefined;
  /** Lights points when one feature is another and the rest of the scene is as it was. @param walls as they are then */
  exchanging(feature: Feature, walls: WallsRound): Relighter;
}

/** Casts the rays of one feature anew; what the others let through is known. */
interface Relighter {
  /** @returns `was` itself where nothing of it changes; else what holds until the next question */
  at(point: SpacePoint, was: PartedLit, own?: OwnCrown): Lit;
}

/**
 * @param other of a yard that may differ in little: of what stands in both, what it lets through to a point is known,
 *   and where nothing else reaches it either the point's light is the very same
 */
export function createPartedLighter(
  scene: Scene,
  rays: HeatRays,
  walls: WallsRound,
  other?: PartedLighter,
): PartedLighter {
  const directions = directionsOf(scene, rays.passes);
  const open = createDirectionCaster({ ...scene, states: scene.states.map(() => []) }, directions);
  // What reaches a point that nothing of the yard stands before: the skyline is left.
  const clear = open.sharesAt([0, 0, 0]);
  const ids = new Set(scene.states.flatMap((occluders) => occluders.map(({ id }) => id)));
  const like = other && isCastAlike(scene, rays, other) ? other : undefined;
  const casters = [...ids].map((only) => ({
    id: only,
    isInBoth: like !== undefined && standsAlike(scene, like.scene, only),
    caster: createDirectionCaster(sceneOf(scene, only), directions),
  }));
  const known = new Map<string, PartedLit>();
  const alone = new Float64Array(directions.count);
  const lightAt = (point: SpacePoint, own?: OwnCrown): PartedLit => {
    const was = like?.known(point, own);
    const parts = new Map<string, Part>();
    const keep = (id: string, part: Part | null) => void (part && parts.set(id, part));
    for (const { id, caster, isInBoth } of casters) {
      const part = isInBoth ? was?.parts.get(id) : undefined;
      if (part) parts.set(id, part);
      else if (id !== own?.of && !(isInBoth && was)) keep(id, partOf(caster.sharesAt(point, undefined, alone), clear));
    }
    const crown = was?.parts.get(OWN);
    if (crown) parts.set(OWN, crown);
    else if (own !== undefined) keep(OWN, partOf(open.sharesAt(point, own, alone), clear));
    const glows = walls.on(rays.days, point, own);
    if (was && isSameLight(was, parts, glows)) return was;
    const lit = emptyLit(rays);
    lit.shares.set(clear);
    for (const { rays: taken, left } of parts.values())
      for (let n = 0; n < taken.length; n++) lit.shares[taken[n]] *= left[n];
    lookRound(rays, lit, groundRise(scene, point), glows);
    return { ...lit, parts };
  };
  return {
    scene,
    rays,
    at(point, own) {
      const lit = lightAt(point, own);
      known.set(placeKey(point, own), lit);
      return lit;
    },
    known: (point, own) => known.get(placeKey(point, own)),
    exchanging: (feature, wallsNow) => relighter(scene, feature, rays, directions, clear, wallsNow),
  };
}

/** Whether the same rays are cast in the same yearly states, over the same ground. */
function isCastAlike(scene: Scene, rays: HeatRays, { scene: other, rays: its }: PartedLighter): boolean {
  return (
    rays.days.length === its.days.length &&
    rays.days.every(({ samples }, d) => samples === its.days[d].samples) &&
    scene.states.length === other.states.length &&
    scene.stateOfDay.every((state, day) => state === other.stateOfDay[day]) &&
    scene.surface === other.surface &&
    scene.grounds.length === 0 &&
    other.grounds.length === 0
  );
}

function standsAlike(scene: Scene, other: Scene, only: string): boolean {
  const inState = (occluders: Scene['states'][number]) => occluders.find(({ id }) => id === only);
  return scene.states.every((occluders, state) => inState(occluders) === inState(other.states[state]));
}

function isSameLight(was: PartedLit, parts: PartedLit['parts'], glows: readonly (WallGlow | null)[]): boolean {
  return (
    parts.size === was.parts.size &&
    [...parts].every(([id, part]) => was.parts.get(id) === part) &&
    glows.every((glow, d) => glow === was.around[d].walls)
  );
}

function relighter(
  scene: Scene,
  feature: Feature,
  rays: HeatRays,
  directions: Directions,
  clear: Float64Array,
  walls: WallsRound,
): Relighter {
  const standing = standingSolids(sceneOfOne(scene, feature), directions);
  const alone = createStandingCaster(standing, directions);
  const now = new Float64Array(directions.count);
  const list = new Int32Array(directions.count);
  const isAnew = new Uint8Array(directions.count);
  const lit = emptyLit(rays);
  return {
    at(point, was, own) {
      const shines = shinesOn(feature, point);
      const before = was.parts.get(feature.id) ?? NOTHING;
      const meets = (solid: Standing) => mayDim(solid, point, directions, list, clear);
      if (!shines && before === NOTHING && !standing.some(meets)) return was;
      alone.sharesAt(point, undefined, now);
      const { shares } = lit;
      const { any, anew } = exchange(now, before, clear, was.shares, shares, isAnew);
      if (!any && !shines) return was;
      for (const [id, { rays: taken, left }] of anew ? was.parts : []) {
        if (id === feature.id) continue;
        for (let n = 0; n < taken.length; n++) if (isAnew[taken[n]] === 1) shares[taken[n]] *= left[n];
      }
      const glows = shines ? walls.on(rays.days, point, own) : was.around.map((each) => each.walls);
      lookRound(rays, lit, groundRise(scene, point), glows);
      return lit;
    },
  };
}

/** What a caster leaves that takes nothing. */
const NOTHING: Part = { rays: new Int32Array(0), left: new Float64Array(0) };

/** @param alone what is left of each ray behind the caster alone @param clear the same with nothing in the way */
function partOf(alone: Float64Array, clear: Float64Array): Part | null {
  let count = 0;
  for (let k = 0; k < alone.length; k++) if (alone[k] !== clear[k]) count++;
  if (count === 0) return null;
  const part = { rays: new Int32Array(count), left: new Float64Array(count) };
  for (let k = 0, n = 0; n < count; k++) {
    if (alone[k] === clear[k]) continue;
    part.rays[n] = k;
    part.left[n++] = alone[k];
  }
  return part;
}

/** What lets less through than this is not taken away from a share by division. */
const LEAST_DIVISOR = 1e-3;

/**
 * Exchanges in a point's shares what a caster let through before for what it lets through now.
 * @param into receives the shares; of rays marked in `isAnew` what the caster alone leaves
 * @returns whether any is another, and whether any is marked
 */
function exchange(
  now: Float64Array,
  { rays, left }: Part,
  clear: Float64Array,
  was: Float64Array,
  into: Float64Array,
  isAnew: Uint8Array,
): { readonly any: boolean; readonly anew: boolean } {
  let any = false;
  let anew = false;
  for (let k = 0, n = 0; k < now.length; k++) {
    const before = rays[n] === k ? left[n++] : clear[k];
    isAnew[k] = 0;
    if (now[k] === before) {
      into[k] = was[k];
      continue;
    }
    any = true;
    if (before >= LEAST_DIVISOR) into[k] = (was[k] / before) * now[k];
    else {
      into[k] = now[k];
      isAnew[k] = 1;
      anew = true;
    }
  }
  return { any, anew };
}

function sceneOf(scene: Scene, only: string): Scene {
  return { ...scene, states: scene.states.map((occluders) => occluders.filter(({ id }) => id === only)) };
}

/** Whether it is a wall or building that stands near enough for its shine to tell. */
export function shinesOn(feature: Feature, [x, y]: SpacePoint): boolean {
  if (feature.kind === 'wall') return distanceToPath([x, y], feature.path) < SHINES_AS_FAR;
  return feature.kind === 'building' && distanceToEdge([x, y], feature.outline) < SHINES_AS_FAR;
}
