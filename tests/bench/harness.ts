import { cpus } from 'node:os';

/** One thing to time. It returns a number that depends on all its work, so that nothing can be optimised away. */
export interface Variant {
  readonly name: string;
  readonly run: () => number;
  /** A short stand-in for `run` that heats the same code; absent: `run` itself. */
  readonly warmUp?: () => number;
  /** How many times the work of `run` the full job is. */
  readonly scale?: number;
  /** What counts of the last run where that is not its whole time. [ms] */
  readonly took?: () => number;
}

/** Variants of one job, timed in turn in one process, and the ratios that matter. */
export interface BenchCase {
  readonly name: string;
  readonly note?: string;
  readonly variants: readonly Variant[];
  readonly ratios?: readonly { readonly of: string; readonly to: string; readonly target?: string }[];
}

interface Timing {
  readonly case: string;
  readonly variant: string;
  /** Of the full job. [ms] */
  readonly medianMs: number;
  readonly leastMs: number;
}

interface Ratio {
  readonly case: string;
  readonly of: string;
  readonly to: string;
  /** Median of the rounds' own ratios. */
  readonly value: number;
  readonly target?: string;
}

export interface BenchResult {
  readonly machine: string;
  readonly node: string;
  readonly timings: readonly Timing[];
  readonly ratios: readonly Ratio[];
  readonly sink: number;
}

const ROUNDS = 5;

/**
 * Times cases by the processor's own time, so that what else runs on the machine counts little: one warm-up, then five
 * rounds in which every variant runs once; medians over the rounds.
 */
export function measure(cases: readonly BenchCase[], onCase: (name: string) => void = () => {}): BenchResult {
  const timings: Timing[] = [];
  const ratios: Ratio[] = [];
  let sink = 0;
  for (const each of cases) {
    onCase(each.name);
    for (const { run, warmUp = run } of each.variants) sink += warmUp();
    const rounds = Array.from({ length: ROUNDS }, () =>
      each.variants.map(({ run, scale = 1, took }) => {
        globalThis.gc?.();
        const start = process.cpuUsage();
        sink += run();
        const { user, system } = process.cpuUsage(start);
        return scale * (took ? took() : (user + system) / 1000);
      }),
    );
    each.variants.forEach((variant, v) => {
      const times = rounds.map((round) => round[v]);
      timings.push({ case: each.name, variant: variant.name, medianMs: median(times), leastMs: Math.min(...times) });
    });
    for (const { of, to, target } of each.ratios ?? []) {
      const [a, b] = [of, to].map((name) => each.variants.findIndex((variant) => variant.name === name));
      ratios.push({ case: each.name, of, to, value: median(rounds.map((round) => round[a] / round[b])), target });
    }
  }
  return { machine: `${cpus()[0].model.trim()}, ${cpus().length} cores`, node: process.version, timings, ratios, sink };
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}
