/**
 * What the walls and buildings round a point throw on it: light, and the glow of what the sun has warmed.
 *
 * They take the place of the sky and of the ground behind them. Of the sky's 577 rays and the same 577 mirrored
 * downwards, ended by the ground, each that meets such a face before anything else brings ρ·E of light and the glow of
 * a face at the air's temperature plus (1 − ρ)·E/17 (sol-air temperature, 17 W/m²K: ASHRAE, from memory), E what shines
 * on the face there: the beam that reaches it and half of the sky's light.
 */
import { createPointCaster, type PointCaster } from '../../cast/points/point-caster.ts';
import { skyRays } from '../../cast/sky.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import { isNear, type Reach, reachOf, standsBetween } from '../../scene/between.ts';
import { planDirection } from '../../scene/direction.ts';
import { type FacePatch, Faces } from '../../scene/faces.ts';
import type { OwnCrown, Scene, ClothSheet, Solid } from '../../scene/solids.ts';
import type { HeatDay } from './heat-day.ts';
import type { WallGlow } from './surroundings.ts';
import { faceGlow, SKY_ON_FACE } from './wall-light.ts';

/** Faces are lit patch by patch, no wider or higher than this. [m] */
const PATCH = 0.25;
/** Where a yard's walls have more patches, they are made larger: work stays bounded. A yard of a house has 15,000. */
const MOST_PATCHES = 20_000;
/** Where a yard's walls have more sides, fewer rays are looked along, in the same measure. A yard of a house has 60. */
const MANY_SIDES = 150;
/** A face is looked at so far out of it. [m] */
const OUTSIDE = 0.01;

/** The patches that a point's rays end on: their numbers, and their weights from above and from below. */
interface View {
  readonly patches: Int32Array;
  readonly up: Float64Array;
  readonly down: Float64Array;
}

export interface WallsRound {
  /** @param own the plant's own crown, in the way of this point alone; `null` where no wall or building is in view */
  at(heat: HeatDay, point: SpacePoint, own?: OwnCrown): WallGlow | null;
  /** What each wall or building in view throws alone, by its id: together it is what `at` tells. */
  each(heat: HeatDay, point: SpacePoint, own?: OwnCrown): ReadonlyMap<string, WallGlow>;
  /** The walls of the same yard with further cloth in it, that hangs all year. @param scene with the cloth */
  under(scene: Scene, sheets: readonly ClothSheet[]): WallsRound;
}

const NO_WALLS: WallsRound = { at: () => null, each: () => new Map(), under: () => NO_WALLS };

/** What reaches a patch, what shines on it [W/m²] and its longwave [W/m²], one value a sample. */
interface PatchLight {
  readonly shares: Float64Array;
  readonly on: Float64Array;
  readonly glow: Float64Array;
}

/** Light by day and by patch. */
type DayLights = WeakMap<HeatDay['samples'], (PatchLight | undefined)[]>;

/** Gives the shares of the beam that reach a patch on a day. */
type Reaching = (heat: HeatDay, index: number, out: SpacePoint) => Float64Array;

/** How the faces of yards that were looked at are lit, so that one that differs in little need not be cast anew. */
const known = new WeakMap<WallsRound, (samples: HeatDay['samples'], key: string) => PatchLight | undefined>();

/** Where many places or shifts are asked about, walls are looked for along one ray in so many. */
export const ONE_RAY_IN = 5;

/**
 * Lays a yard's faces out once; patches are lit when they are first looked at.
 * @param like the walls of a yard that differs in little: light on patches that stand as they do there is not cast anew
 * @param every of the rays looked along: all, where nothing is said; each of fewer counts for as many
 */
export function createWallsRound(scene: Scene, like?: WallsRound, every = 1): WallsRound {
  const faces = boundedFaces(scene);
  if (faces.none) return NO_WALLS;
  const casters = new WeakMap<HeatDay['samples'], PointCaster>();
  const reaching: Reaching = ({ samples, passes }, _, out) => {
    let caster = casters.get(samples);
    if (!caster) casters.set(samples, (caster = createPointCaster(scene, passes)));
    return caster.sharesAt(out);
  };
  const thinned = every * Math.max(1, Math.round(faces.sideCount / MANY_SIDES));
  return wallsOf(scene, faces, thinned, reaching, like && known.get(like));
}

function boundedFaces(scene: Scene): Faces {
  for (let size = PATCH; ; size *= 2) {
    const faces = new Faces(scene.states[0] ?? [], size);
    if (faces.count <= Math.max(MOST_PATCHES, 4 * faces.sideCount)) return faces;
  }
}

function wallsOf(
  scene: Scene,
  faces: Faces,
  every: number,
  reaching: Reaching,
  elsewhere?: (samples: HeatDay['samples'], key: string) => PatchLight | undefined,
): WallsRound {
  const views = new ViewFinder(scene, faces, every);
  const days: DayLights = new WeakMap();
  const byKey = new WeakMap<HeatDay['samples'], Map<string, PatchLight>>();
  const lightOf = (heat: HeatDay, index: number): PatchLight => {
    const { samples } = heat;
    let lights = days.get(samples);
    if (!lights) days.set(samples, (lights = []));
    let light = lights[index];
    if (light) return light;
    const patch = faces.patch(index);
    const out = outOf(patch);
    light = elsewhere?.(samples, patch.key) ?? litPatch(patch, scene, heat, reaching(heat, index, out));
    lights[index] = light;
    let keyed = byKey.get(samples);
    if (!keyed) byKey.set(samples, (keyed = new Map()));
    keyed.set(patch.key, light);
    return light;
  };
  const walls: WallsRound = {
    at(heat, point, own) {
      const view = views.from(point, heat.state, own);
      return view.patches.length === 0 ? null : glowOf(view, faces, (index) => lightOf(heat, index), heat);
    },
    each(heat, point, own) {
      const view = views.from(point, heat.state, own);
      const ids = new Set(Array.from(view.patches, (index) => faces.patch(index).id));
      return new Map(
        [...ids].map((id) => [id, glowOf(partOf(view, faces, id), faces, (index) => lightOf(heat, index), heat)]),
      );
    },
    under(scene, sheets) {
      const dimmed: Reaching = (heat, index, out) => {
        const shares = lightOf(heat, index).shares.slice();
        heat.caster.dim(out, sheets, shares);
        return shares;
      };
      return wallsOf(scene, faces, every, dimmed);
    },
  };
  known.set(walls, (samples, key) => byKey.get(samples)?.get(key));
  return walls;
}

/** Finds what patches of faces a point looks on. */
class ViewFinder {
  private readonly faces: Faces;
  /** All that hides a face without being one, by yearly state. */
  private readonly others: readonly { readonly id: string; readonly solid: Solid; readonly reach: Reach }[][];
  /** Of the sky's rays, 3 numbers each. */
  private readonly directions: Float64Array;
  private readonly known = new Map<string, View>();
  /** Sums by patch, emptied after each view. */
  private readonly up: Float64Array;
  private readonly down: Float64Array;
  /** Where the ray at hand meets a face, and its way upward. */
  private readonly met: [number, number, number] = [0, 0, 0];
  private readonly upward: [number, number, number] = [0, 0, 1];
  private readonly every: number;

  constructor(scene: Scene, faces: Faces, every: number) {
    this.faces = faces;
    this.every = every;
    this.up = new Float64Array(faces.count);
    this.down = new Float64Array(faces.count);
    this.others = scene.states.map((occluders) =>
      occluders.flatMap(({ id, solids }) =>
        solids
          .filter((solid) => !('reflects' in solid) || solid.reflects === null)
          .map((solid) => ({ id, solid, reach: reachOf(solid) })),
      ),
    );
    const { azimuth, altitude } = skyRays();
    this.directions = Float64Array.from(
      Array.from(azimuth, (bearing, k) => planDirection(bearing, altitude[k], scene.upBearing)).flat(),
    );
  }

  from(point: SpacePoint, state: number, own?: OwnCrown): View {
    const key = `${state} ${own?.of} ${point.join()}`;
    let view = this.known.get(key);
    if (!view) this.known.set(key, (view = this.look(point, state, own)));
    return view;
  }

  private look(point: SpacePoint, state: number, own?: OwnCrown): View {
    const { up, down, faces, directions } = this;
    const { weight } = skyRays();
    const [x, y, z] = point;
    const seen: number[] = [];
    for (let k = 0; k < weight.length; k += this.every) {
      const dx = directions[3 * k];
      const dy = directions[3 * k + 1];
      for (let way = 1; way >= -1; way -= 2) {
        const dz = way * directions[3 * k + 2];
        const patch = faces.meet(x, y, z, dx, dy, dz);
        if (patch < 0 || this.isHidden(point, dx, dy, dz, faces.reach, state, own)) continue;
        if (up[patch] === 0 && down[patch] === 0) seen.push(patch);
        if (way > 0) up[patch] += this.every * weight[k];
        else down[patch] += this.every * weight[k];
      }
    }
    const view = {
      patches: Int32Array.from(seen),
      up: Float64Array.from(seen, (patch) => up[patch]),
      down: Float64Array.from(seen, (patch) => down[patch]),
    };
    for (const patch of seen) up[patch] = down[patch] = 0;
    return view;
  }

  private isHidden(
    point: SpacePoint,
    dx: number,
    dy: number,
    dz: number,
    reach: number,
    state: number,
    own?: OwnCrown,
  ): boolean {
    const { met, upward } = this;
    met[0] = point[0] + reach * dx;
    met[1] = point[1] + reach * dy;
    met[2] = point[2] + reach * dz;
    const way = dz > 0 ? 1 : -1;
    upward[0] = way * dx;
    upward[1] = way * dy;
    upward[2] = way * dz;
    const lower = dz > 0 ? point : met;
    const upper = dz > 0 ? met : point;
    if (own !== undefined && standsBetween(own, lower, upper, upward)) return true;
    const others = this.others[state];
    for (let n = 0; n < others.length; n++) {
      const { id, solid, reach: near } = others[n];
      if (id !== own?.of && isNear(near, lower, upper) && standsBetween(solid, lower, upper, upward)) return true;
    }
    return false;
  }
}

function outOf({ middle, outward }: FacePatch): SpacePoint {
  return [middle[0] + OUTSIDE * outward[0], middle[1] + OUTSIDE * outward[1], middle[2] + OUTSIDE * outward[2]];
}

function litPatch({ outward, reflects }: FacePatch, scene: Scene, heat: HeatDay, shares: Float64Array): PatchLight {
  const { moments } = heat;
  const on = new Float64Array(shares.length);
  const glow = new Float64Array(shares.length);
  const sun = sunOf(scene, heat);
  for (let k = 0; k < on.length; k++) {
    const facing = outward[0] * sun[3 * k] + outward[1] * sun[3 * k + 1] + outward[2] * sun[3 * k + 2];
    const { beam, diffuse, air } = moments[k];
    on[k] = shares[k] * beam * Math.max(0, facing) + SKY_ON_FACE * diffuse;
    glow[k] = faceGlow(air, reflects, on[k]);
  }
  return { shares, on, glow };
}

/** Where the sun stands at each sample of a day, 3 numbers each; of one yard at a time. */
function sunOf(scene: Scene, { samples }: HeatDay): Float64Array {
  const known = suns.get(samples);
  if (known && known.upBearing === scene.upBearing) return known.sun;
  const sun = Float64Array.from(
    Array.from(samples.azimuth, (azimuth, k) => planDirection(azimuth, samples.altitude[k], scene.upBearing)).flat(),
  );
  suns.set(samples, { upBearing: scene.upBearing, sun });
  return sun;
}

const suns = new WeakMap<HeatDay['samples'], { readonly upBearing: number; readonly sun: Float64Array }>();

/** What of a view is one wall's or building's. */
function partOf({ patches, up, down }: View, faces: Faces, id: string): View {
  const its = (_: number, n: number) => faces.patch(patches[n]).id === id;
  return { patches: patches.filter(its), up: up.filter(its), down: down.filter(its) };
}

function glowOf(
  { patches, up, down }: View,
  faces: Faces,
  lightOf: (index: number) => PatchLight,
  { moments }: HeatDay,
): WallGlow {
  const light = new Float64Array(moments.length);
  const above = new Float64Array(moments.length);
  const below = new Float64Array(moments.length);
  let sky = 0;
  let ground = 0;
  for (let n = 0; n < patches.length; n++) {
    const { on, glow } = lightOf(patches[n]);
    const bright = (up[n] + down[n]) * faces.patch(patches[n]).reflects;
    const over = up[n];
    const under = down[n];
    sky += over;
    ground += under;
    for (let k = 0; k < on.length; k++) {
      light[k] += bright * on[k];
      above[k] += over * glow[k];
      below[k] += under * glow[k];
    }
  }
  return { sky, ground, light, above, below };
}
