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
import type { ClothSheet, OwnCrown, Scene, Solid } from '../../../scene/solids.ts';
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

/** The walls of another yard, to take from it what is the same. */
interface Others {
  /** In a yard that differs in little, as they are: all that may be another is asked anew. */
  readonly like?: WallsRound;
  /** In a yard that differs in little, as a guess: light on patches that stand as they do there is not cast anew. */
  readonly near?: WallsRound;
}

/** What was laid out of walls that were looked at; `null`: no wall stands. */
const known = new WeakMap<WallsRound, () => LaidOut | null>();

/**
 * Lays a yard's faces out when they are first looked at: many questions never ask for them. Patches are lit when they
 * are.
 * @param every of the rays looked along: all, where nothing is said; each of fewer counts for as many
 */
export function createWallsRound(scene: Scene, others: Others = {}, every = 1): WallsRound {
  let laid: WallsRound | null = null;
  let of: LaidOut | null = null;
  const round = (): WallsRound => {
    if (laid === null) {
      of = laidOut(scene, others, every);
      laid = of === null ? NO_WALLS : wallsOf(of);
    }
    return laid;
  };
  const walls: WallsRound = {
    at: (heat, point, own) => round().at(heat, point, own),
    on: (heats, point, own) => round().on(heats, point, own),
    each: (heat, point, own) => round().each(heat, point, own),
    under: (sheets) => round().under(sheets),
  };
  known.set(walls, () => of);
  return walls;
}

interface LaidOut {
  readonly faces: Faces;
  /** What throws light back, in its order: yards with the same have the same faces. */
  readonly shining: readonly Solid[];
  readonly views: ViewFinder;
  readonly lights: readonly CastLights[];
  readonly lightsOn: LightsOn;
  readonly glows: GlowFinder;
}

function laidOut(scene: Scene, others: Others, every: number): LaidOut | null {
  const shining = (scene.states[0] ?? []).flatMap(({ solids }) =>
    solids.filter((solid) => 'reflects' in solid && solid.reflects !== null),
  );
  const laid = others.like && known.get(others.like)?.();
  const like = laid && isSame(laid.shining, shining) ? laid : null;
  // As much coarser as the rays are fewer.
  const faces = like?.faces ?? new Faces(scene.states[0] ?? [], PATCH * Math.sqrt(every), MOST_PATCHES);
  if (faces.none) return null;
  const thinned = every * Math.max(1, Math.round(faces.sideCount / MANY_SIDES));
  const views = new ViewFinder(scene, faces, thinned, like?.views);
  const lights: CastLights[] = [];
  const near = others.near && known.get(others.near)?.();
  const lit = (days: LitDays): CastLights => {
    const alike =
      like?.lights.find((each) => each.days.isLike(days)) ??
      [...lights, ...(like?.lights ?? [])].find((each) => each.days.hasSunsOf(days));
    const nearly = near?.lights.find((each) => each.days.isLike(days));
    return new CastLights(scene, faces, days, alike, nearly);
  };
  const lightsOn: LightsOn = (heats) => lightsAmong(lights, heats, lit, scene);
  return { faces, shining, views, lights, lightsOn, glows: new GlowFinder(faces, views, lightsOn, like?.glows) };
}

function isSame(a: readonly Solid[], b: readonly Solid[]): boolean {
  return a.length === b.length && a.every((solid, n) => solid === b[n]);
}

function wallsOf({ faces, views, lightsOn, glows }: LaidOut): WallsRound {
  return {
    at: (heat, point, own) => glows.on([heat], point, own)[0],
    on: (heats, point, own) => glows.on(heats, point, own),
    each: (heat, point, own) => glows.each(heat, point, own),
    under: (sheets) => wallsUnder(faces, views, lightsOn, glows, sheets),
  };
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

/** What is thrown through all the days of some lights, and on each of them. */
class Glows {
  private readonly whole: WallGlow;
  private readonly byFirst = new Map<number, WallGlow>();

  constructor(whole: WallGlow) {
    this.whole = whole;
  }

  /** The part of one day, the same object each time. */
  on({ moments: { length } }: HeatDay, first: number): WallGlow {
    let glow = this.byFirst.get(first);
    if (!glow) {
      const { light, above, below } = this.whole;
      const part = (values: Float64Array) => values.subarray(first, first + length);
      glow = { ...this.whole, light: part(light), above: part(above), below: part(below) };
      this.byFirst.set(first, glow);
    }
    return glow;
  }

  /** A copy to be changed. */
  copy() {
    const { light, above, below, ...hidden } = this.whole;
    return { ...hidden, light: light.slice(), above: above.slice(), below: below.slice() };
  }
}

/** Adds up what views bring, each once. */
class GlowFinder {
  private readonly faces: Faces;
  private readonly views: Views;
  private readonly lightsOn: LightsOn;
  private readonly like: GlowFinder | undefined;
  private readonly known = new WeakMap<View, Map<FaceLights, Glows>>();

  /** @param like of a yard with the very same faces */
  constructor(faces: Faces, views: Views, lightsOn: LightsOn, like?: GlowFinder) {
    this.faces = faces;
    this.views = views;
    this.lightsOn = lightsOn;
    this.like = like;
  }

  on(heats: readonly HeatDay[], point: SpacePoint, own?: OwnCrown): (WallGlow | null)[] {
    const days = this.lightsOn(heats);
    return heats.map((heat, d) => {
      const view = this.views.from(point, heat.state, own);
      return view.patches.length === 0 ? null : this.glows(view, days[d].lights).on(heat, days[d].first);
    });
  }

  each(heat: HeatDay, point: SpacePoint, own?: OwnCrown): Map<string, WallGlow> {
    const { faces } = this;
    const view = this.views.from(point, heat.state, own);
    const [{ lights, first }] = this.lightsOn([heat]);
    const ids = new Set(Array.from(view.patches, (index) => faces.patch(index).id));
    return new Map([...ids].map((id) => [id, new Glows(glowOf(partOf(view, faces, id), lights)).on(heat, first)]));
  }

  glows(view: View, lights: FaceLights): Glows {
    let byLights = this.known.get(view);
    if (!byLights) this.known.set(view, (byLights = new Map()));
    let glows = byLights.get(lights);
    if (!glows) byLights.set(lights, (glows = this.asInLike(view, lights) ?? new Glows(glowOf(view, lights))));
    return glows;
  }

  /** What the yard that is like this one knows of the same view, where all its patches are lit as they are there. */
  private asInLike(view: View, lights: FaceLights): Glows | undefined {
    if (!(lights instanceof CastLights) || lights.like === undefined) return undefined;
    const glows = this.like?.known.get(view)?.get(lights.like);
    return glows && isLitAlike(view, lights.like, lights) ? glows : undefined;
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
  const under = (lights: FaceLights): LightsUnder => {
    let now = dimmed.get(lights);
    if (!now) dimmed.set(lights, (now = new LightsUnder(lights, faces, sheets)));
    return now;
  };
  const lightsNow: LightsOn = (heats) => lightsOn(heats).map(({ lights, first }) => ({ lights: under(lights), first }));
  const glows = new GlowFinder(faces, viewsNow, lightsNow);
  const walls: Omit<WallsUnder, 'at'> = {
    on(heats, point, own) {
      const days = lightsOn(heats);
      return heats.map((heat, d) => {
        const { lights, first } = days[d];
        const view = views.from(point, heat.state, own);
        if (view.patches.length === 0) return null;
        const asBare = viewsNow.from(point, heat.state, own) === view && isLitAlike(view, lights, under(lights));
        return asBare ? bare.glows(view, lights).on(heat, first) : glows.on([heat], point, own)[0];
      });
    },
    changedOn(heats, point, own) {
      const days = lightsOn(heats);
      const changed = new Map<View, Glows>();
      return heats.map((heat, d) => {
        const { lights, first } = days[d];
        const view = views.from(point, heat.state, own);
        if (view.patches.length === 0) return null;
        let now = changed.get(view);
        if (!now) {
          now = changedGlows(view, viewsNow, bare.glows(view, lights), lights, under(lights));
          changed.set(view, now);
        }
        return now.on(heat, first);
      });
    },
    each: (heat, point, own) => glows.each(heat, point, own),
  };
  return { ...walls, at: (heat, point, own) => walls.on([heat], point, own)[0] };
}

function isLitAlike({ patches }: View, lights: FaceLights, now: FaceLights): boolean {
  return patches.every((patch) => lights.of(patch) === now.of(patch));
}

function glowOf({ patches, up, down }: View, lights: FaceLights): WallGlow {
  const count = lights.days.moments.length;
  const light = new Float64Array(count);
  const above = new Float64Array(count);
  const below = new Float64Array(count);
  let [sky, ground] = [0, 0];
  for (let n = 0; n < patches.length; n++) {
    const { on, glow, reflects } = lights.of(patches[n]);
    const [over, under] = [up[n], down[n]];
    const bright = (over + under) * reflects;
    sky += over;
    ground += under;
    for (let k = 0; k < count; k++) {
      light[k] += bright * on[k];
      above[k] += over * glow[k];
      below[k] += under * glow[k];
    }
  }
  return { sky, ground, light, above, below };
}

/** A glow less what of its patches is hidden and what the cloth takes of their light; itself where neither is. */
function changedGlows(view: View, viewsNow: ViewsUnder, bare: Glows, lights: FaceLights, lightsNow: FaceLights): Glows {
  let changed: ReturnType<Glows['copy']> | null = null;
  const { patches, up, down } = view;
  for (let n = 0; n < patches.length; n++) {
    const was = lights.of(patches[n]);
    const now = lightsNow.of(patches[n]);
    if (was === now) continue;
    changed ??= bare.copy();
    const { light, above, below } = changed;
    const bright = (up[n] + down[n]) * was.reflects;
    for (let m = 0; m < now.dimmed.length; m++) {
      const k = now.dimmed[m];
      const cooler = now.glow[k] - was.glow[k];
      light[k] += bright * (now.on[k] - was.on[k]);
      above[k] += up[n] * cooler;
      below[k] += down[n] * cooler;
    }
  }
  viewsNow.hidden(view, (patch, lostUp, lostDown) => {
    changed ??= bare.copy();
    const { light, above, below } = changed;
    const { on, glow, reflects } = lightsNow.of(patch);
    const bright = (lostUp + lostDown) * reflects;
    changed.sky -= lostUp;
    changed.ground -= lostDown;
    for (let k = 0; k < on.length; k++) light[k] -= bright * on[k];
    if (lostUp > 0) for (let k = 0; k < on.length; k++) above[k] -= lostUp * glow[k];
    if (lostDown > 0) for (let k = 0; k < on.length; k++) below[k] -= lostDown * glow[k];
  });
  return changed === null ? bare : new Glows(changed);
}
