import { DEGREE } from '../../plan/geometry/angles.ts';
import { type Estimate, estimateOf, type Finding, found, refused } from '../estimate.ts';

/** A phone or a protractor sighted along its edge, held by hand. Our choice. [°] */
const SIGHTED_PM = 1;
/** Steeper, and a degree of tilt is worth a tenth of the height and more. [°] */
const STEEPEST = 65;

/**
 * A height by sighting its top and its foot from a known distance, as foresters do with a clinometer: distance ×
 * (tan top − tan foot); eyes and sloping ground cancel out. Common practice, no source.
 * @param distance Level, from the eye to the thing. [m] @param top @param foot Above the level, below it negative. [°]
 */
export function heightFromTilt(distance: Estimate, top: number, foot: number): Finding<Estimate> {
  if (!(distance.value > 0)) return refused('Stand some way off: the distance must be more than 0 m.');
  if (top <= foot)
    return refused(`The top is sighted at ${top.toFixed(0)}° and the foot at ${foot.toFixed(0)}°: the top is higher.`);
  if (Math.max(Math.abs(top), Math.abs(foot)) > STEEPEST)
    return refused('That is too steep to be sure: go further away, about as far as the thing is high.');
  const inputs = [distance, { value: top, pm: SIGHTED_PM }, { value: foot, pm: SIGHTED_PM }];
  const height = ([d, a, b]: readonly number[]): number => d * (Math.tan(a * DEGREE) - Math.tan(b * DEGREE));
  return found(estimateOf(height, inputs));
}
