import type { SpacePoint } from '../plan/geometry/shapes.ts';
import { pointInRing } from '../plan/geometry/shapes.ts';
import type { Lid, ClothSheet } from './solids.ts';
import { TOUCH, UPRIGHT } from './ties.ts';

/**
 * Whether a beam meets a sheet, edges included, beyond the point itself. A beam along the sheet's own plane does not.
 */
export function clothMeets(sheet: ClothSheet, point: SpacePoint, direction: SpacePoint): boolean {
  const { corner, u, v } = sheet;
  const normal = cross(u, v);
  const squared = dot(normal, normal);
  const facing = dot(normal, direction);
  if (Math.abs(facing) <= UPRIGHT * Math.sqrt(squared)) return false;
  const toCorner = minus(corner, point);
  const reach = dot(normal, toCorner) / facing;
  if (reach <= TOUCH) return false;
  const met: SpacePoint = [
    reach * direction[0] - toCorner[0],
    reach * direction[1] - toCorner[1],
    reach * direction[2] - toCorner[2],
  ];
  const s = dot(cross(met, v), normal) / squared;
  const t = dot(cross(u, met), normal) / squared;
  return s >= 0 && s <= 1 && t >= 0 && t <= 1;
}

/** Whether a beam meets a lid, edges included, beyond the point itself. @param direction Its z is above 0. */
export function lidMeets({ rings, height }: Lid, [x, y, z]: SpacePoint, [dx, dy, dz]: SpacePoint): boolean {
  const reach = (height - z) / dz;
  return reach > TOUCH && rings.some((ring) => pointInRing([x + reach * dx, y + reach * dy], ring, TOUCH));
}

function dot(a: SpacePoint, b: SpacePoint): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

function cross(a: SpacePoint, b: SpacePoint): SpacePoint {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function minus(a: SpacePoint, b: SpacePoint): SpacePoint {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}
