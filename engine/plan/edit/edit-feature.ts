/**
 * Edits of things drawn. Each is `(plan, …) => plan`: a new plan that shares all that did not change, or the same plan
 * when there is nothing to change. A thing is found by its id among the features and among what options add. Edits do
 * not judge: `checkPlan` does.
 */

import { turnOf } from '../defaults.ts';
import { wrapBearing } from '../geometry/angles.ts';
import { centroid, distance, turned } from '../geometry/shapes.ts';
import type { Feature, FeatureKind, Knowledge, Plan, PlanPoint, YardOption } from '../types.ts';
import { drawnAnywhere } from '../yards/options.ts';

/** New values of some keys of a thing; a key set to `undefined` is taken out. */
export type FeatureChanges = ChangesOf<Feature>;
type ChangesOf<F> = F extends Feature ? Partial<Omit<F, 'id' | 'kind'>> : never;

/** The thing with an id, among the features or what options add. */
export function featureOf(plan: Plan, id: string): Feature | undefined {
  return drawnAnywhere(plan).find((feature) => feature.id === id);
}

/** An id that is still free, from a kind or a word: "wall", "wall-2", … */
export function freshId(plan: Plan, word: FeatureKind | (string & {})): string {
  const taken = new Set(drawnAnywhere(plan).map((feature) => feature.id));
  if (!taken.has(word)) return word;
  let number = 2;
  while (taken.has(`${word}-${number}`)) number++;
  return `${word}-${number}`;
}

export function addFeature(plan: Plan, feature: Feature): Plan {
  return { ...plan, features: [...plan.features, feature] };
}

export function changeFeature(plan: Plan, id: string, changes: FeatureChanges): Plan {
  return mapFeature(plan, id, (feature) => merged<Feature>(feature, changes as Partial<Feature>));
}

/** Says how a number of a thing is known; `undefined` means taped. */
export function setHow(plan: Plan, id: string, key: string, knowledge: Knowledge | undefined): Plan {
  return mapFeature(plan, id, (feature) => merged(feature, { how: howWith(feature.how, key, knowledge) }));
}

/** Takes a thing out, and every move and remove of it out of the options. The journal keeps what it says of it. */
export function removeFeature(plan: Plan, id: string): Plan {
  if (featureOf(plan, id) === undefined) return plan;
  const rest = plan.features.filter((feature) => feature.id !== id);
  const options = plan.options?.map((option) =>
    option.adds?.some((feature) => feature.id === id)
      ? { ...option, adds: option.adds.filter((feature) => feature.id !== id) }
      : option,
  );
  return withoutDeadChanges({
    ...plan,
    features: rest.length === plan.features.length ? plan.features : rest,
    ...(options === undefined ? {} : { options }),
  });
}

/** @param by [m] */
export function moveFeature(plan: Plan, id: string, by: PlanPoint): Plan {
  if (by[0] === 0 && by[1] === 0) return plan;
  return mapFeature(plan, id, (feature) => mapPoints(feature, ([x, y]) => [x + by[0], y + by[1]]));
}

/** A copy of a thing among the features, moved a little so that it can be seen. @param by [m] */
export function duplicateFeature(plan: Plan, id: string, newId: string, by: PlanPoint): Plan {
  const feature = featureOf(plan, id);
  return feature === undefined
    ? plan
    : addFeature(
        plan,
        mapPoints({ ...feature, id: newId }, ([x, y]) => [x + by[0], y + by[1]]),
      );
}

/** Turns a thing clockwise about its middle, or about a point. @param degrees [°] */
export function turnFeature(plan: Plan, id: string, degrees: number, about?: PlanPoint): Plan {
  if (degrees % 360 === 0) return plan;
  return mapFeature(plan, id, (feature) => {
    const center = about ?? middleOf(feature);
    const moved = mapPoints(feature, (point) => turned(point, center, degrees));
    return moved.kind === 'canopy' ? { ...moved, turn: tidyTurn(turnOf(moved) + degrees) } : moved;
  });
}

/** The middle of a thing: its own point, its outline's centroid, or half-way along its path. */
export function middleOf(feature: Feature): PlanPoint {
  if ('at' in feature) return feature.at;
  if ('center' in feature) return feature.center;
  if ('outline' in feature) return centroid(feature.outline);
  return halfWay(feature.path);
}

/** A plan whose thing with an id is another; the same plan if there is none or it stays the same. */
export function mapFeature(plan: Plan, id: string, change: (feature: Feature) => Feature): Plan {
  const features = mapOne(plan.features, id, change);
  if (features !== plan.features) return { ...plan, features };
  const options = plan.options?.map((option): YardOption => {
    const adds = option.adds === undefined ? undefined : mapOne(option.adds, id, change);
    return adds === option.adds ? option : { ...option, adds };
  });
  return options === undefined || options.every((option, index) => option === plan.options?.[index])
    ? plan
    : { ...plan, options };
}

/** `how` with what is said of one key; `undefined` when nothing is left to say. */
export function howWith(
  how: Readonly<Record<string, Knowledge>> | undefined,
  key: string,
  knowledge: Knowledge | undefined,
): Record<string, Knowledge> | undefined {
  const entries = Object.entries(how ?? {}).filter(([known]) => known !== key);
  if (knowledge !== undefined) entries.push([key, knowledge]);
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
}

/** Options without moves and removes of what is nowhere any more. */
export function withoutDeadChanges(plan: Plan): Plan {
  const alive = (id: string) => featureOf(plan, id) !== undefined;
  const options = plan.options?.map((option): YardOption => {
    const deadMove = Object.keys(option.moves ?? {}).some((id) => !alive(id));
    const deadRemove = option.removes?.some((id) => !alive(id)) === true;
    if (!deadMove && !deadRemove) return option;
    return {
      ...option,
      ...(deadMove
        ? { moves: Object.fromEntries(Object.entries(option.moves ?? {}).filter(([id]) => alive(id))) }
        : {}),
      ...(deadRemove ? { removes: option.removes?.filter(alive) } : {}),
    };
  });
  return options === undefined ? plan : { ...plan, options };
}

/** An object with some keys changed, those that became `undefined` taken out; the same object when nothing changed. */
export function merged<T extends object>(object: T, changes: Partial<T>): T {
  const next: T = { ...object, ...changes };
  for (const key of Object.keys(next) as (keyof T)[]) if (next[key] === undefined) delete next[key];
  const keys = Object.keys(next) as (keyof T)[];
  return keys.length === Object.keys(object).length && keys.every((key) => next[key] === object[key]) ? object : next;
}

function mapOne(features: readonly Feature[], id: string, change: (feature: Feature) => Feature): readonly Feature[] {
  const index = features.findIndex((feature) => feature.id === id);
  if (index < 0) return features;
  const next = change(features[index]);
  return next === features[index] ? features : features.with(index, next);
}

function mapPoints<F extends Feature>(feature: F, move: (point: PlanPoint) => PlanPoint): F {
  const tidy = (point: PlanPoint): PlanPoint => tidyPoint(move(point));
  if ('at' in feature) return { ...feature, at: tidy(feature.at) };
  if ('center' in feature) return { ...feature, center: tidy(feature.center) };
  if ('outline' in feature) return { ...feature, outline: feature.outline.map(tidy) };
  if ('path' in feature) return { ...feature, path: feature.path.map(tidy) };
  return feature;
}

/** To a tenth of a millimetre: no tape reads finer, and files stay readable. */
function tidyPoint([x, y]: PlanPoint): PlanPoint {
  return [Math.round(x * 1e4) / 1e4 + 0, Math.round(y * 1e4) / 1e4 + 0];
}

function tidyTurn(degrees: number): number {
  return Math.round(wrapBearing(degrees) * 1e4) / 1e4;
}

function halfWay(path: readonly PlanPoint[]): PlanPoint {
  const lengths = path.slice(1).map((point, i) => distance(path[i], point));
  let left = lengths.reduce((sum, length) => sum + length, 0) / 2;
  for (let i = 0; i < lengths.length; i++) {
    if (left <= lengths[i] && lengths[i] > 0) {
      const share = left / lengths[i];
      return [path[i][0] + share * (path[i + 1][0] - path[i][0]), path[i][1] + share * (path[i + 1][1] - path[i][1])];
    }
    left -= lengths[i];
  }
  return path[0];
}
