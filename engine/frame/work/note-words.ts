/** What the sheet says first, in sentences. */

import type { Plan, StockTube } from '../../plan/types.ts';
import { formatArea, formatCut } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { formatSlight } from '../layout/lengths.ts';
import { idsNamed } from '../layout/post-names.ts';
import { currencyOf } from '../shop/prices.ts';
import type { Span } from '../strength/types.ts';
import { engineerFrom } from './cautions.ts';

/** @param area [m²] */
export function largeRoofNote(area: number, units: Units): string {
  return (
    `This roof is ${formatArea(area, units)}: over ${engineerFrom(units).area}, ask a licensed ` +
    `engineer before you build. The line is this sheet’s own (some draw it at ` +
    `${units === 'metric' ? '12 m²' : '130 ft²'}); local rules come first.`
  );
}

/** `null` within the budget, or where none is set. */
export function overBudgetNote(plan: Plan, total: number | null): string | null {
  const budget = plan.stock?.budget;
  return budget === undefined || total === null || total <= budget
    ? null
    : `That is ${(total - budget).toFixed(0)} ${currencyOf(plan)} over your budget of ${budget.toFixed(0)}.`;
}

/**
 * @param count Cans of water in all.  @param each At each of the posts that take most.
 * @param canBolt Whether feet can be bolted to what they stand on.
 */
export function tooHeavyNote(count: number, each: number, ids: readonly string[], canBolt: boolean): string {
  const bolt = canBolt ? ', or have its feet bolted to the ground by somebody licensed' : '';
  return (
    `Held by weights it takes ${count} cans of water, ${each} at ${idsNamed(ids)}: more than stand round a post. ` +
    `Make it smaller or take thinner cloth${bolt}.`
  );
}

/** @param height [m] */
export function tallPostNote(height: number, units: Units): string {
  return (
    `Its posts are ${formatCut(height, units)} tall: over ${engineerFrom(units).height}, ask a licensed engineer ` +
    `before you build.`
  );
}

export function sagNote({ rail, sag, span }: Span, units: Units): string {
  return (
    `The rail ${rail} will sag ${formatSlight(sag, units)} over ${formatCut(span, units)}: add ` +
    `a mid post, or take thicker tube.`
  );
}

/** @param shrink By how much. [m]  @param maxBay [m] */
export function shrinkNote(what: 'length' | 'width', shrink: number, maxBay: number, units: Units): string {
  return (
    `The ${what} is ${formatSlight(shrink, units)} over a whole number of bays of ` +
    `${formatCut(maxBay, units)}: make it that much smaller and one bay, with its posts and joints, ` +
    `falls away.`
  );
}

export function outsideNote({ outside }: StockTube, units: Units): string {
  return (
    `All sizes are from post middle to post middle. Outside to outside is ${formatCut(outside, units)} ` +
    `more: the tube’s own diameter.`
  );
}

export const NO_TAKE_OFF =
  'Rails are cut to the full distance between post middles: take-off at the joints 0. Measure one joint ' +
  'first; most swallow some of the distance.';
