/**
 * How many workers search for cloth at once. A second one lays the same yard out anew: on two cores, where compiling
 * and collecting garbage want one, it was slower than one alone; with four each has its own.
 */
export const SEARCH_HANDS = (globalThis.navigator?.hardwareConcurrency ?? 1) >= 4 ? 2 : 1;
