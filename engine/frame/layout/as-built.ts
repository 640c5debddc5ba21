/** What was really built, measured, and put back into the plan. */

import { riseOf, turnOf } from '../../plan/defaults.ts';
import { degreesOf } from '../../plan/geometry/angles.ts';
import { distance } from '../../plan/geometry/shapes.ts';
import { isCloth } from '../../plan/kinds.ts';
import { meanOf } from '../../plan/numbers/mean.ts';
import { pointToMillimetre, toMillimetre } from '../../plan/numbers/rounding.ts';
import { refusal } from '../../plan/problems.ts';
import type { Canopy, Cloth, Feature, Plan, PlanPoint, Problem, Screen, YardOption } from '../../plan/types.ts';
import { formatCut, formatLength } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import type { Units } from '../../plan/units/units.ts';
import { applyOption } from '../../plan/yards/options.ts';
import { ON_FEET } from '../strength/footings.ts';
import { bestRectangle } from './best-rectangle.ts';
import type { FourCorners } from './best-rectangle.ts';
import { briefOf } from './brief.ts';
import { frameOf } from './frame-of.ts';
import { keptFrame } from './kept-frame.ts';
import { frameName } from './model.ts';
import { settingOut } from './setting-out.ts';
import type { AsBuiltField, SettingOut } from './types.ts';

/** Measured numbers by the id of the sheet's `asBuilt` field; a field left out was not measured. [m] */
export type AsBuiltNumbers = Readonly<Record<string, number>>;

/** A post measured farther than this from the best rectangle is told. [m] */
const OUT_OF_SQUARE = 0.03;
/** Lengths are kept to the millimetre, turns to the hundredth of a degree. */
const PER_METRE = 1000;

export type AsBuiltResult =
  | { readonly ok: true; readonly plan: Plan; readonly changes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What to measure when it stands: at each outer post the height of the cloth's frame and the two tape lengths. */
export function asBuiltFields(thing: Cloth, placed: SettingOut): AsBuiltField[] {
  return measuredPosts(thing, placed).flatMap((post) => [
    {
      id: `${post.id}-height`,
      post: post.id,
      measures: 'height' as const,
      label: `${post.id}: height of the rail’s middle above the ground`,
      planned: post.height,
    },
    ...(placed.fixed.length === 2
      ? [
          { from: 'A', planned: post.fromA },
          { from: 'B', planned: post.fromB },
        ].map(({ from, planned }) => ({
          id: `${post.id}-${from.toLowerCase()}`,
          post: post.id,
          measures: 'distance' as const,
          label: `${post.id}: from ${from}, level, to the post’s middle`,
          planned,
        }))
      : []),
  ]);
}

/**
 * The plan with a canopy or screen as it was really built, and what changed in sentences. Posts that were measured from
 * A and B move; a canopy becomes the rectangle that fits its four corners best.
 * @param optionId The option that adds it; absent: it stands in `features`.
 */
export function withAsBuilt(plan: Plan, id: string, measured: AsBuiltNumbers, optionId?: string): AsBuiltResult {
  const option = plan.options?.find((candidate) => candidate.id === optionId);
  const yard: Plan =
    option === undefined ? plan : { ...plan, features: applyOption(plan.features, option, '/options', []) };
  const thing = yard.features.find((feature) => feature.id === id);
  if (thing === undefined || !isCloth(thing))
    return refusal('/features', `There is no roof or screen "${id}" to put right.`);
  const brief = briefOf(thing, yard);
  if (!brief.ok) return brief;
  const units = unitsOf(plan);
  const model = frameOf(thing, brief.brief, ON_FEET, yard);
  const placed = settingOut(model, yard, units);
  const fault = faultIn(measured, thing, placed);
  if (fault !== null) return refusal('/features', fault);
  const posts = measuredPosts(thing, placed);
  const places = placesFound(posts, placed, measured, units);
  if (!places.ok) return refusal('/features', places.message);

  const heights = posts.map((post) => measured[`${post.id}-height`] ?? post.height);
  const { feature, remarks } =
    thing.kind === 'canopy'
      ? canopyAsBuilt(thing, places.found, heights, units)
      : screenAsBuilt(thing, places.found, heights);
  const kept = keptFrame(feature, brief.brief, model, yard, units);
  return {
    ok: true,
    plan: withFeature(plan, kept.feature, option),
    changes: [...changesOf(thing, feature, units), ...remarks, ...kept.remarks],
  };
}

/** What is wrong with the numbers themselves, `null` when nothing is. */
function faultIn(measured: AsBuiltNumbers, thing: Cloth, placed: SettingOut): string | null {
  const fields = asBuiltFields(thing, placed);
  const unknown = Object.keys(measured).find((key) => !fields.some((field) => field.id === key));
  if (unknown !== undefined) return `"${unknown}" is not a field of the as-built form of ${frameName(thing)}.`;
  const bad = fields.find(({ id }) => measured[id] !== undefined && !(measured[id] > 0 && measured[id] < 1000));
  return bad === undefined ? null : `${bad.label}: a length above 0 is wanted.`;
}

/** Where the posts stand, `null` when none was measured from both A and B; or which tape lengths cannot be. */
function placesFound(
  posts: SettingOut['posts'],
  placed: SettingOut,
  measured: AsBuiltNumbers,
  units: Units,
):
  | { readonly ok: true; readonly found: readonly PlanPoint[] | null }
  | { readonly ok: false; readonly message: string } {
  const found: PlanPoint[] = [];
  let any = false;
  for (const post of posts) {
    const [fromA, fromB]: (number | undefined)[] = [measured[`${post.id}-a`], measured[`${post.id}-b`]];
    if (fromA === undefined || fromB === undefined) {
      found.push(post.at);
      continue;
    }
    const at = crossingNear(placed, post.at, fromA, fromB);
    if (at === null) {
      const [a, b] = [formatLength(fromA, units), formatLength(fromB, units)];
      return { ok: false, message: `${post.id}: ${a} from A and ${b} from B do not meet. Measure them again.` };
    }
    found.push(at);
    any = true;
  }
  return { ok: true, found: any ? found : null };
}

/** The plan with a feature in the place of the one of its id, in the option that adds it or in the yard. */
function withFeature(plan: Plan, feature: Feature, option: YardOption | undefined): Plan {
  const replace = (features: readonly Feature[]): Feature[] =>
    features.map((candidate) => (candidate.id === feature.id ? feature : candidate));
  const adds = option?.adds ?? [];
  if (!adds.some(({ id }) => id === feature.id)) return { ...plan, features: replace(plan.features) };
  return {
    ...plan,
    options: plan.options?.map((candidate) =>
      candidate === option ? { ...candidate, adds: replace(adds) } : candidate,
    ),
  };
}

/** A canopy's four corners (back left, back right, front left, front right), or every post of a screen. */
function measuredPosts(thing: Cloth, placed: SettingOut): SettingOut['posts'] {
  if (thing.kind === 'screen') return placed.posts;
  const ids = placed.diagonals.flatMap(({ from, to }) => [from, to]);
  return placed.posts.filter((post) => ids.includes(post.id));
}

/** The crossing of the two circles that lies nearer to where the post was planned; `null` where they do not meet. */
function crossingNear(placed: SettingOut, planned: PlanPoint, fromA: number, fromB: number): PlanPoint | null {
  const [a, b] = placed.fixed.map((point) => point.at);
  const base = distance(a, b);
  const along = (fromA ** 2 - fromB ** 2 + base ** 2) / (2 * base);
  const squared = fromA ** 2 - along ** 2;
  // A post on the line itself may be measured a hair short.
  if (squared < -(0.02 ** 2) - 0.02 * fromA) return null;
  const aside = Math.sqrt(Math.max(0, squared));
  const [ux, uy] = [(b[0] - a[0]) / base, (b[1] - a[1]) / base];
  const places = [1, -1].map((sign): PlanPoint => [
    a[0] + along * ux - sign * aside * uy,
    a[1] + along * uy + sign * aside * ux,
  ]);
  return distance(places[0], planned) <= distance(places[1], planned) ? places[0] : places[1];
}

function canopyAsBuilt(
  canopy: Canopy,
  found: FourCorners | null,
  heights: readonly number[],
  units: Units,
): { feature: Canopy; remarks: string[] } {
  const height = toMillimetre((heights[0] + heights[1]) / 2);
  const rise = toMillimetre((heights[2] + heights[3]) / 2 - (heights[0] + heights[1]) / 2);
  const level: Canopy = { ...canopy, height, ...(canopy.rise === undefined && rise === 0 ? {} : { rise }) };
  if (found === null) return { feature: level, remarks: [] };
  const { center, width, length, turnRad, worst } = bestRectangle(found);
  const remark =
    `The posts are up to ${formatCut(worst, units)} off a true rectangle; the plan keeps the rectangle ` +
    `that fits best.`;
  const turn = (Math.round((degreesOf(turnRad) + 360) * 100) / 100) % 360;
  const placed: Canopy = {
    ...level,
    center: pointToMillimetre(center),
    length: toMillimetre(length),
    width: toMillimetre(width),
  };
  return {
    feature: { ...placed, ...(canopy.turn === undefined && turn === 0 ? {} : { turn }) },
    remarks: worst > OUT_OF_SQUARE ? [remark] : [],
  };
}

function screenAsBuilt(
  screen: Screen,
  found: readonly PlanPoint[] | null,
  heights: readonly number[],
): { feature: Screen; remarks: string[] } {
  const height = toMillimetre(meanOf(heights));
  if (found === null) return { feature: { ...screen, height }, remarks: [] };
  const closes = screen.path.length > 3 && distance(screen.path[0], screen.path[screen.path.length - 1]) === 0;
  const path = [...found, ...(closes ? [found[0]] : [])].map(pointToMillimetre);
  return { feature: { ...screen, path, height }, remarks: [] };
}

function changesOf(before: Cloth, after: Cloth, units: Units): string[] {
  const changes: string[] = [];
  const tell = (what: string, from: number, to: number): void => {
    if (Math.abs(to - from) >= 0.5 / PER_METRE)
      changes.push(`${what} ${formatCut(from, units)} → ${formatCut(to, units)}`);
  };
  tell('height', before.height, after.height);
  if (before.kind === 'canopy' && after.kind === 'canopy') {
    tell('length', before.length, after.length);
    tell('width', before.width, after.width);
    tell('rise', riseOf(before), riseOf(after));
    const moved = distance(before.center, after.center);
    if (moved >= 0.5 / PER_METRE) changes.push(`its middle moves by ${formatCut(moved, units)}`);
    const turned = ((((turnOf(after) - turnOf(before)) % 360) + 540) % 360) - 180;
    if (Math.abs(turned) >= 0.01) changes.push(`turned by ${turned.toFixed(2)}°`);
  }
  if (before.kind === 'screen' && after.kind === 'screen') {
    const [a, b] = [after.path[0], after.path[after.path.length - 1]];
    const moved = Math.max(distance(before.path[0], a), distance(before.path[before.path.length - 1], b));
    if (moved >= 0.5 / PER_METRE) changes.push(`an end moves by ${formatCut(moved, units)}`);
  }
  return changes.length > 0 ? changes : ['It stands as planned.'];
}
