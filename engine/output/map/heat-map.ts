import { gradeOf, GRADE_WORDS } from '../../load/light/nine.ts';
import type { LoadResult } from '../../load/types.ts';

/** One mark a grade, mild to scorching: denser is hotter, so that it reads without colour. */
const MARKS = ['·', '░', '▒', '▓', '█'] as const;
/** Colours of the 256 of a terminal, dark blue to yellow: told apart by the colour-blind too. */
const COLOURS = [24, 60, 102, 143, 220] as const;
const NO_COLOUR = '\u001b[0m';
const MARGIN = 2;

/**
 * The graded yard in characters, y up, as wide as the page allows: cells are drawn together where there are too many. A
 * mark is the grade of the mean hot load; letters are plants, in the order of `load.plants`.
 */
export function heatMap(load: LoadResult, page: { readonly colour: boolean; readonly columns: number }): string {
  const { grid, cells } = load;
  const together = Math.max(1, Math.ceil((grid.columns * 2) / (page.columns - MARGIN)));
  const columns = Math.ceil(grid.columns / together);
  const rows = Math.ceil(grid.rows / together);
  const letters = plantLetters(load, together, columns, rows);
  const lines: string[] = [];
  for (let row = rows - 1; row >= 0; row--) {
    let line = ' '.repeat(MARGIN);
    for (let column = 0; column < columns; column++) {
      const mean = meanOfBlock(cells.hotLoad, grid.columns, grid.rows, column * together, row * together, together);
      line += drawn(mean === null ? null : gradeOf(mean), letters.get(row * columns + column), page.colour);
    }
    lines.push(line.trimEnd());
  }
  return lines.join('\n');
}

/** What the marks stand for, on one line. */
export function heatMapKey(colour: boolean): string {
  return GRADE_WORDS.map((word, k) => `${painted(MARKS[k].repeat(2), k + 1, colour)} ${word}`).join('   ');
}

/** Letter of a plant on the map, by its place in `load.plants`; '' beyond the alphabet. */
export function plantLetter(index: number): string {
  return index < 26 ? String.fromCharCode(65 + index) : '';
}

function plantLetters(load: LoadResult, together: number, columns: number, rows: number): Map<number, string> {
  const { grid, plants } = load;
  const letters = new Map<number, string>();
  for (const [index, { at }] of plants.entries()) {
    const column = Math.floor((at[0] - grid.x0) / grid.cell / together);
    const row = Math.floor((at[1] - grid.y0) / grid.cell / together);
    if (column >= 0 && column < columns && row >= 0 && row < rows && plantLetter(index) !== '')
      letters.set(row * columns + column, plantLetter(index));
  }
  return letters;
}

function meanOfBlock(
  values: Float64Array,
  columns: number,
  rows: number,
  left: number,
  bottom: number,
  size: number,
): number | null {
  let sum = 0;
  let count = 0;
  for (let j = bottom; j < Math.min(bottom + size, rows); j++) {
    for (let i = left; i < Math.min(left + size, columns); i++) {
      const value = values[j * columns + i];
      if (Number.isNaN(value)) continue;
      sum += value;
      count += 1;
    }
  }
  return count === 0 ? null : sum / count;
}

/** Two characters wide, since a character is about twice as tall. */
function drawn(grade: number | null, letter: string | undefined, colour: boolean): string {
  const mark = grade === null ? ' ' : MARKS[grade - 1];
  const text = letter === undefined ? mark.repeat(2) : `${letter}${mark}`;
  return grade === null ? text : painted(text, grade, colour);
}

function painted(text: string, grade: number, colour: boolean): string {
  return colour ? `\u001b[38;5;${COLOURS[grade - 1]}m${text}${NO_COLOUR}` : text;
}
