import { nearWall, withOptions } from '../../../engine/index.ts';
import type { NearWall, Outcome } from '../../../engine/index.ts';
import type { Task } from '../protocol.ts';
import type { SpotArgs } from './spot.ts';

export type WallNearArgs = Omit<SpotArgs, 'height'> & {
  /** Of the plant that stands there; 0 for a bare spot. [m] */
  readonly radius: number;
};

/** A sunlit wall within a metre, or `null`. */
export function wallNear(
  { plan, options, period, at, radius }: WallNearArgs,
  { weather }: Task,
): Outcome<NearWall | null> {
  const built = withOptions(plan, options);
  return built.ok ? nearWall(built.plan, at, radius, period, weather) : built;
}
