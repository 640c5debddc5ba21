/**
 * Makes engine/survey/place/zones.json: the world's time zones in cells, as the npm package @photostructure/tz-lookup
 * (CC0) answers for the middle of each. It asks 300 million times. Run: node --import tsx tests/make/zones.ts
 */

import { writeFileSync } from 'node:fs';
import zoneLookup from '@photostructure/tz-lookup';

/** The package's own cells: 48 × 24 over the world, each halved both ways up to nine times. */
const COLUMNS = 48;
const ROWS = 24;
const HALVINGS = 9;

type Cell = string | readonly Cell[];

/** @param size Of the cell, in the widths of the coarsest. */
function cellAt(column: number, row: number, size: number, halvings: number): Cell {
  if (halvings === 0)
    return zoneLookup(90 - ((row + size / 2) * 180) / ROWS, ((column + size / 2) * 360) / COLUMNS - 180);
  const half = size / 2;
  const parts = [
    cellAt(column, row, half, halvings - 1),
    cellAt(column + half, row, half, halvings - 1),
    cellAt(column, row + half, half, halvings - 1),
    cellAt(column + half, row + half, half, halvings - 1),
  ];
  return typeof parts[0] === 'string' && parts.every((part) => part === parts[0]) ? parts[0] : parts;
}

const names: string[] = [];
const recent: string[] = [];

function written(cell: Cell): string {
  if (typeof cell !== 'string') return `#${cell.map(written).join('')}`;
  const rank = recent.indexOf(cell);
  if (rank < 0) names.push(cell);
  else recent.splice(rank, 1);
  recent.unshift(cell);
  return rank < 0 ? '!' : String.fromCharCode(rank + (rank < 56 ? 36 : 256));
}

let cells = '';
for (let row = 0; row < ROWS; row++)
  for (let column = 0; column < COLUMNS; column++) cells += written(cellAt(column, row, 1, HALVINGS));

const about =
  'Time zones of the world, from the npm package @photostructure/tz-lookup (CC0), made by tests/make/zones.ts, ' +
  'read by zone-at.ts.';
writeFileSync(
  new URL('../../engine/survey/place/zones.json', import.meta.url),
  `${JSON.stringify({ about, names, cells }, null, 1)}\n`,
);
