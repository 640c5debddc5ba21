import { createPointCaster, type PointCaster } from '../../cast/share.ts';
import { skyPasses, skyRays } from '../../cast/sky.ts';
import { bedPlaces } from '../../load/bed-load.ts';
import { cellCenter } from '../../load/grid-of.ts';
import { isTooDark } from '../../load/light-class.ts';
import { nineFromShares } from '../../load/nine.ts';
import { plantPoints } from '../../load/plant-points.ts';
import { type PlantFeature, plantFeatures, rowOf } from '../../load/planted.ts';
import { meanNine } from '../../load/nine.ts';
import type { Nine, Outcome } from '../../load/types.ts';
import { type Yard, yardOf } from '../../load/yard.ts';
import type { SpacePoint } from '../../plan/geometry.ts';
import type { Canopy, Plan, PlantRow, Screen } from '../../plan/types.ts';
import { clothSheets } from '../../scene/build.ts';
import type { Crown, Sheet } from '../../scene/solids.ts';
import type { Weather } from '../../sun/weather.ts';

/** A bed's light is guarded at so many of its cells. */
const BED_POINTS = 5;

/** Guards the plants' light through the season. */
export interface LightGuard {
  /** Id of a plant that has enough light now and would not with this cloth; `null`: none. */
  darkened(cloth: readonly (Canopy | Screen)[]): string | null;
  /** Ids of all plants that have too little light with this cloth. */
  dark(cloth: readonly (Canopy | Screen)[]): ReadonlySet<string>;
}

interface Guarded {
  readonly id: string;
  readonly row: PlantRow;
  readonly places: readonly Place[];
}

/** A point with what reaches it as the yard is. */
interface Place {
  readonly at: SpacePoint;
  readonly shares: Float64Array;
  /** Sky rays by part of the period. */
  readonly sky: readonly Float64Array[];
}

/** @returns the guard, or why the season cannot be sampled */
export function lightGuard(plan: Plan, weather?: Weather): Outcome<LightGuard> {
  const outcome = yardOf(plan, { kind: 'season' }, weather);
  if (!outcome.ok) return outcome;
  const yard = outcome.value;
  const skies = yard.weights.sky.map(({ state }) => createPointCaster(yard.scene, skyPasses(state)));
  const { weight } = skyRays();
  const shares = new Float64Array(yard.passes.count);
  const rays = new Float64Array(weight.length);
  const lightAt = (place: Place, sheets: readonly Sheet[]): Nine => {
    shares.set(place.shares);
    yard.caster.dim(place.at, sheets, shares);
    const views = skies.map((sky, part) => {
      rays.set(place.sky[part]);
      sky.dim(place.at, sheets, rays);
      return rays.reduce((sum, ray, k) => sum + ray * weight[k], 0);
    });
    return nineFromShares(shares, yard.weights, views);
  };
  const lightOf = ({ places }: Guarded, sheets: readonly Sheet[]): Nine => meanNine(places.map((place) => lightAt(place, sheets)));
  const all = plantFeatures(plan).flatMap((feature): Guarded[] => {
    const row = rowOf(plan, feature);
    return row ? [{ id: feature.id, row, places: placesOf(yard, skies, feature) }] : [];
  });
  const isDark = (plant: Guarded, sheets: readonly Sheet[]): boolean => isTooDark(plant.row, lightOf(plant, sheets));
  const guarded = all.filter((plant) => !isDark(plant, []));
  return {
    ok: true,
    value: {
      darkened(cloth) {
        const sheets = cloth.flatMap(clothSheets);
        const index = guarded.findIndex((plant) => isDark(plant, sheets));
        if (index < 0) return null;
        // The next cloth is likely to hang over the same plant: ask it first.
        const [plant] = guarded.splice(index, 1);
        guarded.unshift(plant);
        return plant.id;
      },
      dark(cloth) {
        const sheets = cloth.flatMap(clothSheets);
        return new Set(all.filter((plant) => isDark(plant, sheets)).map(({ id }) => id));
      },
    },
  };
}

function placesOf(yard: Yard, skies: readonly PointCaster[], feature: PlantFeature): Place[] {
  return pointsOf(yard, feature).map(({ at, own }) => ({ at, shares: yard.caster.sharesAt(at, own), sky: skies.map((sky) => sky.sharesAt(at, own)) }));
}

function pointsOf({ plan }: Yard, feature: PlantFeature): { at: SpacePoint; own?: Crown }[] {
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
