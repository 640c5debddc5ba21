/**
 * What a plan is allowed to say but seldom means: a walk round the yard that asks "is that right?". Warnings only, each
 * with its pointer; the plan must be free of errors.
 */
import { monthsOfSeason, monthName } from './dates.ts';
import { boundsOf, canopyHeightOver, centroid, openRing, pointInRing, strictlyInRing } from './geometry.ts';
import { withOptions } from './options.ts';
import { quote } from './reader.ts';
import { slits } from './slits.ts';
import { intersect, regionArea } from './turf.ts';
import type { Bed, Building, Canopy, Feature, FeatureKind, Plan, PlanPoint, Problem } from './types.ts';

interface Placed {
  readonly feature: Feature;
  readonly pointer: string;
}

/** From this height on a thing of the kind looks like a slip of the pen. [m] */
const ODD_HEIGHT: Partial<Readonly<Record<FeatureKind, number>>> = { wall: 4, hedge: 6, screen: 4, canopy: 5, building: 40, tree: 40, plant: 6, eye: 40 };
/** Trunk radius as a share of a tree's height, as the shadows take it. */
const TRUNK_RADIUS_SHARE = 0.03;
/** Ground that two outlines may share through careless drawing. [m²] */
const SLACK_AREA = 0.01;
/** A point this near the boundary's line is on it. [m] */
const ON_LINE = 1e-6;
const MOST_WARNINGS = 100;

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
  return warnings.slice(0, MOST_WARNINGS);
}

function allPlaced(plan: Plan): Placed[] {
  const placed = plan.features.map((feature, index) => ({ feature, pointer: `/features/${index}` }));
  const added = (plan.options ?? []).flatMap((option, at) => (option.adds ?? []).map((feature, index) => ({ feature, pointer: `/options/${at}/adds/${index}` })));
  return [...placed, ...added];
}

function siteWarnings(plan: Plan): Problem[] {
  const { latitude, skyline } = plan.site;
  const warnings: Problem[] = [];
  if (Math.abs(latitude) > 66.6) warnings.push(warning('/site/latitude', `Latitude ${latitude} degrees is beyond the polar circle; this is made for hot, bright places. Are latitude and longitude swapped?`));
  if (skyline === undefined) return warnings;
  if (skyline.length < 3) warnings.push(warning('/site/skyline', `The skyline has only ${skyline.length === 1 ? 'one point' : 'two points'}; between points it runs in a straight line all round.`));
  const azimuths = skyline.map((point) => point.azimuth).sort((a, b) => a - b);
  const widest = Math.max(...azimuths.map((azimuth, i) => (azimuths[i + 1] ?? azimuths[0] + 360) - azimuth));
  if (skyline.length >= 3 && widest > 180) warnings.push(warning('/site/skyline', `The skyline has a gap of ${Math.round(widest)} degrees without a point.`));
  return warnings;
}

function climateWarnings(plan: Plan): Problem[] {
  const inSeason = monthsOfSeason(plan.season).map((month) => plan.climate.months.find((row) => row.month === month));
  const hottest = inSeason.reduce((best, row) => (row !== undefined && (best === undefined || row.high > best.high) ? row : best), undefined);
  if (hottest === undefined || plan.climate.heatwaveHigh >= hottest.high) return [];
  return [warning('/climate/heatwaveHigh', `The heatwave's high of ${plan.climate.heatwaveHigh} °C is below ${monthName(hottest.month)}'s mean high of ${hottest.high} °C.`)];
}

function oddSizes({ feature, pointer }: Placed): Problem[] {
  const warnings: Problem[] = [];
  const odd = ODD_HEIGHT[feature.kind];
  if (odd !== undefined && 'height' in feature && feature.height >= odd) {
    const question = feature.height >= 10 && feature.kind !== 'building' && feature.kind !== 'tree' ? `did you mean ${feature.height / 10} m?` : 'is that right?';
    warnings.push(warning(`${pointer}/height`, `${nameOf(feature)} is ${feature.height} m high; ${question}`));
  }
  if (feature.kind === 'tree' && 2 * TRUNK_RADIUS_SHARE * feature.height > feature.crownWidth) {
    warnings.push(warning(`${pointer}/crownWidth`, `${nameOf(feature)}: its trunk, taken as ${(2 * TRUNK_RADIUS_SHARE * feature.height).toFixed(2)} m wide, is wider than its crown of ${feature.crownWidth} m.`));
  }
  return warnings;
}

function outsideBoundary(plan: Plan, { feature, pointer }: Placed): Problem[] {
  const { boundary } = plan.site;
  const inside = (point: PlanPoint) => pointInRing(point, boundary, ON_LINE);
  if (feature.kind === 'plant' && !inside(feature.at)) return [warning(`${pointer}/at`, `${nameOf(feature)} stands outside the boundary.`)];
  if (feature.kind === 'bed' && !feature.outline.every(inside)) return [warning(`${pointer}/outline`, `${nameOf(feature)} reaches outside the boundary.`)];
  if (feature.kind === 'eye' && feature.path.some((point) => strictlyInRing(point, boundary, ON_LINE))) {
    return [warning(`${pointer}/path`, `${nameOf(feature)} looks from inside the yard; an eye is for people who should not see the frame.`)];
  }
  return [];
}

/** Buildings that overlap, and beds and plants that stand where a building is. */
function sharedGround(features: readonly Feature[]): Problem[] {
  const buildings = features.filter((feature): feature is Building => feature.kind === 'building');
  const warnings: Problem[] = [];
  features.forEach((feature, index) => {
    for (const building of buildings) {
      if (warnings.length >= MOST_WARNINGS) return;
      if (feature.kind === 'building' && features.indexOf(building) < index && share(feature, building)) {
        warnings.push(warning(`/features/${index}/outline`, `${nameOf(feature)} and ${nameOf(building)} overlap.`));
      } else if (feature.kind === 'bed' && share(feature, building)) {
        warnings.push(warning(`/features/${index}/outline`, `${nameOf(feature)} lies partly under ${nameOf(building)}.`));
      } else if (feature.kind === 'plant' && pointInRing(feature.at, building.outline)) {
        warnings.push(warning(`/features/${index}/at`, `${nameOf(feature)} stands inside ${nameOf(building)}.`));
      }
    }
  });
  return warnings;
}

function share(a: Building | Bed, b: Building): boolean {
  const boxA = boundsOf(a.outline);
  const boxB = boundsOf(b.outline);
  if (boxA.maxX <= boxB.minX || boxB.maxX <= boxA.minX || boxA.maxY <= boxB.minY || boxB.maxY <= boxA.minY) return false;
  return regionArea(intersect(a.outline, b.outline)) > SLACK_AREA;
}

/** Plants taller than a canopy over them, in the yard as it is and in each option alone. */
function underRoofs(plan: Plan): Problem[] {
  const pointers = new Map(allPlaced(plan).map(({ feature, pointer }) => [feature.id, pointer]));
  const yards = [plan.features, ...(plan.options ?? []).map((option) => withOptions(plan, [option.id])).flatMap((tried) => (tried.ok ? [tried.plan.features] : []))];
  const warnings = new Map<string, Problem>();
  for (const features of yards) {
    const canopies = features.filter((feature): feature is Canopy => feature.kind === 'canopy');
    for (const feature of canopies.length === 0 ? [] : features) {
      for (const canopy of canopies) {
        const top = topUnder(feature, canopy);
        if (top === null) continue;
        const message = `${nameOf(feature)} is ${top.plant} m high, taller than ${nameOf(canopy)} over it, which hangs at ${top.cloth.toFixed(2)} m there.`;
        warnings.set(message, warning(pointers.get(feature.id) ?? '', message));
      }
    }
  }
  return [...warnings.values()];
}

/** A plant's height and the lowest cloth over it where the plant is the taller; else `null`. */
function topUnder(feature: Feature, canopy: Canopy): { plant: number; cloth: number } | null {
  const plant = feature.kind === 'bed' ? feature.plantHeight : feature.kind === 'plant' || (feature.kind === 'tree' && feature.plant !== undefined) ? feature.height : null;
  if (plant === null) return null;
  const spots = feature.kind === 'bed' ? [...openRing(feature.outline), centroid(feature.outline)] : 'at' in feature ? [feature.at] : [];
  const heights = spots.map((spot) => canopyHeightOver(canopy, spot)).filter((height) => height !== null);
  const cloth = Math.min(...heights);
  return plant > cloth ? { plant, cloth } : null;
}

function oddRows(plan: Plan): Problem[] {
  return (plan.plants ?? []).flatMap((row, index) =>
    row.heatLimit >= 35 && row.heatLimit <= 65
      ? []
      : [warning(`/plants/${index}/heatLimit`, `Plant row ${quote(row.id)}: a heat limit of ${row.heatLimit} °C is outside 35 to 65 °C; is that right?`)],
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
      if (id !== undefined && !ids.has(id)) warnings.push(warning(`${pointer}/${key}`, `${nameOf(feature)} speaks of ${quote(id)}, which is not drawn.`));
    }
  }
  for (const [index, entry] of (plan.journal ?? []).entries()) {
    if (entry.feature === undefined || ids.has(entry.feature)) continue;
    warnings.push(warning(`/journal/${index}/feature`, `The journal of ${entry.date} speaks of ${quote(entry.feature)}, which is not drawn.`));
  }
  return warnings;
}

function nameOf(feature: Feature): string {
  return `${feature.kind[0].toUpperCase()}${feature.kind.slice(1)} ${quote(feature.id)}`;
}

function warning(pointer: string, message: string): Problem {
  return { pointer, message, severity: 'warning' };
}
