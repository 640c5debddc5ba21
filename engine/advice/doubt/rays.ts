/**
 * Harm to a yard's plants, cast with rays at the plants' points, and again for a plan in which one input is off.
 * Where a single shadow caster changed, its own rays are cast and everything else is reused.
 */
import { bedPlaces } from '../../load/verdict/bed-load.ts';
import { cellCenter } from '../../load/light/grid-of.ts';
import { heatDayOf } from '../../load/leaf/heat-day.ts';
import { heatDaysOf } from '../../load/leaf/harm-of.ts';
import type { Watering } from '../../load/leaf/leaf.ts';
import { limitOf } from '../../load/leaf/limit.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../load/verdict/planted.ts';
import type { Outcome } from '../../load/types.ts';
import type { HeatVerdict } from '../../load/verdict/verdict.ts';
import { upBearingOf, worthOf } from '../../plan/defaults.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Bed, Feature, Plan, PlantRow } from '../../plan/types.ts';
import { buildScene, sceneOfOne } from '../../scene/build.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import type { Weather } from '../../sun/weather.ts';
import { createLeafStore, type Leaves, type LeafTable } from './leaves.ts';
import { createLighter, createPartedLighter, type HeatRays, heatRaysOf, type Lit } from './light.ts';

/** A bed is judged at no more than this many of its cells, evenly spread. */
const BED_POINTS = 9;
/** A leaf must be at its limit this long on end to count. [h] */
const LASTS = 0.5 - 1e-9;

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

export interface DayLight {
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
  readonly leaves: readonly Leaves[];
}

/** What reaches point `p` of judge `k`. */
type See = (judge: Judge, k: number, p: number) => Lit;

/**
 * @param leafStore of all the yards that one question is about: they differ in their features and the heatwave's high
 *   alone
 * @returns the yard's plants that name their row, or why a heat day cannot be made
 */
export function createRayYard(plan: Plan, weather?: Weather, leafStore = createLeafStore()): Outcome<RayYard> {
  const scene = buildScene(plan);
  const heatsIn = (inPlan: Plan) => heatsOf(inPlan, scene, leafStore, weather);
  const heats = heatsIn(plan);
  if (!heats.ok) return heats;
  const { rays } = heats.value;
  const lighter = createPartedLighter(scene, rays);
  const standing = createLighter(scene, rays);
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
      if (shifted.climate !== plan.climate) {
        const hot = heatsIn(shifted);
        return hot.ok ? { ok: true, value: harmsOf(judges, asDrawn, hot.value) } : hot;
      }
      const feature = id === null ? undefined : shifted.features.find((each) => each.id === id);
      if (feature === undefined) {
        const again = judgesOf(shifted, heats.value);
        if (shifted.site === plan.site) return { ok: true, value: harmsOf(again, asDrawn) };
        const turned = createLighter({ ...scene, upBearing: upBearingOf(shifted) }, rays);
        return { ok: true, value: harmsOf(again, (judge, _, p) => turned.at(judge.points[p], judge.own)) };
      }
      const again = judges.map((judge) => judgeUnder(shifted, heats.value, judge, feature));
      if (!castsShadow(scene, feature)) {
        return {
          ok: true,
          value: harmsOf(again, (judge, k, p) =>
            judge === judges[k] ? lit[k][p] : standing.at(judge.points[p], judge.own),
          ),
        };
      }
      const relighter = lighter.exchanging(feature);
      const afresh = again.some((judge, k) => judge !== judges[k]) ? createLighter(buildScene(shifted), rays) : null;
      return {
        ok: true,
        value: harmsOf(again, (judge, k, p) =>
          judge !== judges[k] && afresh
            ? afresh.at(judge.points[p], judge.own)
            : relighter.at(judge.points[p], lit[k][p]),
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

function heatsOf(
  plan: Plan,
  scene: Scene,
  leafStore: ReturnType<typeof createLeafStore>,
  weather?: Weather,
): Outcome<Heats> {
  const days = heatDaysOf(plan, scene, weather);
  if (!days.ok) return days;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const rays = heatRaysOf(days.value);
  return {
    ok: true,
    value: {
      rays,
      heatwave: days.value.findIndex(({ day }) => day.date === heatwave.value.day.date),
      leaves: days.value.map(leafStore),
    },
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
  const { rays, heatwave, leaves } = heats;
  const { row, limit } = judge;
  const { shares, sky } = lit;
  const lasts = (leaf: LeafTable) =>
    longestOver(
      leaf,
      limit,
      rays.days[heatwave].samples.hours,
      shares,
      rays.first[heatwave],
      sky[rays.stateOf[heatwave]],
    ) >= LASTS;
  // With water a leaf is never the hotter for it.
  const inHeat = !lasts(leaves[heatwave]('thirsty', row))
    ? 'fine'
    : lasts(leaves[heatwave]('watered', row))
      ? 'will burn'
      : 'at risk';
  return { dose: dosesAt(heats, judge, lit, 'thirsty'), inHeat };
}

/** Scorch doses, mean over the heat days. [K·h/day] */
function dosesAt(
  { rays, leaves }: Heats,
  { row, limit }: Judge,
  { shares, sky }: Lit,
  watering: Watering,
  absorptance?: number,
): number {
  let doses = 0;
  for (let d = 0; d < rays.days.length; d++)
    doses += doseOf(
      leaves[d](watering, row, absorptance),
      limit,
      rays.days[d].samples.hours,
      shares,
      rays.first[d],
      sky[rays.stateOf[d]],
    );
  return doses / rays.days.length;
}

function doseOf(
  leaf: LeafTable,
  limit: number,
  hours: Float64Array,
  shares: Float64Array,
  first: number,
  sky: number,
): number {
  const hot = leaf.hotSamples(limit);
  let dose = 0;
  for (let n = 0; n < hot.length; n++)
    dose += Math.max(0, leaf.at(hot[n], shares[first + hot[n]], sky) - limit) * hours[hot[n]];
  return dose;
}

/** Longest time on end that a leaf is at its limit or over it. [h] */
function longestOver(
  leaf: LeafTable,
  limit: number,
  hours: Float64Array,
  shares: Float64Array,
  first: number,
  sky: number,
): number {
  const hot = leaf.hotSamples(limit);
  let run = 0;
  let longest = 0;
  for (let n = 0; n < hot.length; n++) {
    const k = hot[n];
    if (n > 0 && hot[n - 1] !== k - 1) run = 0;
    run = leaf.at(k, shares[first + k], sky) >= limit ? run + hours[k] : 0;
    longest = Math.max(longest, run);
  }
  return longest;
}

/** A plant's harm is the mean of its points, what the heatwave day does to it that of the worst. */
function harmFrom(judge: Judge, points: readonly Suffered[], light: DayLight): RayHarm {
  const inHeat =
    (['will burn', 'at risk'] as const).find((verdict) => points.some((point) => point.inHeat === verdict)) ?? 'fine';
  return {
    judge,
    id: judge.feature.id,
    worth: worthOf(judge.feature),
    harm: points.reduce((sum, { dose }) => sum + dose, 0) / points.length,
    inHeat,
    light,
  };
}

function lightOf({ rays, heatwave }: Heats, { shares, sky }: Lit): DayLight {
  const { moments, samples } = rays.days[heatwave];
  const first = rays.first[heatwave];
  const view = sky[rays.stateOf[heatwave]];
  let sunHours = 0;
  let energy = 0;
  for (let k = 0; k < samples.count; k++) {
    const { beam, diffuse, sinAltitude } = moments[k];
    sunHours += shares[first + k] * samples.hours[k];
    energy += (shares[first + k] * beam * sinAltitude + view * diffuse) * samples.hours[k];
  }
  return { sunHours, energy };
}
