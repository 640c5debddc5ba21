/** Plans that `check` accepts, as hard as they come, each by its seed. */

import { CATALOGUE } from '../engine/plan/catalogue/plants.ts';
import type { Feature, Plan, PlanPoint } from '../engine/plan/types.ts';
import { YARD } from './bench/yard.ts';
import { randomPlan } from './engine/cast/random-plans.ts';
import { randomFrom } from './parts/random.ts';

/** Numbers in 0..1, those of the plan at hand. */
let random: () => number = () => 0;
const upTo = (most: number) => random() * most;
/** Mostly few, now and then very many. */
const many = (most: number) => Math.floor(most * random() ** 6);

/** What every plan has, so that every verb has something to work on. */
const TREATED: readonly Feature[] = [
  { id: 'p0', kind: 'plant', at: [2, 2], height: 1.2, spread: 0.6, plant: 'lemon', container: true },
  { id: 'roof', kind: 'canopy', center: [2, 2], length: 2, width: 2, height: 2.2, density: 0.5 },
];

/** A crowded yard of every kind of thing, with plants out of the table. */
function crowdedYard(): Plan {
  const plan = randomPlan(Math.floor(upTo(2 ** 31)));
  const planted = plan.features.map((feature) =>
    feature.kind === 'plant' || feature.kind === 'bed'
      ? { ...feature, plant: CATALOGUE[Math.floor(upTo(CATALOGUE.length))].id }
      : feature,
  );
  return { ...YARD, site: { ...YARD.site, ...plan.site }, features: [...TREATED, ...planted] };
}

/** Very many walls and trees on any ground. */
function crammedYard(): Plan {
  const [width, height] = [4 + upTo(40) + 160 * random() ** 8, 4 + upTo(40)];
  const at = (): PlanPoint => [upTo(width), upTo(height)];
  const list = (most: number, make: (k: number) => Feature) => Array.from({ length: many(most) }, (_, k) => make(k));
  const features: Feature[] = [
    ...TREATED,
    ...list(600, (k) => ({
      id: `wall-${k}`,
      kind: 'wall',
      path: [at(), at(), at()],
      height: 0.5 + upTo(3),
      thickness: 0.05 + upTo(0.3),
    })),
    ...list(600, (k) => ({
      id: `tree-${k}`,
      kind: 'tree',
      at: at(),
      height: 3 + upTo(9),
      crownWidth: 0.5 + upTo(5),
      crownBase: 1,
      openness: upTo(1),
    })),
  ];
  const boundary: PlanPoint[] = [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ];
  const options = [{ id: 'A', name: 'Moved', moves: { p0: at() } }];
  return { ...YARD, site: { ...YARD.site, boundary }, features, options };
}

interface Planted {
  readonly width: readonly [number, number];
  readonly depth: readonly [number, number];
  readonly trees: readonly [number, number];
  readonly beds: readonly [number, number];
  readonly plants: readonly [number, number];
}

/** A house, a wall round it, a few trees and beds, and pots and pots, in a place where the sun comes high or low. */
function plantedYard(sizes: Planted): Plan {
  const between = ([low, high]: readonly [number, number]) => low + upTo(high - low);
  const [width, height] = [between(sizes.width), between(sizes.depth)];
  const at = (): PlanPoint => [1 + upTo(width - 2), 1 + upTo(height - 5)];
  const known = () => CATALOGUE[Math.floor(upTo(CATALOGUE.length))].id;
  const list = (often: readonly [number, number], make: (k: number) => Feature) =>
    Array.from({ length: Math.floor(between(often)) }, (_, k) => make(k));
  const box = ([x, y]: PlanPoint, wide: number, deep: number): PlanPoint[] => [
    [x, y],
    [x + wide, y],
    [x + wide, y + deep],
    [x, y + deep],
  ];
  const boundary = box([0, 0], width, height);
  const features: Feature[] = [
    ...TREATED,
    { id: 'fence', kind: 'wall', path: [...boundary, boundary[0]], height: 1.8, thickness: 0.2 },
    { id: 'house', kind: 'building', outline: box([3, height - 4], width - 6, 3.5), height: 3, eaves: 0.4 },
    { id: 'window', kind: 'eye', path: [[width + 4, upTo(height)]], height: 1 + upTo(5) },
    ...list(sizes.trees, (k) => ({
      id: `tree-${k}`,
      kind: 'tree',
      at: at(),
      height: 3 + upTo(4),
      crownWidth: 2 + upTo(3),
      crownBase: 1,
      openness: upTo(0.4),
    })),
    ...list(sizes.beds, (k) => ({
      id: `bed-${k}`,
      kind: 'bed',
      outline: box(at(), 1 + upTo(3), 0.8),
      plantHeight: 0.2 + upTo(0.8),
      plant: known(),
    })),
    ...list(sizes.plants, (k) => ({
      id: `plant-${k}`,
      kind: 'plant',
      at: at(),
      height: 0.4 + upTo(1.2),
      spread: 0.3 + upTo(0.6),
      plant: known(),
      container: random() < 0.8,
    })),
  ];
  const options = ['A', 'B'].map((id) => ({ id, name: id, moves: { p0: at() } }));
  const latitude = random() < 0.5 ? YARD.site.latitude : upTo(110) - 55;
  return { ...YARD, ...yearAt(latitude), site: { ...YARD.site, latitude, boundary }, features, options };
}

/** A season of the summer there, and months of every kind of climate. */
function yearAt(latitude: number): Pick<Plan, 'season' | 'climate'> {
  const [mean, swing] = [14 + upTo(20), upTo(14) * Math.sign(latitude)];
  const months = Array.from({ length: 12 }, (_, k) => {
    const high = mean - swing * Math.cos((k * Math.PI) / 6);
    return { month: k + 1, high, low: high - 4 - upTo(14), humidity: upTo(100), sunshine: upTo(1), wind: upTo(8) };
  });
  const hottest = Math.max(...months.map(({ high }) => high));
  const season = latitude < 0 ? { year: 2026, from: '11-15', to: '03-15' } : YARD.season;
  const frost = random() < 0.5 ? { first: '11-20', last: '03-10', lowest: -upTo(12) } : undefined;
  return { season, climate: { hotAir: hottest - 2, heatwaveHigh: hottest + 6, months, frost } };
}

/** What a balcony or a court has, what a garden has, and what somebody has who cannot pass a nursery. */
const smallYard = () => plantedYard({ width: [8, 12], depth: [7, 10], trees: [0, 2], beds: [0, 2], plants: [0, 5] });
const middleYard = () => plantedYard({ width: [10, 18], depth: [9, 14], trees: [1, 4], beds: [1, 4], plants: [5, 16] });
const fullYard = () => plantedYard({ width: [12, 30], depth: [10, 22], trees: [1, 7], beds: [2, 8], plants: [10, 70] });

const YARDS = {
  small: smallYard,
  middle: middleYard,
  full: fullYard,
  crowded: crowdedYard,
  crammed: crammedYard,
};

export type YardName = keyof typeof YARDS;
export const YARD_NAMES = Object.keys(YARDS) as YardName[];

export function hardPlan(yard: YardName, seed: number): Plan {
  random = randomFrom(seed);
  return YARDS[yard]();
}

/** What a plan holds, in a line: "12 plants, 3 beds, 2 trees". */
export function holds({ features, options }: Plan): string {
  const counts = new Map<string, number>();
  for (const { kind } of features) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts, ['option', options?.length ?? 0] as const].map(([kind, count]) => `${count} ${kind}`).join(', ');
}
