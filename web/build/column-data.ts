import { readFile } from 'node:fs/promises';
import type { Plugin } from 'vite';
import { bare } from './bare-data.ts';

/** Tables of rows with the same keys, that what draws the first picture holds: see `packed-data.ts` for the others. */
const TABLES = /\/(plants|crowns)\.json$/;
const IN_COLUMNS = '\0columns:';

type Row = Readonly<Record<string, unknown>>;

/** Sends rows column by column: gzip makes them shorter by a tenth so. They are rows again once they are loaded. */
export function columnData(): Plugin {
  return {
    name: 'column-data',
    enforce: 'pre',
    async resolveId(source, importer) {
      if (!TABLES.test(source)) return undefined;
      const found = await this.resolve(source, importer, { skipSelf: true });
      return found && IN_COLUMNS + found.id.replace(/\.json$/, '');
    },
    async load(id) {
      if (!id.startsWith(IN_COLUMNS)) return undefined;
      const table = JSON.parse(bare(await readFile(`${id.slice(IN_COLUMNS.length)}.json`, 'utf8'))) as Row;
      const parts = Object.entries(table).map(
        ([key, value]) => `${key}:${isRows(value) ? `rows(${columnsOf(value)})` : JSON.stringify(value)}`,
      );
      return { code: `${ROWS};export default {${parts.join()}};`, moduleSideEffects: false };
    },
  };
}

/** The first column has a value in every row; where another has none it has a hole. */
const ROWS = `const rows = (columns) => Object.values(columns)[0].map((_, row) => Object.fromEntries(
  Object.entries(columns).flatMap(([key, column]) => row in column ? [[key, column[row]]] : [])))`;

function isRows(value: unknown): value is readonly Row[] {
  return Array.isArray(value) && value.every((row) => typeof row === 'object' && row !== null && !Array.isArray(row));
}

function columnsOf(rows: readonly Row[]): string {
  const keys = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  // The comma after the last keeps a hole there.
  const column = (key: string): string => rows.map((row) => `${JSON.stringify(row[key]) ?? ''},`).join('');
  return `{${keys.map((key) => `${key}:[${column(key)}]`).join()}}`;
}
