import { inYearlySpan } from '../plan/dates/year-span.ts';
import {
  bottomOf,
  colourOf,
  crownShapeOf,
  eavesOf,
  foliageFromOf,
  opennessOf,
  shadesOf,
  upBearingOf,
} from '../plan/defaults.ts';
import { canopyCorners, canopyEdge } from '../plan/geometry/cloth-shapes.ts';
import { cleanPath, openRing } from '../plan/geometry/shapes.ts';
import { eavesStripes, pathStripes } from '../plan/geometry/stripes.ts';
import { trunkRadius } from '../plan/geometry/trunk.ts';
import { minus } from '../plan/geometry/vectors.ts';
import type {
  Bed,
  Building,
  Canopy,
  Cloth,
  Feature,
  Hedge,
  MonthDay,
  Plan,
  Plant,
  Screen,
  Tree,
  Wall,
} from '../plan/types.ts';
import { REFLECTS } from './reflects.ts';
import type { Crown, Occluder, Scene, ClothSheet, Solid } from './solids.ts';
import { dayIndex, LEAP_YEAR } from './year.ts';

/** Plants and beds lower than this throw no shadow. [m] */
const LEAST_SHADE = 0.6;

/**
 * The plan's shadow casters as solids: walls, hedges, buildings, trees, canopies, screens, and plants and beds that are
 * 0.6 m high or more; nothing else casts.
 */
export function buildScene(plan: Plan): Scene {
  const variants = plan.features.map(variantsOf).filter((variant) => variant !== null);
  const changing = variants.filter((variant) => variant.changes !== null);
  const states: Occluder[][] = [];
  const stateOfDay = new Uint16Array(LEAP_YEAR.length);
  const stateOfKey = new Map<string, number>();
  LEAP_YEAR.forEach((monthDay, day) => {
    const key = changing.map((variant) => (changesOn(variant, monthDay) ? '1' : '0')).join('');
    let state = stateOfKey.get(key);
    if (state === undefined) {
      state = states.length;
      stateOfKey.set(key, state);
      states.push(
        variants
          .map((variant) => (changesOn(variant, monthDay) ? variant.changed : variant.usual))
          .filter((occluder) => occluder !== null),
      );
    }
    stateOfDay[day] = state;
  });
  return {
    upBearing: upBearingOf(plan),
    skyline: plan.site.skyline ?? [],
    surface: plan.site.surface ?? null,
    grounds: plan.features.flatMap((feature) =>
      feature.kind === 'ground' ? [{ ring: openRing(feature.outline), surface: feature.surface }] : [],
    ),
    states,
    stateOfDay,
  };
}

/** Index into `scene.states` of the yearly state that holds on a day. */
export function stateOf(scene: Scene, monthDay: MonthDay): number {
  return scene.stateOfDay[dayIndex(monthDay)];
}

/**
 * A scene with another feature alone in it: it has the same yearly states, and in each what the feature then puts in
 * the way.
 */
export function sceneOfOne(scene: Scene, feature: Feature): Scene {
  const states = scene.states.map((_, state) => {
    const occluder = occluderOn(feature, LEAP_YEAR[scene.stateOfDay.indexOf(state)]);
    return occluder === null ? [] : [occluder];
  });
  return { ...scene, states };
}

/** What one feature alone puts in the way on a day; `null`: nothing. */
export function occluderOn(feature: Feature, monthDay: MonthDay): Occluder | null {
  const variants = variantsOf(feature);
  if (variants === null) return null;
  return changesOn(variants, monthDay) ? variants.changed : variants.usual;
}

/** The sheets of a canopy, roof first and then its drops, or of a screen, one a segment. */
export function clothSheets(feature: Cloth): ClothSheet[] {
  return feature.kind === 'canopy' ? canopySheets(feature) : screenSheets(feature);
}

/** A feature in its usual form, and in the form it takes on the days that change it (`null`: nothing in the way). */
interface Variants {
  readonly usual: Occluder | null;
  readonly changed: Occluder | null;
  /** `null`: never. */
  readonly changes: ((monthDay: MonthDay) => boolean) | null;
}

function changesOn({ changes }: Variants, monthDay: MonthDay): boolean {
  return changes !== null && changes(monthDay);
}

/** Yards that are held against each other share most of their features, and what is found out about their solids. */
const known = new WeakMap<Feature, Variants | null>();

function variantsOf(feature: Feature): Variants | null {
  let variants = known.get(feature);
  if (variants === undefined) known.set(feature, (variants = madeOf(feature)));
  return variants;
}

function madeOf(feature: Feature): Variants | null {
  switch (feature.kind) {
    case 'wall':
      return always(feature.id, [wallPrism(feature)]);
    case 'hedge':
      return always(feature.id, [pathPrism(feature, opennessOf(feature), null)]);
    case 'building':
      return always(feature.id, buildingSolids(feature));
    case 'tree':
      return treeVariants(feature);
    case 'canopy':
    case 'screen':
      return clothVariants(feature, clothSheets(feature));
    case 'plant':
      return feature.height >= LEAST_SHADE && shadesOf(feature) ? always(feature.id, [plantCrown(feature)]) : null;
    case 'bed':
      return feature.plantHeight >= LEAST_SHADE && shadesOf(feature) ? always(feature.id, [bedStand(feature)]) : null;
    default:
      return null;
  }
}

function always(id: string, solids: readonly Solid[]): Variants {
  return { usual: { id, solids }, changed: null, changes: null };
}

function treeVariants(tree: Tree): Variants {
  const { id, leafless } = tree;
  if (leafless === undefined) return always(id, treeSolids(tree, tree.openness));
  return {
    usual: { id, solids: treeSolids(tree, tree.openness) },
    changed: { id, solids: treeSolids(tree, leafless.openness) },
    changes: (monthDay) => inYearlySpan(leafless, monthDay),
  };
}

function clothVariants({ id, up }: Cloth, sheets: readonly ClothSheet[]): Variants {
  if (up === undefined) return always(id, sheets);
  return { usual: { id, solids: sheets }, changed: null, changes: (monthDay) => !inYearlySpan(up, monthDay) };
}

function wallPrism(wall: Wall): Solid {
  const openness = opennessOf(wall);
  return pathPrism(wall, openness, openness === 0 ? REFLECTS[colourOf(wall)] : null);
}

function pathPrism({ path, thickness, height }: Wall | Hedge, openness: number, reflects: number | null): Solid {
  return { kind: 'prism', rings: pathStripes(path, thickness), height, openness, reflects };
}

function buildingSolids(building: Building): Solid[] {
  const ring = openRing(building.outline);
  const { height } = building;
  const eaves = eavesOf(building);
  const reflects = REFLECTS[colourOf(building)];
  const body: Solid = { kind: 'prism', rings: [ring], height, openness: 0, reflects };
  return eaves > 0 ? [body, { kind: 'lid', rings: [ring, ...eavesStripes(ring, eaves)], height, reflects }] : [body];
}

function treeSolids(tree: Tree, openness: number): Solid[] {
  const [x, y] = tree.at;
  const crown: Crown = {
    kind: crownShapeOf(tree),
    x,
    y,
    radius: tree.crownWidth / 2,
    base: tree.crownBase,
    top: tree.height,
    openness,
  };
  const trunk: Crown = {
    kind: 'column',
    x,
    y,
    radius: trunkRadius(tree.height),
    base: 0,
    top: tree.crownBase,
    openness: 0,
  };
  return [crown, trunk];
}

/** A plant's crown as it shades others. */
function plantCrown(plant: Plant): Crown {
  const [x, y] = plant.at;
  const base = foliageFromOf(plant);
  return { kind: 'round', x, y, radius: plant.spread / 2, base, top: plant.height, openness: opennessOf(plant) };
}

function bedStand(bed: Bed): Solid {
  return { kind: 'stand', ring: openRing(bed.outline), height: bed.plantHeight, openness: opennessOf(bed) };
}

function canopySheets(canopy: Canopy): ClothSheet[] {
  const [frontLeft, backLeft, backRight] = canopyCorners(canopy);
  const roof: ClothSheet = {
    kind: 'cloth',
    corner: backLeft,
    u: minus(backRight, backLeft),
    v: minus(frontLeft, backLeft),
    share: 1 - (canopy.measuredDensity ?? canopy.density),
  };
  const drops = (canopy.drops ?? []).map((drop): ClothSheet => {
    const [a, b] = canopyEdge(canopy, drop.side);
    return { kind: 'cloth', corner: a, u: minus(b, a), v: [0, 0, -drop.depth], share: 1 - drop.density };
  });
  return [roof, ...drops];
}

function screenSheets(screen: Screen): ClothSheet[] {
  const bottom = bottomOf(screen);
  const share = 1 - (screen.measuredDensity ?? screen.density);
  const path = cleanPath(screen.path);
  return path.slice(1).map((b, k): ClothSheet => {
    const a = path[k];
    return {
      kind: 'cloth',
      corner: [a[0], a[1], bottom],
      u: [b[0] - a[0], b[1] - a[1], 0],
      v: [0, 0, screen.height - bottom],
      share,
    };
  });
}
