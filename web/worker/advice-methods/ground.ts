import { boundsOf, featureOf, potGround } from '../../../engine/index.ts';
import type { Outcome, Plan, PlanPoint } from '../../../engine/index.ts';

/** [m] */
const STEP = 0.25;

/** Where a pot may not stand: squares of ground with the reason, each a clause. */
export interface GroundAnswer {
  readonly step: number;
  /** Middle of each barred square. */
  readonly barred: readonly { readonly at: PlanPoint; readonly reason: string }[];
}

export function ground({ plan, plant }: { readonly plan: Plan; readonly plant: string }): Outcome<GroundAnswer> {
  const pot = featureOf(plan, plant);
  if (pot?.kind !== 'plant')
    return {
      ok: false,
      problems: [{ pointer: '/features', message: 'This pot is no longer on the plan.', severity: 'error' }],
    };
  const allowed = potGround(plan, pot);
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const barred: { at: PlanPoint; reason: string }[] = [];
  for (let y = minY + STEP / 2; y < maxY; y += STEP) {
    for (let x = minX + STEP / 2; x < maxX; x += STEP) {
      const reason = allowed.reasonAt([x, y]);
      if (reason !== null) barred.push({ at: [x, y], reason });
    }
  }
  return { ok: true, value: { step: STEP, barred } };
}
