import type { Feature, Plan } from '../types.ts';
import { drawnAnywhere } from '../yards/options.ts';
import { capital, uncapital } from './first-letter.ts';
import { listWords } from './list-words.ts';
import { shownName } from './shown-name.ts';

/** Kinds that people call otherwise than the plan does. */
const SPOKEN: Partial<Record<Feature['kind'], string>> = {
  canopy: 'roof',
  eye: 'onlooker',
  keepout: 'ground kept clear',
};

/**
 * A feature, also one that only an option adds, as a sentence begins with it: its name, else its kind and id, or an id
 * that begins with the kind by itself.
 */
export function nameOf(plan: Plan, id: string): string {
  const feature = drawnAnywhere(plan).find((candidate) => candidate.id === id);
  if (!feature) return shownName(id);
  const name = shownName(feature.name ?? '');
  const kind = SPOKEN[feature.kind] ?? feature.kind;
  const called = id.startsWith(feature.kind)
    ? `${kind}${id.slice(feature.kind.length).replaceAll('-', ' ')}`
    : `${kind} ${id}`;
  return name || shownName(capital(called));
}

/**
 * A feature inside a sentence: "the low wall". A name whose first letter is its only capital is taken for common words;
 * one that begins with somebody's name in the possessive, or with an article, keeps its own beginning; a neighbour's
 * does not.
 */
export function namedInside(plan: Plan, id: string): string {
  const name = nameOf(plan, id);
  const [first] = name.split(' ');
  if (/^(neighbou?r|landlord|landlady|owner|council|city|town|school|church)s?[’']s?$/i.test(first))
    return `the ${uncapital(name)}`;
  if (/[’']s?$/.test(first)) return name;
  if (/^(the|my|our|a|an)$/i.test(first)) return first.toLowerCase() + name.slice(first.length);
  const common = /^\p{Lu}[^\p{Lu}]*$/u.test(name);
  return `the ${common ? uncapital(name) : name}`;
}

/** "the lemon pot, the hydrangea and the fig" */
export function namesInside(plan: Plan, ids: readonly string[]): string {
  return listWords(ids.map((id) => namedInside(plan, id)));
}

/** At most three by name: "the lemon pot, the hydrangea and 3 more". */
export function fewNames(plan: Plan, ids: readonly string[]): string {
  return ids.length <= 3
    ? namesInside(plan, ids)
    : listWords([...ids.slice(0, 2).map((id) => namedInside(plan, id)), `${ids.length - 2} more`]);
}
