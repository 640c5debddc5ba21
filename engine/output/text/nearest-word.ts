import { editDistance } from '../../plan/catalogue/plants.ts';

/** The word of a list spelt most like one that is not in it; `null` if none is near. */
export function nearestWord(word: string, words: readonly string[]): string | null {
  const wanted = word.toLowerCase();
  let best: string | null = null;
  let least = Infinity;
  for (const candidate of words) {
    const misses = candidate.startsWith(wanted) && wanted.length > 1 ? 0.5 : editDistance(wanted, candidate);
    if (misses < least) [best, least] = [candidate, misses];
  }
  return best !== null && least <= Math.ceil(best.length / 3) ? best : null;
}
