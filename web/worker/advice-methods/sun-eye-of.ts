import { skylineAltitude, withOptions } from '../../../engine/index.ts';
import type { MonthDay, Outcome, Plan } from '../../../engine/index.ts';
import { sunEye } from '../../charts/sun-eye.ts';
import type { SunEye } from '../../charts/sun-eye.ts';

export interface SunEyeArgs {
  readonly plan: Plan;
  /** Ids of the options to show as built. */
  readonly options: readonly string[];
  /** Of the sun, true. [°] */
  readonly azimuth: number;
  readonly altitude: number;
  readonly monthDay: MonthDay;
}

/** The yard as the sun sees it, or `null` while it does not: down, or behind the land. */
export function sunEyeOf({ plan, options, azimuth, altitude, monthDay }: SunEyeArgs): Outcome<SunEye | null> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  if (altitude <= Math.max(0, skylineAltitude(plan.site.skyline ?? [], azimuth))) return { ok: true, value: null };
  return { ok: true, value: sunEye(built.plan, azimuth, Math.min(altitude, HIGHEST), monthDay) };
}

/** Straight overhead there is no up across the beam. [°] */
const HIGHEST = 89.9;
