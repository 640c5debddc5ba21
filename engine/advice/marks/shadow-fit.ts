/** Residuals of a guess; `null` where one cannot be worked out. */
export type Residuals = (values: readonly number[]) => readonly (number | null)[];

export interface Fit {
  readonly values: readonly number[];
  readonly residuals: readonly number[];
}

const ROUNDS = 20;
/** Step for slopes, in the values' own units. */
const NUDGE = 0.02;
/** How little a value is held back: where residuals leave it open, it stays near its start. */
const RIDGE = 1e-6;
const ENOUGH = 1e-6;

/**
 * Values for which the residuals' squares are least: Gauss and Newton's rounds, each halved until it betters the last,
 * damped after Levenberg (1944) and Marquardt (1963), with slopes taken from differences.
 * @returns `null` where a residual cannot be worked out at the start
 */
export function leastSquares(start: readonly number[], residualsOf: Residuals): Fit | null {
  let values = [...start];
  let residuals = complete(residualsOf(values));
  if (residuals === null) return null;
  for (let round = 0; round < ROUNDS; round++) {
    const slopes = slopesOf(values, residuals, residualsOf);
    const step = solved(slopes, residuals, values, start);
    const next = bettered(values, residuals, step, residualsOf);
    if (next === null) break;
    const done = Math.max(...step.map(Math.abs)) < ENOUGH;
    values = [...next.values];
    residuals = [...next.residuals];
    if (done) break;
  }
  return { values, residuals };
}

function complete(residuals: readonly (number | null)[]): number[] | null {
  return residuals.every((residual): residual is number => residual !== null) ? [...residuals] : null;
}

/** One row a value. A value whose nudge leaves no edge in reach has no slope. */
function slopesOf(values: readonly number[], residuals: readonly number[], residualsOf: Residuals): number[][] {
  return values.map((_, v) => {
    const nudged = (by: number) => complete(residualsOf(values.map((value, k) => (k === v ? value + by : value))));
    const up = nudged(NUDGE);
    const down = nudged(-NUDGE);
    if (up && down) return up.map((residual, r) => (residual - down[r]) / (2 * NUDGE));
    return up ? up.map((residual, r) => (residual - residuals[r]) / NUDGE) : residuals.map(() => 0);
  });
}

/** The normal equations, solved by elimination; they are positive definite by the ridge. */
function solved(
  slopes: readonly (readonly number[])[],
  residuals: readonly number[],
  values: readonly number[],
  start: readonly number[],
): number[] {
  const size = slopes.length;
  const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, value, k) => sum + value * b[k], 0);
  const rows = slopes.map((slope, i) => [
    ...slopes.map((other, j) => dot(slope, other) + (i === j ? RIDGE : 0)),
    -dot(slope, residuals) - RIDGE * (values[i] - start[i]),
  ]);
  for (let i = 0; i < size; i++) {
    for (let below = i + 1; below < size; below++) {
      const factor = rows[below][i] / rows[i][i];
      for (let j = i; j <= size; j++) rows[below][j] -= factor * rows[i][j];
    }
  }
  const step = Array.from({ length: size }, () => 0);
  for (let i = size - 1; i >= 0; i--) {
    const known = step.reduce((sum, value, j) => (j > i ? sum + rows[i][j] * value : sum), 0);
    step[i] = (rows[i][size] - known) / rows[i][i];
  }
  return step;
}

/** The step, halved until the squares are less; `null` when no part of it betters them. */
function bettered(
  values: readonly number[],
  residuals: readonly number[],
  step: readonly number[],
  residualsOf: Residuals,
): Fit | null {
  const squares = (of: readonly number[]) => of.reduce((sum, residual) => sum + residual ** 2, 0);
  const was = squares(residuals);
  for (let part = 1; part > 1e-3; part /= 2) {
    const moved = values.map((value, k) => value + part * step[k]);
    const now = complete(residualsOf(moved));
    if (now !== null && squares(now) < was) return { values: moved, residuals: now };
  }
  return null;
}
