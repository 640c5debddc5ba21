/** What a joint costs. */

import type { Plan } from '../../plan/types.ts';
import type { JointKind } from '../layout/types.ts';
import { priceOf } from './prices.ts';
import type { Price, PriceKey } from './prices.ts';

/** Tube from this diameter on takes heavy corners. [m] */
const HEAVY = 0.04;

const JOINT_PRICES: Readonly<Record<JointKind, PriceKey>> = {
  '2-way corner': 'corner2',
  '3-way corner': 'corner3',
  '3-way tee': 'tee3',
  '4-way': 'way4',
  '5-way': 'way5',
  'flat 4-way cross': 'cross4',
  'side clamp': 'clamp',
  'brace clamp': 'clamp',
  'wall bracket': 'wallBracket',
  foot: 'foot',
};

/** @param outside Diameter of the tube. [m] */
export function jointPrice(plan: Plan, joint: JointKind, adjustable: boolean, outside: number): Price {
  const heavy = joint === '3-way corner' && outside >= HEAVY;
  return priceOf(plan, adjustable ? 'adjustable' : heavy ? 'corner3Heavy' : JOINT_PRICES[joint]);
}
