import { crownShapeOf, foliageFromOf, potOf, upBearingOf } from '../../plan/defaults.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import type { Plan, Plant, Tree } from '../../plan/types.ts';
import { planDirection } from '../../scene/direction.ts';
import type { Crown, OwnCrown } from '../../scene/solids.ts';
import type { PlantSide } from '../types.ts';

/** A plant is judged this far outside its crown, a pot outside its wall. [m] */
const OUTSIDE = 0.01;

/** True bearings of the eight sides. [°] */
export const BEARINGS = [0, 45, 90, 135, 180, 225, 270, 315] as const;

/** A place round a plant where it is judged. */
export interface SidePoint {
  readonly side: PlantSide;
  readonly point: SpacePoint;
}

export interface PlantPoints {
  /** The top first, then the eight bearings. */
  readonly points: readonly SidePoint[];
  /** The plant's own crown, in the way of its own points alone; a tree's stands in the scene already. */
  readonly own?: OwnCrown;
}

/**
 * The nine points of a plant or a tree: its top, and eight round the widest ring of its crown. A round crown is widest
 * half-way up; a cone's ring lies just above its foot, a column's half-way up.
 */
export function plantPoints(plan: Plan, feature: Plant | Tree): PlantPoints {
  const crown = crownOf(feature);
  const ringHeight = crown.kind === 'cone' ? crown.base + OUTSIDE : (crown.base + crown.top) / 2;
  const ring = ringPoints(plan, crown, crown.radius + OUTSIDE, ringHeight);
  const points: SidePoint[] = [{ side: 'top', point: [crown.x, crown.y, crown.top + OUTSIDE] }, ...ring];
  return feature.kind === 'plant' ? { points, own: { ...crown, of: feature.id } } : { points };
}

/** The eight points round a container's wall, half-way up. */
export function potPoints(plan: Plan, plant: Plant): SidePoint[] {
  const pot = potOf(plant);
  return ringPoints(plan, { x: plant.at[0], y: plant.at[1] }, pot.width / 2 + OUTSIDE, pot.height / 2);
}

/** A plant's crown: round and opaque, from its foliage's foot to its top; a tree's as it is drawn. */
function crownOf(feature: Plant | Tree): Crown {
  const [x, y] = feature.at;
  if (feature.kind === 'plant') {
    return {
      kind: 'round',
      x,
      y,
      radius: feature.spread / 2,
      base: foliageFromOf(feature),
      top: feature.height,
      openness: 0,
    };
  }
  const kind = crownShapeOf(feature);
  return {
    kind,
    x,
    y,
    radius: feature.crownWidth / 2,
    base: feature.crownBase,
    top: feature.height,
    openness: feature.openness,
  };
}

function ringPoints(
  plan: Plan,
  center: { readonly x: number; readonly y: number },
  radius: number,
  height: number,
): SidePoint[] {
  return BEARINGS.map((bearing) => {
    const [dx, dy] = planDirection(bearing, 0, upBearingOf(plan));
    return { side: bearing, point: [center.x + dx * radius, center.y + dy * radius, height] };
  });
}
