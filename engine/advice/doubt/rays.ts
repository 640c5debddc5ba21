/**
 * Harm to a yard's plants, cast with rays at the plants' points, and again for a plan in which one input is off.
 * Where a single shadow caster changed, its own rays are cast and everything else is reused.
 */

import { createSharedLeaves } from '../../load/leaf/heat-day.ts';
import type { Watering } from '../../load/leaf/leaf.ts';
import { createWallsRound, ONE_RAY_IN, type WallsRound } from '../../load/leaf/walls/walls-round.ts';
import type { Outcome } from '../../load/types.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { Kept } from '../../plan/kept.ts';
import type { Feature, Plan } from '../../plan/types.ts';
import { buildScene, sceneOfOne } from '../../scene/build.ts';
import { sceneLike, sceneOf } from '../../scene/scene-of.ts';
import { shelterOf } from '../../scene/shelter.ts';
import type { Scene } from '../../scene/solids.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { type Heats, heatsOf } from './heats.ts';
import { type Judge, judgesOf, judgeUnder } from './judges.ts';
import { createLighter, type Lit } from './light.ts';
import { createPartedLighter, type PartedLighter, shinesOn } from './parted-light.ts';
import { dosesAt, harmFrom, lightOf, type RayHarm, type Suffered, sufferedAt, sufferedIn } from './suffered.ts';

export interface RayYard {
  readonly base: readonly RayHarm[];
  /**
   * The same plants in the same order when the plan is this one instead: it differs from the yard's in one input, a
   * feature's if one is named.
   * @param alike plants that are told as they are where all yards that have them in common tell the same of them
   */
  under(shifted: Plan, feature: string | null, alike?: ReadonlySet<string>): Outcome<readonly RayHarm[]>;
  /** By plant: the same object in all yards in which its points get the very same light in the same air. */
  readonly light: ReadonlyMap<string, object>;
  /**
   * Harm to the same plants in the same order with other leaves: watered ones, or of another absorptance to sunlight.
   * [K·h/day]
   */
  withLeaves(watering: Watering, absorptance?: number): readonly number[];
}

/** What reaches point `p` of judge `k`. */
type See = (judge: Judge, k: number, p: number) => Lit;

/** The heat days of a plan that differs from the yard's in what does not stand in the way. */
type HeatsIn = (plan: Plan) => Outcome<Heats>;

/**
 * @param shareLeaves of all the yards that one question is about: they differ in their features and the heatwave's high
 *   alone
 * @returns the yard's plants that name their row, or why a heat day cannot be made
 */
export function createRayYard(plan: Plan, weather?: Weather, shareLeaves = createSharedLeaves()): Outcome<RayYard> {
  const scene = sceneOf(plan);
  const heatsIn: HeatsIn = (inPlan) => heatsOf(inPlan, scene, shareLeaves, weather);
  const heats = heatsIn(plan);
  if (!heats.ok) return heats;
  const drawn = drawnYard(plan, scene, heats.value);
  const value: RayYard = {
    base: drawn.base,
    under: (shifted, id, alike) => harmsUnder(drawn, shifted, id, heatsIn, alike),
    light: new Map(
      drawn.judges.map((judge, k) => [
        judge.feature.id,
        knownLight.of([...drawn.lit[k], judge.row, heats.value.air], String(judge.limit), () => ({})),
      ]),
    ),
    withLeaves: (watering, absorptance) =>
      drawn.judges.map(
        (judge, k) =>
          judge.points.reduce(
            (sum, _, p) => sum + dosesAt(drawn.heats, judge, drawn.lit[k][p], watering, absorptance),
            0,
          ) / judge.points.length,
      ),
  };
  return { ok: true, value };
}

const knownLight = new Kept<object>();

type DrawnYard = ReturnType<typeof drawnYard>;

/** How yards were last lit, for those that are held against them. */
const drawnIn = new WeakMap<Scene, { readonly walls: WallsRound; readonly lighter: PartedLighter }>();

/** The yard as it is drawn: what reaches each point of each judge, what it suffers there, and what comes of it. */
function drawnYard(plan: Plan, scene: Scene, heats: Heats) {
  const like = drawnIn.get(scene) ?? drawnIn.get(sceneLike(scene) ?? scene);
  const walls = createWallsRound(scene, { like: like?.walls }, ONE_RAY_IN);
  const lighter = createPartedLighter(scene, heats.rays, walls, like?.lighter);
  drawnIn.set(scene, { walls, lighter });
  const judges = judgesOf(plan, heats);
  const lit = judges.map(({ points, own }) => points.map((point) => lighter.at(point, own)));
  const suffered = judges.map((judge, k) => judge.points.map((_, p) => sufferedIn(heats, judge, lit[k][p])));
  const base = judges.map((judge, k) => harmFrom(judge, suffered[k], lightOf(heats, lit[k][0])));
  return {
    plan,
    scene,
    shelter: shelterOf(plan).shelter,
    heats,
    walls,
    lighter,
    /** For points that are not as drawn in a scene that is. */
    standing: createLighter(scene, heats.rays, walls),
    judges,
    lit,
    suffered,
    base,
  };
}

/** What a point of a judge suffers, and the light there; `null`: both as drawn. */
type Tell = (judge: Judge, k: number, p: number) => Told | null;

interface Told {
  readonly suffered: Suffered;
  readonly light: number;
}

/** Harm where plants, what reaches them or the heat differ; only points at which something changed are judged again. */
function harmsAgain(drawn: DrawnYard, again: readonly Judge[], tell: Tell): RayHarm[] {
  return again.map((judge, k) => {
    const told = judge.points.map((_, p) => tell(judge, k, p));
    if (told.every((each) => each === null)) return drawn.base[k];
    return harmFrom(
      judge,
      told.map((each, p) => each?.suffered ?? drawn.suffered[k][p]),
      told[0]?.light ?? drawn.base[k].light,
    );
  });
}

function tellBy(drawn: DrawnYard, see: See, by = drawn.heats): Tell {
  return (judge, k, p) => {
    const asDrawn = drawn.lit[k][p];
    const seen = see(judge, k, p);
    if (seen === asDrawn && judge === drawn.judges[k] && by === drawn.heats) return null;
    return {
      suffered: seen === asDrawn ? sufferedIn(by, judge, asDrawn) : sufferedAt(by, judge, seen),
      light: p === 0 ? lightOf(drawn.heats, seen) : drawn.base[k].light,
    };
  };
}

const NONE: ReadonlySet<string> = new Set();

function harmsUnder(
  drawn: DrawnYard,
  shifted: Plan,
  id: string | null,
  heatsIn: HeatsIn,
  alike = NONE,
): Outcome<readonly RayHarm[]> {
  const { plan, heats, judges, lit } = drawn;
  const asDrawn: See = (_, k, p) => lit[k][p];
  if (shifted.climate !== plan.climate || shifted.site.shelter !== plan.site.shelter) {
    const hot = heatsIn(shifted);
    if (!hot.ok) return hot;
    return { ok: true, value: harmsAgain(drawn, judges, tellOthers(alike, tellBy(drawn, asDrawn, hot.value))) };
  }
  const feature = id === null ? undefined : shifted.features.find((each) => each.id === id);
  if (feature !== undefined) return harmsUnderFeature(drawn, shifted, feature, heatsIn, alike);
  const again = judgesOf(shifted, heats);
  const tell =
    shifted.site === plan.site ? tellOthers(alike, tellBy(drawn, asDrawn)) : tellBy(drawn, seeTurned(drawn, shifted));
  return { ok: true, value: harmsAgain(drawn, again, tell) };
}

function tellOthers(alike: ReadonlySet<string>, tell: Tell): Tell {
  return (judge, k, p) => (alike.has(judge.feature.id) ? null : tell(judge, k, p));
}

function harmsUnderFeature(
  drawn: DrawnYard,
  shifted: Plan,
  feature: Feature,
  heatsIn: HeatsIn,
  alike: ReadonlySet<string>,
): Outcome<readonly RayHarm[]> {
  const { scene, heats, judges } = drawn;
  // Walls that come or go may change how sheltered the yard is.
  const isAsSheltered = shelterOf(shifted).shelter === drawn.shelter;
  const sheltered: Outcome<Heats> = isAsSheltered ? { ok: true, value: heats } : heatsIn(shifted);
  if (!sheltered.ok) return sheltered;
  const by = sheltered.value;
  const again = judges.map((judge) => judgeUnder(shifted, heats, judge, feature));
  const tell = castsShadow(scene, feature)
    ? tellOnce(drawn, feature, by, alike, tellBy(drawn, seeExchanged(drawn, shifted, feature, again), by))
    : tellBy(drawn, seeStanding(drawn), by);
  return { ok: true, value: harmsAgain(drawn, again, tell) };
}

const knownTold = new Kept<{ readonly told: Told | null }>();

/**
 * Of a plant as drawn, in light that other yards share: with one feature exchanged for the same it suffers the same in
 * all of them, but where the feature is a wall near by, whose shine hangs on all that stands before it.
 */
function tellOnce(
  { judges, lit, heats }: DrawnYard,
  feature: Feature,
  by: Heats,
  alike: ReadonlySet<string>,
  tell: Tell,
): Tell {
  const exchanged = JSON.stringify(feature);
  return (judge, k, p) => {
    if (by !== heats || judge !== judges[k] || shinesOn(feature, judge.points[p])) return tell(judge, k, p);
    if (alike.has(judge.feature.id)) return null;
    const of = [lit[k][p], judge.row, by.air];
    return knownTold.of(of, `${judge.limit} ${exchanged}`, () => ({ told: tell(judge, k, p) })).told;
  };
}

/** North lies elsewhere, and all else as drawn. */
function seeTurned({ scene, heats }: DrawnYard, shifted: Plan): See {
  const sceneTurned = { ...scene, upBearing: upBearingOf(shifted) };
  const turned = createLighter(sceneTurned, heats.rays, createWallsRound(sceneTurned, {}, ONE_RAY_IN));
  return ({ points, own }, _, p) => turned.at(points[p], own);
}

/** Nothing that casts a shadow changes: plants alone may stand elsewhere. */
function seeStanding({ judges, lit, standing }: DrawnYard): See {
  return (judge, k, p) => (judge === judges[k] ? lit[k][p] : standing.at(judge.points[p], judge.own));
}

/** One caster of shadow is another. */
function seeExchanged(drawn: DrawnYard, shifted: Plan, feature: Feature, again: readonly Judge[]): See {
  const { judges, lit, heats } = drawn;
  const scene = buildScene(shifted);
  const walls = createWallsRound(scene, { near: drawn.walls }, ONE_RAY_IN);
  const relighter = drawn.lighter.exchanging(feature, walls);
  const afresh = again.some((judge, k) => judge !== judges[k]) ? createLighter(scene, heats.rays, walls) : null;
  return (judge, k, p) =>
    judge !== judges[k] && afresh
      ? afresh.at(judge.points[p], judge.own)
      : relighter.at(judge.points[p], lit[k][p], judge.own);
}

/** Whether a feature stands in anything's way, as drawn or as it would be: a plant may grow tall enough to. */
function castsShadow(scene: Scene, shifted: Feature): boolean {
  const asDrawn = scene.states.some((occluders) => occluders.some(({ id }) => id === shifted.id));
  return asDrawn || sceneOfOne(scene, shifted).states.some((occluders) => occluders.length > 0);
}
