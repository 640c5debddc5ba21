/**
 * What the walls and buildings round a point throw on it: light, and the glow of what the sun has warmed.
 *
 * They take the place of the sky and of the ground behind them. Of the sky's 577 rays and the same 577 mirrored
 * downwards, ended by the ground, each that meets such a face before anything else brings ρ·E of light and the glow of
 * a face at the air's temperature plus (1 − ρ)·E/17 (sol-air temperature, 17 W/m²K: ASHRAE, from memory), E what shines
 * on the face there: the beam that reaches it and half of the sky's light.
 */
import type { SpacePoint } from '../../../plan/geometry/shapes.ts';
import { Faces } from '../../../scene/faces.ts';
import type { ClothSheet, OwnCrown, Scene } from '../../../scene/solids.ts';
import type { HeatDay } from '../heat-day.ts';
import type { WallGlow } from '../surroundings.ts';
import { CastLights, type FaceLights, LightsUnder, LitDays } from './face-light.ts';
import { partOf, type View, ViewFinder, type Views, ViewsUnder } from './wall-views.ts';

/** Faces are lit patch by patch, no wider or higher than this. [m] */
const PATCH = 0.25;
/** Where a yard's walls have more patches, they are made larger: work stays bounded. A yard of a house has 15,000. */
const MOST_PATCHES = 20_000;
/** Where a yard's walls have more sides, fewer rays are looked along, in the same measure. A yard of a house has 60. */
const MANY_SIDES = 150;

export interface WallsRound {
  /** @param own the plant's own crown, in the way of this point alone; `null` where no wall or building is in view */
  at(heat: HeatDay, point: SpacePoint, own?: OwnCrown): WallGlow | null;
  /** The same on some heat days at once, whose light on the walls is cast together. */
  on(heats: readonly HeatDay[], point: SpacePoint, own?: OwnCrown): (WallGlow | null)[];
  /** What each wall or building in view throws alone, by its id: together it is what `at` tells. */
  each(heat: HeatDay, point: SpacePoint, own?: OwnCrown): ReadonlyMap<string, WallGlow>;
  /** The walls of the same yard with further cloth in it, that hangs all year. */
  under(sheets: readonly ClothSheet[]): WallsUnder;
}

/** Where cloth changes nothing for a point it has the very glow that it has without. */
export interface WallsUnder extends Omit<WallsRound, 'under'> {
  /** As `on`, worked out from what is another than without the cloth: the same but for rounding, and cheaper. */
  changedOn(heats: readonly HeatDay[], point: SpacePoint, own?: OwnCrown): (WallGlow | null)[];
}

const NO_WALLS: WallsUnder & WallsRound = {
  at: () => null,
  on: (heats) => heats.map(() => null),
  changedOn: (heats) => heats.map(() => null),
  each: () => new Map(),
  under: () => NO_WALLS,
};

/** Where many places or shifts are asked about, walls are looked for along one ray in so many. */
export const ONE_RAY_IN = 5;

/** How the faces of yards that were looked at are lit, so that one that differs in little need not be cast anew. */
const known = new WeakMap<WallsRound, (days: LitDays) => CastLights | undefined>();

/**
 * Lays a yard's faces out once; patches are lit when they are first looked at.
 * @param like the walls of a yard that differs in little: light on patches that stand as they do there is not cast anew
 * @param every of the rays looked along: all, where nothing is said; each of fewer counts for as many
 */
export function createWallsRound(scene: Scene, like?: WallsRound, every = 1): WallsRound {
  // As much coarser as the rays are fewer.
  const faces = boundedFaces(scene, PATCH * Math.sqrt(every));
  if (faces.none) return NO_WALLS;
  const thinned = every * Math.max(1, Math.round(faces.sideCount / MANY_SIDES));
  const views = new ViewFinder(scene, faces, thinned);
  const all: CastLights[] = [];
  const likeOf = like && known.get(like);
  const lightsOn: LightsOn = (heats) =>
    lightsAmong(all, heats, (days) => new CastLights(scene, faces, days, likeOf?.(days)), scene);
  const glows = new GlowFinder(faces, views, lightsOn);
  const walls: WallsRound = {
    at: (heat, point, own) => glows.on([heat], point, own)[0],
    on: (heats, point, own) => glows.on(heats, point, own),
    each: (heat, point, own) => glows.each(heat, point, own),
    under: (sheets) => wallsUnder(faces, views, lightsOn, glows, sheets),
  };
  known.set(walls, (days) => all.find((lights) => lights.days.isLike(days)));
  return walls;
}

function boundedFaces(scene: Scene, least: number): Faces {
  for (let size = least; ; size *= 2) {
    const faces = new Faces(scene.states[0] ?? [], size);
    if (faces.count <= Math.max(MOST_PATCHES, 4 * faces.sideCount)) return faces;
  }
}

/** How patches are lit on a day, among the days that were cast with it, and index of its first sample there. */
interface DayLights {
  readonly lights: FaceLights;
  readonly first: number;
}
type LightsOn = (heats: readonly HeatDay[]) => readonly DayLights[];

/** Days that nobody asked for yet are cast together from now on. */
function lightsAmong(
  all: CastLights[],
  heats: readonly HeatDay[],
  cast: (days: LitDays) => CastLights,
  scene: Scene,
): DayLights[] {
  const lightsOf = (heat: HeatDay) => all.find(({ days }) => days.firstOf(heat) >= 0);
  const fresh = heats.filter((heat) => !lightsOf(heat));
  if (fresh.length > 0) all.push(cast(new LitDays(scene, fresh)));
  return heats.flatMap((heat) => {
    const lights = lightsOf(heat);
    return lights ? [{ lights, first: lights.days.firstOf(heat) }] : [];
  });
}

/** Adds up what views bring, each once. */
class GlowFinder {
  private readonly faces: Faces;
  private readonly views: Views;
  private readonly lightsOn: LightsOn;
  private readonly known = new WeakMap<View, Map<HeatDay['samples'], WallGlow>>();

  constructor(faces: Faces, views: Views, lightsOn: LightsOn) {
    this.faces = faces;
    this.views = views;
    this.lightsOn = lightsOn;
  }

  on(heats: readonly HeatDay[], point: SpacePoint, own?: OwnCrown): (WallGlow | null)[] {
    const days = this.lightsOn(heats);
    return heats.map((heat, d) => {
      const view = this.views.from(point, heat.state, own);
      return view.patches.length === 0 ? null : this.glow(view, heat, days[d]);
    });
  }

  each(heat: HeatDay, point: SpacePoint, own?: OwnCrown): Map<string, WallGlow> {
    const { faces } = this;
    const view = this.views.from(point, heat.state, own);
    const [day] = this.lightsOn([heat]);
    const ids = new Set(Array.from(view.patches, (index) => faces.patch(index).id));
    return new Map([...ids].map((id) => [id, glowOf(partOf(view, faces, id), faces, day, heat)]));
  }

  private glow(view: View, heat: HeatDay, day: DayLights): WallGlow {
    const { samples } = heat;
    let glows = this.known.get(view);
    if (!glows) this.known.set(view, (glows = new Map()));
    let glow = glows.get(samples);
    if (!glow) glows.set(samples, (glow = glowOf(view, this.faces, day, heat)));
    return glow;
  }
}

function wallsUnder(
  faces: Faces,
  views: ViewFinder,
  lightsOn: LightsOn,
  bare: GlowFinder,
  sheets: readonly ClothSheet[],
): WallsUnder {
  const viewsNow = new ViewsUnder(views, sheets);
  const dimmed = new Map<FaceLights, LightsUnder>();
  const lightsNow: LightsOn = (heats) =>
    lightsOn(heats).map(({ lights, first }) => {
      let now = dimmed.get(lights);
      if (!now) dimmed.set(lights, (now = new LightsUnder(lights, faces, sheets)));
      return { lights: now, first };
    });
  const glows = new GlowFinder(faces, viewsNow, lightsNow);
  const isAsBare = (view: View, days: readonly DayLights[], daysNow: readonly DayLights[]): boolean =>
    view.patches.every((patch) => days.every(({ lights }, d) => lights.of(patch) === daysNow[d].lights.of(patch)));
  const on =
    (changed: boolean): WallsRound['on'] =>
    (heats, point, own) => {
      const [days, daysNow] = [lightsOn(heats), lightsNow(heats)];
      return heats.map((heat, d) => {
        const view = views.from(point, heat.state, own);
        const viewNow = viewsNow.from(point, heat.state, own);
        const [glow] = bare.on([heat], point, own);
        if (glow === null || (view === viewNow && isAsBare(view, [days[d]], [daysNow[d]]))) return glow;
        if (!changed) return glows.on([heat], point, own)[0];
        return changedGlow(glow, faces, view, viewNow, days[d], daysNow[d]);
      });
    };
  return {
    at: (heat, point, own) => on(false)([heat], point, own)[0],
    on: on(false),
    changedOn: on(true),
    each: (heat, point, own) => glows.each(heat, point, own),
  };
}

function glowOf({ patches, up, down }: View, faces: Faces, { lights, first }: DayLights, { moments }: HeatDay) {
  const light = new Float64Array(moments.length);
  const above = new Float64Array(moments.length);
  const below = new Float64Array(moments.length);
  const glow = { sky: 0, ground: 0, light, above, below };
  for (let n = 0; n < patches.length; n++) {
    const { on, glow: warm } = lights.of(patches[n]);
    const bright = (up[n] + down[n]) * faces.patch(patches[n]).reflects;
    glow.sky += up[n];
    glow.ground += down[n];
    for (let k = 0; k < light.length; k++) {
      light[k] += bright * on[first + k];
      above[k] += up[n] * warm[first + k];
      below[k] += down[n] * warm[first + k];
    }
  }
  return glow;
}

/** A glow, and what of its patches is hidden or lit otherwise now. */
function changedGlow(
  bare: WallGlow,
  faces: Faces,
  before: View,
  now: View,
  { lights, first }: DayLights,
  { lights: lightsNow }: DayLights,
): WallGlow | null {
  if (now.patches.length === 0) return null;
  const light = bare.light.slice();
  const above = bare.above.slice();
  const below = bare.below.slice();
  const glow = { sky: bare.sky, ground: bare.ground, light, above, below };
  const places = now === before ? null : new Map(Array.from(now.patches, (patch, n) => [patch, n]));
  for (let n = 0; n < before.patches.length; n++) {
    const patch = before.patches[n];
    const at = places === null ? n : places.get(patch);
    const [up, down] = [before.up[n], before.down[n]];
    const [upNow, downNow] = at === undefined ? [0, 0] : [now.up[at], now.down[at]];
    const [was, is] = [lights.of(patch), lightsNow.of(patch)];
    if (was === is && up === upNow && down === downNow) continue;
    const { reflects } = faces.patch(patch);
    const [bright, brightNow] = [reflects * (up + down), reflects * (upNow + downNow)];
    glow.sky += upNow - up;
    glow.ground += downNow - down;
    for (let k = 0; k < light.length; k++) {
      light[k] += brightNow * is.on[first + k] - bright * was.on[first + k];
      above[k] += upNow * is.glow[first + k] - up * was.glow[first + k];
      below[k] += downNow * is.glow[first + k] - down * was.glow[first + k];
    }
  }
  return glow;
}
