import type { Feature, FeatureChanges, PlanPoint } from '../../../../engine/index.ts';
import type { NumberField } from '../../../common/fields/number-field.ts';

/** Plan coordinates beyond this are refused by the file. [m] */
const FARTHEST = 10_000;

/** A coordinate as a number box: across (x) or up (y) from the plan's corner (0, 0). */
export function coordinateField(axis: 0 | 1, label = axis === 0 ? 'Across, x' : 'Up, y'): NumberField {
  return {
    key: `place-${axis}`,
    label,
    unit: 'length',
    asked: false,
    least: -FARTHEST,
    most: FARTHEST,
    read: () => undefined,
    write: () => ({}),
  };
}

/** The points a feature stands at, and what they are called. */
export function pointsOf(feature: Feature): {
  readonly points: readonly PlanPoint[];
  readonly called: 'Place' | 'Middle' | 'Corner' | 'Point';
} {
  if ('at' in feature) return { points: [feature.at], called: 'Place' };
  if ('center' in feature) return { points: [feature.center], called: 'Middle' };
  if ('outline' in feature) return { points: feature.outline, called: 'Corner' };
  return { points: feature.path, called: 'Point' };
}

/** The change that puts a point-like feature somewhere; corners are moved by `moveCorner`. */
export function placeChange(feature: Feature, to: PlanPoint): FeatureChanges {
  return 'center' in feature ? { center: to } : { at: to };
}

/** A point with one coordinate changed. */
export function withCoordinate(point: PlanPoint, axis: 0 | 1, value: number): PlanPoint {
  return axis === 0 ? [value, point[1]] : [point[0], value];
}
