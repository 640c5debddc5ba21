/** Why a frame cannot be built, and what would cure it. */

import { isCloth } from '../plan/kinds.ts';
import { ROUNDING } from '../plan/numbers/tolerances.ts';
import { LEAST_BUILT } from '../plan/schema/feature.ts';
import type { Cloth, Plan } from '../plan/types.ts';
import { formatCut } from '../plan/units/shown.ts';
import type { Units } from '../plan/units/units.ts';
import { frameName } from './layout/model.ts';
import type { FrameBrief } from './layout/model.ts';
import type { Piece } from './layout/types.ts';
import type { Span } from './strength/types.ts';

export function sagMessage(thing: Cloth, brief: FrameBrief, span: Span, units: Units): string {
  const cure =
    span.span > brief.maxBay + ROUNDING
      ? 'move the frame so that the post left out can stand'
      : `a post under its middle (a longest bay of ${formatCut(span.span / 2, units)})`;
  return (
    `${frameName(thing)}: a rail of ${brief.tube.name} over ${formatCut(span.span, units)} would sag ` +
    `${formatCut(span.sag, units)} under its own weight. Two cures: ${cure}, or thicker tube.`
  );
}

export function tooLongMessage(thing: Cloth, brief: FrameBrief, { part, kind, length }: Piece, units: Units): string {
  const longest = brief.lengths[brief.lengths.length - 1].length;
  const cure =
    kind === 'post' || kind === 'stay'
      ? 'a lower frame'
      : `a post under its middle (a longest bay of ${formatCut(length / 2, units)})`;
  return (
    `${frameName(thing)}: its ${part} is ${formatCut(length, units)}, but ${brief.tube.name} is sold up to ` +
    `${formatCut(longest, units)}. Two cures: ${cure}, or a tube that is sold longer.`
  );
}

export function tooShortMessage(thing: Cloth, { part, length }: Piece, units: Units): string {
  const left = length <= 0 ? 'nothing' : `less than ${formatCut(LEAST_BUILT, units)}, too little to build with,`;
  return `${frameName(thing)}: ${left} is left of a ${part} after the take-off at both ends.`;
}

/** @param kind Of the feature; `undefined` where there is none. */
export function notBuildableMessage(plan: Plan, id: string, kind: string | undefined): string {
  const known = plan.features.filter(isCloth).map((feature) => `"${feature.id}"`);
  const options = (plan.options ?? [])
    .filter((option) => (option.adds ?? []).some((feature) => feature.id === id))
    .map((option) => `"${option.id}"`);
  if (id === '') return `There is nothing to build: the yard has no roof and no screen, and no option brings one.`;
  const why = kind === undefined ? `There is no "${id}" in the yard` : `"${id}" is a ${kind}, which needs no frame`;
  const hint =
    options.length > 0
      ? `it belongs to option ${options.join(' and ')}: ask for that option too`
      : known.length > 0
        ? `what can be built here is ${known.join(', ')}`
        : 'the yard has no roof and no screen';
  return `${why}; ${hint}.`;
}
