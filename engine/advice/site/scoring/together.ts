import { directionsOf } from '../../../cast/passes.ts';
import { ClothFrame } from '../../../cast/points/cloth-frame.ts';
import { fanOf, PointRays } from '../../../cast/points/point-rays.ts';
import { skyPasses } from '../../../cast/sky.ts';
import { underSky } from '../../../load/leaf/surroundings.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { Cloth } from '../../../plan/types.ts';
import { clothSheets } from '../../../scene/build.ts';
import type { HarmPairs } from '../search/harm-pairs.ts';
import type { Targets } from '../search/targets.ts';
import type { LeafTables } from './leaf-tables.ts';

/** What any cloth spares together, on the search's points, walls shining as they do today: by plant. [K·h/day] */
export type TogetherScore = (cloth: readonly Cloth[]) => Float64Array;

/** Lays the harmful pairs out for cloth of every kind and number, hung at once. */
export function togetherScore(targets: Targets, pairs: HarmPairs, leaves: LeafTables): TogetherScore {
  const { points, plants, heats } = targets;
  // Of a fruit, which feels the shares of the hour before.
  const dimmed = heats.map(({ samples }) => new Float64Array(samples.count));
  const raysOf = skyRaysOf(targets);
  const skies = pairs.views.map(({ point, sky }) => raysOf(points[point].at, sky));
  return (cloth) => {
    const sheets = cloth.flatMap(clothSheets);
    const spared = new Float64Array(plants.length);
    for (const [v, view] of pairs.views.entries()) {
      const [from, end] = [pairs.firstOf[v], pairs.firstOf[v + 1]];
      if (from === end) continue;
      const { plant, at, shares, around } = points[view.point];
      const { limit } = plants[plant];
      const frames = sheets.map((sheet) => new ClothFrame(sheet, ...at));
      const taken = skies[v].takenBy(sheets);
      const under = around.map((open) => underSky(open, view.skyView - taken));
      for (let p = from; p < end; p++) {
        let transmittance = 1;
        for (let s = 0; s < frames.length; s++)
          transmittance *= frames[s].transmittance(pairs.dx[p], pairs.dy[p], pairs.dz[p]);
        const [heat, sample] = [pairs.heat[p], pairs.sample[p]];
        const leaf = leaves[plant][heat];
        if (leaf.isFruit) {
          dimmed[heat][sample] = transmittance * shares[heat][sample];
          if (pairs.weight[p] === 0) continue;
          const excess = leaf.on(sample, dimmed[heat], under[heat]) - limit;
          spared[plant] += pairs.weight[p] * (Math.max(0, pairs.excess[p]) - Math.max(0, excess));
          continue;
        }
        if (transmittance === 1 && taken === 0) continue;
        const excess = leaf.at(sample, transmittance * shares[heat][sample], under[heat]) - limit;
        spared[plant] += pairs.weight[p] * (Math.max(0, pairs.excess[p]) - Math.max(0, excess));
      }
    }
    return spared;
  };
}

/** Lays the sky's rays at points of a yard out for cloth that is tried. */
export function skyRaysOf({ scene }: Targets): (at: SpacePoint, sky: Float64Array) => PointRays {
  const fan = fanOf(directionsOf(scene, skyPasses(0)));
  return (at, sky) => new PointRays(at, fan, sky);
}
