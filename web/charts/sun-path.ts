/** One moment of a sun path, as far as words about it need it. */
interface Moment {
  /** Minutes after midnight by the site's clocks. */
  readonly clock: number;
  readonly share: number;
  readonly blockers: readonly string[];
}

/** A stretch of a sun path: what stands before the sun is the same all along. */
export interface PathStretch<M> {
  readonly lit: boolean;
  /** What hides it, nearest to the land first; empty where it is lit. */
  readonly behind: readonly string[];
  readonly steps: readonly M[];
}

/** Below this share the sun counts as hidden. */
const LIT = 0.5;

/** A day's path cut where it comes to light or goes behind something else. */
export function stretchesOf<M extends Moment>(steps: readonly M[]): PathStretch<M>[] {
  const stretches: { lit: boolean; behind: readonly string[]; steps: M[] }[] = [];
  for (const step of steps) {
    const lit = step.share >= LIT;
    const behind = lit ? [] : step.blockers;
    const last = stretches.at(-1);
    if (last && last.lit === lit && last.behind.join(' ') === behind.join(' ')) last.steps.push(step);
    else stretches.push({ lit, behind, steps: [step] });
  }
  return stretches;
}

/** A sun path's point where the clocks read a full hour. */
export interface FullHour {
  readonly hour: number;
  /** [°] */
  readonly azimuth: number;
  readonly altitude: number;
}

/** Full hours along a path, between its steps. */
export function fullHoursOf(
  steps: readonly { readonly clock: number; readonly azimuth: number; readonly altitude: number }[],
): FullHour[] {
  return steps.slice(1).flatMap((next, k): FullHour[] => {
    const before = steps[k];
    const hour = Math.floor(next.clock / 60);
    if (hour * 60 <= before.clock || next.clock - before.clock > 60) return [];
    const share = (hour * 60 - before.clock) / (next.clock - before.clock);
    // North may lie between the two.
    const turn = ((next.azimuth - before.azimuth + 540) % 360) - 180;
    return [
      {
        hour,
        azimuth: before.azimuth + share * turn,
        altitude: before.altitude + share * (next.altitude - before.altitude),
      },
    ];
  });
}
