import { opennessOf, upBearingOf } from '../plan/defaults.ts';
import { boundsOf, openRing } from '../plan/geometry/shapes.ts';
import { pathStripes } from '../plan/geometry/stripes.ts';
import type { Feature, Plan, PlanPoint, Shelter } from '../plan/types.ts';
import { planDirection } from './direction.ts';
import { stretchesInside } from './prism.ts';

/** What slows the wind: at least so high [m], at most so open, and no farther off than this [m]. */
const LEAST_HEIGHT = 1.5;
const MOST_OPEN = 0.3;
const REACH = 10;
/** Bearings looked along, and how many of them must meet something. */
const BEARINGS = 36;
const COURT_FROM = 27;
const SHELTERED_FROM = 9;

export interface KnownShelter {
  readonly shelter: Shelter;
  /** Reckoned from what is drawn, because the plan does not say. */
  readonly guessed: boolean;
}

/**
 * How sheltered from the wind a yard is: as its plan says, else by how much of what is drawn stands round the middle of
 * the property's box: of 36 bearings, 27 closed make a court, 9 a sheltered yard.
 */
export function shelterOf(plan: Plan): KnownShelter {
  const { shelter } = plan.site;
  if (shelter !== undefined) return { shelter, guessed: false };
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const middle: PlanPoint = [(minX + maxX) / 2, (minY + maxY) / 2];
  const rings = plan.features.flatMap(windbreakRings);
  let closed = 0;
  for (let n = 0; n < BEARINGS; n++) {
    const direction = planDirection((360 / BEARINGS) * n, 0, upBearingOf(plan));
    const meets = rings.some((ring) =>
      stretchesInside(ring, [...middle, 0], direction).some(([from, to]) => to > 0 && from <= REACH),
    );
    if (meets) closed++;
  }
  return { shelter: closed >= COURT_FROM ? 'court' : closed >= SHELTERED_FROM ? 'sheltered' : 'open', guessed: true };
}

function windbreakRings(feature: Feature): readonly (readonly PlanPoint[])[] {
  if (feature.kind === 'building') return feature.height >= LEAST_HEIGHT ? [openRing(feature.outline)] : [];
  if (feature.kind !== 'wall' && feature.kind !== 'hedge') return [];
  const blocks = feature.height >= LEAST_HEIGHT && opennessOf(feature) <= MOST_OPEN;
  return blocks ? pathStripes(feature.path, feature.thickness) : [];
}
