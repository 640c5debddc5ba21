/** Yards and frames for the tests of this folder. */

import fc from 'fast-check';
import { sheetOf } from '../../../engine/frame/sheet.ts';
import type { BuildSheet } from '../../../engine/frame/types.ts';
import type { Canopy, Cloth, Feature, Plan, Screen } from '../../../engine/plan/types.ts';

/** Of the frames that are drawn at random. */
export const SEED = 5150;
export const RUNS = { seed: SEED, numRuns: 30 };

/** A house along one side, a wall along another, room for a frame between. */
export function yardWith(features: readonly Feature[], more: Partial<Plan> = {}): Plan {
  return {
    format: 'shadewright-plan',
    version: 1,
    site: {
      latitude: 36.2,
      longitude: -5.9,
      timeZone: 'Europe/Madrid',
      boundary: [
        [0, 0],
        [24, 0],
        [24, 18],
        [0, 18],
      ],
    },
    season: { year: 2026, from: '06-01', to: '09-01' },
    climate: { hotAir: 35, heatwaveHigh: 43, gust: 21, months: [] },
    features: [
      {
        id: 'house',
        kind: 'building',
        name: 'House',
        outline: [
          [0, 14],
          [24, 14],
          [24, 18],
          [0, 18],
        ],
        height: 3.1,
      },
      {
        id: 'wall',
        kind: 'wall',
        name: 'Garden wall',
        path: [
          [0, 0],
          [24, 0],
        ],
        height: 1.9,
        thickness: 0.2,
      },
      ...features,
    ],
    stock: {
      tubes: [{ id: 'long', name: 'tube of one length', outside: 0.038, wall: 0.0015, length: 6, price: 27.5 }],
    },
    ...more,
  };
}

export function built(thing: Cloth, more: Partial<Plan> = {}): BuildSheet {
  const result = sheetOf(yardWith([thing], more), thing.id);
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join(' '));
  return result.sheet;
}

export const roof: Canopy = {
  id: 'roof',
  kind: 'canopy',
  name: 'Roof',
  center: [9, 7],
  length: 3.4,
  width: 2.7,
  turn: 25,
  height: 2.3,
  density: 0.55,
  frame: { soil: 'garden' },
};
export const screen: Screen = {
  id: 'screen',
  kind: 'screen',
  path: [
    [4, 3],
    [4, 6.2],
    [7.1, 6.2],
  ],
  bottom: 0.3,
  height: 1.9,
  density: 0.6,
  frame: { soil: 'garden' },
};

const frame = fc.record(
  {
    bottomRails: fc.boolean(),
    braces: fc.boolean(),
    maxBay: fc.constantFrom(1.2, 2, 2.5, 3.048),
    takeOff: fc.constantFrom(0, 0.012, 0.04),
    anchor: fc.constantFrom('footing', 'sunk', 'stakes', 'augers', 'ballast'),
    soil: fc.constantFrom('garden', 'hard', 'loose', 'wet', 'paving', 'wheels'),
    // One length for sale most of the time: three make the cut list slow to prove.
    tube: fc.constantFrom('long', 'long', 'long', 'steel-42', 'scaffold-48'),
    gust: fc.constantFrom(12, 20, 33),
  },
  { requiredKeys: ['maxBay', 'tube'] },
);
const millimetres = (min: number, max: number) =>
  fc.integer({ min: min * 1000, max: max * 1000 }).map((value) => value / 1000);

export const anyCanopy: fc.Arbitrary<Canopy> = fc.record(
  {
    id: fc.constant('roof'),
    kind: fc.constant('canopy' as const),
    center: fc.tuple(millimetres(7, 15), millimetres(6, 8)),
    length: millimetres(1.2, 5.5),
    width: millimetres(1.2, 5.5),
    turn: fc.integer({ min: -180, max: 180 }),
    height: millimetres(1.9, 2.9),
    rise: fc.constantFrom(-0.4, 0.09, 0.6),
    density: fc.constantFrom(0.3, 0.5, 0.8),
    drops: fc.uniqueArray(
      fc.record({
        side: fc.constantFrom('left' as const, 'right' as const, 'front' as const, 'back' as const),
        depth: fc.constantFrom(0.6, 1.2),
        density: fc.constantFrom(0.5, 0.7),
      }),
      { maxLength: 3, selector: (drop) => drop.side },
    ),
    frame,
  },
  { requiredKeys: ['id', 'kind', 'center', 'length', 'width', 'height', 'density', 'frame'] },
);

const anyScreen: fc.Arbitrary<Screen> = fc.record(
  {
    id: fc.constant('screen'),
    kind: fc.constant('screen' as const),
    path: fc.constantFrom(
      [
        [3, 3],
        [3, 7.4],
      ] as const,
      [
        [3, 3],
        [6.2, 3],
        [6.2, 8],
      ] as const,
      [
        [4, 4],
        [9, 5],
        [9, 9],
        [4, 4],
      ] as const,
      [
        [2, 2],
        [5, 3],
        [8, 3.1],
      ] as const,
    ),
    bottom: fc.constantFrom(0, 0.25),
    height: millimetres(1.2, 2.4),
    density: fc.constantFrom(0.5, 0.7),
    frame,
  },
  { requiredKeys: ['id', 'kind', 'path', 'height', 'density', 'frame'] },
);

export const anyFrame: fc.Arbitrary<Cloth> = fc.oneof(
  { weight: 3, arbitrary: anyCanopy },
  { weight: 1, arbitrary: anyScreen },
);
