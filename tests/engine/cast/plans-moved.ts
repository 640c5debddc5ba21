import { turnOf, upBearingOf } from '../../../engine/plan/defaults.ts';
import type { DropSide, Feature, Plan, PlanPoint } from '../../../engine/plan/types.ts';

/**
 * The same yard with every coordinate and `turn` turned clockwise about the origin and `upBearing` lowered by as much.
 * [°]
 */
export function turnedPlan(plan: Plan, turn: number): Plan {
  const point = (at: PlanPoint) => turnedPoint(at, turn);
  const features = plan.features.map((feature) =>
    mapped(
      feature,
      point,
      (canopyTurn) => canopyTurn + turn,
      (side) => side,
    ),
  );
  return { ...plan, site: { ...plan.site, upBearing: upBearingOf(plan) - turn }, features };
}

export function turnedPoint([x, y]: PlanPoint, turn: number): PlanPoint {
  const sin = Math.sin((turn * Math.PI) / 180);
  const cos = Math.cos((turn * Math.PI) / 180);
  return [x * cos + y * sin, y * cos - x * sin];
}

/**
 * The same yard on the other side of the equator: north and south change places, y becomes −y. A sun at azimuth A
 * stands at 180 − A.
 */
export function mirroredPlan(plan: Plan): Plan {
  const swap: Record<DropSide, DropSide> = { front: 'front', back: 'back', left: 'right', right: 'left' };
  const features = plan.features.map((feature) =>
    mapped(
      feature,
      ([x, y]) => [x, -y],
      (turn) => 180 - turn,
      (side) => swap[side],
    ),
  );
  const skyline = plan.site.skyline?.map(({ azimuth, altitude }) => ({ azimuth: (540 - azimuth) % 360, altitude }));
  return { ...plan, site: { ...plan.site, upBearing: -upBearingOf(plan), skyline }, features };
}

function mapped(
  feature: Feature,
  point: (at: PlanPoint) => PlanPoint,
  turn: (turn: number) => number,
  side: (side: DropSide) => DropSide,
): Feature {
  switch (feature.kind) {
    case 'wall':
    case 'hedge':
    case 'screen':
      return { ...feature, path: feature.path.map(point) };
    case 'building':
    case 'bed':
      return { ...feature, outline: feature.outline.map(point) };
    case 'tree':
    case 'plant':
      return { ...feature, at: point(feature.at) };
    case 'canopy':
      return {
        ...feature,
        center: point(feature.center),
        turn: turn(turnOf(feature)),
        drops: feature.drops?.map((drop) => ({ ...drop, side: side(drop.side) })),
      };
    default:
      return feature;
  }
}
