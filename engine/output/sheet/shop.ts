/** Of the build sheet: what to buy, borrow and cut. */

import { jointWords } from '../../frame/layout/fittings.ts';
import { formatSlight } from '../../frame/layout/lengths.ts';
import { packWords } from '../../frame/shop/line.ts';
import type { BuildSheet } from '../../frame/types.ts';
import { AREA_PER_UNIT } from '../../plan/units/per-unit.ts';
import { formatArea, formatCut } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { list, section, sentence, type SheetSection, table } from './part.ts';

export function shopping(sheet: BuildSheet, units: Units): SheetSection {
  const aisles = [...new Set(sheet.cost.items.map((item) => item.aisle))];
  const rows = aisles.flatMap((aisle) => [
    [aisle, '', '', ''],
    ...sheet.cost.items
      .filter((item) => item.aisle === aisle)
      .map((item) => [
        `☐ ${item.name}${item.of === 'tube' ? `, ${formatCut(item.length, units)}` : ''}` +
          `${item.pack > 1 ? ` (${packWords(item)})` : ''}`,
        item.unit === 'm²' ? formatArea(item.count, units) : `${item.count} ${plural(item.unit, item.count)}`,
        item.price === null ? 'no price' : item.unit === 'm²' ? pricePerArea(item.price, units) : item.price.toFixed(2),
        item.amount === null ? '' : item.amount.toFixed(2),
      ]),
  ]);
  const total = sheet.cost.total === null ? [] : [['Total', '', '', sheet.cost.total.toFixed(2)]];
  return section('shopping', 'Shopping list', [
    table(['what', 'how many', 'each', sheet.cost.currency], [...rows, ...total], [1, 2, 3]),
    sentence(sheet.cost.note),
  ]);
}

export function tools(sheet: BuildSheet): SheetSection {
  return section('tools', 'Tools, hands and hours', [
    sentence(`Tools: ${sheet.tools.map((tool) => tool.name).join('; ')}.`),
    ...sheet.work.sentences.map(sentence),
  ]);
}

export function partsAndJoints(sheet: BuildSheet, units: Units): SheetSection {
  const parts = table(
    ['part', 'length', 'count'],
    sheet.pieces.map((piece) => [piece.part, formatCut(piece.length, units), String(piece.count)]),
    [1, 2],
  );
  const joints = table(
    ['joint', 'sockets', 'count', 'what it joins'],
    sheet.fittings.map((fitting) => [
      fitting.kind,
      String(fitting.socketsEach),
      String(fitting.count),
      jointWords(fitting),
    ]),
    [1, 2],
  );
  const { tubes, sockets, inGround } = sheet.sockets;
  const ground = inGround > 0 ? ` and ${inGround} stand in the ground` : '';
  const check =
    `Check: ${tubes} tubes have ${2 * tubes} ends; ${sockets} sit in a socket${ground}. ` +
    `${sheet.sockets.holds ? 'None is left over.' : 'They do not agree: do not buy by this list.'}`;
  return section('parts', 'Parts and joints', [parts, joints, sentence(check)]);
}

export function cutList(sheet: BuildSheet, units: Units): SheetSection {
  const { cutting } = sheet;
  const kerf =
    cutting.kerf === 0
      ? 'Cut with a rolling cutter, which loses nothing.'
      : `Every cut loses ${formatSlight(cutting.kerf, units)}.`;
  const best = cutting.proven
    ? 'No other way of cutting needs less: proved.'
    : `It could be done with ` +
      `${
        cutting.counted === 'tubes'
          ? `${cutting.bound} tubes`
          : cutting.counted === 'length'
            ? `${cutting.bound.toFixed(1)} m`
            : money(cutting.bound, sheet)
      } at the ` +
      `very best; no way better than this was found.`;
  const savings = cutting.savings.map(
    (saving) =>
      `Saves ${
        saving.money === null ? `${saving.tubes} ${plural('tube', saving.tubes)}` : money(saving.money, sheet)
      }: ${saving.change}.`,
  );
  return section('cuts', 'Cut list', [{ kind: 'cuts' }, sentence(`${kerf} ${best}`), list(savings)]);
}

function money(amount: number, sheet: BuildSheet): string {
  return `${amount.toFixed(2)} ${sheet.cost.currency}`;
}

/** @param price Of a square metre. */
function pricePerArea(price: number, units: Units): string {
  return units === 'metric' ? `${price.toFixed(2)} a m²` : `${(price * AREA_PER_UNIT['ft²']).toFixed(3)} a ft²`;
}

function plural(word: string, count: number): string {
  return count === 1 ? word : `${word}s`;
}
