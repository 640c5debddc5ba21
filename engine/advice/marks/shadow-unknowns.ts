/** North and heights as numbers that shadow marks may correct. */

import { upBearingOf } from '../../plan/defaults.ts';
import { wrapBearing } from '../../plan/geometry/angles.ts';
import type { Feature, Plan } from '../../plan/types.ts';
import { formatLength } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { namedInside } from '../../plan/words/names.ts';
import { defaultPm, TAPE_PM } from '../../survey/known-by.ts';
import { withNumber } from '../doubt/inputs.ts';
import { edgeNear, type MarkedSun } from '../sight/shadow-edge.ts';
import type { ShadowCure, ShadowMark } from './types.ts';

/** North is not known better than a line can be drawn and a minute read. Our choice. [°] */
const NORTH_PM = 0.5;

/** A feature that throws a shadow and has a height. */
export type Caster = Extract<Feature, { readonly kind: 'wall' | 'hedge' | 'building' | 'tree' | 'canopy' | 'screen' }>;

/** A mark with what threw its shadow, and the sun at its minute. */
export interface Marked {
  readonly mark: ShadowMark;
  readonly caster: Caster;
  readonly sun: MarkedSun;
}

export interface Unknown {
  /** `null` for north. */
  readonly caster: Caster | null;
  /** How far it may be off. [°, m] */
  readonly pm: number;
}

/** North, and each marked feature's height once. */
export function unknownsOf(plan: Plan, marked: readonly Marked[]): Unknown[] {
  const north = plan.site.how?.upBearing;
  const northPm = Math.max(NORTH_PM, north?.pm ?? (north ? defaultPm(north.by, upBearingOf(plan), 'bearing') : 0));
  const heights = [...new Set(marked.map(({ caster }) => caster))].map((caster): Unknown => {
    const known = caster.how?.height;
    return { caster, pm: Math.max(TAPE_PM, known?.pm ?? (known ? defaultPm(known.by, caster.height) : 0)) };
  });
  return [{ caster: null, pm: northPm }, ...heights];
}

/**
 * How far a mark lies outside its shadow when numbers are off by so many of their own ±; `null`: no edge in reach. [m]
 */
export function residualOf(
  plan: Plan,
  { mark, caster, sun }: Marked,
  unknowns: readonly Unknown[] = [],
  values: readonly number[] = [],
): number | null {
  let upBearing = upBearingOf(plan);
  let changed: Feature = caster;
  unknowns.forEach((unknown, k) => {
    if (unknown.caster === null) upBearing += values[k] * unknown.pm;
    else if (unknown.caster === caster) changed = heightened(caster, values[k] * unknown.pm);
  });
  return edgeNear(changed, upBearing, mark.at, sun)?.outside ?? null;
}

/** @param value how many of its own ± the number is off */
export function cureBy(plan: Plan, { caster, pm }: Unknown, value: number, units: Units): ShadowCure {
  const inPm = Math.abs(value);
  const by = value * pm;
  if (caster === null) {
    const words = `the plan’s up turned by ${Math.abs(by).toFixed(1)}° ${by > 0 ? 'clockwise' : 'counter-clockwise'}`;
    return { what: 'north', feature: null, by, to: wrapBearing(upBearingOf(plan) + by), inPm, words };
  }
  const words = `${namedInside(plan, caster.id)} ${formatLength(Math.abs(by), units)} ${by > 0 ? 'higher' : 'lower'}`;
  return { what: 'height', feature: caster.id, by, to: heightened(caster, by).height, inPm, words };
}

function heightened(caster: Caster, by: number): Caster {
  return withNumber(caster, 'height', caster.height + by);
}
