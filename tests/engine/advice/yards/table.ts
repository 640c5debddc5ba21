import type { Feature, Plan, PlanPoint, Plant } from '../../../../engine/plan/types.ts';
import { wall } from '../../../parts/drawn.ts';
import { yardPlan } from '../../load/yard-plan.ts';

/** What a yard calls for: no cloth; or cloth of a density between two, in a role's first answer. */
type Advice =
  | { readonly cloth: 'none'; readonly because: RegExp }
  | { readonly cloth: readonly [least: number, most: number] };

/** A short yard, the advice that it calls for, why, and who says so. */
export interface Yard {
  readonly name: string;
  readonly plan: Plan;
  readonly advice: Advice;
  readonly source: string;
}

const CENTRE: PlanPoint = [3.1, 3.05];
const MONTHS = [{ month: 6, high: 40, low: 23, humidity: 15, wind: 2, spread: 2.5 }];
const CP = 'common practice, no source';

/** Across the yard, close behind what stands in its middle. */
export const WHITE = wall(
  'white',
  [
    [0, 4],
    [6, 4],
  ],
  { height: 2.6, colour: 'white' },
);

/** One small hot yard of 6 × 6 m. */
export function yard(
  features: readonly Feature[],
  change: { readonly high?: number; readonly heatwave?: number } = {},
): Plan {
  const { high = 40, heatwave = 46 } = change;
  const plan = yardPlan(features, {
    season: { year: 2026, from: '06-20', to: '06-21', stepMinutes: 60 },
    climate: {
      hotAir: 35,
      heatwaveHigh: heatwave,
      turbidity: 3,
      months: MONTHS.map((month) => ({ ...month, high })),
    },
  });
  const boundary: PlanPoint[] = [
    [0, 0],
    [6, 0],
    [6, 6],
    [0, 6],
  ];
  return { ...plan, site: { ...plan.site, boundary } };
}

export function plant(kind: string, more: Partial<Plant> = {}): Plant {
  return { id: kind, kind: 'plant', at: CENTRE, height: 1, spread: 0.8, plant: kind, ...more };
}

export function bed(kind: string, x = 2.2, plantHeight = 0.3): Feature {
  return {
    id: `${kind}-bed`,
    kind: 'bed',
    plant: kind,
    plantHeight,
    outline: [
      [x, 2.5],
      [x + 1.5, 2.5],
      [x + 1.5, 3.5],
      [x, 3.5],
    ],
  };
}

/** Walls so high and near that hardly any sky is left. */
export function deepShade(): Feature[] {
  const side = (id: string, path: PlanPoint[]): Feature => ({ id, kind: 'wall', path, height: 9, thickness: 0.2 });
  return [
    side('south', [
      [1, 2],
      [5, 2],
    ]),
    side('north', [
      [1, 4],
      [5, 4],
    ]),
    side('west', [
      [1.2, 2],
      [1.2, 4],
    ]),
    side('east', [
      [4.8, 2],
      [4.8, 4],
    ]),
  ];
}

const wants = (kind: string, range: readonly [number, number], source: string, more: Partial<Plant> = {}): Yard => ({
  name: `${kind} alone in the open`,
  plan: yard([plant(kind, more)]),
  advice: { cloth: range },
  source,
});

const wantsBed = (kind: string, range: readonly [number, number], source: string, plantHeight?: number): Yard => ({
  name: `a bed of ${kind} in the open`,
  plan: yard([bed(kind, undefined, plantHeight)]),
  advice: { cloth: range },
  source,
});

const hardy = (kind: string, source: string): Yard => ({
  name: `${kind} in the open`,
  plan: yard([plant(kind)]),
  advice: { cloth: 'none', because: /no shade|no plant is harmed/ },
  source,
});

const established = (kind: string, source: string): Yard => ({
  name: `an old ${kind} in the open`,
  plan: yard([plant(kind, { planted: '2010' })], { high: 37, heatwave: 43 }),
  advice: { cloth: 'none', because: /no shade|no plant is harmed/ },
  source,
});

const tooDark = (kind: string): Yard => ({
  name: `${kind} between high walls`,
  plan: yard([...deepShade(), plant(kind, { height: 0.5, spread: 0.4 })]),
  advice: { cloth: 'none', because: /too dark|no plant is harmed|No cloth/ },
  source:
    'Daily light of Torres & Lopez (2010), Purdue Extension HO-238-W, from memory: cloth never over what is short',
});

export const YARDS: readonly Yard[] = [
  // Fruiting vegetables: 30 (20 to 40) %. Morris (extension, Mojave): no denser than 30 to 40 %.
  wants('tomato', [0.3, 0.4], 'Morris, retired University of Nevada extension: no denser than 30 to 40 %'),
  wants('pepper', [0.3, 0.4], 'Ernest, University of Delaware, Weekly Crop Update: 30 % over bell peppers'),
  wants('cucumber', [0.3, 0.4], 'Morris, as for tomato'),
  wantsBed('bean', [0.3, 0.4], CP),
  wantsBed('squash', [0.3, 0.4], CP),
  wantsBed('strawberry', [0.3, 0.4], CP),
  wantsBed('basil', [0.3, 0.4], 'Morris: herbs 30 to 40 %'),
  // Leaves: 40 to 60 %.
  wantsBed(
    'lettuce',
    [0.3, 0.6],
    'common practice: leafy greens 40 to 50 (up to 60) %, thinner where that does as much',
  ),
  wantsBed('spinach', [0.3, 0.6], 'as lettuce'),
  wantsBed('cilantro', [0.3, 0.6], 'as lettuce'),
  wantsBed('parsley', [0.3, 0.5], CP),
  wantsBed('chard', [0.3, 0.5], CP),
  // Young citrus and potted fruit: 30 to 50 %. Vincent (UF/IFAS): 50 and 70 % less good than 30.
  wants('orange', [0.3, 0.5], 'UF/IFAS, Vincent: 30 % over young citrus, 70 % less good', { planted: '2026' }),
  wants('lemon', [0.3, 0.5], 'University of Arizona Cooperative Extension AZ1222; UF/IFAS, Vincent', {
    planted: '2026',
  }),
  wants('avocado', [0.3, 0.5], 'UC ANR, Faber (2020): young trees', { planted: '2026' }),
  wants('fig', [0.3, 0.3], 'UF/IFAS EDIS: sun; thin cloth while young', { planted: '2026' }),
  wants('peach', [0.3, 0.3], 'UC ANR home orchard pages: thin cloth while young', { planted: '2026' }),
  wants('apple', [0.3, 0.3], 'Schrader, Zhang & Duplaga (2001): fruit sunburn; nets of 20 to 30 %'),
  wants('raspberry', [0.3, 0.6], 'Renquist, Hughes & Rogoyski (1989): solar injury of raspberry fruit'),
  wants('blueberry', [0.3, 0.5], 'Yang, Bryla & Strik (2019): critical temperatures of the fruit'),
  // Flowers and shrubs.
  wants('hydrangea', [0.3, 0.7], 'common practice: shade ornamentals 50 to 70 %'),
  wants('camellia', [0.3, 0.7], 'common practice: shade ornamentals 50 to 70 %'),
  wants('gardenia', [0.3, 0.6], CP),
  wants('fern', [0.3, 0.8], 'Faust (2001): shade plants'),
  wants('rose', [0.3, 0.6], 'common practice: roses in desert heat 40 to 60 %'),
  wants('hibiscus', [0.3, 0.4], CP),
  // What stands in full sun everywhere.
  hardy('olive', 'UC ANR home orchard pages: full sun'),
  hardy('rosemary', CP),
  hardy('okra', CP),
  hardy('cowpea', CP),
  hardy('bougainvillea', CP),
  hardy('oleander', CP),
  // Shade only while young.
  established('orange', 'University of Arizona: established citrus takes full sun'),
  established('fig', 'UF/IFAS EDIS: full sun once established'),
  established('peach', 'UC ANR home orchard pages'),
  // Too dark already: more light, never cloth.
  tooDark('thyme'),
  tooDark('tomato'),
  // Together: cloth for the one that wants it, and no denser than suits the other.
  {
    name: 'lettuce beside an olive',
    plan: yard([bed('lettuce', 3.2), plant('olive', { at: [1.6, 3] })]),
    advice: { cloth: [0.3, 0.6] },
    source: 'both above',
  },
  {
    name: 'lettuce beside tomatoes: one cloth over both is no denser than tomatoes bear',
    plan: yard([bed('lettuce', 3.1), bed('tomato', 1.6, 0.5)]),
    advice: { cloth: [0.3, 0.6] },
    source: 'both above',
  },
  {
    name: 'nobody grows anything',
    plan: yard([]),
    advice: { cloth: 'none', because: /no plant is harmed/ },
    source: 'nothing to shade',
  },
];
