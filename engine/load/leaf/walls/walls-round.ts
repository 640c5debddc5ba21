/**
 * What the walls and buildings round a point throw on it: light, and the glow of what the sun has warmed.
 *
 * They take the place of the sky and of the ground behind them. Of the sky's 577 rays and the same 577 mirrored
 * downwards, ended by the ground, each that meets such a face before anything else brings ρ·E of light and the glow of
 * a face at the air's temperature plus (1 − ρ)·E/17 (sol-air temperature, 17 W/m²K: ASHRAE, from memory), E what shines
 * on the face there: the beam that reaches it and half of the sky's light.
 */

import { Faces } from '../../../scene/faces/faces.ts';
import type { ClothSheet, Scene, Solid } from '../../../scene/solids.ts';
import type { HeatDay } from '../heat-day.ts';
import { CastLights } from './cast-lights.ts';
import { GlowFinder, type LightsOn, type WallGlows } from './glows.ts';
import { LitDays } from './lit-days.ts';
import { ViewFinder } from './view-finder.ts';
import { type WallsUnder, wallsUnder } from './walls-under.ts';

/** Faces are lit patch by patch, no wider or higher than this. [m] */
const PATCH = 0.25;
/** Where a yard's walls have more patches, they are made larger: work stays bounded. A yard of a house has 15,000. */
const MOST_PATCHES = 20_000;
/** Where a yard's walls have more sides, fewer rays are looked along, in the same measure. A yard of a house has 60. */
const MANY_SIDES = 150;

/** Lights of so many sets of days are kept, the last ones asked for. */
const MOST_LIGHTS = 6;

export interface WallsRound extends WallGlows {
  /** The walls of the same yard with further cloth in it, that hangs all year. */
  under(sheets: readonly ClothSheet[]): WallsUnder;
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

/** The lights of some days; those that nobody asked for yet are cast together from now on. */
function lightsAmong(
  all: CastLights[],
  heats: readonly HeatDay[],
  cast: (days: LitDays) => CastLights,
  scene: Scene,
): ReturnType<LightsOn> {
  const lightsOf = (heat: HeatDay) => all.find(({ days }) => days.firstOf(heat) >= 0);
  const fresh = heats.filter((heat) => !lightsOf(heat));
  if (fresh.length > 0) all.push(cast(new LitDays(scene, fresh)));
  const found = heats.flatMap((heat) => {
    const lights = lightsOf(heat);
    return lights ? [{ lights, first: lights.days.firstOf(heat) }] : [];
  });
  if (all.length > MOST_LIGHTS)
    all.splice(
      all.findIndex((each) => !found.some(({ lights }) => lights === each)),
      1,
    );
  return found;
}
