import type { HeatDay } from '../leaf/heat-day.ts';
import { type HotRun, SHADED_SHARE } from '../leaf/judge.ts';
import type { Yard } from '../yard.ts';
import { type CameBy, cameBy } from './came-by.ts';
import type { Judged } from './judged.ts';
import type { PlantFeature } from './planted.ts';

/**
 * How the sun came in the middle of a hot run's light, by nothing if freely; `null` where the point was as good as
 * shaded.
 */
export function sunCame(
  { scene, plan }: Pick<Yard, 'scene' | 'plan'>,
  heat: HeatDay,
  feature: PlantFeature,
  { point, lit }: Judged,
  { first, last }: Pick<HotRun, 'first' | 'last'>,
): { readonly by: CameBy | null } | null {
  const { shares } = lit;
  let sum = 0;
  for (let k = first; k <= last; k++) sum += shares[k];
  if (sum / (last - first + 1) < SHADED_SHARE) return null;
  let middle = first;
  for (let half = 0; middle < last && half + shares[middle] < sum / 2; middle++) half += shares[middle];
  const { azimuth, altitude } = heat.samples;
  return { by: cameBy(scene, plan, point, azimuth[middle], altitude[middle], heat.day.monthDay, feature.id) };
}
