/** The sides and tops of walls and buildings: what shines and glows on the plants before it. */
import { boundsOf, pointInRing, type SpacePoint } from '../plan/geometry/shapes.ts';
import { SEGMENT, unionOutline } from './outline.ts';
import type { Occluder, Ring } from './solids.ts';
import { TOUCH } from './ties.ts';

/** Upright faces, outward to the right of a → b, or level ones, cut into parts along and up (or across). */
interface Cut {
  readonly id: string;
  readonly reflects: number;
  /** Number of its first patch, and how many it has along and up; a level face has as many again for its underside. */
  readonly first: number;
  readonly along: number;
  readonly up: number;
}

interface Side extends Cut {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  /** [m] */
  readonly length: number;
  readonly height: number;
  /** Outward, of length 1. */
  readonly nx: number;
  readonly ny: number;
  readonly outward: SpacePoint;
}

/** A top is met from above alone, an eaves' sheet from below as well. */
interface Level extends Cut {
  readonly rings: readonly Ring[];
  readonly height: number;
  readonly thin: boolean;
  readonly upward: SpacePoint;
  readonly downward: SpacePoint;
  readonly minX: number;
  readonly minY: number;
  readonly wide: number;
  readonly deep: number;
}

/** A part of a face, lit alike all over. */
export interface FacePatch {
  /** Of the wall or building. */
  readonly id: string;
  readonly reflects: number;
  readonly middle: SpacePoint;
  /** The way out of the face, of length 1: the same object for all patches of one face. */
  readonly outward: SpacePoint;
}

/** The faces of a yard, to be met by rays. */
export class Faces {
  readonly none: boolean;
  /** How many patches they are cut into. */
  readonly count: number;
  /** How far along the ray the last meeting was. [m] */
  reach = 0;
  private readonly sides: readonly Side[];
  private readonly levels: readonly Level[];
  private readonly known: (FacePatch | undefined)[] = [];

  get sideCount(): number {
    return this.sides.length;
  }

  /** @param size widest and highest of the patches that faces are cut into [m] */
  constructor(occluders: readonly Occluder[], size: number) {
    let first = 0;
    const numbered = <T extends Cut>(face: T, patches: number): T => {
      const from = first;
      first += patches;
      return { ...face, first: from };
    };
    this.sides = occluders
      .flatMap((occluder) => sidesOf(occluder, size))
      .map((side) => numbered(side, side.along * side.up));
    this.levels = occluders
      .flatMap((occluder) => levelsOf(occluder, size))
      .map((level) => numbered(level, 2 * level.along * level.up));
    this.count = first;
    this.none = this.sides.length === 0;
  }

  /**
   * The patch of the first face that a ray meets before the ground, −1: none.
   * @param dx, dy, dz Unit vector of the ray, up or down, never level.
   */
  meet(x: number, y: number, z: number, dx: number, dy: number, dz: number): number {
    const { sides, levels } = this;
    let reach = dz < 0 ? -z / dz : Infinity;
    let side = -1;
    for (let n = 0; n < sides.length; n++) {
      const t = reachOf(sides[n], x, y, z, dx, dy, dz);
      if (t > TOUCH && t < reach) {
        reach = t;
        side = n;
      }
    }
    let level = -1;
    for (let n = 0; n < levels.length; n++) {
      const t = this.reachOfLevel(levels[n], x, y, z, dx, dy, dz);
      if (t > TOUCH && t < reach) {
        reach = t;
        level = n;
      }
    }
    this.reach = reach;
    if (level >= 0) return patchOnLevel(levels[level], x + reach * dx, y + reach * dy, dz > 0);
    return side < 0 ? -1 : patchOnSide(sides[side], x + reach * dx, y + reach * dy, z + reach * dz);
  }

  patch(index: number): FacePatch {
    return (this.known[index] ??= this.made(index));
  }

  private reachOfLevel(level: Level, x: number, y: number, z: number, dx: number, dy: number, dz: number): number {
    if (dz > 0 && !level.thin) return NaN;
    const t = (level.height - z) / dz;
    if (t <= TOUCH) return NaN;
    const px = x + t * dx;
    const py = y + t * dy;
    if (px < level.minX || py < level.minY || px > level.minX + level.wide || py > level.minY + level.deep) return NaN;
    return level.rings.some((ring) => pointInRing([px, py], ring, level.thin ? TOUCH : 0)) ? t : NaN;
  }

  private made(index: number): FacePatch {
    const side = this.sides.findLast(({ first }) => first <= index);
    const level = this.levels.findLast(({ first }) => first <= index);
    if (level) {
      const n = index - level.first;
      const within = n % (level.along * level.up);
      const x = level.minX + (((within % level.along) + 0.5) / level.along) * level.wide;
      const y = level.minY + ((Math.floor(within / level.along) + 0.5) / level.up) * level.deep;
      const { id, reflects, height } = level;
      return {
        id,
        reflects,
        middle: [x, y, height],
        outward: n < level.along * level.up ? level.upward : level.downward,
      };
    }
    if (!side) throw new Error(`No patch ${index}.`);
    const n = index - side.first;
    const s = (((n % side.along) + 0.5) / side.along) * side.length;
    const z = ((Math.floor(n / side.along) + 0.5) / side.up) * side.height;
    const { id, reflects, ax, ay, nx, ny, outward } = side;
    return { id, reflects, middle: [ax - ny * s, ay + nx * s, z], outward };
  }
}

/** Shares of sunlight that the faces of a yard throw back, each once. */
export function faceColours(occluders: readonly Occluder[]): number[] {
  const all = occluders.flatMap(({ solids }) =>
    solids.flatMap((solid) => (solid.kind === 'prism' && solid.reflects !== null ? [solid.reflects] : [])),
  );
  return [...new Set(all)];
}

function patchOnSide(side: Side, x: number, y: number, z: number): number {
  const { ax, ay, nx, ny, length, height, first, along, up } = side;
  // Along a → b, whose way is (−ny, nx) for an outward way to its right.
  const i = part((y - ay) * nx - (x - ax) * ny, length, along);
  return first + part(z, height, up) * along + i;
}

function patchOnLevel(level: Level, x: number, y: number, fromBelow: boolean): number {
  const { minX, minY, wide, deep, first, along, up } = level;
  const within = part(y - minY, deep, up) * along + part(x - minX, wide, along);
  return first + within + (fromBelow ? along * up : 0);
}

/** Which of so many equal parts of a stretch a place lies in. */
function part(at: number, length: number, parts: number): number {
  return Math.min(parts - 1, Math.max(0, Math.floor((at / length) * parts)));
}

/** Parts no longer than the patch asks for. */
function partsOf(length: number, size: number): number {
  return Math.max(1, Math.ceil(length / size - TOUCH));
}

function sidesOf({ id, solids }: Occluder, size: number): Side[] {
  return solids.flatMap((solid): Side[] => {
    if (solid.kind !== 'prism' || solid.reflects === null) return [];
    const { height, reflects, rings } = solid;
    const outline = unionOutline(rings);
    return Array.from({ length: outline.length / SEGMENT }, (_, k): Side => {
      const [ax, ay, bx, by] = outline.subarray(k * SEGMENT, (k + 1) * SEGMENT);
      const length = Math.hypot(bx - ax, by - ay);
      const [nx, ny] = [(by - ay) / length, (ax - bx) / length];
      const cut = { id, reflects, first: 0, along: partsOf(length, size), up: partsOf(height, size) };
      return { ...cut, ax, ay, bx, by, length, height, nx, ny, outward: [nx, ny, 0] };
    }).filter(({ length }) => length > TOUCH);
  });
}

function levelsOf({ id, solids }: Occluder, size: number): Level[] {
  return solids.flatMap((solid): Level[] => {
    if ((solid.kind !== 'prism' && solid.kind !== 'lid') || solid.reflects === null) return [];
    const { rings, height, reflects } = solid;
    const { minX, minY, maxX, maxY } = boundsOf(rings.flat());
    const [wide, deep] = [maxX - minX, maxY - minY];
    const cut = { id, reflects, first: 0, along: partsOf(wide, size), up: partsOf(deep, size) };
    const [upward, downward]: SpacePoint[] = [
      [0, 0, 1],
      [0, 0, -1],
    ];
    return [{ ...cut, rings, height, thin: solid.kind === 'lid', upward, downward, minX, minY, wide, deep }];
  });
}

/** Where a ray enters by a side; NaN where it does not. [m] */
function reachOf(side: Side, x: number, y: number, z: number, dx: number, dy: number, dz: number): number {
  const { ax, ay, bx, by, nx, ny, height } = side;
  const against = dx * nx + dy * ny;
  if (against >= 0) return NaN;
  const reach = ((ax - x) * nx + (ay - y) * ny) / against;
  const up = z + reach * dz;
  if (up < 0 || up > height) return NaN;
  const aside = dx * (ay - y) - dy * (ax - x);
  const bside = dx * (by - y) - dy * (bx - x);
  return aside > 0 === bside > 0 ? NaN : reach;
}
