import { directionsOf } from '../../../cast/passes.ts';
import { fanOf, PointRays } from '../../../cast/points/point-rays.ts';
import { createPointCaster } from '../../../cast/points/point-caster.ts';
import { skyPasses, skyRays } from '../../../cast/sky.ts';
import { bedPlaces } from '../../../load/verdict/bed-load.ts';
import { cellCenter } from '../../../load/light/grid-of.ts';
import { darkBelow, leastLight } from '../../../load/light/light-class.ts';
import { plantPoints } from '../../../load/verdict/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../../load/verdict/planted.ts';
import type { Yard } from '../../../load/yard.ts';
import type { SpacePoint } from '../../../plan/geometry/shapes.ts';
import type { Canopy, Screen } from '../../../plan/types.ts';
import { clothSheets } from '../../../scene/build.ts';
import type { OwnCrown, ClothSheet } from '../../../scene/solids.ts';
import type { Progress } from '../progress.ts';

/** A bed's light is guarded at so many of its cells. */
const BED_POINTS = 5;

/** Guards the plants' light through the season. */
export interface LightGuard {
  /** Id of a plant that has enough light now and would not with this cloth; `null`: none. */
  darkened(cloth: readonly (Canopy | Screen)[]): string | null;
  /** Ids of all plants for which it is too dark with this cloth. */
  dark(cloth: readonly (Canopy | Screen)[]): ReadonlySet<string>;
}

interface Guarded {
  readonly id: string;
  /** Daily light that the plant wants at least, and what it has as the yard is. [mol/m² a day] */
  readonly least: number;
  readonly light: number;
  /** Below this it is too dark for it. [mol/m² a day] */
  readonly dark: number;
  /**
   * All that makes up `light`: of each of its places the sun, and the sky of each part of the year where its light
   * counts.
   */
  readonly rays: readonly PointRays[];
}

/** @param yard laid out for the season */
export function lightGuard(yard: Yard, progress?: Progress): LightGuard {
  const { plan } = yard;
  const raysOf = rayReader(yard);
  const plants = plantFeatures(plan);
  const all: Guarded[] = [];
  for (const [k, feature] of plants.entries()) {
    progress?.(k / plants.length, 'the light the plants have');
    const row = rowOf(plan, feature);
    if (!row) continue;
    const least = leastLight(row);
    const points = pointsOf(yard, feature);
    const rays = points.flatMap(({ at, own }) => raysOf(at, own, points.length));
    all.push({
      id: feature.id,
      least,
      dark: darkBelow(row),
      light: rays.reduce((sum, each) => sum + each.all, 0),
      rays,
    });
  }
  const guarded = all.filter(({ light, least }) => light >= least);
  return {
    darkened(cloth) {
      const sheets = cloth.flatMap(clothSheets);
      const index = guarded.findIndex((plant) => fallsBelow(plant, plant.least, sheets));
      if (index < 0) return null;
      // The next cloth is likely to hang over the same plant: ask it first.
      const [plant] = guarded.splice(index, 1);
      guarded.unshift(plant);
      return plant.id;
    },
    dark(cloth) {
      const sheets = cloth.flatMap(clothSheets);
      return new Set(all.filter((plant) => fallsBelow(plant, plant.dark, sheets)).map(({ id }) => id));
    },
  };
}

function fallsBelow({ light, rays }: Guarded, least: number, sheets: readonly ClothSheet[]): boolean {
  let left = light;
  for (let k = 0; k < rays.length && left >= least; k++) left -= rays[k].takenBy(sheets);
  return left < least;
}

/** Reads what brings light to a point, as its part of a plant of so many points. */
function rayReader({
  scene,
  passes,
  caster,
  weights: { channels, sky },
}: Yard): (at: SpacePoint, own: OwnCrown | undefined, points: number) => PointRays[] {
  const sun = fanOf(directionsOf(scene, passes));
  const { weight } = skyRays();
  const skies = sky.map(({ state, light }) => {
    const rays = skyPasses(state);
    return { light, caster: createPointCaster(scene, rays), fan: fanOf(directionsOf(scene, rays)) };
  });
  return (at, own, points) => {
    const fromSun = new PointRays(
      at,
      sun,
      caster.sharesAt(at, own).map((share, k) => (share * channels.beamLight[k]) / points),
    );
    return [
      fromSun,
      ...skies.map(
        ({ light, caster: toSky, fan }) =>
          new PointRays(
            at,
            fan,
            toSky.sharesAt(at, own).map((share, k) => (share * weight[k] * light) / points),
          ),
      ),
    ];
  };
}

function pointsOf({ plan }: Yard, feature: PlantFeature): { at: SpacePoint; own?: OwnCrown }[] {
  if (feature.kind !== 'bed') {
    const { points, own } = plantPoints(plan, feature);
    return [{ at: points[0].point, own }];
  }
  const places = bedPlaces(plan, feature);
  if ('point' in places) return [{ at: places.point }];
  const { grid, indices } = places;
  const count = Math.min(BED_POINTS, indices.length);
  return Array.from({ length: count }, (_, k) => {
    const [x, y] = cellCenter(grid, indices[Math.floor(((k + 0.5) * indices.length) / count)]);
    return { at: [x, y, grid.height] };
  });
}
