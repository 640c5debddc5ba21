/** The solids of yards that are held against each other, each laid out once. */

import type { Feature, Plan } from '../plan/types.ts';
import { buildScene } from './build.ts';
import type { Scene } from './solids.ts';

interface KeptScene {
  readonly features: readonly Feature[];
  readonly scene: Scene;
  /** The yard that it differs in little from; `null`: it is held against none. */
  readonly like: Scene | null;
}

/** So many yards of one place are kept: the last ones asked for, and the one that the last is held against. */
const MOST = 4;

const bySite = new WeakMap<Plan['site'], KeptScene[]>();
const likes = new WeakMap<Scene, Scene>();

/** The scene of a plan: the same object for all plans of one site that have the same features in the same order. */
export function sceneOf(plan: Plan): Scene {
  const kept = bySite.get(plan.site) ?? [];
  bySite.set(plan.site, kept);
  const at = kept.findIndex(({ features }) => isSame(features, plan.features));
  const found = at < 0 ? keptScene(plan, kept) : kept.splice(at, 1)[0];
  kept.push(found);
  if (kept.length > MOST)
    kept.splice(
      kept.findIndex(({ scene }) => scene !== found.like),
      1,
    );
  return found.scene;
}

/** A scene of the same site that was laid out before and has most features in common with it. */
export function sceneLike(scene: Scene): Scene | undefined {
  return likes.get(scene);
}

/** The yearly state of one scene on a day on which another is in a state of its own. */
export function stateIn(scene: Scene, other: Scene, state: number): number {
  return scene.stateOfDay[other.stateOfDay.indexOf(state)];
}

function keptScene(plan: Plan, kept: readonly KeptScene[]): KeptScene {
  const scene = buildScene(plan);
  const mine = new Set(plan.features);
  const shared = (features: readonly Feature[]) => features.filter((feature) => mine.has(feature)).length;
  // Of scenes that are like others nothing more is kept: no chain of yards holds on to all before it.
  const like =
    kept
      .filter((each) => each.like === null && shared(each.features) > plan.features.length / 2)
      .toSorted((a, b) => shared(b.features) - shared(a.features))[0]?.scene ?? null;
  if (like !== null) likes.set(scene, like);
  return { features: plan.features, scene, like };
}

function isSame(a: readonly Feature[], b: readonly Feature[]): boolean {
  return a === b || (a.length === b.length && a.every((feature, n) => feature === b[n]));
}
