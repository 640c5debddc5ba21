import { heldAt } from '../plan/schema/say.ts';
import type { Feature, How, Plan, PlanPoint, Site } from '../plan/types.ts';
import { type Estimate, type Finding, found, refused } from './estimate.ts';
import { defaultPm } from './known-by.ts';

/** How long a person's steps are: so many of them cover so many metres. */
export interface Pace {
  readonly steps: number;
  readonly length: number;
}

/** Steps of grown people lie between these. [m] */
const SHORTEST_STEP = 0.3;
const LONGEST_STEP = 1.3;

/** A pace as typed, refused when no one walks so. */
export function checkPace(pace: Pace): Finding<Pace> {
  if (!(pace.steps >= 1)) return refused(`${pace.steps} steps: walk ten or more and measure them.`);
  const step = pace.length / pace.steps;
  if (!(step >= SHORTEST_STEP && step <= LONGEST_STEP))
    return refused(
      `${pace.steps} steps in ${pace.length.toFixed(2)} m is ${step.toFixed(2)} m a step: ` +
        `steps are ${SHORTEST_STEP} to ${LONGEST_STEP} m.`,
    );
  return found(pace, pace.steps < 10 ? ['Ten steps or more tell a step better.'] : []);
}

/** A paced length, marked as such by its ±. */
export function pacedLength(steps: number, pace: Pace): Estimate {
  const value = (steps * pace.length) / pace.steps;
  return { value, pm: defaultPm('paced', value) };
}

/**
 * The plan with a new pace: every paced number grows with the step, and stays paced. Paced outlines and paths grow
 * about their first point.
 */
export function withPace(plan: Plan, pace: Pace): Plan {
  const old = plan.site.pace;
  const site: Site = { ...plan.site, pace };
  if (old === undefined) return { ...plan, site };
  const factor = pace.length / pace.steps / (old.length / old.steps);
  return {
    ...plan,
    site: rescaled(site, factor),
    features: plan.features.map((feature) => rescaled<Feature>(feature, factor)),
  };
}

function rescaled<T extends { readonly how?: How }>(thing: T, factor: number): T {
  const paced = Object.entries(thing.how ?? {}).filter(([, { by }]) => by === 'paced');
  if (paced.length === 0) return thing;
  const numbers = paced.map(([key]) => [key, scaled(heldAt(thing, key), factor)]);
  const how: Record<string, How[string]> = { ...thing.how };
  for (const [key, known] of paced) {
    if (known.pm !== undefined) how[key] = { ...known, pm: known.pm * factor };
  }
  return { ...thing, ...Object.fromEntries(numbers), how };
}

function scaled(value: unknown, factor: number): unknown {
  if (typeof value === 'number') return value * factor;
  if (!Array.isArray(value) || !Array.isArray(value[0])) return value;
  const [[x0, y0]] = value as PlanPoint[];
  return (value as PlanPoint[]).map(([x, y]): PlanPoint => [x0 + (x - x0) * factor, y0 + (y - y0) * factor]);
}
