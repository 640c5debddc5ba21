import { pointInRing } from '../plan/geometry/shapes.ts';
import { cross, dot, minus, type SpacePoint } from '../plan/geometry/vectors.ts';
import type { Lid, ClothSheet } from './solids.ts';
import { TOUCH, UPRIGHT } from './ties.ts';

/** Cloth meets every beam at no less than this cosine: threads stand up from its plane. */
export const LEAST_COSINE = 0.26;

/**
 * Share of a beam that passes a cloth at a slant: it is thicker along the beam, share^(1/cos θ).
 * @param share of a beam that meets it square on @param cosine of the angle between the beam and the cloth's normal
 */
export function slantShare(share: number, cosine: number): number {
  return share ** slantPower(cosine);
}

/** How many times thicker cloth is along a beam that meets it at a slant. */
export function slantPower(cosine: number): number {
  return 1 / Math.max(Math.abs(cosine), LEAST_COSINE);
}

/** The most that it gets. */
export const MOST_SLANT = 1 / LEAST_COSINE;

/** Cosine of the angle between a beam and a sheet's normal, either sign. @param direction Unit vector. */
export function clothCosine({ u, v }: ClothSheet, direction: SpacePoint): number {
  const normal = cross(u, v);
  return dot(normal, direction) / Math.sqrt(dot(normal, normal));
}

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
