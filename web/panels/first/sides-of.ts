import type { Building, Feature, How, Knowledge, PlanPoint, Wall } from '../../../engine/index.ts';
import type { Answers, Shape } from './answers.ts';
import { guess, USUAL } from './usual.ts';

export interface Ground {
  readonly across: number;
  readonly deep: number;
  readonly how: Knowledge | undefined;
}

/** The corners of the ground, and of the lines in the middle of walls along its edges. [m] */
interface Edges {
  readonly across: number;
  readonly deep: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

interface Drawn {
  readonly id: string;
  readonly name: string;
  readonly points: readonly PlanPoint[];
}

type Sides = Readonly<Record<'houses' | 'walls', readonly Drawn[]>>;

/**
 * Houses beside the ground, and walls along the edges that none stands on. A wall's middle lies half its thickness
 * inside, so its outer face is the edge.
 * @param height Of the walls; 0 is none. [m]
 */
export function sidesOf(
  { shape, floors }: Pick<Answers, 'shape' | 'floors'>,
  { across, deep }: Ground,
  height: number,
  heightGuessed: boolean,
): Feature[] {
  const half = USUAL.wallThickness / 2;
  const edges = { across, deep, left: half, right: across - half, bottom: half, top: deep - half };
  const { houses, walls } = SIDES[shape](edges);
  const how: How = { thickness: guess(0.05), ...(heightGuessed && { height: guess(0.2 * height) }) };
  return [
    ...houses.map(({ id, name, points }): Building => ({
      id,
      kind: 'building',
      name,
      outline: points,
      height: USUAL.houseHeight + (floors - 1) * USUAL.floorHeight,
      how: { height: guess(0.8 * floors) },
    })),
    ...(height === 0 ? [] : walls).map(({ id, name, points }): Wall => ({
      id,
      kind: 'wall',
      name,
      path: points,
      height,
      thickness: USUAL.wallThickness,
      how,
    })),
  ];
}

const HOUSE = { id: 'house', name: 'House' } as const;
const D = USUAL.houseDepth;

const SIDES: Readonly<Record<Shape, (edges: Edges) => Sides>> = {
  walled: ({ left, right, bottom, top }) => ({
    houses: [],
    walls: [
      {
        id: 'walls',
        name: 'Garden wall',
        points: [
          [left, bottom],
          [right, bottom],
          [right, top],
          [left, top],
          [left, bottom],
        ],
      },
    ],
  }),
  front: ({ across, deep, left, right, bottom }) => ({
    houses: [{ ...HOUSE, points: boxOf(0, deep, across, deep + D) }],
    walls: [
      {
        id: 'walls',
        name: 'Garden wall',
        points: [
          [left, deep],
          [left, bottom],
          [right, bottom],
          [right, deep],
        ],
      },
    ],
  }),
  corner: ({ across, deep, right, bottom }) => ({
    houses: [
      {
        ...HOUSE,
        points: [
          [-D, 0],
          [0, 0],
          [0, deep],
          [across, deep],
          [across, deep + D],
          [-D, deep + D],
        ],
      },
    ],
    walls: [
      {
        id: 'walls',
        name: 'Garden wall',
        points: [
          [0, bottom],
          [right, bottom],
          [right, deep],
        ],
      },
    ],
  }),
  passage: ({ across, deep, bottom, top }) => ({
    houses: [
      { id: 'left-house', name: 'House on the left', points: boxOf(-D, 0, 0, deep) },
      { id: 'right-house', name: 'House on the right', points: boxOf(across, 0, across + D, deep) },
    ],
    walls: [
      { id: 'lower-wall', name: 'Wall at the bottom of the sheet', points: levelAt(bottom, across) },
      { id: 'upper-wall', name: 'Wall at the top of the sheet', points: levelAt(top, across) },
    ],
  }),
};

function boxOf(x0: number, y0: number, x1: number, y1: number): PlanPoint[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

function levelAt(y: number, across: number): PlanPoint[] {
  return [
    [0, y],
    [across, y],
  ];
}
