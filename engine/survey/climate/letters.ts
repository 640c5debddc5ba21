/** Numbers near nought as one letter each: nought, −1, 1, −2, 2 … from "#" on, then from "À". Never a quote or a \. */
const FIRST = '#'.charCodeAt(0);
const BACKSLASH = '\\'.charCodeAt(0);
const LAST = '~'.charCodeAt(0);
const GO_ON = 'À'.charCodeAt(0);
/** Letters from here on would be marks over the one before. */
const MARKS = 0x300;

/** @throws RangeError where a whole number is too far from nought for one letter */
export function letterOf(number: number): string {
  const code = FIRST + (number < 0 ? -2 * number - 1 : 2 * number);
  const past = code >= BACKSLASH ? code + 1 : code;
  const letter = past > LAST ? past - LAST - 1 + GO_ON : past;
  if (!Number.isInteger(number) || letter >= MARKS) throw new RangeError(`No letter for ${number}.`);
  return String.fromCharCode(letter);
}

/** The number of a letter: `letterOf` undone. */
export function numberOf(letter: string): number {
  const code = letter.charCodeAt(0);
  const past = code >= GO_ON ? code - GO_ON + LAST + 1 : code;
  const folded = (past > BACKSLASH ? past - 1 : past) - FIRST;
  return folded % 2 === 0 ? folded / 2 : -(folded + 1) / 2;
}
