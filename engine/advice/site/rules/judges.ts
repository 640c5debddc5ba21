import type { Plan } from '../../../plan/types.ts';
import type { Judges } from '../search/contest.ts';
import type { SiteRule } from '../types.ts';
import type { Hiding } from './hiding.ts';
import type { LightGuard } from './light-left.ts';
import { priceReader } from './price-of.ts';
import type { YardRules } from './yard-rules.ts';

/** What cloth is held against; `null` or absent: that rule does not bind. */
interface Held {
  readonly rules: YardRules;
  readonly hiding: Hiding;
  readonly guard: LightGuard | null;
  /** Of all cloth together, in the plan's currency. */
  readonly budget?: number;
}

export function judgesOf(plan: Plan, { rules, hiding, guard, budget }: Held): Judges {
  const priceOf = priceReader(plan);
  return {
    objections(cloth) {
      const objections = rules.objections(cloth);
      if (objections === 'ground' || hiding.isHidden(cloth)) return objections;
      return [...objections, hiding.isGlimpsed(cloth) ? 'glimpsed' : 'hidden'];
    },
    lateObjections(cloth) {
      const costs = cloth.map(priceOf);
      if (costs.includes(Infinity)) return 'ground';
      const broken: SiteRule[] = [];
      if (guard?.darkened(cloth)) broken.push('light');
      const sum = costs.reduce<number>((all, cost) => all + (cost ?? 0), 0);
      if (budget !== undefined && sum > budget) broken.push('budget');
      return broken;
    },
  };
}
