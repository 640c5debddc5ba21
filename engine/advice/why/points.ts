import { centroid, openRing, type SpacePoint } from '../../plan/geometry/shapes.ts';
import type { CivilDate, Plan, PlantRow } from '../../plan/types.ts';
import type { OwnCrown } from '../../scene/solids.ts';
import { cameBy, cameByWords } from '../../load/verdict/came-by.ts';
import { stretchOf } from '../../load/verdict/clock.ts';
import type { HeatDay } from '../../load/leaf/heat-day.ts';
import { surfaceTemperature } from '../../load/leaf/leaf.ts';
import { limitOf } from '../../load/leaf/limit.ts';
import { plantPoints } from '../../load/verdict/plant-points.ts';
import { type PlantFeature, rowOf } from '../../load/verdict/planted.ts';
import { scorchAt } from '../../load/leaf/scorch.ts';
import type { PlantSide, Stretch } from '../../load/types.ts';
import { nineAt, type Yard } from '../../load/yard.ts';

/** What the sun of a hot day does at one point round a plant. */
export interface SideHeat {
  /** `null` of a bed, which is judged at its middle. */
  readonly side: PlantSide | null;
  /** On a mean day of that time of year. [h] */
  readonly hotHours: number;
  /** Of the hot day. [K·h], `null` where the plant's kind is not known. */
  readonly scorchDose: number | null;
  /** Warmest thirsty leaf, or fruit, of the hot day. [°C] */
  readonly peak: number | null;
  /** When the sun is on it and it is at its limit, or failing that within 4 K of it; `null`: never. */
  readonly when: Stretch | null;
  /** How that sun comes: "coming over the west wall". */
  readonly sunCame: string | null;
}

/** Below this share of the beam it is the hot air, not the sun. */
const SUNLIT_SHARE = 0.1;
/** The estimate's own ±. [K] */
export const NEAR_LIMIT = 4;

/**
 * Heat at each point of a plant, top first, then the eight sides; of a bed at its middle. `limit` is `null` where the
 * kind is not known.
 */
export function heatBySide(
  yard: Yard,
  heat: HeatDay,
  feature: PlantFeature,
  date: CivilDate | null,
): { limit: number | null; points: SideHeat[] } {
  const row = rowOf(yard.plan, feature);
  const limit = row === undefined ? null : limitOf(yard.plan, feature, row, date ?? heat.day.date).celsius;
  const { places, own } = placesOf(yard.plan, feature);
  const points = places.map(({ side, point }) => heatAt(yard, heat, { side, point, own }, row, limit));
  return { limit, points };
}

interface Judged {
  readonly side: PlantSide | null;
  readonly point: SpacePoint;
  readonly own?: OwnCrown;
}

function heatAt(
  yard: Yard,
  heat: HeatDay,
  { side, point, own }: Judged,
  row: PlantRow | undefined,
  limit: number | null,
): SideHeat {
  const { hotHours } = nineAt(yard, point, own);
  if (row === undefined || limit === null)
    return { side, hotHours, scorchDose: null, peak: null, when: null, sunCame: null };
  const shares = heat.caster.sharesAt(point, own);
  const skyView = yard.sky.at(point, heat.state, own);
  const scorch = scorchAt(heat, row, limit, shares, skyView);
  const leafAt = (k: number): number => surfaceTemperature(heat.moments[k], row, 'thirsty', shares[k], skyView);
  const run = longestRun(shares, leafAt, limit) ?? longestRun(shares, leafAt, limit - NEAR_LIMIT);
  if (run === null) return { side, hotHours, scorchDose: scorch.dose, peak: scorch.thirsty, when: null, sunCame: null };
  const middle = Math.floor((run.first + run.last) / 2);
  const came = cameBy(
    yard.scene,
    yard.plan,
    point,
    heat.samples.azimuth[middle],
    heat.samples.altitude[middle],
    heat.day.monthDay,
  );
  return {
    side,
    hotHours,
    scorchDose: scorch.dose,
    peak: scorch.thirsty,
    when: stretchOf(heat.samples, run.first, run.last, yard.plan.site.timeZone),
    sunCame: cameByWords(yard.plan, came),
  };
}

/** Longest run of samples with the sun on the point and the leaf at `least` or over. */
function longestRun(
  shares: Float64Array,
  leafAt: (k: number) => number,
  least: number,
): { first: number; last: number } | null {
  let longest: { first: number; last: number } | null = null;
  let first = -1;
  for (let k = 0; k <= shares.length; k++) {
    const hot = k < shares.length && shares[k] >= SUNLIT_SHARE && leafAt(k) >= least;
    if (hot && first < 0) first = k;
    if (!hot && first >= 0) {
      if (longest === null || k - first > longest.last - longest.first + 1) longest = { first, last: k - 1 };
      first = -1;
    }
  }
  return longest;
}

function placesOf(
  plan: Plan,
  feature: PlantFeature,
): { places: readonly Pick<Judged, 'side' | 'point'>[]; own?: OwnCrown } {
  if (feature.kind !== 'bed') {
    const { points, own } = plantPoints(plan, feature);
    return { places: points, own };
  }
  const [x, y] = centroid(openRing(feature.outline));
  return { places: [{ side: null, point: [x, y, feature.plantHeight] }] };
}
