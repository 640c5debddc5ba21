/** Characters of a name that are shown; a longer one is cut. */
const LONGEST = 60;
const EMBEDDINGS = '\u202a\u202b\u202d\u202e';
const ISOLATES = '\u2066\u2067\u2068';
const [END_EMBEDDING, END_ISOLATE] = ['\u202c', '\u2069'];

/**
 * A name that a person gave, as it can stand among other words: on one line, never so long that it widens what holds
 * it, and with every mark that turns the direction of writing closed where the name ends (Unicode Standard Annex 9,
 * section 2).
 */
export function shownName(name: string): string {
  const line = name
    .slice(0, 8 * LONGEST)
    .replaceAll(/\s+/g, ' ')
    .trim();
  const letters = Array.from(line);
  const cut =
    letters.length > LONGEST
      ? `${letters
          .slice(0, LONGEST - 1)
          .join('')
          .trimEnd()}…`
      : line;
  return cut + endsOf(cut);
}

/** A sentence in which every mark that turns the direction of writing ends with the quotes that it stands in. */
export function closedInQuotes(sentence: string): string {
  return sentence.replaceAll(/"([^"]*)"/g, (_, quoted: string) => `"${quoted}${endsOf(quoted)}"`);
}

/** What closes the marks that are still open, the last first. */
function endsOf(text: string): string {
  const open: string[] = [];
  for (const letter of text) {
    if (EMBEDDINGS.includes(letter)) open.push(END_EMBEDDING);
    else if (ISOLATES.includes(letter)) open.push(END_ISOLATE);
    else if (letter === END_EMBEDDING && open.at(-1) === END_EMBEDDING) open.pop();
    // The end of an isolate ends what was begun within it too.
    else if (letter === END_ISOLATE && open.includes(END_ISOLATE)) open.length = open.lastIndexOf(END_ISOLATE);
  }
  return open.toReversed().join('');
}
