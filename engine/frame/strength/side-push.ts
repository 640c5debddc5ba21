/** The push of one wind on all the cloth that stands in its way. */

import type { FrameModel, StandingCloth } from '../layout/model.ts';
import { sidePush } from './wind.ts';

/**
 * The strongest of the pushes from any side, opposite drops counted together: porous cloth hardly shelters what is
 * behind it. [N]
 */
export function strongestPush({ standing }: FrameModel, gust: number): number {
  return strongest(standing, (cloth) => sidePush(gust, cloth.area, cloth.density));
}

/** How hard that push lifts each post of the windward row. [N] */
export function liftOfPush({ standing }: FrameModel, gust: number): number {
  return strongest(standing, (cloth) =>
    cloth.base > 0 ? (sidePush(gust, cloth.area, cloth.density) * cloth.height) / (cloth.base * cloth.posts) : 0,
  );
}

function strongest(standing: readonly StandingCloth[], of: (cloth: StandingCloth) => number): number {
  const sums = new Map<StandingCloth['pushed'], number>();
  for (const cloth of standing) sums.set(cloth.pushed, (sums.get(cloth.pushed) ?? 0) + of(cloth));
  return Math.max(0, ...sums.values());
}
