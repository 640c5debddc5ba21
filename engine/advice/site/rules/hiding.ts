import type { Cloth, Plan, PlanPoint } from '../../../plan/types.ts';
import { hiddenHeightAt, sightLinesOf } from '../../sight/hidden-height.ts';
import { type EyeReach, eyeReaches, seenBy } from '../../sight/hidden-heights.ts';
import { createUnseen, isSeenLittle, type SeenFrom, seenOver } from '../../sight/seen.ts';

/** Seen a little: from no more of an onlooker's line than this share, or no more of the cloth than this. Our choice. */
const LITTLE_OF_LINE = 0.1;
const LITTLE_SHOWS = 0.2;

/** Whom cloth must be hidden from. */
export interface Hiding {
  /** Ids of the eyes that the cloth must be hidden from. */
  readonly from: readonly string[];
  /** Eyes from which most of the ground can hide nothing, and from which nobody asked to hide: they bind nothing. */
  readonly unbound: readonly EyeReach[];
  /** Whether it counts as hidden what they see little of. */
  readonly little: boolean;
  /**
   * How tall a thing may stand unseen by those at a point. [m]
   * @param least, most heights below and above these are not told apart [m]
   */
  heightAt(at: PlanPoint, least?: number, most?: number): number;
  isHidden(cloth: Cloth): boolean;
  /** Whether each of them sees little of it. */
  isGlimpsed(cloth: Cloth): boolean;
  /** What each of them sees of it. */
  seenFrom(cloth: Cloth): SeenFrom[];
}

/**
 * @param hideFrom ids of eyes; left out: all from which cloth can be hidden in most of the yard
 * @param little whether it may be seen a little
 */
export function hidingOf(plan: Plan, hideFrom?: readonly string[], little = false): Hiding {
  const reaches = hideFrom === undefined ? eyeReaches(plan) : [];
  const from = hideFrom ?? reaches.filter(({ canBeHiddenFrom }) => canBeHiddenFrom).map(({ id }) => id);
  const bound = seenBy(plan, from);
  const sight = sightLinesOf(bound);
  const isUnseen = createUnseen(sight);
  const isGlimpsed = (cloth: Cloth) => isSeenLittle(sight, cloth, LITTLE_OF_LINE, LITTLE_SHOWS);
  return {
    from,
    little,
    unbound: reaches.filter(({ canBeHiddenFrom }) => !canBeHiddenFrom),
    heightAt: (at, least, most) => hiddenHeightAt(sight, at, least, most).height,
    isHidden: (cloth) => from.length === 0 || isUnseen(cloth) || (little && isGlimpsed(cloth)),
    isGlimpsed,
    seenFrom: (cloth) => seenOver(sight, bound, [cloth]),
  };
}
