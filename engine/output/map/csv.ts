import { cellCenter } from '../../load/light/grid-of.ts';
import { type LoadResult, QUANTITIES } from '../../load/types.ts';

/** One CSV record (RFC 4180): quoted where it must be. */
export function csvRecord(fields: readonly (string | number | null)[]): string {
  return fields
    .map((field) => {
      const text = field === null ? '' : String(field);
      return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
    })
    .join(',');
}

/**
 * The cells of a load, one a line: centre on the plan [m] and the nine quantities; cells without a value are left out.
 * Lines end in CR LF. A piece for the head and for each row of the grid.
 */
export function* loadCsv({ grid, cells }: LoadResult): Generator<string> {
  yield `${csvRecord(['x', 'y', ...QUANTITIES])}\r\n`;
  for (let row = 0; row < grid.rows; row++) {
    let lines = '';
    for (let index = row * grid.columns; index < (row + 1) * grid.columns; index++) {
      if (Number.isNaN(cells.grade[index])) continue;
      const [x, y] = cellCenter(grid, index);
      const fields = [shortened(x), shortened(y), ...QUANTITIES.map((name) => shortened(cells[name][index]))];
      lines += `${csvRecord(fields)}\r\n`;
    }
    yield lines;
  }
}

/** Six digits, which is more than the numbers are good for. */
function shortened(value: number): number {
  return Number(value.toPrecision(6));
}
