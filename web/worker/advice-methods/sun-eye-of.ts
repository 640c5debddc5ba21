import { skylineAltitude, withOptions } from '../../../engine/index.ts';
import type { MonthDay, Outcome, Plan } from '../../../engine/index.ts';
import { sunEye } from '../../charts/sun-eye.ts';
import type { SunEye } from '../../charts/sun-eye.ts';

export interface SunEyeArgs {
  readonly plan: Plan;
  /** Ids of the options to show as built. */
  readonly options: readonly string[];
  /** Moments of the sun: true azimuth and altitude. [°] */
  readonly suns: readonly { readonly azimuth: number; readonly altitude: number }[];
  readonly monthDay: MonthDay;
}

/** The yard as the sun sees it, one picture a moment; `null` while it does not see it: down, or behind the land. */
export function sunEyeOf({ plan, options, suns, monthDay }: SunEyeArgs): Outcome<readonly (SunEye | null)[]> {
  const built = withOptions(plan, options);
  if (!built.ok) return built;
  const value = suns.map(({ azimuth, altitude }) => {
    const hidden = altitude <= Math.max(0, skylineAltitude(plan.site.skyline ?? [], azimuth));
    return hidden ? null : sunEye(built.plan, azimuth, Math.min(altitude, HIGHEST), monthDay);
  });
  return { ok: true, value };
}

/** Straight overhead there is no up across the beam. [°] */
const HIGHEST = 89.9;
