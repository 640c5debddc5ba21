import type { Passes } from '../../engine/cast/passes.ts';
import type { Feature, Plan } from '../../engine/plan/types.ts';
import { buildScene, stateOf } from '../../engine/scene/build.ts';
import type { Scene } from '../../engine/scene/solids.ts';
import { samplesOf } from '../../engine/sun/samples.ts';

/** A made-up yard of 18 × 12 m with twelve casters of every kind, and a season of about 9,000 samples. */
export const YARD: Plan = {
  format: 'shadewright-plan',
  version: 1,
  name: 'Bench yard',
  site: {
    latitude: 37.4,
    longitude: -5.9,
    elevation: 20,
    timeZone: 'Europe/Madrid',
    upBearing: 14,
    boundary: [
      [0, 0],
      [18, 0],
      [18, 12],
      [0, 12],
    ],
  },
  season: { year: 2026, from: '06-01', to: '09-15', stepMinutes: 10 },
  climate: {
    hotAir: 35,
    heatwaveHigh: 44,
    months: [6, 7, 8, 9].map((month) => ({ month, high: 33, low: 18, sunshine: 0.9, spread: 3.5 })),
  },
  features: [
    {
      id: 'west-wall',
      kind: 'wall',
      path: [
        [0.1, 0],
        [0.1, 12],
      ],
      height: 2,
      thickness: 0.2,
    },
    {
      id: 'front-wall',
      kind: 'wall',
      path: [
        [0, 0.1],
        [7, 0.1],
        [7, 1.4],
      ],
      height: 1.2,
      thickness: 0.2,
    },
    {
      id: 'east-wall',
      kind: 'wall',
      path: [
        [17.9, 0],
        [17.9, 12],
      ],
      height: 1.8,
      thickness: 0.2,
    },
    {
      id: 'house',
      kind: 'building',
      outline: [
        [3, 8.4],
        [14, 8.4],
        [14, 12],
        [3, 12],
      ],
      height: 3.1,
      eaves: 0.5,
    },
    {
      id: 'shed',
      kind: 'building',
      outline: [
        [15.2, 0.6],
        [17.2, 0.6],
        [17.2, 2.4],
        [15.2, 2.4],
      ],
      height: 2.2,
    },
    { id: 'fig', kind: 'tree', at: [4.2, 5.1], height: 5, crownWidth: 3.8, crownBase: 1.5, openness: 0.15 },
    { id: 'pear', kind: 'tree', at: [13.6, 4.3], height: 4.2, crownWidth: 2.6, crownBase: 1.2, openness: 0.25 },
    { id: 'street-tree', kind: 'tree', at: [-2.5, 7], height: 8, crownWidth: 5, crownBase: 2.5, openness: 0.2 },
    {
      id: 'hedge',
      kind: 'hedge',
      path: [
        [8.5, 0.6],
        [13.5, 0.6],
        [13.5, 2],
      ],
      height: 1.5,
      thickness: 0.7,
    },
    {
      id: 'canopy',
      kind: 'canopy',
      center: [9, 5.2],
      length: 3,
      width: 3.6,
      turn: 14,
      height: 2.3,
      rise: 0.2,
      density: 0.6,
      drops: [{ side: 'left', depth: 1.3, density: 0.6 }],
    },
    {
      id: 'screen',
      kind: 'screen',
      path: [
        [6.4, 2.6],
        [6.4, 5.4],
      ],
      bottom: 0.3,
      height: 1.9,
      density: 0.5,
    },
    {
      id: 'lattice',
      kind: 'wall',
      path: [
        [11.6, 7.4],
        [14.4, 7.4],
      ],
      height: 1.9,
      thickness: 0.05,
      openness: 0.4,
    },
  ],
};

/** A hectare of level ground with 200 trees, a barn and a fence. */
export const HECTARE: Plan = {
  ...YARD,
  name: 'Bench hectare',
  site: {
    ...YARD.site,
    boundary: [
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ],
  },
  features: [
    ...Array.from({ length: 200 }, (_, n): Feature => ({
      id: `tree-${n}`,
      kind: 'tree',
      at: [3 + 6.7 * (n % 15) + 0.37 * (n % 7), 3 + 6.9 * Math.floor(n / 15) + 0.29 * (n % 5)],
      height: 3 + 0.4 * (n % 9),
      crownWidth: 2.4 + 0.3 * (n % 8),
      crownBase: 0.8 + 0.1 * (n % 6),
      openness: 0.1 + 0.05 * (n % 5),
    })),
    {
      id: 'barn',
      kind: 'building',
      outline: [
        [60, 94],
        [78, 94],
        [78, 99],
        [60, 99],
      ],
      height: 5,
      eaves: 0.6,
    },
    {
      id: 'fence',
      kind: 'wall',
      path: [
        [0, 0],
        [100, 0],
        [100, 100],
        [0, 100],
        [0, 0],
      ],
      height: 1.6,
      thickness: 0.1,
    },
  ],
};

export interface SeasonCase {
  readonly scene: Scene;
  readonly passes: Passes;
  readonly monthDays: readonly string[];
  /**
   * What `load` adds up: sun hours, morning and hot hours, dose, hot load, light, light of the beam. One weight a pass
   * each.
   */
  readonly channels: readonly Float64Array[];
}

/** A season over a plan as the load casts it: the same passes, as many channels. Weights are plain stand-ins. */
export function seasonOf(plan: Plan): SeasonCase {
  const scene = buildScene(plan);
  const result = samplesOf(plan, { kind: 'season' });
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join(' '));
  const { count, azimuth, altitude, dayOf, days, beam, hours } = result.samples;
  const monthDays = Array.from(dayOf, (day) => days[day].monthDay);
  const passes: Passes = {
    count,
    azimuth,
    altitude,
    state: Uint16Array.from(monthDays, (monthDay) => stateOf(scene, monthDay)),
  };
  const weight = (of: (k: number) => number) => Float64Array.from({ length: count }, (_, k) => of(k));
  const channels = [
    weight((k) => (beam[k] > 120 ? hours[k] : 0)),
    weight((k) => (beam[k] > 120 && azimuth[k] < 180 ? hours[k] : 0)),
    weight((k) => (beam[k] > 300 ? hours[k] : 0)),
    weight((k) => beam[k] * hours[k] * 0.0036),
    weight((k) => beam[k] * hours[k] * 0.0036 * Math.min(1, altitude[k] / 70)),
    weight((k) => beam[k] * hours[k] * 0.0036 * Math.sin((altitude[k] * Math.PI) / 180)),
  ];
  return { scene, passes, monthDays, channels };
}
