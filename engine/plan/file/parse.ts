import { isPlan, planErrors, shortened } from '../check/check.ts';
import { sanityWalk } from '../check/sanity/sanity-walk.ts';
import type { Plan, Problem, SetAside } from '../types.ts';
import { decodeJson } from './decode.ts';
import { withBarePictures } from './picture/bare-picture.ts';
import { planText } from './serialize.ts';
import { upgradePlan } from './upgrade.ts';

/** A plan that was read, or every reason why it could not be. */
export type ParsedPlan = { ok: true; plan: Plan; warnings: Problem[] } | { ok: false; problems: Problem[] };

/** A plan of which broken parts were set aside, or every reason why it could not be opened even so. */
export type SalvagedPlan =
  | { ok: true; plan: Plan; warnings: Problem[]; problems: Problem[] }
  | { ok: false; problems: Problem[] };

/**
 * Reads a plan file: decodes it, brings it to this version and checks everything. What a camera noted in the picture to
 * trace over, such as the place, is left out. Never throws for what the file holds.
 */
export function parsePlan(input: Uint8Array | string): ParsedPlan {
  const read = readJson(input);
  if (!read.ok) return read;
  const problems: Problem[] = [];
  const plan: unknown = read.value;
  if (!isPlan(plan, problems)) return { ok: false, problems: shortened(problems) };
  return { ok: true, plan: withBarePictures(plan), warnings: sanityWalk(plan) };
}

/**
 * Reads a plan file even when features, options or journal entries of it are broken: each of those is taken out and
 * kept, verbatim, in the plan's `setAside`, with its place in the file, so that saving loses nothing. `problems` says
 * why. What is broken elsewhere is refused as by `parsePlan`.
 */
export function salvagePlan(input: Uint8Array | string): SalvagedPlan {
  const read = readJson(input);
  if (!read.ok) return read;
  const problems: Problem[] = [];
  // Each round takes something out, and what leans on it may break in the next.
  for (let value = read.value; ;) {
    const plan: unknown = value;
    const found: Problem[] = [];
    if (isPlan(plan, found)) return opensAgain(withBarePictures(plan), problems);
    const broken = brokenItems(found);
    if (broken === null)
      return { ok: false, problems: shortened(problems.length > 0 ? planErrors(read.value) : found) };
    problems.push(...found);
    value = withoutItems(value, broken);
  }
}

/**
 * The plan with what was set aside, if its own file can be opened: set aside, a part lies deeper and counts for more.
 */
function opensAgain(plan: Plan, problems: Problem[]): SalvagedPlan {
  const again = problems.length === 0 ? { ok: true as const, plan } : parsePlan(planText(plan));
  return again.ok
    ? { ok: true, plan, warnings: sanityWalk(plan), problems }
    : { ok: false, problems: shortened([...again.problems, ...problems]) };
}

function readJson(
  input: Uint8Array | string,
): { ok: true; value: Readonly<Record<string, unknown>> } | { ok: false; problems: Problem[] } {
  const decoded = decodeJson(input);
  if (!decoded.ok) return decoded;
  return upgradePlan(decoded.value);
}

/** The list items that hold all problems, as `features/3`; `null` when a problem is elsewhere. */
function brokenItems(problems: readonly Problem[]): Set<string> | null {
  const items = new Set<string>();
  for (const { pointer } of problems) {
    const item = /^\/((?:features|options|journal)\/\d+)(?:\/|$)/.exec(pointer);
    if (item === null) return null;
    items.add(item[1]);
  }
  return items;
}

function withoutItems(
  value: Readonly<Record<string, unknown>>,
  items: ReadonlySet<string>,
): Readonly<Record<string, unknown>> {
  const aside: SetAside[] = Array.isArray(value.setAside) ? [...(value.setAside as SetAside[])] : [];
  const rest: Record<string, unknown> = { ...value };
  for (const key of ['features', 'options', 'journal']) {
    const list = value[key];
    if (!Array.isArray(list)) continue;
    list.forEach((item: unknown, index) => {
      if (items.has(`${key}/${index}`)) aside.push({ from: key, value: item });
    });
    rest[key] = list.filter((_, index) => !items.has(`${key}/${index}`));
  }
  return { ...rest, setAside: aside };
}
