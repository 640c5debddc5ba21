/**
 * What a plan is allowed to say but seldom means: a walk round the yard that asks "is that right?". Warnings only, each
 * with its pointer; the plan must be free of errors.
 */

import { monthsOfSeason, monthWord } from '../../dates/dates.ts';
import { canBeAt, standardOffset, sunOffset } from '../../dates/sun-clock.ts';
import { riseOf } from '../../defaults.ts';
import { LIMITS } from '../../file/limits.ts';
import { canopyHeightOver } from '../../geometry/cloth-shapes.ts';
import { centroid, openRing, pointInRing, strictlyInRing } from '../../geometry/shapes.ts';
import { LEAST_SKYLINE_POINTS, WIDEST_SKYLINE_GAP, widestGap } from '../../geometry/skyline.ts';
import { trunkRadius } from '../../geometry/trunk.ts';
import { warningAt } from '../../problems.ts';
import { quote } from '../../schema/say.ts';
import type { Canopy, Feature, FeatureKind, Plan, PlanPoint, Problem } from '../../types.ts';
import { capital } from '../../words/first-letter.ts';
import { withOptions } from '../../yards/options.ts';
import { sharedGround } from './shared-ground.ts';
import { slits } from './slits.ts';

interface Placed {
  readonly feature: Feature;
  readonly pointer: string;
}

/** From this height on a thing of the kind looks like a slip of the pen. [m] */
const ODD_HEIGHT: Partial<Readonly<Record<FeatureKind, number>>> = {
  wall: 4,
  hedge: 6,
  screen: 4,
  canopy: 5,
  building: 40,
  tree: 40,
  plant: 6,
  eye: 40,
};
/** A point this near the boundary's line is on it. [m] */
const ON_LINE = 1e-6;

/** Every warning, in the file's order of parts, at most a hundred. */
export function sanityWalk(plan: Plan): Problem[] {
  const placed = allPlaced(plan);
  const warnings = [
    ...siteWarnings(plan),
    ...climateWarnings(plan),
    ...placed.flatMap(oddSizes),
    ...placed.flatMap((one) => outsideBoundary(plan, one)),
    ...sharedGround(plan.features),
    ...slits(plan.features),
    ...underRoofs(plan),
    ...oddRows(plan),
    ...lostReferences(plan, placed),
  ];
  return warnings.slice(0, LIMITS.warnings);
}

function allPlaced(plan: Plan): Placed[] {
  const placed = plan.features.map((feature, index) => ({ feature, pointer: `/features/${index}` }));
  const added = (plan.options ?? []).flatMap((option, at) =>
    (option.adds ?? []).map((feature, index) => ({ feature, pointer: `/options/${at}/adds/${index}` })),
  );
  return [...placed, ...added];
}

function siteWarnings(plan: Plan): Problem[] {
  const { latitude, longitude, timeZone, skyline } = plan.site;
  const warnings: Problem[] = [];
  if (Math.abs(latitude) > 66.6)
    warnings.push(
      warningAt(
        '/site/latitude',
        `Latitude ${latitude} degrees is beyond the polar circle; this is made for hot, bright places. Are ` +
          `latitude and longitude swapped?`,
      ),
    );
  const clocks = standardOffset(timeZone, plan.season.year);
  if (!canBeAt(longitude, clocks))
    warnings.push(
      warningAt(
        '/site/timeZone',
        `The clocks of ${timeZone} are ${ahead(clocks)} UTC, but at longitude ${longitude} the sun is ` +
          `${ahead(sunOffset(longitude))} it: every hour here is wrong if one of them is.`,
      ),
    );
  if (skyline === undefined) return warnings;
  if (skyline.length < LEAST_SKYLINE_POINTS)
    warnings.push(
      warningAt(
        '/site/skyline',
        `The skyline has only ${skyline.length === 1 ? 'one point' : 'two points'}; between points it runs in a ` +
          `straight line all round.`,
      ),
    );
  const widest = widestGap(skyline.map(({ azimuth }) => azimuth));
  if (skyline.length >= LEAST_SKYLINE_POINTS && widest > WIDEST_SKYLINE_GAP)
    warnings.push(
      warningAt('/site/skyline', `The skyline has a gap of ${Math.round(widest)} degrees without a point.`),
    );
  return warnings;
}

/** "2 h ahead of", "7.5 h behind" */
function ahead(hours: number): string {
  return `${Number(Math.abs(hours).toFixed(1))} h ${hours < 0 ? 'behind' : 'ahead of'}`;
}

function climateWarnings(plan: Plan): Problem[] {
  const inSeason = monthsOfSeason(plan.season).map((month) => plan.climate.months.find((row) => row.month === month));
  const hottest = inSeason.reduce(
    (best, row) => (row !== undefined && (best === undefined || row.high > best.high) ? row : best),
    undefined,
  );
  if (hottest === undefined || plan.climate.heatwaveHigh >= hottest.high) return [];
  return [
    warningAt(
      '/climate/heatwaveHigh',
      `The heatwave's high of ${plan.climate.heatwaveHigh} °C is below ${monthWord(hottest.month)}'s mean high of ` +
        `${hottest.high} °C.`,
    ),
  ];
}

function oddSizes({ feature, pointer }: Placed): Problem[] {
  const warnings: Problem[] = [];
  const odd = ODD_HEIGHT[feature.kind];
  if (odd !== undefined && 'height' in feature && feature.height >= odd) {
    const question =
      feature.height >= 10 && feature.kind !== 'building' && feature.kind !== 'tree'
        ? `did you mean ${feature.height / 10} m?`
        : 'is that right?';
    warnings.push(warningAt(`${pointer}/height`, `${kindAndId(feature)} is ${feature.height} m high; ${question}`));
  }
  if (feature.kind === 'tree' && 2 * trunkRadius(feature.height) > feature.crownWidth) {
    warnings.push(
      warningAt(
        `${pointer}/crownWidth`,
        `${kindAndId(feature)}: its trunk, taken as ${(2 * trunkRadius(feature.height)).toFixed(2)} m wide, ` +
          `is wider than its crown of ${feature.crownWidth} m.`,
      ),
    );
  }
  return warnings;
}

function outsideBoundary(plan: Plan, { feature, pointer }: Placed): Problem[] {
  const { boundary } = plan.site;
  const inside = (point: PlanPoint) => pointInRing(point, boundary, ON_LINE);
  if (feature.kind === 'plant' && !inside(feature.at))
    return [warningAt(`${pointer}/at`, `${kindAndId(feature)} stands outside the boundary.`)];
  if (feature.kind === 'bed' && !feature.outline.every(inside))
    return [warningAt(`${pointer}/outline`, `${kindAndId(feature)} reaches outside the boundary.`)];
  if (feature.kind === 'eye' && feature.path.some((point) => strictlyInRing(point, boundary, ON_LINE))) {
    return [
      warningAt(
        `${pointer}/path`,
        `${kindAndId(feature)} looks from inside the yard; an eye is for people who should not see the frame.`,
      ),
    ];
  }
  return [];
}

/** What may be moved, or hung over what is moved. */
interface Yard {
  readonly features: readonly Feature[];
  /** Ids of what an option changed; `null` means all of them. */
  readonly changed: ReadonlySet<string> | null;
}

/** Plants taller than a canopy over them, in the yard as it is and in each option alone. */
function underRoofs(plan: Plan): Problem[] {
  const pointers = new Map(allPlaced(plan).map(({ feature, pointer }) => [feature.id, pointer]));
  const warnings = new Map<string, Problem>();
  for (const { features, changed } of yardsOf(plan)) {
    const canopies = features.filter((feature): feature is Canopy => feature.kind === 'canopy');
    const isChanged = ({ id }: Feature) => changed === null || changed.has(id);
    const changedCanopies = canopies.filter(isChanged);
    const lowest = Math.min(...canopies.map(lowestEdge));
    for (const feature of features) {
      const top = plantTop(feature);
      if (top === null || top <= lowest) continue;
      for (const canopy of isChanged(feature) ? canopies : changedCanopies) {
        const cloth = top > lowestEdge(canopy) ? clothOver(feature, canopy) : null;
        if (cloth === null || top <= cloth) continue;
        const message =
          `${kindAndId(feature)} is ${top} m high, taller than ${kindAndId(canopy)} over it, which hangs ` +
          `at ${cloth.toFixed(2)} m there.`;
        warnings.set(message, warningAt(pointers.get(feature.id) ?? '', message));
        if (warnings.size >= LIMITS.warnings) return [...warnings.values()];
      }
    }
  }
  return [...warnings.values()];
}

function yardsOf(plan: Plan): Yard[] {
  const yards: Yard[] = [{ features: plan.features, changed: null }];
  for (const option of plan.options ?? []) {
    const tried = withOptions(plan, [option.id]);
    const changed = new Set([...(option.adds ?? []).map(({ id }) => id), ...Object.keys(option.moves ?? {})]);
    if (tried.ok && changed.size > 0) yards.push({ features: tried.plan.features, changed });
  }
  return yards;
}

/** Height of what should fit under a roof; `null` of what need not. [m] */
function plantTop(feature: Feature): number | null {
  if (feature.kind === 'bed') return feature.plantHeight;
  return feature.kind === 'plant' || (feature.kind === 'tree' && feature.plant !== undefined) ? feature.height : null;
}

/** Lowest cloth of a canopy over a plant or bed; `null` where it hangs elsewhere. [m] */
function clothOver(feature: Feature, canopy: Canopy): number | null {
  const spots =
    feature.kind === 'bed'
      ? [...openRing(feature.outline), centroid(feature.outline)]
      : 'at' in feature
        ? [feature.at]
        : [];
  const heights = spots.map((spot) => canopyHeightOver(canopy, spot)).filter((height) => height !== null);
  return heights.length === 0 ? null : Math.min(...heights);
}

function lowestEdge(canopy: Canopy): number {
  return canopy.height + Math.min(0, riseOf(canopy));
}

function oddRows(plan: Plan): Problem[] {
  return (plan.plants ?? []).flatMap((row, index) =>
    row.heatLimit >= 35 && row.heatLimit <= 65
      ? []
      : [
          warningAt(
            `/plants/${index}/heatLimit`,
            `Plant row ${quote(row.id)}: a heat limit of ${row.heatLimit} °C is outside 35 to 65 °C; is that right?`,
          ),
        ],
  );
}

/** Journal and readings may speak of what is no longer drawn; that is worth knowing, no more. */
function lostReferences(plan: Plan, placed: readonly Placed[]): Problem[] {
  const ids = new Set(placed.map(({ feature }) => feature.id));
  const warnings: Problem[] = [];
  for (const { feature, pointer } of placed) {
    if (feature.kind !== 'reading') continue;
    for (const key of ['plant', 'pair'] as const) {
      const id = feature[key];
      if (id !== undefined && !ids.has(id))
        warnings.push(
          warningAt(`${pointer}/${key}`, `${kindAndId(feature)} speaks of ${quote(id)}, which is not drawn.`),
        );
    }
  }
  for (const [index, entry] of (plan.journal ?? []).entries()) {
    if (entry.feature === undefined || ids.has(entry.feature)) continue;
    warnings.push(
      warningAt(
        `/journal/${index}/feature`,
        `The journal of ${entry.date} speaks of ${quote(entry.feature)}, which is not drawn.`,
      ),
    );
  }
  return warnings;
}

function kindAndId(feature: Feature): string {
  return `${capital(feature.kind)} ${quote(feature.id)}`;
}
