import { ENGINEER_AREA, ENGINEER_HEIGHT } from '../../../frame/work/cautions.ts';
import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import type { Cloth } from '../../../plan/types.ts';
import type { ClothCaution } from '../types.ts';
import { HEADROOM } from './yard-rules.ts';

/** What our own cautions have against cloth. */
export function cautionsOn(cloth: Cloth): ClothCaution[] {
  if (cloth.kind === 'screen') return cloth.height > ENGINEER_HEIGHT ? ['tall'] : [];
  const area = cloth.length * cloth.width;
  return [
    ...(area > ENGINEER_AREA + ROUNDING ? (['large'] as const) : []),
    ...(cloth.height < HEADROOM - ROUNDING ? (['low'] as const) : []),
    ...(cloth.height > ENGINEER_HEIGHT + ROUNDING ? (['tall'] as const) : []),
  ];
}
