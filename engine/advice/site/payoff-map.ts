import { gridOf } from '../../load/light/grid-of.ts';
import type { Outcome } from '../../load/types.ts';
import type { Plan } from '../../plan/types.ts';
import type { Weather } from '../../sun/weather/weather.ts';
import { leafTables } from './scoring/leaf-tables.ts';
import { harmPairsOf } from './search/harm-pairs.ts';
import { mostHidden, responseOf, shadeAnswers, sparedByShade } from './search/responses.ts';
import { targetsOf } from './search/targets.ts';
import type { PayoffMap } from './types.ts';

/**
 * Where on the plane of a roof its cloth would pay: every harmful ray carried back to the plane, with what shading it
 * spares. For one roof over the yard as it is the sum over its cells is what its shade spares; what hiding sky does is
 * left out.
 */
export function payoffMap(
  plan: Plan,
  {
    height,
    density,
    cell = 0.25,
    weather,
  }: { readonly height: number; readonly density: number; readonly cell?: number; readonly weather?: Weather },
): Outcome<PayoffMap> {
  const found = targetsOf(plan, weather);
  if (!found.ok) return found;
  const targets = found.value;
  const leaves = leafTables(targets);
  const pairs = harmPairsOf(targets, leaves, mostHidden(density));
  const once = sparedByShade(pairs, responseOf(pairs, shadeAnswers(targets, pairs, leaves), density));
  const grid = gridOf(plan, { cell, height });
  const perArea = new Float64Array(grid.columns * grid.rows);
  for (let p = 0; p < pairs.count; p++) {
    const [x, y, z] = targets.points[pairs.views[pairs.view[p]].point].at;
    const reach = (height - z) / pairs.dz[p];
    if (reach <= 0) continue;
    const i = Math.floor((x + reach * pairs.dx[p] - grid.x0) / cell);
    const j = Math.floor((y + reach * pairs.dy[p] - grid.y0) / cell);
    if (i >= 0 && j >= 0 && i < grid.columns && j < grid.rows) perArea[j * grid.columns + i] += once[p] / (cell * cell);
  }
  return { ok: true, value: { grid, perArea, most: perArea.reduce((most, value) => Math.max(most, value), 0) } };
}
