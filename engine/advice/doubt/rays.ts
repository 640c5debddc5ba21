/**
 * Harm to a yard's plants, cast with rays at the plants' points, and again for a plan in which one input is off.
 * Where a single shadow caster changed, its own rays are cast and everything else is reused.
 */
import { createWallsRound, ONE_RAY_IN } from '../../load/leaf/walls/walls-round.ts';
import { bedPlaces } from '../../load/verdict/bed-load.ts';
import { cellCenter } from '../../load/light/grid-of.ts';
import { createSharedLeaves, heatDayOf, heatDaysOf, type SharedLeaves } from '../../load/leaf/heat-day.ts';
import {
  gravest,
  type HeatVerdict,
  BURNS_FROM,
  heatVerdict,
  judgeLeaf,
  type Judgement,
  lasts,
  newJudgement,
} from '../../load/leaf/judge.ts';
import type { LeafDay } from '../../load/leaf/leaf-day.ts';
import type { Watering } from '../../load/leaf/leaf.ts';
import { limitOf } from '../../load/verdict/limit.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import type { Outcome } from '../../load/types.ts';
import { upBearingOf, worthOf } from '../../plan/defaults.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Bed, Feature, Plan, PlantRow } from '../../plan/types.ts';
import { buildScene, sceneOfOne } from '../../scene/build.ts';
import { shelterOf } from '../../scene/shelter.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import type { Weather } from '../../sun/weather.ts';
import { createLighter, createPartedLighter, type HeatRays, heatRaysOf, type Lit } from './light.ts';

/** A bed is judged at no more than this many of its cells, evenly spread. */
const BED_POINTS = 9;

/** What the season's heat does to one plant. */
export interface RayHarm {
  readonly judge: Judge;
  readonly id: string;
  readonly worth: number;
  /** Scorch dose, mean over the season's heat days. [K·h/day] */
  readonly harm: number;
  /** On the heatwave day, of its worst point. */
  readonly inHeat: HeatVerdict;
  /** Light on the heatwave day at its top, of a bed at its first point. */
  readonly light: DayLight;
}

interface DayLight {
  /** [h] */
  readonly sunHours: number;
  /** [Wh/m²] */
  readonly energy: number;
}

export interface RayYard {
  readonly base: readonly RayHarm[];
  /**
   * The same plants in the same order when the plan is this one instead: it differs from the yard's in one input, a
   * feature's if one is named.
   */
  under(shifted: Plan, feature: string | null): Outcome<readonly RayHarm[]>;
  /**
   * Harm to the same plants in the same order with other leaves: watered ones, or of another absorptance to sunlight.
   * [K·h/day]
   */
  withLeaves(watering: Watering, absorptance?: number): readonly number[];
}

/** A plant, and where it is judged: a plant's top first. */
export interface Judge {
  readonly feature: PlantFeature;
  readonly row: PlantRow;
  /** [°C] */
  readonly limit: number;
  readonly points: readonly SpacePoint[];
  readonly own?: OwnCrown;
}

/** The season's heat days, and which of them is the heatwave day. */
interface Heats {
  readonly rays: HeatRays;
  readonly heatwave: number;
}

/** What reaches point `p` of judge `k`. */
type See = (judge: Judge, k: number, p: number) => Lit;

/**
 * @param shareLeaves of all the yards that one question is about: they differ in their features and the heatwave's high
 *   alone
 * @returns the yard's plants that name their row, or why a heat day cannot be made
 */
export function createRayYard(plan: Plan, weather?: Weather, shareLeaves = createSharedLeaves()): Outcome<RayYard> {
  const scene = buildScene(plan);
  const heatsIn = (inPlan: Plan) => heatsOf(inPlan, scene, shareLeaves, weather);
  const heats = heatsIn(plan);
  if (!heats.ok) return heats;
  const { rays } = heats.value;
  const { shelter } = shelterOf(plan);
  const walls = createWallsRound(scene, undefined, ONE_RAY_IN);
  const lighter = createPartedLighter(scene, rays, walls);
  const standing = createLighter(scene, rays, walls);
  const judges = judgesOf(plan, heats.value);
  const lit = judges.map(({ points, own }) => points.map((point) => lighter.at(point, own)));
  const asDrawn: See = (_, k, p) => lit[k][p];
  const sufferedAsDrawn = judges.map((judge, k) =>
    judge.points.map((_, p) => sufferedAt(heats.value, judge, lit[k][p])),
  );
  const base = judges.map((judge, k) =>
    harmFrom(judge, sufferedAsDrawn[k], lightOf(heats.value, asDrawn(judge, k, 0))),
  );
  /** Only points at which something changed are judged again. */
  const harmsOf = (again: readonly Judge[], see: See, by: Heats = heats.value) =>
    again.map((judge, k) => {
      const alike = judge === judges[k] && by === heats.value;
      let { light } = base[k];
      let changed = !alike;
      const suffered = judge.points.map((_, p) => {
        const seen = see(judge, k, p);
        if (alike && seen === lit[k][p]) return sufferedAsDrawn[k][p];
        changed = true;
        if (p === 0) light = lightOf(heats.value, seen);
        return sufferedAt(by, judge, seen);
      });
      return changed ? harmFrom(judge, suffered, light) : base[k];
    });
  const value: RayYard = {
    base,
    withLeaves: (watering, absorptance) =>
      judges.map(
        (judge, k) =>
          judge.points.reduce((sum, _, p) => sum + dosesAt(heats.value, judge, lit[k][p], watering, absorptance), 0) /
          judge.points.length,
      ),
    under(shifted, id) {
      if (shifted.climate !== plan.climate || shifted.site.shelter !== plan.site.shelter) {
        const hot = heatsIn(shifted);
        return hot.ok ? { ok: true, value: harmsOf(judges, asDrawn, hot.value) } : hot;
      }
      const feature = id === null ? undefined : shifted.features.find((each) => each.id === id);
      if (feature === undefined) {
        const again = judgesOf(shifted, heats.value);
        if (shifted.site === plan.site) return { ok: true, value: harmsOf(again, asDrawn) };
        const sceneTurned = { ...scene, upBearing: upBearingOf(shifted) };
        const turned = createLighter(sceneTurned, rays, createWallsRound(sceneTurned, undefined, ONE_RAY_IN));
        return { ok: true, value: harmsOf(again, (judge, _, p) => turned.at(judge.points[p], judge.own)) };
      }
      // Walls that come or go may change how sheltered the yard is.
      const sheltered = shelterOf(shifted).shelter === shelter ? heats : heatsIn(shifted);
      if (!sheltered.ok) return sheltered;
      const again = judges.map((judge) => judgeUnder(shifted, heats.value, judge, feature));
      if (!castsShadow(scene, feature)) {
        return {
          ok: true,
          value: harmsOf(
            again,
            (judge, k, p) => (judge === judges[k] ? lit[k][p] : standing.at(judge.points[p], judge.own)),
            sheltered.value,
          ),
        };
      }
      const sceneNow = buildScene(shifted);
      const wallsNow = createWallsRound(sceneNow, walls, ONE_RAY_IN);
      const relighter = lighter.exchanging(feature, wallsNow);
      const afresh = again.some((judge, k) => judge !== judges[k]) ? createLighter(sceneNow, rays, wallsNow) : null;
      return {
        ok: true,
        value: harmsOf(
          again,
          (judge, k, p) =>
            judge !== judges[k] && afresh
              ? afresh.at(judge.points[p], judge.own)
              : relighter.at(judge.points[p], lit[k][p], judge.own),
          sheltered.value,
        ),
      };
    },
  };
  return { ok: true, value };
}

/** Whether a feature stands in anything's way, as drawn or as it would be: a plant may grow tall enough to. */
function castsShadow(scene: Scene, shifted: Feature): boolean {
  const asDrawn = scene.states.some((occluders) => occluders.some(({ id }) => id === shifted.id));
  return asDrawn || sceneOfOne(scene, shifted).states.some((occluders) => occluders.length > 0);
}

function heatsOf(plan: Plan, scene: Scene, shareLeaves: SharedLeaves, weather?: Weather): Outcome<Heats> {
  const days = heatDaysOf(plan, scene, weather);
  if (!days.ok) return days;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const rays = heatRaysOf(days.value.map(shareLeaves));
  return {
    ok: true,
    value: { rays, heatwave: days.value.findIndex(({ day }) => day.date === heatwave.value.day.date) },
  };
}

function judgesOf(plan: Plan, heats: Heats): Judge[] {
  return plantFeatures(plan).flatMap((feature): Judge[] => {
    const row = rowOf(plan, feature);
    return row ? [judgeOf(plan, heats, feature, row)] : [];
  });
}

function judgeOf(plan: Plan, { rays, heatwave }: Heats, feature: PlantFeature, row: PlantRow): Judge {
  const limit = limitOf(plan, feature, row, rays.days[heatwave].day.date).celsius;
  if (feature.kind === 'bed') return { feature, row, limit, points: bedPoints(plan, feature) };
  const { points, own } = plantPoints(plan, feature);
  return { feature, row, limit, points: points.map(({ point }) => point), own };
}

function bedPoints(plan: Plan, bed: Bed): SpacePoint[] {
  const places = bedPlaces(plan, bed);
  if ('point' in places) return [places.point];
  const { grid, indices } = places;
  const few = Math.min(BED_POINTS, indices.length);
  return Array.from({ length: few }, (_, n): SpacePoint => [
    ...cellCenter(grid, indices[Math.floor(((n + 0.5) * indices.length) / few)]),
    grid.height,
  ]);
}

/** The same judge where it is not about the feature that changed; a wall or a building may come to stand in a bed. */
function judgeUnder(shifted: Plan, heats: Heats, judge: Judge, changed: Feature): Judge {
  if (judge.feature.id === changed.id)
    return judgeOf(
      shifted,
      heats,
      plantFeatures(shifted).find(({ id }) => id === changed.id) ?? judge.feature,
      judge.row,
    );
  if (judge.feature.kind !== 'bed' || (changed.kind !== 'wall' && changed.kind !== 'building')) return judge;
  const again = judgeOf(shifted, heats, judge.feature, judge.row);
  return samePoints(again.points, judge.points) ? judge : again;
}

function samePoints(a: readonly SpacePoint[], b: readonly SpacePoint[]): boolean {
  return a.length === b.length && a.every((point, p) => point.every((value, axis) => value === b[p][axis]));
}

/** What the heat does at one point. */
interface Suffered {
  /** Scorch doses, mean over the heat days. [K·h/day] */
  readonly dose: number;
  readonly inHeat: HeatVerdict;
}

function sufferedAt(heats: Heats, judge: Judge, lit: Lit): Suffered {
  const { rays, heatwave } = heats;
  const longest = (watering: Watering, over: number) =>
    judgedOn(rays.days[heatwave].leaves(watering, judge.row), judge, lit, heatwave, over).longest;
  const thirsty = longest('thirsty', 0);
  // With water a leaf is never the hotter for it.
  const inHeat = heatVerdict(thirsty, lasts(thirsty) ? longest('watered', BURNS_FROM) : 0);
  return { dose: dosesAt(heats, judge, lit, 'thirsty'), inHeat };
}

/** Scorch doses, mean over the heat days. [K·h/day] */
function dosesAt({ rays }: Heats, judge: Judge, lit: Lit, watering: Watering, absorptance?: number): number {
  let doses = 0;
  for (let d = 0; d < rays.days.length; d++)
    doses += judgedOn(rays.days[d].leaves(watering, judge.row, absorptance), judge, lit, d).dose;
  return doses / rays.days.length;
}

const JUDGED = newJudgement();

/** Dose and time on end of one heat day; holds until the next question. @param over the limit, so much [K] */
function judgedOn(leaf: LeafDay, judge: Judge, { ofDay, around }: Lit, day: number, over = 0): Judgement {
  const limit = judge.limit + over;
  return judgeLeaf(leaf, ofDay[day], around[day], limit, leaf.hotSamples(limit), JUDGED);
}

/** A plant's harm is the mean of its points, what the heatwave day does to it that of the worst. */
function harmFrom(judge: Judge, points: readonly Suffered[], light: DayLight): RayHarm {
  const inHeat = gravest(points.map((point) => point.inHeat));
  return {
    judge,
    id: judge.feature.id,
    worth: worthOf(judge.feature),
    harm: points.reduce((sum, { dose }) => sum + dose, 0) / points.length,
    inHeat,
    light,
  };
}

function lightOf({ rays, heatwave }: Heats, { ofDay, around }: Lit): DayLight {
  const { moments, samples } = rays.days[heatwave];
  const shares = ofDay[heatwave];
  const { sky } = around[heatwave];
  let sunHours = 0;
  let energy = 0;
  for (let k = 0; k < samples.count; k++) {
    const { beam, diffuse, sinAltitude } = moments[k];
    sunHours += shares[k] * samples.hours[k];
    energy += (shares[k] * beam * sinAltitude + sky * diffuse) * samples.hours[k];
  }
  return { sunHours, energy };
}
