/** JSON in pieces: a result may be longer than the longest string, and is written while it is made. */

/** A piece is passed on once it is this long. [characters] */
const PIECE = 65_536;
/** Numbers turned to text at a time. */
const STRIDE = 4096;

/**
 * A value as JSON.stringify would write it, with three differences: a typed array is a list, what is no number in it
 * `null`; so is anything else that can be iterated, its items made one by one as they are written; and characters that
 * could steer a terminal stand as escapes wherever they are. Objects are walked; an array is written whole, so lists
 * too long for one string belong in a typed array or an iterable.
 */
export function* jsonPieces(value: unknown): Generator<string> {
  let waiting = '';
  for (const part of partsOf(value)) {
    waiting += part;
    if (waiting.length < PIECE) continue;
    yield harmless(waiting);
    waiting = '';
  }
  yield harmless(waiting);
}

function* partsOf(value: unknown): Generator<string> {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) yield JSON.stringify(value);
  else if (value instanceof Float64Array) {
    for (let from = 0; from < value.length; from += STRIDE)
      yield (from === 0 ? '[' : ',') + JSON.stringify(Array.from(value.subarray(from, from + STRIDE))).slice(1, -1);
    yield value.length === 0 ? '[]' : ']';
  } else if (Symbol.iterator in value) {
    let before = '[';
    for (const item of value as Iterable<unknown>) {
      yield before + JSON.stringify(item);
      before = ',';
    }
    yield before === '[' ? '[]' : ']';
  } else {
    let before = '{';
    for (const [key, member] of Object.entries(value)) {
      if (member === undefined) continue;
      yield `${before}${JSON.stringify(key)}:`;
      yield* partsOf(member);
      before = ',';
    }
    yield before === '{' ? '{}' : '}';
  }
}

/** JSON escapes control characters below the space itself; beyond ASCII they can only stand in texts. */
function harmless(json: string): string {
  return json.replaceAll(
    /[\u007f-\u009f\u2028\u2029]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}
