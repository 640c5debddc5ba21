import { createPointCaster } from '../../cast/points/point-caster.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { PlantRow } from '../../plan/types.ts';
import type { OwnCrown, Scene } from '../../scene/solids.ts';
import type { HeatDay } from './heat-day.ts';
import { judgeLeaf, newJudgement } from './judge.ts';
import type { LeafDay } from './leaf-day.ts';
import type { Surroundings } from './surroundings.ts';

/** Scorch doses of one row's leaf at many points of a yard. */
export interface Doser {
  /**
   * Dose on each heat day; holds until the next question. [K·h/day]
   * @param around one a heat day
   * @param own an extra crown in the way for this point alone
   */
  at(point: SpacePoint, around: readonly Surroundings[], own?: OwnCrown): Float64Array;
}

/** At points asked about once: all days are cast together, and only the samples at which a leaf can be too hot. */
export function createDoser(scene: Scene, heats: readonly HeatDay[], row: PlantRow, limit: number): Doser {
  const leaves = heats.map((heat) => heat.leaves('thirsty', row));
  const hot = leaves.map((leaf) => leaf.hotSamples(limit));
  const felt = leaves.map((leaf) => leaf.feltSamples(limit));
  const caster = createPointCaster(scene, {
    count: felt.reduce((sum, samples) => sum + samples.length, 0),
    azimuth: Float64Array.from(felt.flatMap((samples, d) => Array.from(samples, (k) => heats[d].passes.azimuth[k]))),
    altitude: Float64Array.from(felt.flatMap((samples, d) => Array.from(samples, (k) => heats[d].passes.altitude[k]))),
    state: Uint16Array.from(felt.flatMap((samples, d) => Array.from(samples, (k) => heats[d].passes.state[k]))),
  });
  const cast = new Float64Array(felt.reduce((sum, samples) => sum + samples.length, 0));
  return doserOf(leaves, hot, limit, (point, shares, own) => {
    caster.sharesAt(point, own, cast);
    let next = 0;
    for (let d = 0; d < felt.length; d++) for (const k of felt[d]) shares[d][k] = cast[next++];
  });
}

/** The same at points that several questions ask about: by what the days' own casters remember of them. */
export function createDayDoser(heats: readonly HeatDay[], row: PlantRow, limit: number): Doser {
  const leaves = heats.map((heat) => heat.leaves('thirsty', row));
  const hot = leaves.map((leaf) => leaf.hotSamples(limit));
  return doserOf(leaves, hot, limit, (point, shares, own) => {
    for (let d = 0; d < hot.length; d++) if (hot[d].length > 0) heats[d].caster.sharesAt(point, own, shares[d]);
  });
}

/** @param cast fills the shares of each day, at least those that the hot samples feel */
function doserOf(
  leaves: readonly LeafDay[],
  hot: readonly Int32Array[],
  limit: number,
  cast: (point: SpacePoint, shares: readonly Float64Array[], own?: OwnCrown) => void,
): Doser {
  const shares = leaves.map(({ samples }) => new Float64Array(samples.length));
  const doses = new Float64Array(leaves.length);
  const judged = newJudgement();
  return {
    at(point, around, own) {
      cast(point, shares, own);
      for (let d = 0; d < hot.length; d++)
        doses[d] = judgeLeaf(leaves[d], shares[d], around[d], limit, hot[d], judged).dose;
      return doses;
    },
  };
}
