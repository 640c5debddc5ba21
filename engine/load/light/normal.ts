/**
 * The normal distribution, to 1e-14. Source: Hart, J. F. et al. (1968), Computer Approximations, algorithm 5666, as
 * West, G. (2005), "Better approximations to cumulative normal functions", Wilmott Magazine, pp. 70–76, gives it
 * (coefficients from memory; the tests hold them against tabulated values).
 */

const NUMERATOR = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871, 221.213596169931,
  220.206867912376,
];
const DENOMINATOR = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674, 637.333633378831,
  793.826512519948, 440.413735824752,
];

/** Chance that a standard normal value is at or below x. */
export function normalShare(x: number): number {
  const size = Math.abs(x);
  if (size > 37) return x > 0 ? 1 : 0;
  const bell = Math.exp((-size * size) / 2);
  let tail: number;
  if (size < 7.07106781186547) {
    let over = NUMERATOR[0];
    for (let k = 1; k < NUMERATOR.length; k++) over = over * size + NUMERATOR[k];
    let under = DENOMINATOR[0];
    for (let k = 1; k < DENOMINATOR.length; k++) under = under * size + DENOMINATOR[k];
    tail = (bell * over) / under;
  } else {
    tail = bell / (size + 1 / (size + 2 / (size + 3 / (size + 4 / (size + 0.65))))) / 2.506628274631;
  }
  return x > 0 ? 1 - tail : tail;
}

/** Mean of max(X, 0) for X normal with this mean and spread (spread 0: the mean itself, not below 0). */
function meanAboveZero(mean: number, spread: number): number {
  if (spread <= 0) return Math.max(mean, 0);
  const z = mean / spread;
  return mean * normalShare(z) + (spread * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI);
}

/** Mean of X kept between 0 and 1, for X normal with this mean and spread. */
export function meanWithinUnit(mean: number, spread: number): number {
  return meanAboveZero(mean, spread) - meanAboveZero(mean - 1, spread);
}
