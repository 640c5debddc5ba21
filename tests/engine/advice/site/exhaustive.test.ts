import { describe, expect, test } from 'vitest';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import type { Canopy, Plan, Screen } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../load/yard-plan.ts';
import { everyCloth, scorerOf } from './every-cloth.ts';
import { smallPlan } from './small-plans.ts';

/** What cloth spares by casting the yard anew with it. */
function sparedExactly(plan: Plan, cloth: Canopy | Screen): number {
  const harm = (yard: Plan) => valueOf(harmOf(yard)).reduce((sum, plant) => sum + plant.worth * plant.harm, 0);
  return harm(plan) - harm({ ...plan, features: [...plan.features, cloth] });
}

/** Seeds in turn take a roof, a roof with drops, a screen, and densities and turns of their own. */
function requestOf(seed: number): SiteRequest {
  const kinds = (['roof', 'roof with drops', 'screen'] as const)[seed % 3];
  return {
    kinds: [kinds],
    sizes: [{ length: 1.5, width: seed % 2 === 0 ? 1.5 : 1 }],
    heights: seed % 3 === 2 ? [1.6] : [2.2],
    densities: [[0.35, 0.6, 0.85][(seed % 7) % 3]],
    dropDepths: [0.8],
    step: 0.5,
    turnStep: seed % 4 === 0 ? 45 : 90,
    keepLight: false,
    betweenSteps: false,
  };
}

describe('on random small yards, obstacles and rules included (seeds 1 to 201)', () => {
  test('the search finds what trying every place finds, and its bound is never below it', { timeout: 600_000 }, () => {
    const found = { roof: 0, 'roof with drops': 0, screen: 0, nothing: 0 };
    for (let seed = 1; seed <= 201; seed++) {
      const plan = smallPlan(seed);
      const request = requestOf(seed);
      const result = valueOf(siteOf(plan, request));
      const score = scorerOf(plan);
      const scored = everyCloth(plan, request)
        .map((cloth) => ({ cloth, spared: score(cloth) }))
        .sort((a, b) => b.spared - a.spared);
      const best = scored.length > 0 ? Math.max(0, sparedExactly(plan, scored[0].cloth)) : 0;
      const spared = Math.max(0, ...result.options.map((option) => option.spared));
      expect(Math.abs(spared - best), `seed ${seed}: the search ${spared}, every place ${best}`).toBeLessThan(
        2e-3 * (1 + best),
      );
      expect(result.bound, `seed ${seed}`).toBeGreaterThanOrEqual(best - 2e-3 * (1 + best));
      expect(result.proven).toBe(true);
      found[result.options[0]?.kind === 'several' ? 'nothing' : (result.options[0]?.kind ?? 'nothing')]++;
    }
    expect(found.roof).toBeGreaterThan(40);
    expect(found['roof with drops']).toBeGreaterThan(40);
    expect(found.screen).toBeGreaterThan(40);
  });
});
