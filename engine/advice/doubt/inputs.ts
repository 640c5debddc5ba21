/** The numbers of a plan that are not taped, and the plan with each of them off by as much as it may be. */
import { plantFeatures } from '../../load/verdict/planted.ts';
import { limitSpread } from '../../load/verdict/limit.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { distance } from '../../plan/geometry/shapes.ts';
import { plantRowOf } from '../../plan/catalogue.ts';
import type { Feature, How, Knowledge, Plan, PlanPoint, PlantRow } from '../../plan/types.ts';
import type { DoubtInput, DoubtKind } from './types.ts';
import { clothInput, colourInput, shelterInput, withFeatureIn } from './unsaid.ts';
import { defaultPm, type Quantity, TAPE_PM } from '../../survey/known-by.ts';

/** How far the heatwave's high may be off where the plan does not say. Our choice. [K] */
const CLIMATE_PM = 2;
/** What a thirsty leaf may be off beside the wind, which is an input of its own. [K] */
const LEAF_REST = 2;

/** Least that a length, and that a height above a crown's or a cloth's foot, is shifted down to. [m] */
const LEAST_LENGTH = 0.02;

const SHARES: ReadonlySet<string> = new Set(['openness', 'density', 'measuredDensity']);
const HEIGHTS: ReadonlySet<string> = new Set(['height', 'plantHeight', 'crownBase', 'bottom', 'foliageFrom', 'rise']);
const PLACES: ReadonlySet<string> = new Set(['at', 'center', 'path', 'outline']);

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
  const shifts = [pm, -pm].map((by): Plan => ({ ...plan, site: { ...plan.site, upBearing: (up + by + 360) % 360 } }));
  return pm > 0
    ? [{ key: 'site.upBearing', kind: 'north', feature: null, of: 'upBearing', by: known.by, pm, shifts }]
    : [];
}

function featureInputs(plan: Plan, feature: Feature): DoubtInput[] {
  return Object.keys(feature.how ?? {}).flatMap((of): DoubtInput[] => {
    const known = unsure((feature.how as How)[of]);
    const value: unknown = (feature as unknown as Record<string, unknown>)[of];
    if (known === null || value === undefined) return [];
    const shared = { key: `${feature.id}.${of}`, feature: feature.id, of, by: known.by } as const;
    const withFeature = (changed: Feature): Plan => withFeatureIn(plan, changed);
    if (PLACES.has(of)) {
      const pm = known.pm ?? defaultPm(known.by, fromCorner(plan, value as PlanPoint | readonly PlanPoint[]));
      return [
        {
          ...shared,
          kind: 'place',
          pm,
          shifts: SIDES.map((side) => withFeature(movedBy(feature, of, [side[0] * pm, side[1] * pm]))),
        },
      ];
    }
    if (typeof value !== 'number') return [];
    const pm = known.pm ?? defaultPm(known.by, value, quantityOf(of));
    if (!(pm > 0)) return [];
    const kind: DoubtKind = SHARES.has(of) ? 'thickness of shade' : HEIGHTS.has(of) ? 'height' : 'size';
    return [{ ...shared, kind, pm, shifts: [pm, -pm].map((by) => withFeature(withNumber(feature, of, value + by))) }];
  });
}

function climateInput(plan: Plan): DoubtInput {
  const known = plan.climate.how?.heatwaveHigh;
  const pm = known?.pm ?? CLIMATE_PM;
  const shifts = [pm, -pm].map((by): Plan => ({
    ...plan,
    climate: { ...plan.climate, heatwaveHigh: plan.climate.heatwaveHigh + by },
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
    plants: [...others, ...rows.map((row) => ({ ...row, heatLimit: row.heatLimit + sign * offBy(row) }))],
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

function movedBy(feature: Feature, of: string, [dx, dy]: PlanPoint): Feature {
  const value: unknown = (feature as unknown as Record<string, unknown>)[of];
  const moved = ([x, y]: PlanPoint): PlanPoint => [x + dx, y + dy];
  return { ...feature, [of]: isPoint(value) ? moved(value) : (value as readonly PlanPoint[]).map(moved) };
}

function isPoint(value: unknown): value is PlanPoint {
  return Array.isArray(value) && typeof value[0] === 'number';
}

/** A feature with one number another, kept inside what a plan allows. */
export function withNumber(feature: Feature, of: string, value: number): Feature {
  if (SHARES.has(of)) return { ...feature, [of]: Math.min(1, Math.max(0, value)) };
  if (of === 'turn' || of === 'rise') return { ...feature, [of]: value };
  const foot = of === 'height' ? footOf(feature) : 0;
  const top = of === 'height' || !('height' in feature) || !HEIGHTS.has(of) ? Infinity : feature.height;
  const least =
    of === 'crownBase' || of === 'bottom' || of === 'foliageFrom' || of === 'eaves' ? 0 : foot + LEAST_LENGTH;
  return { ...feature, [of]: Math.max(least, Math.min(top - LEAST_LENGTH, value)) };
}

function footOf(feature: Feature): number {
  if (feature.kind === 'tree') return feature.crownBase;
  if (feature.kind === 'screen') return feature.bottom ?? 0;
  return feature.kind === 'plant' ? (feature.foliageFrom ?? 0) : 0;
}

function quantityOf(of: string): Quantity {
  if (SHARES.has(of)) return 'share';
  return of === 'turn' ? 'bearing' : 'length';
}

/** A place is measured from the nearest corner of the property. [m] */
function fromCorner(plan: Plan, value: PlanPoint | readonly PlanPoint[]): number {
  const point = isPoint(value) ? value : (value as readonly PlanPoint[])[0];
  return Math.min(...plan.site.boundary.map((corner) => distance(corner, point)));
}
