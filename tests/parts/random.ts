/** Numbers in 0..1 from a seed (mulberry32, public domain). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Numbers between two, drawn as somebody draws from 0 to 1. */
export function drawnBetween(random: () => number): (low: number, high: number) => number {
  return (low, high) => low + random() * (high - low);
}

/** Whether something so likely comes about, drawn the same way. */
export function drawnChance(random: () => number): (share: number) => boolean {
  return (share) => random() < share;
}
