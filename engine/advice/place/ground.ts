/** Where a pot may stand, and why not where it may not. */

import { eavesOf, potOf } from '../../plan/defaults.ts';
import { PATH_WIDTH } from '../../plan/geometry/gates.ts';
import { distance, distanceToPath, openRing, pointInRing, distanceToEdge } from '../../plan/geometry/shapes.ts';
import { trunkRadius } from '../../plan/geometry/trunk.ts';
import type { Building, Feature, Plan, PlanPoint, Plant } from '../../plan/types.ts';
import { formatDistance, formatLength } from '../../plan/units/shown.ts';
import { unitsOf } from '../../plan/units/units.ts';
import { namedInside } from '../../plan/words/names.ts';
import { type Walkable, walkableOf } from './walkable.ts';
import { walksIn } from './way-round.ts';

/** The water of an eaves' edge falls in a band this wide to both sides. Our choice. [m] */
const DRIP = 0.2;
/** Who carries a can past a pot, on ground looked at in steps of a quarter of a metre. [m] */
const WITH_A_CAN = { step: 0.25, half: PATH_WIDTH / 2 };
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
  const walk = walkableOf(plan, others, WITH_A_CAN);
  const { inTheWay } = walksIn(plan);
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
      const isReached = (from: PlanPoint) => distance(at, from) <= radius + REACH && inTheWay(from, at).length === 0;
      if (walk.walked.length > 0 && !walk.walked.some(isReached)) return 'nobody could reach it';
      return staysOpen(walk, at, radius)
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

function staysOpen({ main, left }: Walkable, [x, y]: PlanPoint, radius: number): boolean {
  const reach = radius + WITH_A_CAN.half;
  const box = { minX: x - reach, minY: y - reach, maxX: x + reach, maxY: y + reach };
  return left(main, box, (centre) => distance([x, y], centre) < reach).hangsTogether(1 - CUT_OFF);
}
