import { cellCenter } from '../../load/light/grid-of.ts';
import { bedPlaces } from '../../load/verdict/bed-load.ts';
import type { SpacePoint } from '../../plan/geometry/shapes.ts';
import type { Bed, Plan } from '../../plan/types.ts';

/** A place of a bed, and the share of the bed that it stands for. */
export interface BedSample {
  readonly at: SpacePoint;
  readonly part: number;
}

/** Shown options use all of a bed's cells. */
const BED_POINTS = 24;

/** A bed by at most about so many of its cells, each for the block of cells around it. */
export function bedSample(plan: Plan, bed: Bed, most = BED_POINTS): BedSample[] {
  const places = bedPlaces(plan, bed);
  if ('point' in places) return [{ at: places.point, part: 1 }];
  const { grid, indices } = places;
  const edge = Math.max(1, Math.ceil(Math.sqrt(indices.length / most)));
  const blocks = new Map<string, number[]>();
  for (const index of indices) {
    const i = index % grid.columns;
    const key = `${Math.floor(i / edge)} ${Math.floor((index - i) / grid.columns / edge)}`;
    const block = blocks.get(key);
    if (block) block.push(index);
    else blocks.set(key, [index]);
  }
  return [...blocks.values()].map((block): BedSample => {
    const centers = block.map((index) => cellCenter(grid, index));
    const mean = (axis: 0 | 1) => centers.reduce((sum, center) => sum + center[axis], 0) / centers.length;
    return { at: [mean(0), mean(1), grid.height], part: block.length / indices.length };
  });
}
