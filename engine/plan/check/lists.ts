/** What stands beside the drawing: the person's own plant rows, the journal, the stock list. */
import { checkSide } from './rules.ts';
import { LIMITS } from '../file/limits.ts';
import {
  quote,
  readCivilDate,
  readFlag,
  readList,
  readNumber,
  readObject,
  readOwners,
  readText,
  readWord,
  report,
  show,
} from './reader.ts';
import type { NumberRule, Owner } from './reader.ts';
import type { JournalWhat } from '../types.ts';

const PRICE: NumberRule = { min: 0, max: 1e9 };
const TUBE: NumberRule = { above: 0, max: 1, unit: 'm' };
const LENGTH: NumberRule = { above: 0, max: 1000, unit: 'm' };
const JOURNAL_WORDS: readonly JournalWhat[] = ['damage', 'spray', 'rain', 'cloth-up', 'cloth-down', 'moved', 'note'];

/** The catalogue's form; the person's rows must have what a verdict needs. */
export function checkPlantRows(plan: Owner): void {
  const seen = new Set<string>();
  for (const row of readOwners(
    plan,
    'plants',
    'optional',
    (item, index) => `Plant row ${typeof item.id === 'string' ? quote(item.id) : index + 1}`,
    LIMITS.plantRows,
  )) {
    const id = readText(row, 'id', 'required');
    if (id !== undefined && seen.has(id)) report(row, 'id', 'there is already a row with this id.');
    if (id !== undefined) seen.add(id);
    readText(row, 'name', 'required');
    for (const key of ['botanical', 'group', 'light', 'limitBasis', 'sensitivity', 'frost', 'note'])
      readText(row, key, 'optional');
    checkPair(row, 'sunHours', { min: 0, max: 24, unit: 'h' }, 'required');
    if (row.object.minDLI !== null) readNumber(row, 'minDLI', { min: 0, max: 100, unit: 'mol/m²' }, 'optional');
    readNumber(row, 'heatLimit', { min: 20, max: 90, unit: '°C' }, 'required');
    readText(row, 'limitOf', 'required');
    readWord(row, 'afternoonShade', ['yes', 'young', 'fruit', 'no'], 'required');
    if (row.object.cloth !== null) checkPair(row, 'cloth', { min: 0, max: 100, unit: '%' }, 'optional');
    readNumber(row, 'frostDamage', { min: -80, max: 30, unit: '°C' }, 'optional');
    readNumber(row, 'leafWidth', { above: 0, max: 3, unit: 'm' }, 'required');
    readFlag(row, 'bothSides');
    if (!(readList(row, 'sources', 'optional') ?? []).every((source) => typeof source === 'string'))
      report(row, 'sources', 'sources must be a list of texts.');
  }
}

/** Two numbers, the lesser first. */
function checkPair(owner: Owner, key: string, rule: NumberRule, need: 'required' | 'optional'): void {
  const pair = readList(owner, key, need);
  if (pair === undefined) return;
  const [low, high] = pair;
  const right =
    pair.length === 2 &&
    typeof low === 'number' &&
    typeof high === 'number' &&
    low <= high &&
    low >= (rule.min ?? -Infinity) &&
    high <= (rule.max ?? Infinity);
  if (!right)
    report(owner, key, `it must be two numbers from ${rule.min} to ${rule.max} ${rule.unit}, the lesser first.`);
}

export function checkJournal(plan: Owner): void {
  for (const entry of readOwners(plan, 'journal', 'optional', journalSubject)) {
    readCivilDate(entry, 'date', 'required');
    const what = readWord(entry, 'what', JOURNAL_WORDS, 'required');
    readText(entry, 'feature', 'optional');
    if (what === 'damage') readNumber(entry, 'amount', { min: 0, max: 5 }, 'optional');
    else readNumber(entry, 'amount', { min: 0, max: 10_000 }, 'optional');
    checkSide(entry);
    readText(entry, 'part', 'optional');
    readText(entry, 'text', 'optional');
  }
}

function journalSubject(entry: Readonly<Record<string, unknown>>, index: number): string {
  return typeof entry.date === 'string' ? `Journal entry of ${show(entry.date)}` : `Journal entry ${index + 1}`;
}

export function checkStock(plan: Owner): void {
  const stock = readObject(plan, 'stock', 'Stock', 'optional');
  if (stock === undefined) return;
  readText(stock, 'currency', 'optional');
  readNumber(stock, 'kerf', { min: 0, max: 0.05, unit: 'm' }, 'optional');
  const seen = new Set<string>();
  for (const tube of readOwners(
    stock,
    'tubes',
    'optional',
    (item, index) => `Tube ${typeof item.id === 'string' ? quote(item.id) : index + 1}`,
  )) {
    const id = readText(tube, 'id', 'required');
    if (id !== undefined && seen.has(id)) report(tube, 'id', 'there is already a tube with this id.');
    if (id !== undefined) seen.add(id);
    readText(tube, 'name', 'required');
    const outside = readNumber(tube, 'outside', TUBE, 'required');
    const wall = readNumber(tube, 'wall', TUBE, 'required');
    if (outside !== undefined && wall !== undefined && wall * 2 > outside)
      report(tube, 'wall', `two walls of ${wall} m are thicker than the tube's ${outside} m.`);
    readNumber(tube, 'length', LENGTH, 'required');
    readNumber(tube, 'price', PRICE, 'optional');
  }
  for (const cloth of readOwners(stock, 'cloth', 'optional', (_, index) => `Cloth ${index + 1} of the stock`)) {
    readNumber(cloth, 'width', LENGTH, 'required');
    readNumber(cloth, 'length', LENGTH, 'optional');
    readNumber(cloth, 'density', { min: 0, max: 1 }, 'optional');
    readNumber(cloth, 'price', PRICE, 'optional');
  }
  const prices = readObject(stock, 'prices', 'Prices', 'optional');
  if (prices !== undefined) for (const key of Object.keys(prices.object)) readNumber(prices, key, PRICE, 'required');
}
