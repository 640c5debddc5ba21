/** Is this a plan? Every problem, each with its JSON Pointer and one plain sentence. */
import { checkSeasonAndClimate } from './climate.ts';
import { checkJournal, checkPlantRows, checkStock } from './lists.ts';
import { checkFeaturesAndOptions } from './options.ts';
import { checkSite } from './site.ts';
import { LIMITS } from '../file/limits.ts';
import { isRecord, ownerOf, readNumber, readObject, readOwners, readText, readWord, report, show } from './reader.ts';
import type { Owner } from './reader.ts';
import { sanityWalk } from '../sanity-walk.ts';
import type { Plan, Problem } from '../types.ts';
import { PLAN_FORMAT, PLAN_VERSION } from '../file/upgrade.ts';

/** Every problem of a plan; where there is none, its warnings: what is allowed but looks like a slip. */
export function checkPlan(plan: Plan): Problem[] {
  const problems = planErrors(plan);
  return problems.length > 0 ? shortened(problems) : sanityWalk(plan);
}

/**
 * Every error in a value that should be a plan of this version, in the file's order of parts. An empty list makes it a
 * `Plan`.
 */
export function planErrors(value: unknown): Problem[] {
  const problems: Problem[] = [];
  const plan = ownerOf(value, '', 'Plan', problems);
  if (plan === undefined) return problems;
  const past = pastYears(plan);
  const points = [plan.object, ...past.map((year) => year.object.plan)].reduce(
    (sum: number, part) => sum + pointCount(part),
    0,
  );
  if (points > LIMITS.points) {
    report(
      plan,
      'features',
      `the paths and outlines have ${points} points together; at most ${LIMITS.points} are read.`,
    );
    return problems;
  }
  checkParts(plan);
  for (const year of past) {
    readNumber(year, 'year', { min: 1900, max: 2199, whole: true }, 'required');
    const frozen = readObject(year, 'plan', year.subject, 'required');
    if (frozen === undefined) continue;
    const found: Problem[] = [];
    checkParts({ ...frozen, problems: found });
    problems.push(...found.map((problem) => ({ ...problem, message: `${year.subject}: ${problem.message}` })));
  }
  return problems;
}

function checkParts(plan: Owner): void {
  if (readText(plan, 'format', 'required') !== PLAN_FORMAT) {
    if (typeof plan.object.format === 'string')
      report(plan, 'format', `format must be "${PLAN_FORMAT}", got ${show(plan.object.format)}.`);
  }
  if (plan.object.version !== PLAN_VERSION)
    report(
      plan,
      'version',
      `version must be ${PLAN_VERSION}, got ${plan.object.version === undefined ? 'none' : show(plan.object.version)}.`,
    );
  readText(plan, 'name', 'optional');
  readWord(plan, 'units', ['metric', 'imperial'], 'optional');
  checkSite(plan);
  checkSeasonAndClimate(plan);
  checkFeaturesAndOptions(plan);
  checkPlantRows(plan);
  checkJournal(plan);
  checkStock(plan);
  for (const caution of readOwners(plan, 'cautions', 'optional', (_, index) => `Caution ${index + 1}`))
    readText(caution, 'text', 'required');
  for (const item of readOwners(plan, 'setAside', 'optional', (_, index) => `Part ${index + 1} set aside`))
    readText(item, 'from', 'required');
}

/** Earlier years of the plan itself; what a frozen plan says of years before it is not read. */
function pastYears(plan: Owner): Owner[] {
  return readOwners(
    plan,
    'past',
    'optional',
    (item, index) => `Earlier year ${typeof item.year === 'number' ? item.year : index + 1}`,
    LIMITS.pastYears,
  );
}

/** Points of everything drawn in a plan and added by its options. */
function pointCount(plan: unknown): number {
  if (!isRecord(plan)) return 0;
  const options = listOf(plan.options).flatMap((option) => (isRecord(option) ? listOf(option.adds) : []));
  let count = 0;
  for (const feature of [...listOf(plan.features), ...options]) {
    if (isRecord(feature)) count += listOf(feature.path).length + listOf(feature.outline).length;
  }
  return count;
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** The first so many problems, and how many there are beside. */
export function shortened(problems: Problem[]): Problem[] {
  const rest = problems.length - LIMITS.problems;
  if (rest <= 0) return problems;
  return [
    ...problems.slice(0, LIMITS.problems),
    { pointer: '', message: `Plan: ${rest} more problems are not listed here.`, severity: 'error' },
  ];
}
