import { middlesOfBlocks } from '../../load/leaf/surroundings-at.ts';
import { cellCenter, cellPoint } from '../../load/light/grid-of.ts';
import { bedPlaces } from '../../load/verdict/bed-load.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Bed, Plan } from '../../plan/types.ts';

/** A place of a bed, and the share of the bed that it stands for. */
export interface BedSample {
  readonly at: SpacePoint;
  /** Where what walls throw on it is looked at, as of the cell in its middle: the same point for neighbours. */
  readonly wallsAt: SpacePoint;
  readonly part: number;
}

/** Shown options use all of a bed's cells. */
const BED_POINTS = 24;

/** A bed by at most about so many of its cells, each for the block of cells around it. */
export function bedSample(plan: Plan, bed: Bed, most = BED_POINTS): BedSample[] {
  const places = bedPlaces(plan, bed);
  if ('point' in places) return [{ at: places.point, wallsAt: places.point, part: 1 }];
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
  const middles = middlesOfBlocks(grid, indices);
  const middleOf = new Map(indices.map((index, n) => [index, middles[n]]));
  const wallsFrom = new Map(middles.map((middle) => [middle, cellPoint(grid, middle)]));
  return [...blocks.values()].map((block): BedSample => {
    const centers = block.map((index) => cellCenter(grid, index));
    const mean = (axis: 0 | 1) => centers.reduce((sum, center) => sum + center[axis], 0) / centers.length;
    const at: SpacePoint = [mean(0), mean(1), grid.height];
    const middle = middleOf.get(block[block.length >> 1]);
    const wallsAt = (middle === undefined ? undefined : wallsFrom.get(middle)) ?? at;
    return { at, wallsAt, part: block.length / indices.length };
  });
}
