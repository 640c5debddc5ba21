/** Where a pot may stand, and why not where it may not. */

import { joinedCells } from '../../cast/grids/joined-cells.ts';
import { eavesOf, potOf } from '../../plan/defaults.ts';
import { PATH_WIDTH } from '../../plan/geometry/gates.ts';
import {
  boundsOf,
  distance,
  distanceToPath,
  openRing,
  pointInRing,
  distanceToEdge,
} from '../../plan/geometry/shapes.ts';
import { trunkRadius } from '../../plan/geometry/trunk.ts';
import type { Building, Feature, Plan, PlanPoint, Plant } from '../../plan/types.ts';
import { formatDistance, formatLength } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { namedInside } from '../../plan/words/names.ts';
import { walksIn } from './way-round.ts';

/** The water of an eaves' edge falls in a band this wide to both sides. Our choice. [m] */
const DRIP = 0.2;
/** Ground is walked over in steps of this. [m] */
const STEP = 0.25;
/** Farther from where somebody can walk nobody sets down a pot or waters it, measured from its rim. [m] */
const REACH = 0.8;
/** So much of the ground may be cut off behind a pot before it is in the way: corners nobody walks into. */
const CUT_OFF = 0.05;

export interface PotGround {
  /**
   * Why the pot cannot stand with its middle here, as a clause ("it would stand in the bed …"); `null` where it can.
   */
  reasonAt(at: PlanPoint): string | null;
}

/** Lays out where a plant's pot may stand: what is drawn, the hose, and a way past it 0.9 m wide. */
export function potGround(plan: Plan, plant: Plant): PotGround {
  const units = unitsOf(plan);
  const radius = potOf(plant).width / 2;
  const others = plan.features.filter(({ id }) => id !== plant.id);
  const boundary = openRing(plan.site.boundary);
  const walk = walkableOf(plan, others);
  return {
    reasonAt(at) {
      if (!pointInRing(at, boundary) || distanceToEdge(at, boundary) < radius)
        return 'it would stand outside the property';
      for (const feature of others) {
        const reason = reasonBy(feature, plant, radius, at);
        if (reason !== null) return `${reason} ${namedInside(plan, feature.id)}`;
      }
      const { tap, hose } = plan.site;
      if (tap !== undefined && hose !== undefined && distance(tap, at) > hose)
        return `the hose of ${formatDistance(hose, units)} does not reach it`;
      if (!walk.isWithin(at, radius + REACH)) return 'nobody could reach it';
      return walk.staysOpen(at, radius)
        ? null
        : `it would leave no path ${formatLength(PATH_WIDTH, units)} wide past it`;
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
      if (distance(at, feature.at) < radius + trunkRadius(feature.height)) return 'it would stand in the trunk of';
      return distance(at, feature.at) < feature.crownWidth / 2 && plant.height > feature.crownBase
        ? 'its top would be in the crown of'
        : null;
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
  const eaves = eavesOf(building);
  const ring = openRing(building.outline);
  return eaves > 0 && Math.abs(distanceToEdge(at, ring) - eaves) < DRIP;
}

/** The ground on which a person can walk between what stands, and whether it hangs together with one pot more. */
function walkableOf(
  plan: Plan,
  others: readonly Feature[],
): {
  staysOpen(at: PlanPoint, radius: number): boolean;
  /** Whether somebody can stand so near to a place; anywhere, where there is no room to walk at all. */
  isWithin(at: PlanPoint, reach: number): boolean;
} {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const boundary = openRing(plan.site.boundary);
  const columns = Math.ceil((maxX - minX) / STEP);
  const rows = Math.ceil((maxY - minY) / STEP);
  const centre = (index: number): PlanPoint => [
    minX + ((index % columns) + 0.5) * STEP,
    minY + (Math.floor(index / columns) + 0.5) * STEP,
  ];
  const free = Uint8Array.from({ length: columns * rows }, (_, index) =>
    pointInRing(centre(index), boundary) && others.every((feature) => clearOf(feature, centre(index))) ? 1 : 0,
  );
  const parts = joinedCells(columns, rows);
  const main = parts.largest(free);
  const left = new Uint8Array(main.length);
  const walked = [...free.keys()].filter((index) => free[index] === 1).map(centre);
  return {
    isWithin: (at, reach) =>
      walked.length === 0 ||
      walked.some((from) => distance(at, from) <= reach && walksIn(plan).inTheWay(from, at).length === 0),
    staysOpen(at, radius) {
      const reach = radius + PATH_WIDTH / 2;
      left.set(main);
      const [firstRow, lastRow] = [at[1] - reach, at[1] + reach].map((y) =>
        Math.min(rows - 1, Math.max(0, Math.floor((y - minY) / STEP))),
      );
      for (let index = firstRow * columns; index < (lastRow + 1) * columns; index++)
        if (distance(at, centre(index)) < reach) left[index] = 0;
      return parts.hangsTogether(left, 1 - CUT_OFF);
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
      return distance(at, feature.at) >= half + trunkRadius(feature.height);
    case 'plant':
      return distance(at, feature.at) >= half + potOf(feature).width / 2;
    case 'screen':
      return distanceToPath(at, feature.path) >= half;
    default:
      return true;
  }
}
