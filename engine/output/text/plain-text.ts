/** A person's text on one line of a terminal: no control characters, no line breaks. */
export function oneLine(text: string): string {
  // oxlint-disable-next-line no-control-regex -- control characters are what is looked for
  return text.replaceAll(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]+/g, ' ').trim();
}

/** Columns of text set under each other, two spaces apart; columns named in `right` are set flush right. */
export function table(
  head: readonly string[],
  rows: readonly (readonly string[])[],
  right: readonly number[] = [],
): string {
  const all = [head, ...rows].map((row) => row.map(oneLine));
  const widths = head.map((_, column) => Math.max(...all.map((row) => row[column].length)));
  return all
    .map((row) =>
      row
        .map((cell, column) => (right.includes(column) ? cell.padStart(widths[column]) : cell.padEnd(widths[column])))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/**
 * Text broken between words so that no line is longer than `columns`; lines after the first are set in by `indent`, the
 * first by `first`.
 */
export function wrapped(text: string, columns: number, indent = '  ', first = ''): string {
  const lines: string[] = [];
  let line = first;
  for (const word of oneLine(text).split(' ')) {
    if (line.trim() !== '' && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = indent + word;
    } else line = line.trim() === '' ? line + word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.join('\n');
}
