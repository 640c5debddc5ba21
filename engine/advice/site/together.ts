import { createPointCaster } from '../../cast/share.ts';
import { skyPasses } from '../../cast/sky.ts';
import type { SpacePoint } from '../../plan/geometry.ts';
import type { Canopy, Screen } from '../../plan/types.ts';
import { clothSheets } from '../../scene/build.ts';
import type { Sheet } from '../../scene/solids.ts';
import type { HarmPairs } from './harm-pairs.ts';
import type { LeafTables } from './leaf-tables.ts';
import type { Targets } from './targets.ts';

/** What any cloth spares together, on the search's points: by plant. [K·h/day] */
export type TogetherScore = (cloth: readonly (Canopy | Screen)[]) => Float64Array;

/** Lays the harmful pairs out for cloth of every kind and number, hung at once. */
export function togetherScore(targets: Targets, pairs: HarmPairs, leaves: LeafTables): TogetherScore {
  const { heats, points, plants } = targets;
  const sky = skyDimmer(targets);
  const shares = heats.map(({ samples }) => new Float64Array(samples.count));
  return (cloth) => {
    const sheets = cloth.flatMap(clothSheets);
    const spared = new Float64Array(plants.length);
    for (const [v, view] of pairs.views.entries()) {
      const [from, end] = [pairs.firstOf[v], pairs.firstOf[v + 1]];
      if (from === end) continue;
      const point = points[view.point];
      const skyView = sky(point.at, view.sky, sheets);
      for (let heat = 0; heat < heats.length; heat++) {
        if (point.sky[heat] !== view.sky) continue;
        shares[heat].set(point.shares[heat]);
        heats[heat].caster.dim(point.at, sheets, shares[heat]);
      }
      for (let p = from; p < end; p++) {
        const heat = pairs.heat[p];
        const excess = leaves.excess(point.plant, heat, pairs.sample[p], shares[heat][pairs.sample[p]], skyView);
        spared[point.plant] += pairs.weight[p] * (Math.max(0, pairs.excess[p]) - Math.max(0, excess));
      }
    }
    return spared;
  };
}

/** Sky view left at a point of which the rays are known, under cloth that is tried. */
export function skyDimmer({ scene, skyDirections }: Targets): (at: SpacePoint, sky: Float64Array, sheets: readonly Sheet[]) => number {
  const caster = createPointCaster(scene, skyPasses(0));
  const rays = new Float64Array(skyDirections.length / 3);
  return (at, sky, sheets) => {
    rays.set(sky);
    caster.dim(at, sheets, rays);
    let skyView = 0;
    for (let k = 0; k < rays.length; k++) skyView += rays[k];
    return skyView;
  };
}
