import { skyRays } from '../../../cast/sky.ts';
import { groundRise } from '../../../load/leaf/ground.ts';
import { type HeatDay, heatDayOf, heatDaysOf } from '../../../load/leaf/heat-day.ts';
import type { Surroundings } from '../../../load/leaf/surroundings.ts';
import type { WallsRound } from '../../../load/leaf/walls/walls-round.ts';
import { skyCaster } from '../../../load/light/kept-caster.ts';
import { skyViewerOf } from '../../../load/light/sky-viewer.ts';
import type { Outcome } from '../../../load/types.ts';
import { limitOf } from '../../../load/verdict/limit.ts';
import { plantPoints } from '../../../load/verdict/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import { worthOf } from '../../../plan/defaults.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { Plan, PlantRow } from '../../../plan/types.ts';
import { planDirection } from '../../../scene/direction.ts';
import { sceneOf } from '../../../scene/scene-of.ts';
import type { OwnCrown, Scene } from '../../../scene/solids.ts';
import type { Weather } from '../../../sun/weather/weather.ts';
import { bedSample } from '../bed-sample.ts';
import type { Progress } from '../progress.ts';

/** A plant, bed or planted tree that names its row. */
interface TargetPlant {
  readonly feature: PlantFeature;
  readonly row: PlantRow;
  /** [°C] */
  readonly limit: number;
  /** 0: it does not count. */
  readonly worth: number;
}

/** A point where a plant is judged, with what reaches it in the yard as it is. */
interface TargetPoint {
  /** Index into `plants`. */
  readonly plant: number;
  readonly at: SpacePoint;
  /** Where what walls throw on it is looked at: the same point for places of a bed that share it. */
  readonly wallsAt: SpacePoint;
  /** The plant's own crown, in the way of this point alone. */
  readonly own?: OwnCrown;
  /** Share of its plant. */
  readonly part: number;
  /** Its part of the plant's harm, heat days averaged: worth × share of the plant ÷ heat days. */
  readonly weight: number;
  /** Share of the beam, by heat day and sample. */
  readonly shares: readonly Float64Array[];
  /**
   * What each of the sky's rays brings (its weight × the share that passes), by heat day: the same array for the same
   * state of the yard.
   */
  readonly sky: readonly Float64Array[];
  /** By heat day; its sky is the sum of `sky`. */
  readonly around: readonly Surroundings[];
}

/** Everything harm is made of that does not depend on the cloth tried. */
export interface Targets {
  readonly plan: Plan;
  readonly scene: Scene;
  readonly heats: readonly HeatDay[];
  readonly plants: readonly TargetPlant[];
  readonly points: readonly TargetPoint[];
  /** Of the yard as it is. */
  readonly walls: WallsRound;
  /** Directions of the sky's rays on the plan, x, y, z of each. */
  readonly skyDirections: Float64Array;
}

/**
 * Lays out where and when the plants are judged.
 * @param counts ids of the plants that count; left out: all
 * @param bedPoints places of a bed, at most about
 * @returns or why a heat day cannot be made
 */
export function targetsOf(
  plan: Plan,
  weather?: Weather,
  progress?: Progress,
  counts?: ReadonlySet<string>,
  bedPoints?: number,
): Outcome<Targets> {
  const scene = sceneOf(plan);
  const heats = heatDaysOf(plan, scene, weather);
  if (!heats.ok) return heats;
  const heatwave = heatDayOf(plan, scene, { kind: 'heatwave' }, weather);
  if (!heatwave.ok) return heatwave;
  const isCounted = ({ id }: PlantFeature): boolean => counts === undefined || counts.has(id);
  const plants = plantFeatures(plan).flatMap((feature): TargetPlant[] => {
    const row = rowOf(plan, feature);
    return row
      ? [
          {
            feature,
            row,
            limit: limitOf(plan, feature, row, heatwave.value.day.date).celsius,
            worth: isCounted(feature) ? worthOf(feature) : 0,
          },
        ]
      : [];
  });
  const skyOf = skyReader(scene);
  const { walls } = skyViewerOf(scene);
  const points: TargetPoint[] = [];
  for (const [plant, { feature, worth }] of plants.entries()) {
    progress?.(plant / plants.length, 'the sun on the plants');
    if (!isCounted(feature)) continue;
    for (const { at, wallsAt, own, part } of placesOf(plan, feature, bedPoints)) {
      const sky = heats.value.map(({ state }) => skyOf(at, state, own));
      const glows = walls.on(heats.value, wallsAt, own);
      points.push({
        plant,
        at,
        wallsAt,
        own,
        part,
        weight: (worth * part) / heats.value.length,
        shares: heats.value.map(({ caster }) => caster.sharesAt(at, own)),
        sky,
        around: sky.map((rays, h) => ({
          sky: rays.reduce((sum, ray) => sum + ray, 0),
          groundRise: groundRise(scene, at),
          walls: glows[h],
        })),
      });
    }
  }
  return {
    ok: true,
    value: { plan, scene, heats: heats.value, plants, points, walls, skyDirections: skyDirectionsOf(scene) },
  };
}

type Place = Pick<TargetPoint, 'at' | 'wallsAt' | 'own' | 'part'>;

function placesOf(plan: Plan, feature: PlantFeature, bedPoints?: number): Place[] {
  if (feature.kind !== 'bed') {
    const { points, own } = plantPoints(plan, feature);
    return points.map(({ point }) => ({ at: point, wallsAt: point, own, part: 1 / points.length }));
  }
  return bedSample(plan, feature, bedPoints);
}

function skyReader(scene: Scene): (at: SpacePoint, state: number, own?: OwnCrown) => Float64Array {
  const { weight } = skyRays();
  // One point asks for the states of all heat days in turn, which are mostly one and the same.
  let last: { at: SpacePoint; state: number; rays: Float64Array } | null = null;
  return (at, state, own) => {
    if (last?.at === at && last.state === state) return last.rays;
    const rays = skyCaster(scene, state).sharesAt(at, own);
    for (let k = 0; k < rays.length; k++) rays[k] *= weight[k];
    last = { at, state, rays };
    return rays;
  };
}

function skyDirectionsOf(scene: Scene): Float64Array {
  const { count, azimuth, altitude } = skyRays();
  const directions = new Float64Array(3 * count);
  for (let k = 0; k < count; k++) directions.set(planDirection(azimuth[k], altitude[k], scene.upBearing), 3 * k);
  return directions;
}
