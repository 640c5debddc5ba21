/** The numbers of a plan that are not taped, and the plan with each of them off by as much as it may be. */

import { limitSpread } from '../../load/verdict/limit.ts';
import { plantFeatures } from '../../load/verdict/planted.ts';
import { plantRowOf } from '../../plan/catalogue/plants.ts';
import { isSound } from '../../plan/check/check.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { wrapBearing } from '../../plan/geometry/angles.ts';
import { distance } from '../../plan/geometry/shapes.ts';
import { formOf } from '../../plan/schema/feature.ts';
import type { NumberRule } from '../../plan/schema/form.ts';
import { PLANT_ROW } from '../../plan/schema/plan.ts';
import { heldAt } from '../../plan/schema/say.ts';
import { CLIMATE } from '../../plan/schema/site.ts';
import type { Feature, Knowledge, Plan, PlanPoint, PlantRow } from '../../plan/types.ts';
import { defaultPm, type Quantity, TAPE_PM } from '../../survey/known-by.ts';
import type { DoubtInput, DoubtKind } from './types.ts';
import { clothInput, colourInput, shelterInput, withFeatureIn } from './unsaid.ts';

/** How far the heatwave's high may be off where the plan does not say. Our choice. [K] */
const CLIMATE_PM = 2;
/** What a thirsty leaf may be off beside the wind, which is an input of its own. [K] */
const LEAF_REST = 2;

/** Least that a length, and that a height above a crown's or a cloth's foot, is shifted down to. [m] */
const LEAST_LENGTH = 0.02;

/**
 * Every input in doubt, in the plan's order: north, the shelter from the wind, the features', the climate's high, the
 * plants' limits. Taped numbers have none.
 */
export function doubtInputs(plan: Plan): DoubtInput[] {
  return [
    ...northInput(plan),
    ...shelterInput(plan),
    ...plan.features.flatMap((feature) => [
      ...featureInputs(plan, feature),
      ...clothInput(plan, feature),
      ...colourInput(plan, feature),
    ]),
    climateInput(plan),
    ...limitInput(plan),
  ];
}

function northInput(plan: Plan): DoubtInput[] {
  const known = unsure(plan.site.how?.upBearing);
  if (known === null) return [];
  const up = upBearingOf(plan);
  const pm = known.pm ?? defaultPm(known.by, up, 'bearing');
  const shifts = [pm, -pm].map((by): Plan => ({ ...plan, site: { ...plan.site, upBearing: wrapBearing(up + by) } }));
  return pm > 0
    ? [{ key: 'site.upBearing', kind: 'north', feature: null, of: 'upBearing', by: known.by, pm, shifts }]
    : [];
}

function featureInputs(plan: Plan, feature: Feature): DoubtInput[] {
  return Object.entries(feature.how ?? {}).flatMap(([of, how]): DoubtInput[] => {
    const known = unsure(how);
    const form = formOf(feature.kind, of);
    const value = heldAt(feature, of);
    if (known === null || form === undefined || value === undefined) return [];
    const shared = { key: `${feature.id}.${of}`, feature: feature.id, of, by: known.by } as const;
    const withFeature = (changed: Feature): Plan => withFeatureIn(plan, changed);
    if (isPoint(value) || isPath(value)) {
      const pm = known.pm ?? defaultPm(known.by, fromCorner(plan, isPoint(value) ? value : value[0]));
      const shifts = SIDES.map(([x, y]) => withFeature(movedBy(feature, of, [x * pm, y * pm])));
      return [{ ...shared, kind: 'place', pm, shifts }];
    }
    if (form.form !== 'number' || typeof value !== 'number') return [];
    const pm = known.pm ?? defaultPm(known.by, value, quantityOf(form.rule));
    if (!(pm > 0)) return [];
    const shifts = [pm, -pm].map((by) => withFeature(withNumber(feature, of, value + by)));
    return [{ ...shared, kind: doubtKindOf(form.rule), pm, shifts }];
  });
}

function climateInput(plan: Plan): DoubtInput {
  const known = plan.climate.how?.heatwaveHigh;
  const pm = known?.pm ?? CLIMATE_PM;
  const shifts = [pm, -pm].map((by): Plan => ({
    ...plan,
    climate: { ...plan.climate, heatwaveHigh: within(CLIMATE.keys.heatwaveHigh.rule, plan.climate.heatwaveHigh + by) },
  }));
  return {
    key: 'climate.heatwaveHigh',
    kind: 'climate',
    feature: null,
    of: 'heatwaveHigh',
    by: known?.by ?? null,
    pm,
    shifts,
  };
}

/** Every plant's limit at once: they come from the same few trials; and with it what else a leaf may be off. */
function limitInput(plan: Plan): DoubtInput[] {
  const ids = [...new Set(plantFeatures(plan).flatMap(({ plant }) => (plant === undefined ? [] : [plant])))];
  const rows = ids.flatMap((id) => plantRowOf(plan, id) ?? []);
  if (rows.length === 0) return [];
  const others = (plan.plants ?? []).filter(({ id }) => !ids.includes(id));
  const offBy = (row: PlantRow) => Math.hypot(limitSpread(row), LEAF_REST);
  const shifts = [1, -1].map((sign): Plan => ({
    ...plan,
    plants: [
      ...others,
      ...rows.map((row) => ({
        ...row,
        heatLimit: within(PLANT_ROW.keys.heatLimit.rule, row.heatLimit + sign * offBy(row)),
      })),
    ],
  }));
  const pm = Math.max(...rows.map(offBy));
  return [{ key: 'limits', kind: 'limits', feature: null, of: 'heatLimit', by: 'catalogue', pm, shifts }];
}

/** A number taped within the usual is not in doubt. */
function unsure(known: Knowledge | undefined): Knowledge | null {
  if (known === undefined || (known.by === 'tape' && (known.pm ?? 0) <= TAPE_PM)) return null;
  return known;
}

const SIDES: readonly PlanPoint[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
];

/** A thing moved as far as a plan allows. */
function movedBy(feature: Feature, of: string, [dx, dy]: PlanPoint): Feature {
  const value = heldAt(feature, of);
  return asFarAsSound((share) => {
    const moved = ([x, y]: PlanPoint): PlanPoint => [x + share * dx, y + share * dy];
    return { ...feature, [of]: isPoint(value) ? moved(value) : isPath(value) ? value.map(moved) : value };
  }).feature;
}

function isPoint(value: unknown): value is PlanPoint {
  return Array.isArray(value) && typeof value[0] === 'number';
}

function isPath(value: unknown): value is readonly PlanPoint[] {
  return Array.isArray(value) && isPoint(value[0]);
}

/**
 * A feature with one number another: the number wanted, or as near to it as a plan allows and a hand can tell apart.
 */
export function withNumber<F extends Feature>(feature: F, of: string, value: number): F {
  const form = formOf(feature.kind, of);
  const drawn = heldAt(feature, of);
  if (form?.form !== 'number' || typeof drawn !== 'number') return feature;
  const wanted = within(form.rule, value);
  const by = wanted - drawn;
  const shifted = (share: number): F => ({ ...feature, [of]: share === 1 ? wanted : drawn + share * by });
  const { feature: reached, share } = asFarAsSound(shifted);
  return share === 1 ? reached : shifted(share - Math.min(share, LEAST_LENGTH / Math.abs(by)));
}

/** A change of a thing in full, or the greatest share of it that leaves the thing as a plan may hold it. */
function asFarAsSound<F extends Feature>(changed: (share: number) => F): { feature: F; share: number } {
  if (isSound(changed(1))) return { feature: changed(1), share: 1 };
  let share = 0;
  for (let step = 0.5; step > 1e-6; step /= 2) if (isSound(changed(share + step))) share += step;
  return { feature: changed(share), share };
}

/** The nearest number that a rule allows; above an open end, by what a hand can tell apart. */
function within({ min, above, max }: NumberRule, value: number): number {
  const least = above === undefined ? (min ?? -Infinity) : above + LEAST_LENGTH;
  return Math.max(least, Math.min(max ?? Infinity, value));
}

function quantityOf({ is, unit }: NumberRule): Quantity {
  return is === 'share' ? 'share' : unit === 'degrees' ? 'bearing' : 'length';
}

function doubtKindOf({ is }: NumberRule): DoubtKind {
  return is === 'share' ? 'thickness of shade' : is === 'height' ? 'height' : 'size';
}

/** A place is measured from the nearest corner of the property. [m] */
function fromCorner(plan: Plan, point: PlanPoint): number {
  return Math.min(...plan.site.boundary.map((corner) => distance(corner, point)));
}
