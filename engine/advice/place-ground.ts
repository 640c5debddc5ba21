/** Where a pot may stand, and why not where it may not. */
import { namedInside } from '../load/names.ts';
import { DEFAULTS, potOf } from '../plan/defaults.ts';
import { boundsOf, distance, distanceToPath, openRing, pointInRing } from '../plan/geometry.ts';
import type { Building, Feature, Plan, PlanPoint, Plant } from '../plan/types.ts';

/** A person with a can needs this much to walk by. Common practice, no source. [m] */
const PATH_WIDTH = 0.9;
/** The water of an eaves' edge falls in a band this wide to both sides. Our choice. [m] */
const DRIP = 0.2;
const TRUNK_SHARE = 0.03;
/** Ground is walked over in steps of this. [m] */
const STEP = 0.25;
/** So much of the ground may be cut off behind a pot before it is in the way: corners nobody walks into. */
const CUT_OFF = 0.05;

export interface PotGround {
  /** Why the pot cannot stand with its middle here, as a clause ("it would stand in the bed …"); `null` where it can. */
  reasonAt(at: PlanPoint): string | null;
}

/** Lays out where a plant's pot may stand: what is drawn, the hose, and a way past it 0.9 m wide. */
export function potGround(plan: Plan, plant: Plant): PotGround {
  const radius = potOf(plant).width / 2;
  const others = plan.features.filter(({ id }) => id !== plant.id);
  const boundary = openRing(plan.site.boundary);
  const walk = walkableOf(plan, others);
  return {
    reasonAt(at) {
      if (!pointInRing(at, boundary) || distanceToPath(at, [...boundary, boundary[0]]) < radius) return 'it would stand outside the property';
      for (const feature of others) {
        const reason = reasonBy(feature, plant, radius, at);
        if (reason !== null) return `${reason} ${namedInside(plan, feature.id)}`;
      }
      const { tap, hose } = plan.site;
      if (tap !== undefined && hose !== undefined && distance(tap, at) > hose) return `the hose of ${hose} m does not reach it`;
      return walk.staysOpen(at, radius) ? null : `it would leave no path ${PATH_WIDTH} m wide past it`;
    },
  };
}

function reasonBy(feature: Feature, plant: Plant, radius: number, at: PlanPoint): string | null {
  switch (feature.kind) {
    case 'building':
      if (nearRing(feature.outline, at, radius)) return 'it would stand in';
      return underDrip(feature, at) ? 'it would stand under the drip edge of' : null;
    case 'wall':
    case 'hedge':
      return distanceToPath(at, feature.path) < radius + feature.thickness / 2 ? 'it would stand in' : null;
    case 'tree':
      if (distance(at, feature.at) < radius + TRUNK_SHARE * feature.height) return 'it would stand in the trunk of';
      return distance(at, feature.at) < feature.crownWidth / 2 && plant.height > feature.crownBase ? 'its top would be in the crown of' : null;
    case 'bed':
      return nearRing(feature.outline, at, radius) ? 'it would stand in' : null;
    case 'plant':
      return distance(at, feature.at) < (plant.spread + feature.spread) / 2 ? 'it would grow into' : null;
    case 'screen':
      return distanceToPath(at, feature.path) < radius ? 'it would stand in' : null;
    case 'keepout':
      return feature.blocks.includes('pots') && nearRing(feature.outline, at, radius) ? 'no pot may stand on' : null;
    default:
      return null;
  }
}

function nearRing(outline: readonly PlanPoint[], at: PlanPoint, within: number): boolean {
  const ring = openRing(outline);
  return pointInRing(at, ring, within);
}

function underDrip(building: Building, at: PlanPoint): boolean {
  const eaves = building.eaves ?? DEFAULTS.eaves;
  const ring = openRing(building.outline);
  return eaves > 0 && Math.abs(distanceToPath(at, [...ring, ring[0]]) - eaves) < DRIP;
}

/** The ground on which a person can walk between what stands, and whether it hangs together with one pot more. */
function walkableOf(plan: Plan, others: readonly Feature[]): { staysOpen(at: PlanPoint, radius: number): boolean } {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const boundary = openRing(plan.site.boundary);
  const columns = Math.ceil((maxX - minX) / STEP);
  const rows = Math.ceil((maxY - minY) / STEP);
  const centre = (index: number): PlanPoint => [minX + ((index % columns) + 0.5) * STEP, minY + (Math.floor(index / columns) + 0.5) * STEP];
  const free = Uint8Array.from({ length: columns * rows }, (_, index) => (pointInRing(centre(index), boundary) && others.every((feature) => clearOf(feature, centre(index))) ? 1 : 0));
  const main = largestPart(free, columns, rows);
  return {
    staysOpen(at, radius) {
      const reach = radius + PATH_WIDTH / 2;
      const left = Uint8Array.from(main, (value, index) => (value === 1 && distance(at, centre(index)) >= reach ? 1 : 0));
      const total = left.reduce((sum, value) => sum + value, 0);
      const part = largestPart(left, columns, rows).reduce((sum, value) => sum + value, 0);
      return part >= (1 - CUT_OFF) * total;
    },
  };
}

function clearOf(feature: Feature, at: PlanPoint): boolean {
  const half = PATH_WIDTH / 2;
  switch (feature.kind) {
    case 'building':
    case 'bed':
      return !nearRing(feature.outline, at, half);
    case 'wall':
    case 'hedge':
      return distanceToPath(at, feature.path) >= half + feature.thickness / 2;
    case 'tree':
      return distance(at, feature.at) >= half + TRUNK_SHARE * feature.height;
    case 'plant':
      return distance(at, feature.at) >= half + potOf(feature).width / 2;
    case 'screen':
      return distanceToPath(at, feature.path) >= half;
    default:
      return true;
  }
}

/** The largest set of free cells joined by edges, as a mask. */
function largestPart(free: Uint8Array, columns: number, rows: number): Uint8Array {
  const part = new Int32Array(free.length);
  const stack = new Int32Array(free.length);
  let parts = 0;
  let best = 0;
  let bestSize = 0;
  for (let seed = 0; seed < free.length; seed++) {
    if (free[seed] === 0 || part[seed] !== 0) continue;
    parts += 1;
    let size = 0;
    let depth = 0;
    part[seed] = parts;
    stack[depth++] = seed;
    while (depth > 0) {
      const index = stack[--depth];
      size += 1;
      const i = index % columns;
      const j = (index - i) / columns;
      if (i > 0 && free[index - 1] === 1 && part[index - 1] === 0) part[(stack[depth++] = index - 1)] = parts;
      if (i < columns - 1 && free[index + 1] === 1 && part[index + 1] === 0) part[(stack[depth++] = index + 1)] = parts;
      if (j > 0 && free[index - columns] === 1 && part[index - columns] === 0) part[(stack[depth++] = index - columns)] = parts;
      if (j < rows - 1 && free[index + columns] === 1 && part[index + columns] === 0) part[(stack[depth++] = index + columns)] = parts;
    }
    if (size > bestSize) [best, bestSize] = [parts, size];
  }
  return Uint8Array.from(part, (each) => (each === best && best !== 0 ? 1 : 0));
}
