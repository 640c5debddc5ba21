import type { Outcome } from '../../load/types.ts';
import { boundsOf } from '../../plan/geometry/shapes.ts';
import type { Plan, PlanPoint } from '../../plan/types.ts';
import { potGround } from './ground.ts';
import { potNamed } from './pot-there.ts';

/** [m] */
const STEP = 0.25;

/** Where a pot may not stand: squares of ground with the reason, each a clause. */
export interface BarredGround {
  readonly step: number;
  /** Middle of each barred square. */
  readonly barred: readonly { readonly at: PlanPoint; readonly reason: string }[];
}

/** @param plant id of the pot's plant */
export function barredGround(plan: Plan, plant: string): Outcome<BarredGround> {
  const pot = potNamed(plan, plant);
  if (!pot.ok) return pot;
  const allowed = potGround(plan, pot.value);
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
