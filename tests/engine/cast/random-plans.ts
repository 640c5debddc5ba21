import type { Canopy, Drop, Feature, Plan, PlanPoint, YearlySpan } from '../../../engine/plan/types.ts';
import { randomFrom, drawnBetween, drawnChance } from '../../parts/random.ts';

/** A yard about the origin with no feature yet. */
export function emptyPlan(features: readonly Feature[] = [], upBearing = 0): Plan {
  return {
    format: 'shadewright-plan',
    version: 1,
    site: {
      latitude: 36.2,
      longitude: -5.1,
      timeZone: 'Europe/Madrid',
      upBearing,
      boundary: [
        [-9, -7],
        [9, -7],
        [9, 7],
        [-9, 7],
      ],
    },
    season: { year: 2026, from: '05-20', to: '09-10' },
    climate: { hotAir: 34, heatwaveHigh: 43, months: [] },
    features,
  };
}

/**
 * A crowded yard of every kind of caster, about 18 × 14 m around the origin, crossing and overlapping freely: concave
 * houses with eaves, bent and closed walls and hedges, sloped cloth with drops, screens, crowns of all three shapes,
 * plants and concave beds.
 * Half of the plans stand on a 0.1 m lattice, as people draw; the rest anywhere.
 */
export function randomPlan(seed: number): Plan {
  const random = randomFrom(seed);
  const lattice = random() < 0.5 ? 0.1 : 0;
  const between = drawnBetween(random);
  const snap = (value: number) => (lattice > 0 ? Math.round(value / lattice) * lattice : value);
  const length = (low: number, high: number) => snap(between(low, high));
  const chance = drawnChance(random);
  const pick = <T>(items: readonly T[]): T => items[Math.floor(random() * items.length)];
  const spot = (): PlanPoint => [length(-10, 10), length(-8, 8)];
  const span = (): YearlySpan =>
    pick([
      { from: '06-01', to: '09-15' },
      { from: '11-20', to: '03-05' },
      { from: '04-10', to: '07-02' },
    ]);

  const path = (corners: number): PlanPoint[] => {
    const points = [spot()];
    while (points.length < corners) {
      const [x, y] = points[points.length - 1];
      const [dx, dy]: PlanPoint = chance(0.5)
        ? [length(-6, 6), length(-6, 6)]
        : chance(0.5)
          ? [length(-6, 6), 0]
          : [0, length(-6, 6)];
      if (Math.hypot(dx, dy) > 0.3) points.push([snap(x + dx), snap(y + dy)]);
    }
    return chance(0.35) && corners > 2 ? [...points, points[0]] : points;
  };
  const house = (): PlanPoint[] => {
    const [x, y] = spot();
    const width = length(2, 6);
    const depth = length(2, 5);
    const notchX = snap(x + between(0.3, 0.7) * width);
    const notchY = snap(y + between(0.3, 0.7) * depth);
    const [right, top] = [snap(x + width), snap(y + depth)];
    const shape: PlanPoint[] = pick<PlanPoint[]>([
      [
        [x, y],
        [right, y],
        [right, top],
        [x, top],
      ],
      [
        [x, y],
        [right, y],
        [right, notchY],
        [notchX, notchY],
        [notchX, top],
        [x, top],
      ],
      [
        [x, y],
        [right, y],
        [right, top],
        [notchX, notchY],
        [x, top],
      ],
      [
        [x, y],
        [notchX, notchY],
        [right, y],
        [right, top],
        [notchX, snap(top + 0.7)],
        [x, top],
      ],
    ]);
    return chance(0.5) ? shape : [...shape].reverse();
  };
  const drops = (deepest: number): Drop[] =>
    (['front', 'back', 'left', 'right'] as const)
      .filter(() => chance(0.35))
      .map((side) => ({ side, depth: between(0.3, deepest), density: between(0.1, 1) }));
  const canopy = (id: string): Canopy => {
    const height = length(1.8, 3);
    const rise = chance(0.5) ? 0 : between(-0.8, 1.2);
    return {
      id,
      kind: 'canopy',
      center: spot(),
      length: length(1, 5),
      width: length(1, 5),
      turn: chance(0.4) ? pick([0, 90, 180, 45]) : between(0, 360),
      height,
      rise,
      density: pick([0.3, 0.5, 0.8, 1]),
      drops: drops(Math.min(height, height + rise) - 0.1),
      ...(chance(0.3) ? { measuredDensity: 0.63 } : {}),
      ...(chance(0.4) ? { up: span() } : {}),
    };
  };

  const feature = (index: number): Feature => {
    const id = `f${index}`;
    switch (pick(['wall', 'hedge', 'building', 'tree', 'canopy', 'screen', 'plant', 'bed'] as const)) {
      case 'wall':
        return {
          id,
          kind: 'wall',
          path: path(2 + Math.floor(random() * 4)),
          height: length(0.5, 3),
          thickness: pick([0.1, 0.2, 0.3]),
          openness: chance(0.7) ? 0 : 0.4,
        };
      case 'hedge':
        return {
          id,
          kind: 'hedge',
          path: path(2 + Math.floor(random() * 4)),
          height: length(0.4, 2.5),
          thickness: pick([0.4, 0.7, 1.1]),
          ...(chance(0.5) ? { openness: 0.3 } : {}),
        };
      case 'building':
        return {
          id,
          kind: 'building',
          outline: house(),
          height: length(2.2, 5),
          ...(chance(0.6) ? { eaves: length(0.2, 0.8) } : {}),
        };
      case 'tree': {
        const height = length(2, 8);
        return {
          id,
          kind: 'tree',
          at: spot(),
          height,
          crownWidth: length(1, 5),
          crownBase: height * between(0, 0.6),
          shape: pick(['round', 'cone', 'column'] as const),
          openness: pick([0, 0.1, 0.25, 0.6]),
          ...(chance(0.4) ? { leafless: { ...span(), openness: 0.75 } } : {}),
        };
      }
      case 'canopy':
        return canopy(id);
      case 'plant':
        return {
          id,
          kind: 'plant',
          at: spot(),
          height: length(0.7, 2.8),
          spread: length(0.4, 2.5),
          foliageFrom: between(0, 0.4),
          openness: pick([0, 0.15, 0.5]),
        };
      case 'bed':
        return { id, kind: 'bed', outline: house(), plantHeight: length(0.6, 2.4), openness: pick([0, 0.15, 0.5]) };
      case 'screen':
        return {
          id,
          kind: 'screen',
          path: path(2 + Math.floor(random() * 3)),
          bottom: length(0, 0.6),
          height: length(0.8, 2.6),
          density: pick([0.4, 0.7, 1]),
          ...(chance(0.3) ? { up: span() } : {}),
        };
    }
  };
  const count = 3 + Math.floor(random() * 8);
  const skyline = chance(0.4)
    ? [
        { azimuth: 20, altitude: 2 },
        { azimuth: 150, altitude: 7 },
        { azimuth: 260, altitude: 4 },
      ]
    : undefined;
  const plan = emptyPlan(
    Array.from({ length: count }, (_, index) => feature(index)),
    chance(0.5) ? 0 : between(-180, 180),
  );
  return { ...plan, site: { ...plan.site, skyline } };
}
