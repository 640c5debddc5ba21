import type { LightPlane } from '../rules/light-planes.ts';
import type { Contest, Place } from './contest.ts';
import type { Turn } from './turn.ts';

/**
 * What kind of place cloth over a × b cells has (a screen: one of them 0) whose top is at a height.
 * @param blocked nodes that a roof may not cover; `null`: it is no roof
 * @param bound what the cloth spares at most [K·h/day]
 */
export function placeFor(
  { mask, contest, cap, hiddenHeight }: Turn,
  i: number,
  j: number,
  a: number,
  b: number,
  height: number,
  blocked: Int32Array | null,
  bound: number,
): Place {
  const isSeen = hiddenHeight !== null && !mask.isHidden(i, j, a, b, height);
  const isTooHigh = height > cap;
  const unseen = hiddenHeight !== null && mask.looksBetween ? 'free' : 'unsure';
  const place = !isSeen && !isTooHigh ? unseen : isSeen && isTooHigh ? 'no' : isSeen ? 'hidden' : 'height';
  const fits =
    mayMatter(contest, place, bound) &&
    (blocked === null || mask.isClear(blocked, i, j, a, b)) &&
    mask.cornersFit(i, j, a, b);
  return fits ? place : 'no';
}

/**
 * Whether any cloth with a corner at node (i, j) whose top is at a height may win, or be the best without a rule.
 * @param most what it spares at most [K·h/day]
 */
export function cornerMatters(
  { mask, contest, hiddenHeight }: Turn,
  i: number,
  j: number,
  height: number,
  most: number,
): boolean {
  if (!mask.postFits(i, j)) return false;
  return hiddenHeight === null || mask.isHidden(i, j, 0, 0, height) || mayMatter(contest, 'hidden', most);
}

/** Whether cloth at such a place may win, or be the best without the rule that it breaks. */
export function mayMatter(contest: Contest, place: Place, bound: number): boolean {
  switch (place) {
    case 'no':
      return false;
    case 'free':
    case 'unsure':
      return true;
    case 'hidden':
      return contest.beatsWithout('hidden', bound) || contest.beatsWithout('glimpsed', bound);
    case 'height':
      return contest.beatsWithout('height', bound);
  }
}

/**
 * Whether a roof over a × b cells may leave the plants their light, or would be the best if it need not.
 * @param bound what the cloth spares at most [K·h/day]
 */
export function leavesLight(
  contest: Contest,
  light: LightPlane | null,
  i: number,
  j: number,
  a: number,
  b: number,
  bound: number,
): boolean {
  const broken = light === null ? null : light.broken(i, j, a, b);
  return broken === null || contest.beatsWithout(broken, bound);
}
