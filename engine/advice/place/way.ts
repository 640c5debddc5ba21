/** The way of a pot from where it stands to another place: how far, round what, and how many steps. */

import { gatesOf } from '../../plan/geometry/gates.ts';
import { openRing, pointInRing } from '../../plan/geometry/shapes.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import { formatDistance, formatLength } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { namesInside } from '../../plan/words/names.ts';
import { walksIn } from './way-round.ts';

export interface Way {
  /** To carry: straight, or round what stands in that way where such a way is found. [m] */
  readonly metres: number;
  /** On the way, up; below 0 down. */
  readonly steps: number;
  /** Ids of the walls, hedges and buildings that stand in the straight way, as they were drawn. */
  readonly round: readonly string[];
  /** The metres are those of the way round. */
  readonly led?: true;
  /** The narrowest gate on the way, where it is known and goes through one. [m] */
  readonly gate?: number;
}

/** A hand on each side of a pot. Our choice. [m] */
const HANDS = 0.1;

/** So far on the level is as much work as one step. Our choice. [m] */
export const STEP_AS_FAR = 2;

/** Of the pieces of ground that hold a point the last counts, as for what lies on it. */
function stepsUpTo({ features }: Plan, at: PlanPoint): number {
  const under = features.findLast((feature) => feature.kind === 'ground' && pointInRing(at, openRing(feature.outline)));
  return (under?.kind === 'ground' ? under.steps : undefined) ?? 0;
}

const FEW = ['no', 'one', 'two', 'three', 'four', 'five', 'six'] as const;

/** "two steps up", "one step down"; empty on the level. */
export function stepsWords(steps: number): string {
  const count = Math.abs(steps);
  return count === 0 ? '' : `${FEW[count] ?? count} ${count === 1 ? 'step' : 'steps'} ${steps > 0 ? 'up' : 'down'}`;
}

/** The way from one place to another. */
export function wayBetween(plan: Plan, from: PlanPoint, to: PlanPoint): Way {
  const walks = walksIn(plan);
  const round = walks.inTheWay(from, to);
  const steps = stepsUpTo(plan, to) - stepsUpTo(plan, from);
  const led = round.length === 0 ? null : walks.round(from, to);
  const { metres, gate } = led ?? walks.straight(from, to);
  return {
    metres,
    steps,
    round,
    ...(led !== null && { led: true }),
    ...(gate !== null && (led !== null || round.length === 0) && { gate }),
  };
}

/** "7.5 m", "round the house", "two steps down": what is to be said of it. */
export function wayParts(plan: Plan, { metres, steps, round }: Way, units: Units): string[] {
  const past = round.length === 0 ? '' : `round ${namesInside(plan, round)}`;
  return [formatDistance(metres, units), past, stepsWords(steps)].filter((words) => words !== '');
}

/** The way to carry in words: "7.5 m away, round the house, two steps down". */
export function wayWords(plan: Plan, way: Way, units: Units): string {
  const [far, ...rest] = wayParts(plan, way, units);
  return [`${far} away`, ...rest].join(', ');
}

/** What to mind of ways as they are told. @param width of the pot [m] @param ways to carry */
export function wayNote(plan: Plan, width: number, ways: readonly Way[], units: Units): string {
  const blocked = ways.filter(({ round }) => round.length > 0);
  const isLed = blocked.length > 0 && blocked.every(({ led }) => led === true);
  const told = isLed
    ? 'How far to carry is told round what stands in the way, by the gates drawn, with the steps that are drawn.'
    : 'How far to carry is told as the crow flies, with the steps that are drawn.';
  const gates = ways.flatMap(({ gate }) => gate ?? []);
  if (gates.length === 0)
    return blocked.length === 0 || isLed || gatesOf(plan).length > 0
      ? told
      : `${told} No gate is drawn: leave a gap between two walls where one is.`;
  const narrowest = Math.min(...gates);
  const gate = `The narrowest gate on the way is ${formatLength(narrowest, units)} wide`;
  return narrowest < width + HANDS
    ? `${told} ${gate}, too narrow to carry the pot of ${formatLength(width, units)} through.`
    : `${told} ${gate}.`;
}
