/** The yard with the changes of one option or several. */

import { pointerToken } from '../file/pointer.ts';
import { errorAt } from '../problems.ts';
import type { Feature, Plan, Problem, YardOption } from '../types.ts';

/**
 * The plan whose `features` carry the changes of the options named, each applied whole, in the order given: its adds,
 * then its moves (which reach added plants too), then its removes. The plan's `options` stay as they are.
 * Problems: an unknown option, an id added that is already there, a move or remove of an id that is not there.
 */
export function withOptions(
  plan: Plan,
  ids: readonly string[],
): { ok: true; plan: Plan } | { ok: false; problems: Problem[] } {
  const problems: Problem[] = [];
  let features = plan.features;
  for (const id of ids) {
    const index = (plan.options ?? []).findIndex((option) => option.id === id);
    const option = plan.options?.[index];
    if (option === undefined) problems.push(unknownOption(plan, id));
    else features = applyOption(features, option, `/options/${index}`, problems);
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, plan: { ...plan, features } };
}

/** All that is drawn: what stands in the yard, then what each option adds. */
export function drawnAnywhere({ features, options = [] }: Plan): readonly Feature[] {
  return [...features, ...options.flatMap(({ adds = [] }) => adds)];
}

/**
 * The options that can still be tried in a yard in which some are taken: those are left out, and so are others whose
 * changes no longer fit it (a thing added twice, one moved that is gone). Told by the ids that were left out.
 * @param plan with the options taken already applied, as `withOptions` gives it
 */
export function withOptionsLeft(
  plan: Plan,
  taken: readonly string[],
): { readonly plan: Plan; readonly unfit: readonly string[] } {
  const others = (plan.options ?? []).filter(({ id }) => !taken.includes(id));
  const fits = new Set(others.filter(({ id }) => withOptions(plan, [id]).ok));
  return {
    plan: taken.length === 0 ? plan : { ...plan, options: others.filter((option) => fits.has(option)) },
    unfit: taken.length === 0 ? [] : others.filter((option) => !fits.has(option)).map(({ id }) => id),
  };
}

/** Features after one option's changes; what cannot be done is left out and pushed onto `problems`. */
export function applyOption(
  features: readonly Feature[],
  option: YardOption,
  pointer: string,
  problems: Problem[],
): readonly Feature[] {
  const present = new Map(features.map((feature) => [feature.id, feature]));
  for (const [index, added] of (option.adds ?? []).entries()) {
    if (present.has(added.id)) {
      problems.push(
        errorAt(
          `${pointer}/adds/${index}/id`,
          `Option "${option.id}" adds "${added.id}", but a thing with that id is already there.`,
        ),
      );
    } else present.set(added.id, added);
  }
  for (const [id, at] of Object.entries(option.moves ?? {})) {
    const feature = present.get(id);
    if (feature?.kind === 'plant') present.set(id, { ...feature, at: at });
    else {
      const why =
        feature === undefined
          ? 'there is nothing with that id'
          : `that is a ${feature.kind}, and only plants can be moved`;
      problems.push(
        errorAt(`${pointer}/moves/${pointerToken(id)}`, `Option "${option.id}" moves "${id}", but ${why}.`),
      );
    }
  }
  for (const [index, id] of (option.removes ?? []).entries()) {
    if (!present.delete(id)) {
      problems.push(
        errorAt(
          `${pointer}/removes/${index}`,
          `Option "${option.id}" removes "${id}", but there is nothing with that id.`,
        ),
      );
    }
  }
  return [...present.values()];
}

function unknownOption(plan: Plan, id: string): Problem {
  const known = (plan.options ?? []).map((option) => `"${option.id}"`).join(', ');
  return errorAt(
    '/options',
    `There is no option "${id}"; ${known === '' ? 'this plan has no options' : `the plan's options are ${known}`}.`,
  );
}
