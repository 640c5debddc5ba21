/** The longest headline: a reader takes it in at a glance. [words] */
const MOST_WORDS = 20;

/** The first of some ways to say it that is short enough, else the last. */
export function shortEnough(...ways: readonly string[]): string {
  return ways.find((each) => each.split(' ').length <= MOST_WORDS) ?? ways[ways.length - 1];
}
