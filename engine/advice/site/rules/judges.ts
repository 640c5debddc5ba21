import type { Fitted } from '../../../frame/fit-frame.ts';
import type { Cloth } from '../../../plan/types.ts';
import { clothArea } from '../../compare/cost.ts';
import type { Judges } from '../search/contest.ts';
import { cautionsOn } from './cautions-on.ts';
import type { Hiding } from './hiding.ts';
import type { LightGuard } from './light-left.ts';
import type { Prices } from './price-of.ts';
import type { YardRules } from './yard-rules.ts';

/** What cloth is held against; `null` or absent: that rule does not bind. */
interface Held {
  readonly rules: YardRules;
  readonly hiding: Hiding;
  readonly guard: LightGuard | null;
  readonly prices: Prices;
  /** Whether people get past it still. */
  readonly leavesWay: (cloth: readonly Cloth[]) => boolean;
  /** Of all cloth together, in the plan's currency. */
  readonly budget?: number;
}

export function judgesOf({ rules, hiding, guard, prices, leavesWay, budget }: Held): Judges {
  const mayStand = (cloth: readonly Cloth[]): boolean =>
    cloth.every((one) => prices.fit(one) !== null) && leavesWay(cloth);
  const isOver = (fitted: readonly (Fitted | null)[]): boolean =>
    budget !== undefined && fitted.reduce((sum, one) => sum + (one?.cost ?? 0), 0) > budget;
  return {
    objectionsToPlace: (cloth) => rules.objectionsToPlace(cloth),
    postsStand: (cloth) => rules.postsStand(cloth),
    objections(cloth) {
      const objections = rules.objections(cloth);
      if (objections === 'ground' || hiding.isHidden(cloth)) return objections;
      return [...objections, 'hidden'];
    },
    isHidden: (cloth) => hiding.isHidden(cloth),
    isGlimpsed: (cloth) => hiding.isGlimpsed(cloth),
    lateObjections(cloth) {
      if (!mayStand(cloth)) return 'ground';
      return guard?.objections(cloth) ?? [];
    },
    keptFromBy: (cloth) => guard?.brokenFirst(cloth) ?? (mayStand(cloth) ? null : 'ground'),
    isTooDear: (cloth) => isOver(cloth.map((one) => prices.fit(one))),
    isTooDearAnywhere: (cloth) => isOver([prices.fitInTheOpen(cloth)]),
    cost: (cloth) => moneyOf(cloth, prices.fit(cloth)),
    leastCost: (cloth) => moneyOf(cloth, prices.fitInTheOpen(cloth)),
    isCautioned: (cloth) => cautionsOn(cloth).length > 0,
  };
}

/** What cloth costs to rank it by: money, or its area where no price is known. */
function moneyOf(cloth: Cloth, fitted: Fitted | null): number {
  return fitted === null ? Infinity : (fitted.cost ?? clothArea(cloth));
}
