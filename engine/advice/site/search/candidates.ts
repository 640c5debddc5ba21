import { withoutNoise } from '../../../plan/numbers/rounding.ts';
import type { Canopy, Drop, DropSide, Screen } from '../../../plan/types.ts';
import { nodeOf, type TurnedLattice } from './turned-lattice.ts';

/** A roof of a × b cells whose lower left node is (i, j); level. */
export interface RoofPlace {
  readonly i: number;
  readonly j: number;
  readonly a: number;
  readonly b: number;
  /** [m] */
  readonly height: number;
}

/** Cloth that hangs upright over a line of the lattice: along u at node line v = `line`, or along v at u = `line`. */
export interface CurtainPlace {
  readonly along: 'u' | 'v';
  readonly line: number;
  readonly from: number;
  readonly cells: number;
  /** [m] */
  readonly bottom: number;
  readonly top: number;
}

const TRIED_ID = 'tried cloth';

/** The roof as a canopy whose length is its longer side; a square one keeps the lattice's turn. */
export function roofOf(
  lattice: TurnedLattice,
  { i, j, a, b, height }: RoofPlace,
  density: number,
  drops: readonly Drop[] = [],
): Canopy {
  const { step, turn } = lattice;
  const common = {
    id: TRIED_ID,
    kind: 'canopy',
    center: nodeOf(lattice, i + a / 2, j + b / 2),
    height,
    density,
  } as const;
  const [across, along] = [withoutNoise(a * step), withoutNoise(b * step)];
  const hung = (turned: boolean) =>
    drops.length === 0
      ? {}
      : { drops: turned ? drops.map((drop) => ({ ...drop, side: AFTER_A_QUARTER[drop.side] })) : drops };
  if (across <= along) return { ...common, length: along, width: across, turn, ...hung(false) };
  return { ...common, length: across, width: along, turn: turn + 90, ...hung(true) };
}

/** What a side is called once the canopy's front is what was its right. */
const AFTER_A_QUARTER: Readonly<Record<DropSide, DropSide>> = {
  right: 'front',
  left: 'back',
  front: 'left',
  back: 'right',
};

export function screenOf(
  lattice: TurnedLattice,
  { along, line, from, cells, bottom, top }: CurtainPlace,
  density: number,
): Screen {
  const ends =
    along === 'u'
      ? ([
          [from, line],
          [from + cells, line],
        ] as const)
      : ([
          [line, from],
          [line, from + cells],
        ] as const);
  return {
    id: TRIED_ID,
    kind: 'screen',
    path: ends.map(([i, j]) => nodeOf(lattice, i, j)),
    bottom,
    height: top,
    density,
  };
}

/** A drop of a roof as a curtain of the lattice. */
export function curtainOf({ i, j, a, b, height }: RoofPlace, side: DropSide, depth: number): CurtainPlace {
  const bottom = height - depth;
  switch (side) {
    case 'front':
      return { along: 'u', line: j + b, from: i, cells: a, bottom, top: height };
    case 'back':
      return { along: 'u', line: j, from: i, cells: a, bottom, top: height };
    case 'right':
      return { along: 'v', line: i + a, from: j, cells: b, bottom, top: height };
    case 'left':
      return { along: 'v', line: i, from: j, cells: b, bottom, top: height };
  }
}
