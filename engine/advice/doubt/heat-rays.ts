/** The rays by which a yard's heat days are judged. */

import { type Passes, passesInRow } from '../../cast/passes.ts';
import { skyPasses } from '../../cast/sky.ts';
import type { HeatDay } from '../../load/leaf/heat-day.ts';

/** The rays by which a yard's heat days are judged, cast all at once. */
export interface HeatRays {
  readonly days: readonly HeatDay[];
  /** Index of each day's first sample among the rays. */
  readonly first: readonly number[];
  /** Yearly states of the yard on the days, each once, and which of them each day has. */
  readonly states: readonly number[];
  readonly stateOf: readonly number[];
  readonly passes: Passes;
}

export function heatRaysOf(days: readonly HeatDay[]): HeatRays {
  const states = [...new Set(days.map(({ state }) => state))];
  const parts = [...days.map(({ passes }) => passes), ...states.map(skyPasses)];
  const first: number[] = [];
  let at = 0;
  for (const { count } of parts) {
    first.push(at);
    at += count;
  }
  return {
    days,
    first: first.slice(0, days.length),
    states,
    stateOf: days.map(({ state }) => states.indexOf(state)),
    passes: passesInRow(parts),
  };
}
