/** Cloth that hangs over or beside a plant already: what more of it would help, said in a clause. */

import { isCloth } from '../../plan/kinds.ts';
import type { Plan, PlantRow } from '../../plan/types.ts';
import { formatShare } from '../../plan/units/shown.ts';
import type { ClothNow } from '../types.ts';
import type { CameBy } from './came-by.ts';

/** Cloth that hangs there and lets the sun through, or in under it; `null`: the sun comes otherwise. */
export function clothNow(plan: Plan, came: CameBy | null): ClothNow | null {
  if (came === null || (came.how !== 'through' && came.how !== 'under')) return null;
  const cloth = plan.features.find((feature) => feature.id === came.id);
  if (cloth === undefined || !isCloth(cloth)) return null;
  return { how: came.how, id: came.id, stops: cloth.measuredDensity ?? cloth.density };
}

/** "30 to 50 %"; `null`: no cloth suits its kind. */
function clothRange({ cloth }: PlantRow): string | null {
  if (!cloth) return null;
  const [least, most] = cloth;
  return least === most ? `${least} %` : `${least} to ${most} %`;
}

/** Cloth over what is taller hangs on posts of over 3 m, which no gardener sets up. [m] */
const TALLEST_UNDER_CLOTH = 2.8;

/**
 * Cloth as it would help, in a clause: thicker than hangs there, on the side where it comes in under; null: none.
 * @param height of the plant [m]
 */
export function clothClause(row: PlantRow, cloth: ClothNow | null, height: number): string | null {
  const range = clothRange(row);
  if (range === null) return null;
  if (cloth === null)
    return height > TALLEST_UNDER_CLOTH
      ? `a net, put up by those who net orchards, that stops ${range}`
      : `cloth that stops ${range}`;
  if (cloth.how === 'under') return 'a drop or a screen on that side';
  return isThin(row, cloth) ? `cloth that stops ${range} in place of ${formatShare(cloth.stops)}` : null;
}

/** Whether cloth that hangs there is thinner than suits a plant. */
function isThin({ cloth: range }: PlantRow, { stops }: ClothNow): boolean {
  return range !== null && range !== undefined && 100 * stops < range[0] - 0.5;
}
