import { askedOf } from '../../../../engine/advice/site/request.ts';
import { hidingOf } from '../../../../engine/advice/site/rules/hiding.ts';
import { yardRules } from '../../../../engine/advice/site/rules/yard-rules.ts';
import { leafTables } from '../../../../engine/advice/site/scoring/leaf-tables.ts';
import { togetherScore } from '../../../../engine/advice/site/scoring/together.ts';
import { roofOf, screenOf } from '../../../../engine/advice/site/search/candidates.ts';
import { harmPairsOf } from '../../../../engine/advice/site/search/harm-pairs.ts';
import { targetsOf } from '../../../../engine/advice/site/search/targets.ts';
import { turnedLattice } from '../../../../engine/advice/site/search/turned-lattice.ts';
import type { SiteRequest } from '../../../../engine/advice/site/types.ts';
import type { Cloth, DropSide, Plan } from '../../../../engine/plan/types.ts';
import { valueOf } from '../../../parts/outcome.ts';

/** Every piece of cloth of a request's lattice that the rules allow, light and money aside. */
export function everyCloth(plan: Plan, request: SiteRequest): Cloth[] {
  const rules = yardRules(plan, request.maxHeight);
  const hiding = hidingOf(plan, request.hideFrom);
  return everyPlace(plan, request).filter((cloth) => rules.objections(cloth).length === 0 && hiding.isHidden(cloth));
}

/** Every piece of a request's lattice that can stand on its ground, whatever the rules say. */
export function everyPlace(plan: Plan, request: SiteRequest): Cloth[] {
  const {
    lattice,
    request: { densities = [] },
  } = valueOf(askedOf(plan, request));
  const rules = yardRules(plan);
  const all: Cloth[] = [];
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
  return all.filter((cloth) => rules.objections(cloth) !== 'ground');
}

/**
 * What each piece spares, ray by ray over the yard's points: no table, no bound.
 * @param suits whether a plant that a piece is too dense for counts for nothing
 */
export function scorerOf(plan: Plan, suits = false): (cloth: Cloth) => number {
  const targets = valueOf(targetsOf(plan));
  const leaves = leafTables(targets);
  const score = togetherScore(targets, harmPairsOf(targets, leaves, 0.98), leaves);
  const counts = (plant: number, { density }: Cloth) =>
    !suits || density <= (targets.plants[plant].row.cloth?.[1] ?? 100) / 100 + 1e-9;
  return (cloth) => score([cloth]).reduce((sum, each, plant) => sum + (counts(plant, cloth) ? each : 0), 0);
}
