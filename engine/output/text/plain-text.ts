/** A person's text on one line of a terminal: no control characters, no line breaks. */
export function oneLine(text: string): string {
  return text.replaceAll(CONTROLS, ' ').trim();
}

// oxlint-disable-next-line no-control-regex -- control characters are what is looked for
const CONTROLS = /[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g;

/**
 * A copy of a plan, or of any plain data, of which every text, ids and keys too, is on one line: what is printed of it
 * can neither steer a terminal nor make lines of its own. Numbers and order stay.
 */
export function withTextsOnOneLine<T>(value: T): T;
export function withTextsOnOneLine(value: unknown): unknown {
  if (typeof value === 'string') return oneLine(value);
  if (Array.isArray(value)) return value.map((item: unknown) => withTextsOnOneLine(item));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, member]) => [oneLine(key), withTextsOnOneLine<unknown>(member)]),
  );
}

/** A column of words is made no narrower than this to let a table fit. [characters] */
const NARROWEST_COLUMN = 16;

/**
 * Columns of text set under each other, two spaces apart; columns named in `right` are set flush right. Where that is
 * wider than the page, heads of numbers and columns of words are broken; where it still is, each row becomes a
 * paragraph, its cells named by their heads.
 */
export function table(
  columns: number,
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): string {
  const all = [head, ...rows].map((row) => row.map(oneLine));
  const widths = head.map((_, column) => Math.max(...all.map((row) => row[column].length)));
  const tooWide = () => widths.reduce((sum, width) => sum + width, 2 * (widths.length - 1)) - columns;
  const least = (column: number) =>
    right.includes(column)
      ? Math.max(...[...head[column].split(' '), ...rows.map((row) => row[column])].map((text) => text.length))
      : NARROWEST_COLUMN;
  const ofWords = [...widths.keys()].filter((column) => !right.includes(column));
  for (const column of [...right, ...ofWords.toSorted((a, b) => widths[b] - widths[a])]) {
    if (tooWide() > 0 && widths[column] > least(column))
      widths[column] = Math.max(least(column), widths[column] - tooWide());
  }
  return tooWide() > 0
    ? rows.map((row) => paragraph(columns, head, row)).join('\n')
    : all.flatMap((row) => rowLines(row, widths, right)).join('\n');
}

function rowLines(row: readonly string[], widths: readonly number[], right: readonly number[]): string[] {
  // A broken word's rest is set in, so that no name makes a line of its own.
  const cells = row.map((cell, column) =>
    wrapped(cell, widths[column], right.includes(column) || widths[column] < NARROWEST_COLUMN ? '' : ' ').split('\n'),
  );
  return Array.from({ length: Math.max(...cells.map((lines) => lines.length)) }, (_, line) =>
    cells
      .map((lines, column) => {
        const cell = lines[line] ?? '';
        return right.includes(column) ? cell.padStart(widths[column]) : cell.padEnd(widths[column]);
      })
      .join('  ')
      .trimEnd(),
  );
}

function paragraph(columns: number, head: readonly string[], [first, ...cells]: readonly string[]): string {
  const named = cells.map((cell, k) => (head[k + 1] === '' || cell === '' ? cell : `${head[k + 1]}: ${cell}`));
  const rest = named.filter((cell) => cell !== '').join('; ');
  return [wrapped(first, columns), wrapped(rest, columns, '    ', '  ')]
    .filter((line) => line.trim() !== '')
    .join('\n');
}

/**
 * Text broken between words so that no line is longer than `columns`, a word that is longer within itself; lines after
 * the first are set in by `indent`, the first by `first`.
 */
export function wrapped(text: string, columns: number, indent = '  ', first = ''): string {
  return wrappedWords(oneLine(text), columns, indent, first);
}

/** A page for people of which no line is longer than `columns`; colour codes of our own take no room. */
export function pageOf(text: string, columns: number): string {
  return text
    .split('\n')
    .map((line) => {
      if (widthOf(line) <= columns) return line;
      const [margin] = /^ */.exec(line) ?? [''];
      return wrappedWords(line.trim(), columns, `${margin}  `, margin);
    })
    .join('\n');
}

function wrappedWords(text: string, columns: number, indent: string, first: string): string {
  const lines: string[] = [];
  let line = first;
  for (const word of text.split(' ').flatMap((each) => piecesOf(each, columns - indent.length))) {
    if (line.trim() !== '' && widthOf(line) + 1 + widthOf(word) > columns) {
      lines.push(line);
      line = indent + word;
    } else line = line.trim() === '' ? line + word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.join('\n');
}

/** A word cut where it is longer than a line; characters of two code units stay whole. */
function piecesOf(word: string, room: number): string[] {
  if (widthOf(word) <= room) return [word];
  return word.match(new RegExp(`.{1,${Math.max(1, room)}}`, 'gu')) ?? [word];
}

function widthOf(text: string): number {
  return text.includes(ESCAPE) ? text.replaceAll(OWN_COLOURS, '').length : text.length;
}

const ESCAPE = '\u001b';
const OWN_COLOURS = new RegExp(`${ESCAPE}\\[[\\d;]*m`, 'g');
