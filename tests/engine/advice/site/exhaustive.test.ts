import { describe, expect, test } from 'vitest';
import { harmOf } from '../../../../engine/load/verdict/harm-of.ts';
import { roofOf, screenOf } from '../../../../engine/advice/site/search/candidates.ts';
import { harmPairsOf } from '../../../../engine/advice/site/search/harm-pairs.ts';
import { hidingOf } from '../../../../engine/advice/site/rules/hiding.ts';
import { leafTables } from '../../../../engine/advice/site/scoring/leaf-tables.ts';
import { askedOf } from '../../../../engine/advice/site/request.ts';
import { siteOf } from '../../../../engine/advice/site/site.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import { targetsOf } from '../../../../engine/advice/site/search/targets.ts';
import { togetherScore } from '../../../../engine/advice/site/scoring/together.ts';
import { turnedLattice } from '../../../../engine/advice/site/search/turned-lattice.ts';
import { yardRules } from '../../../../engine/advice/site/rules/yard-rules.ts';
import type { Canopy, DropSide, Plan, Screen } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../load/yard-plan.ts';
import { smallPlan } from './small-plans.ts';

/** Every piece of cloth of a request's lattice that the rules allow, light and money aside. */
function everyCloth(plan: Plan, request: SiteRequest): (Canopy | Screen)[] {
  const {
    lattice,
    request: { densities = [] },
  } = valueOf(askedOf(plan, request));
  const rules = yardRules(plan, request.maxHeight);
  const hiding = hidingOf(plan, request.hideFrom);
  const allowed = (cloth: Canopy | Screen): boolean => {
    const objections = rules.objections(cloth);
    return objections !== 'ground' && objections.length === 0 && hiding.isHidden(cloth);
  };
  const all: (Canopy | Screen)[] = [];
  const sides: DropSide[] = ['front', 'back', 'left', 'right'];
  const sets = sides.flatMap((a, k) => [[a], ...sides.slice(k + 1).map((b) => [a, b])]);
  for (const turn of lattice.turns) {
    const turned = turnedLattice(plan.site.boundary, turn, lattice.step);
    const { columns, rows } = turned;
    for (const density of densities) {
      for (let j = 0; j <= rows; j++) {
        for (let i = 0; i <= columns; i++) {
          for (const { a, b } of lattice.roof.sizes) {
            if (i + a > columns || j + b > rows) continue;
            for (const height of lattice.roof.heights) {
              if (lattice.kinds.includes('roof')) all.push(roofOf(turned, { i, j, a, b, height }, density));
              if (!lattice.kinds.includes('roof with drops')) continue;
              for (const depth of lattice.drops.depths)
                for (const set of sets)
                  all.push(
                    roofOf(
                      turned,
                      { i, j, a, b, height },
                      density,
                      set.map((side) => ({ side, depth, density })),
                    ),
                  );
            }
          }
          if (!lattice.kinds.includes('screen')) continue;
          for (const cells of lattice.screen.cells) {
            for (const top of lattice.screen.tops) {
              const upright = { cells, bottom: lattice.screen.bottom, top };
              if (i + cells <= columns)
                all.push(screenOf(turned, { along: 'u', line: j, from: i, ...upright }, density));
              if (j + cells <= rows) all.push(screenOf(turned, { along: 'v', line: i, from: j, ...upright }, density));
            }
          }
        }
      }
    }
  }
  return all.filter(allowed);
}

/** What each piece spares, ray by ray over the yard's points: no table, no bound. */
function scorerOf(plan: Plan): (cloth: Canopy | Screen) => number {
  const targets = valueOf(targetsOf(plan));
  const leaves = leafTables(targets);
  const score = togetherScore(targets, harmPairsOf(targets, leaves, 0.98), leaves);
  return (cloth) => score([cloth]).reduce((sum, each) => sum + each, 0);
}

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
