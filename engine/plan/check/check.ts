/** Is this a plan? Every problem, each with its JSON Pointer and one plain sentence. */

import { LIMITS } from '../file/limits.ts';
import { errorAt } from '../problems.ts';
import { FEATURE } from '../schema/feature.ts';
import { PLAN } from '../schema/plan.ts';
import { isRecord } from '../schema/say.ts';
import type { Feature, FeatureKind, Plan, Problem } from '../types.ts';
import { read } from './read.ts';
import { sanityWalk } from './sanity/sanity-walk.ts';

/** Every problem of a plan; where there is none, its warnings: what is allowed but looks like a slip. */
export function checkPlan(plan: Plan): Problem[] {
  const problems = planErrors(plan);
  return problems.length > 0 ? shortened(problems) : sanityWalk(plan);
}

/** Whether a value is a plan of this version; every error in it is pushed, in the file's order of parts. */
export function isPlan(value: unknown, problems: Problem[]): value is Plan {
  const found = planErrors(value);
  problems.push(...found);
  return found.length === 0;
}

/** Every error in a value that should be a plan of this version. An empty list makes it a `Plan`. */
export function planErrors(value: unknown): Problem[] {
  const tooMuch = beyondLimits(value);
  if (tooMuch !== null) return [errorAt('/features', `Plan: ${tooMuch}`)];
  const problems: Problem[] = [];
  read(PLAN, value, { pointer: '', subject: '', key: '', index: 0, owner: {}, problems });
  return problems;
}

/** Whether a thing of a plan is right in itself; what else is in the plan is not looked at. */
export function isSound(feature: Feature): boolean {
  const problems: Problem[] = [];
  read(FEATURE, feature, { pointer: '', subject: '', key: '', index: 0, owner: {}, problems });
  return problems.length === 0;
}

/** What no file may hold so much of, in the plan and its earlier years together, or in one of them. */
function beyondLimits(plan: unknown): string | null {
  if (!isRecord(plan)) return null;
  const years = [plan, ...listOf(plan.past).map((year) => (isRecord(year) ? year.plan : undefined))];
  const drawn = years.map(drawnIn);
  const points = drawn.flat().reduce((sum, thing) => sum + listOf(thing.path).length + listOf(thing.outline).length, 0);
  if (points > LIMITS.points)
    return `the paths and outlines have ${points} points together; at most ${LIMITS.points} are read.`;
  const things = Math.max(...drawn.map((year) => year.length));
  if (things > LIMITS.features) return `there are ${things} things in the plan; at most ${LIMITS.features} are read.`;
  const corners = Math.max(...drawn.map(countCorners));
  return corners > LIMITS.corners
    ? `the walls, hedges, screens and buildings have ${corners} corners together; at most ${LIMITS.corners} are read.`
    : null;
}

const CORNERED: ReadonlySet<unknown> = new Set(['wall', 'hedge', 'screen', 'building'] satisfies FeatureKind[]);

/** How many corners the flat sides have that throw shade. */
function countCorners(drawn: readonly Readonly<Record<string, unknown>>[]): number {
  return drawn.reduce(
    (sum, { kind, path, outline }) => sum + (CORNERED.has(kind) ? listOf(path).length + listOf(outline).length : 0),
    0,
  );
}

/** Everything drawn in a plan and added by its options. */
function drawnIn(plan: unknown): Readonly<Record<string, unknown>>[] {
  if (!isRecord(plan)) return [];
  const options = listOf(plan.options).flatMap((option) => (isRecord(option) ? listOf(option.adds) : []));
  return [...listOf(plan.features), ...options].filter(isRecord);
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** The first so many problems, and how many there are beside. */
export function shortened(problems: Problem[]): Problem[] {
  const rest = problems.length - LIMITS.problems;
  if (rest <= 0) return problems;
  return [...problems.slice(0, LIMITS.problems), errorAt('', `Plan: ${rest} more problems are not listed here.`)];
}
