import type { LightPlane } from '../rules/light-planes.ts';
import type { Contest } from './contest.ts';
import type { Turn } from './turn.ts';

/**
 * Whether nothing that can be told from nodes alone speaks against cloth over a × b cells (a screen: one of them 0)
 * whose top is at a height.
 * @param blocked nodes that a roof may not cover; `null`: it is no roof
 * @param bound what the cloth spares at most [K·h/day]
 */
export function mayStand(
  { mask, contest, cap, hiddenHeight }: Turn,
  i: number,
  j: number,
  a: number,
  b: number,
  height: number,
  blocked: Int32Array | null,
  bound: number,
): boolean {
  const seen =
    hiddenHeight !== null &&
    !(
      mask.isHidden(i, j, height) &&
      mask.isHidden(i + a, j, height) &&
      mask.isHidden(i, j + b, height) &&
      mask.isHidden(i + a, j + b, height)
    );
  const tooHigh = height > cap;
  const mayMatter =
    seen && tooHigh
      ? false
      : seen
        ? contest.beatsWithout('hidden', bound) || contest.beatsWithout('glimpsed', bound)
        : !tooHigh || contest.beatsWithout('height', bound);
  if (mayMatter && (blocked === null || mask.isClear(blocked, i, j, a, b)) && mask.cornersFit(i, j, a, b)) return true;
  contest.forbidden++;
  return false;
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
  if (broken === null || contest.beatsWithout(broken, bound)) return true;
  contest.forbidden++;
  return false;
}
