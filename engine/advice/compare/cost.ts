import { withGround } from '../../frame/layout/ground-of.ts';
import { costOf } from '../../frame/sheet.ts';
import { currencyOf } from '../../frame/shop/prices.ts';
import type { Outcome } from '../../load/types.ts';
import { bottomOf, riseOf } from '../../plan/defaults.ts';
import { canopyEdge } from '../../plan/geometry/cloth-shapes.ts';
import { cleanPath, distance, pathLength } from '../../plan/geometry/shapes.ts';
import { isCloth } from '../../plan/kinds.ts';
import type { Cloth, Feature, Plan, Problem } from '../../plan/types.ts';
import { shownName } from '../../plan/words/shown-name.ts';
import type { ChoiceCost } from './types.ts';

/** Cloth of a canopy, roof and drops, or of a screen, without hems. [m²] */
export function clothArea(thing: Cloth): number {
  if (thing.kind === 'screen') return pathLength(cleanPath(thing.path)) * (thing.height - bottomOf(thing));
  const roof = thing.width * Math.hypot(thing.length, riseOf(thing));
  return (thing.drops ?? []).reduce((sum, { side, depth }) => {
    const [a, b] = canopyEdge(thing, side);
    return sum + depth * distance([a[0], a[1]], [b[0], b[1]]);
  }, roof);
}

/**
 * What the things added to a yard cost in money and work: cloth by its build sheet, pots nothing; for what is planted
 * or walled no price is known.
 */
export function costOfAll(added: readonly Feature[], plan: Plan): Outcome<ChoiceCost> {
  const missing: string[] = [];
  const problems: Problem[] = [];
  let total: number | null = 0;
  const hours = { low: 0, high: 0 };
  for (const feature of added) {
    if (isCloth(feature)) {
      const result = costOf(feature, withGround(plan));
      if (!result.ok) problems.push(...result.problems);
      else {
        const { cost } = result;
        missing.push(...cost.missing);
        total = total === null || cost.total === null ? null : total + cost.total;
        hours.low += result.hours.low;
        hours.high += result.hours.high;
      }
    } else if (
      feature.kind === 'wall' ||
      feature.kind === 'hedge' ||
      feature.kind === 'tree' ||
      feature.kind === 'building'
    ) {
      missing.push(shownName(feature.name ?? feature.id));
    }
  }
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, value: { currency: currencyOf(plan), total, hours, missing: [...new Set(missing)] } };
}
