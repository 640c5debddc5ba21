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
 * Lines end in CR LF.
 */
export function loadCsv(load: LoadResult): string {
  const lines = [csvRecord(['x', 'y', ...QUANTITIES])];
  for (let index = 0; index < load.cells.grade.length; index++) {
    if (load.cells.grade[index] === null) continue;
    const [x, y] = cellCenter(load.grid, index);
    lines.push(
      csvRecord([shortened(x), shortened(y), ...QUANTITIES.map((name) => shortened(load.cells[name][index] ?? 0))]),
    );
  }
  return `${lines.join('\r\n')}\r\n`;
}

/** Six digits, which is more than the numbers are good for. */
function shortened(value: number): number {
  return Number(value.toPrecision(6));
}
