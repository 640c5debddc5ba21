import type { Passes } from '../cast/passes.ts';
import type { PointCaster } from '../cast/points/point-caster.ts';
import type { SpacePoint } from '../plan/geometry/vectors.ts';
import type { MonthDay, Plan } from '../plan/types.ts';
import { stateOf } from '../scene/build.ts';
import { sceneOf } from '../scene/scene-of.ts';
import type { OwnCrown, Scene } from '../scene/solids.ts';
import { type Period, type SampleTable, samplesOf } from '../sun/samples.ts';
import type { Weather } from '../sun/weather/weather.ts';
import { sunCaster } from './light/kept-caster.ts';
import { nineFromShares } from './light/nine.ts';
import { passesOf } from './light/passes-of.ts';
import { type SkyViewer, skyViewerOf } from './light/sky-viewer.ts';
import { type Weights, weightsOf } from './light/weights.ts';
import type { Nine, Outcome } from './types.ts';

/** A plan laid out for adding up over one period: everything that does not depend on the spot. */
export interface Yard {
  readonly plan: Plan;
  readonly scene: Scene;
  readonly samples: SampleTable;
  readonly passes: Passes;
  readonly weights: Weights;
  readonly caster: PointCaster;
  readonly sky: SkyViewer;
}

/** @returns the yard, or why the period cannot be sampled */
export function yardOf(plan: Plan, period: Period, weather?: Weather): Outcome<Yard> {
  const sampled = samplesOf(plan, period, weather);
  if (!sampled.ok) return sampled;
  const { samples } = sampled;
  const scene = sceneOf(plan);
  return {
    ok: true,
    value: {
      plan,
      scene,
      samples,
      passes: passesOf(scene, samples),
      weights: weightsOf(scene, samples, plan.climate.hotAir),
      caster: sunCaster(scene, samples),
      sky: skyViewerOf(scene),
    },
  };
}

/** Sky view of a point in each part of the period's year, in the order of `weights.sky`. */
export function skyViewsAt(yard: Yard, point: SpacePoint, own?: OwnCrown): number[] {
  return yard.weights.sky.map((part) => yard.sky.at(point, part.state, own));
}

/** Of the point at hand: a season's are too many to be made anew for each. */
let shares = new Float64Array(0);

/** The nine quantities at a point. @param own an extra crown in the way for this point alone */
export function nineAt(yard: Yard, point: SpacePoint, own?: OwnCrown): Nine {
  if (shares.length !== yard.passes.count) shares = new Float64Array(yard.passes.count);
  return nineFromShares(yard.caster.sharesAt(point, own, shares), yard.weights, skyViewsAt(yard, point, own));
}

/** A day of the period on which a yearly state holds. */
export function dayInState(yard: Yard, state: number): MonthDay {
  const day = yard.samples.days.find(({ monthDay }) => stateOf(yard.scene, monthDay) === state);
  if (!day) throw new Error(`No day of the period has the yard in state ${state}.`);
  return day.monthDay;
}
