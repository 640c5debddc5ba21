/** The cloth on the shopping list, and what it is tied and sewn with. */

import { countUp } from '../../plan/numbers/tolerances.ts';
import type { Plan } from '../../plan/types.ts';
import { formatCut, formatShare } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import type { FrameModel } from '../layout/model.ts';
import { goodsLines } from './goods.ts';
import { cents, line } from './line.ts';
import { priceOf } from './prices.ts';
import type { Price } from './prices.ts';
import { rollStep, stockCloth } from './stock.ts';
import type { ClothPiece, ClothPlan, CostItem } from './types.ts';

/** A steel rod for the lower hem of a drop. [m] */
const HEM_ROD = 2;

export function clothLines(plan: Plan, cloth: ClothPlan, model: FrameModel, units: Units): CostItem[] {
  const ties = cloth.pieces.reduce((sum, piece) => sum + piece.ties, 0);
  const rolls = cloth.pieces.filter((piece) => piece.buy === 'from the roll');
  const clips = rolls.reduce((sum, piece) => sum + piece.ties, 0);
  const rods = model.cloths
    .filter(({ kind }) => kind === 'drop')
    .reduce((sum, { opening }) => sum + countUp(opening[0] / HEM_ROD), 0);
  return [
    ...oncePerName(cloth.pieces.map((piece, index) => clothLine(plan, piece, `cloth-${index + 1}`, units))),
    ...goodsLines(plan, 'ties', ties),
    ...goodsLines(plan, 'clips', clips),
    ...goodsLines(plan, 'thread', rolls.length > 0 ? 1 : 0),
    ...goodsLines(plan, 'hem-rods', rods),
  ];
}

function clothLine(plan: Plan, piece: ClothPiece, id: string, units: Units): CostItem {
  return piece.buy === 'ready-made' ? panelLine(plan, piece, id, units) : rollLine(plan, piece, id, units);
}

function panelLine(plan: Plan, piece: ClothPiece, id: string, units: Units): CostItem {
  const row = stockCloth(plan).find(
    ({ width, length }) =>
      length !== undefined &&
      Math.min(width, length) === piece.rollWidth &&
      Math.max(width, length) === piece.rollLength,
  );
  const made = priceOf(plan, 'clothMade');
  const panel = piece.rollWidth * piece.rollLength;
  const price: Price =
    row?.price !== undefined
      ? { key: null, price: row.price, from: 'yours' }
      : { ...made, price: made.price === null ? null : cents(made.price * panel) };
  const [along, across] = piece.finished.map((side) => formatCut(side, units));
  const cloth = `shade cloth ${formatShare(piece.density)} for the ${piece.where}`;
  const name = `${cloth}, hemmed with eyelets, ${along} × ${across}`;
  return line({ id, aisle: 'cloth', name, unit: 'panel' }, 1, price, { of: 'cloth', panel });
}

function rollLine(plan: Plan, piece: ClothPiece, id: string, units: Units): CostItem {
  const step = rollStep(plan);
  const length = countUp(piece.rollLength / step) * step;
  const row = stockCloth(plan).find(
    ({ width, length: sold, price }) => width === piece.rollWidth && price !== undefined && sold !== piece.rollWidth,
  );
  const perArea: Price =
    row?.price !== undefined
      ? {
          key: null,
          price: row.length === undefined ? row.price : cents(row.price / (row.length * row.width)),
          from: 'yours',
        }
      : priceOf(plan, 'clothRoll');
  const name =
    `knitted shade cloth ${formatShare(piece.density)} for the ${piece.where}: ${formatCut(length, units)} off a ` +
    `roll ${formatCut(piece.rollWidth, units)} wide`;
  const area = cents(length * piece.rollWidth);
  return line({ id, aisle: 'cloth', name, unit: 'm²' }, area, perArea, { of: 'cloth', panel: null });
}

/** Pieces of one kind on one line. */
function oncePerName(items: readonly CostItem[]): CostItem[] {
  const firsts = items.filter((item, index) => items.findIndex(({ name }) => name === item.name) === index);
  return firsts.map((first) => {
    const same = items.filter(({ name }) => name === first.name);
    if (same.length === 1) return first;
    const sum = (of: (item: CostItem) => number): number => cents(same.reduce((total, item) => total + of(item), 0));
    return {
      ...first,
      name: `${first.name}, ${same.length} times`,
      need: sum(({ need }) => need),
      count: sum(({ count }) => count),
      amount: first.amount === null ? null : sum(({ amount }) => amount ?? 0),
    };
  });
}
