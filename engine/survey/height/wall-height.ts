import { type Estimate, type Finding, found, refused } from '../estimate.ts';
import { TAPE_PM } from '../known-by.ts';

/** One course, block and joint, counted over a few of them. [m] */
const COURSE_PM = 0.002;

/**
 * A wall's height by counting its courses of brick or block.
 * @param courses How many rows from the ground to the top of the last.
 * @param course Height of one with its joint; measure five and divide. [m]
 * @param cap Thickness of the coping on top. [m]
 */
export function heightByCourses(courses: number, course: number, cap = 0): Finding<Estimate> {
  if (!Number.isInteger(courses) || courses < 1) return refused(`${courses} courses: count whole rows, at least one.`);
  if (!(course >= 0.03 && course <= 1))
    return refused(
      `A course of ${course.toFixed(3)} m is not likely: one row with its joint, in metres (a brick about 0.075 ` +
        `m, a block 0.2 m).`,
    );
  return found({ value: courses * course + cap, pm: Math.hypot(courses * COURSE_PM, TAPE_PM) });
}

/**
 * A wall's height on this side when it was measured on the other.
 * @param theirs Height over the ground on the other side. [m]
 * @param theirGroundHigher How much higher the ground there is than here; negative where it is lower. [m]
 */
export function heightFromOtherSide(theirs: Estimate, theirGroundHigher: Estimate): Finding<Estimate> {
  const value = theirs.value + theirGroundHigher.value;
  if (value <= 0)
    return refused(`The wall would be ${value.toFixed(2)} m high on this side: check which ground is higher.`);
  return found({ value, pm: Math.hypot(theirs.pm, theirGroundHigher.pm) });
}

/** What a fall of the ground does here, where the ground is taken as level. @param fall Over the yard. [m] */
export function levelNotes(fall: number): string[] {
  if (Math.abs(fall) <= 0.1) return [];
  return [
    `The yard is taken as level. Your fall of ${Math.abs(fall).toFixed(1)} m acts like ` +
      `${Math.abs(fall).toFixed(1)} m more or less wall: enter heights as seen from where the plants stand.`,
  ];
}
