import { setStock, stockTubes } from '../../../engine/index.ts';
import type { CostItem, Stock } from '../../../engine/index.ts';
import { commitEdit } from '../../state/edit.ts';
import { planProblems } from '../../state/plan-checks.ts';
import { plan } from '../../state/yard.ts';

/** Changes the stock list. @returns a sentence when that cannot be */
export function changeStock(label: string, changes: Partial<Stock>): string | null {
  const next = setStock(plan.value, changes);
  const fault = planProblems(next)?.find(
    ({ severity, pointer }) => severity === 'error' && pointer.startsWith('/stock'),
  );
  if (fault) return fault.message;
  return commitEdit(label, next) ? null : 'This yard can be looked at here, not changed.';
}

/** Whether a line's price can be typed: one out of a list of cloth that came with the file cannot. */
export function hasPriceBox(item: CostItem): boolean {
  return item.priceKey !== null || item.of === 'tube';
}

/**
 * Remembers the price of one unit of a line; that of a tube out of the plan's own stock list goes there, that of a
 * ready-made panel is remembered by its area. @returns a sentence when that cannot be
 */
export function setPrice(item: CostItem, price: number): string | null {
  const label = `Change the price of ${item.name}`;
  if (item.priceKey !== null) {
    const area = item.of === 'cloth' ? (item.panel ?? 1) : 1;
    return changeStock(label, {
      prices: { ...plan.value.stock?.prices, [item.priceKey]: Math.round((price / area) * 1e4) / 1e4 },
    });
  }
  return changeStock(label, {
    tubes: stockTubes(plan.value).map((tube) =>
      item.of === 'tube' && tube.id === item.tube ? { ...tube, price } : tube,
    ),
  });
}
