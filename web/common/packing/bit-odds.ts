/**
 * Guesses the next bit of a long table, so that `unpack` needs few bits to be told what it was. gzip looks for texts
 * that stand there again; the tables of towns and normals hardly repeat themselves, but what comes next hangs on the
 * column and the last letters. So several contexts each keep count of what followed them, and the counts are mixed by
 * how often each was right (context mixing; the constants are our own, by trial).
 */

/** Contexts: so many of the last bytes; then the word begun, and the column with the last byte, or the place in it. */
const LASTS = [0, 1, 2, 3, 4, 6];
const CONTEXTS = LASTS.length + 3;
/** Counts are kept in 2^20 slots; contexts that share one by accident only make the text a little longer. */
const SLOTS = 20;
/** Places of a row that have weights of their own: column and letter in it. [bits] */
const PLACES = 11;
/** A context is sure of what it saw the last so many times, and slowly forgets what was before. */
const MEMORY = 60;

/** Guesses a text bit by bit, each from all before it. */
export interface BitOdds {
  /** That the next bit is 1. [1/4096, 1 to 4095] */
  odds(): number;
  /** What it was. */
  learn(bit: number): void;
}

/**
 * Chances by what the last bytes, the word begun and the column were, mixed by weights that follow whoever was right:
 * one set of weights for each beginning of a byte, one for each place of the row, both heard alike.
 * Integers only after the two tables, so that what one machine packs every other unpacks.
 */
export function bitOdds(): BitOdds {
  const chances = new Uint16Array(1 << SLOTS).fill(1 << 15);
  const met = new Uint8Array(1 << SLOTS);
  const byBegun = weightsFor(8);
  const byPlace = weightsFor(PLACES);
  const contexts = new Int32Array(CONTEXTS);
  const slots = new Int32Array(CONTEXTS);
  const opinions = new Int32Array(CONTEXTS);
  const walk = contextWalk(contexts);
  // Bits of the byte so far, behind a 1.
  let begun = 1;
  let [guessByBegun, guessByPlace] = [2048, 2048];
  return {
    odds() {
      let [sumByBegun, sumByPlace] = [0, 0];
      for (let i = 0; i < CONTEXTS; i++) {
        const slot = mixed(contexts[i] ^ Math.imul(begun, 0x85ebca6b)) >>> (32 - SLOTS);
        slots[i] = slot;
        opinions[i] = STRETCHED[chances[slot] >> 4];
        sumByBegun += byBegun[begun * CONTEXTS + i] * opinions[i];
        sumByPlace += byPlace[walk.place * CONTEXTS + i] * opinions[i];
      }
      guessByBegun = squashed(sumByBegun >> 16);
      guessByPlace = squashed(sumByPlace >> 16);
      return squashed((sumByBegun + sumByPlace) >> 17);
    },
    learn(bit) {
      for (let i = 0; i < CONTEXTS; i++) {
        const slot = slots[i];
        byBegun[begun * CONTEXTS + i] += lesson(opinions[i], (bit << 12) - guessByBegun);
        byPlace[walk.place * CONTEXTS + i] += lesson(opinions[i], (bit << 12) - guessByPlace);
        chances[slot] += Math.trunc((bit * 65535 - chances[slot]) / Math.min(met[slot] + 1.5, MEMORY));
        if (met[slot] < MEMORY) met[slot]++;
      }
      begun = (begun << 1) | bit;
      if (begun < 256) return;
      walk.after(begun & 255);
      begun = 1;
    },
  };
}

function weightsFor(bits: number): Int32Array {
  return new Int32Array(CONTEXTS << bits).fill(Math.round((1.75 * 65536) / CONTEXTS));
}

/** How far a weight moves after a guess that was off by an error. */
function lesson(opinion: number, error: number): number {
  return (opinion * error * 10 + (1 << 13)) >> 14;
}

/** Sets what each context is after one more byte, and knows the place in the row. */
function contextWalk(contexts: Int32Array): { place: number; after(byte: number): void } {
  const before = new Uint8Array(Math.max(...LASTS));
  let word = 0;
  let column = 0;
  let within = 0;
  const set = (): void => {
    LASTS.forEach(
      (count, i) => (contexts[i] = before.subarray(0, count).reduce((hash, byte) => mixed(hash + byte + 1), count)),
    );
    contexts.set(
      [word + 5, (column << 8) + before[0] + 6, (column << 6) + Math.min(within, 63) + 7].map(mixed),
      LASTS.length,
    );
    // Each has chances of its own.
    for (let i = 0; i < CONTEXTS; i++) contexts[i] += i * 0x1234567;
  };
  set();
  return {
    place: 0,
    after(byte) {
      before.copyWithin(1, 0);
      before[0] = byte;
      word = isLetter(byte) ? mixed(word + byte) : 0;
      const divides = byte === COMMA || byte === QUOTE;
      within = divides ? 0 : within + 1;
      column = byte === CLOSING ? 0 : column + Number(divides);
      this.place = (Math.min(column, 31) << 6) + Math.min(within, 63);
      set();
    },
  };
}

const [QUOTE, COMMA, CLOSING] = [...'",]'].map((sign) => sign.charCodeAt(0));

function isLetter(byte: number): boolean {
  return byte > 127 || (byte > 64 && byte < 91) || (byte > 96 && byte < 123);
}

function mixed(value: number): number {
  const product = Math.imul(value, 0xc2b2ae35);
  return product ^ (product >>> 15);
}

/** A chance in 1/4096 as its logit, in 1/256, before it is rounded. */
export function logit(chance: number): number {
  return Math.log(chance / (4096 - chance)) * 256;
}

/** And back. */
export function logistic(logitOf: number): number {
  return 4096 / (1 + Math.exp(-logitOf / 256));
}

function squashed(logitOf: number): number {
  return SQUASHED[Math.max(-2047, Math.min(2047, logitOf)) + 2048];
}

const STRETCHED = Int32Array.from({ length: 4096 }, (_, chance) => Math.max(-2047, Math.round(logit(chance))));
const SQUASHED = Int32Array.from({ length: 4096 }, (_, at) =>
  Math.max(1, Math.min(4095, Math.round(logistic(at - 2048)))),
);
