/**
 * What takes long: `npm test` holds a part of it, evenly chosen, so that it stays short on two cores;
 * `npm run test:long` holds all.
 */
export const LONG = process.env.TEST_LENGTH === 'long';

/** All of a list in the long run, else one in so many, the first among them. */
export function oneIn<T>(many: number, all: readonly T[]): readonly T[] {
  return LONG ? all : all.filter((_, k) => k % many === 0);
}
