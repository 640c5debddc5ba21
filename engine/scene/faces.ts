/** The sides and tops of walls and buildings: what shines and glows on the plants before it. */
import { boundsOf, pointInRing, type SpacePoint } from '../plan/geometry/shapes.ts';
import { SEGMENT, unionOutline } from './outline.ts';
import type { Occluder, Ring } from './solids.ts';
import { TOUCH } from './ties.ts';

/** How a face is cut into parts along and up (or across). */
interface Cut {
  /** Number of its first patch, and how many it has along and up; a level face has as many again for its underside. */
  readonly first: number;
  readonly along: number;
  readonly up: number;
}

interface Cuts {
  /** Into patches as small as asked for, and into finer ones for what looks at it from close by. */
  readonly coarse: Cut;
  readonly fine: Cut;
}

interface Face extends Cuts {
  readonly id: string;
  readonly reflects: number;
}

/** A leaf against a wall sees most of its light from one coarse patch, half of it perhaps in the leaf's own shadow. */
const FINER = 5;
/** Nearer than so many coarse patches the fine ones are met. */
const NEAR = 2;

/** Upright, outward to the right of a → b. */
interface Side extends Face {
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
interface Level extends Face {
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
  /** How many of them are coarse; the fine ones follow. */
  readonly coarseCount: number;
  /** Nearer faces are met by their fine patches. [m] */
  private readonly near: number;
  private readonly known: (FacePatch | undefined)[] = [];

  get sideCount(): number {
    return this.sides.length;
  }

  /** @param size widest and highest of the patches that faces are cut into [m] */
  constructor(occluders: readonly Occluder[], size: number) {
    this.near = NEAR * size;
    let first = 0;
    const cut = (wide: number, high: number, faces: number, patch: number): Cut => {
      const of = { first, along: partsOf(wide, patch), up: partsOf(high, patch) };
      first += faces * of.along * of.up;
      return of;
    };
    const sides = occluders.flatMap(sidesOf);
    const levels = occluders.flatMap(levelsOf);
    const cutAll = (patch: number) => ({
      sides: sides.map(({ length, height }) => cut(length, height, 1, patch)),
      levels: levels.map(({ wide, deep }) => cut(wide, deep, 2, patch)),
    });
    const coarse = cutAll(size);
    this.coarseCount = first;
    const fine = cutAll(size / FINER);
    this.sides = sides.map((side, n) => ({ ...side, coarse: coarse.sides[n], fine: fine.sides[n] }));
    this.levels = levels.map((level, n) => ({ ...level, coarse: coarse.levels[n], fine: fine.levels[n] }));
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
    const cut = reach < this.near ? 'fine' : 'coarse';
    if (level >= 0) return patchOnLevel(levels[level], levels[level][cut], x + reach * dx, y + reach * dy, dz > 0);
    if (side < 0) return -1;
    return patchOnSide(sides[side], sides[side][cut], x + reach * dx, y + reach * dy, z + reach * dz);
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
    const which = index < this.coarseCount ? 'coarse' : 'fine';
    const holds = (face: Face) => face[which].first <= index;
    const level = this.levels.findLast(holds);
    if (level) {
      const { first, along, up } = level[which];
      const n = index - first;
      const within = n % (along * up);
      const x = level.minX + (((within % along) + 0.5) / along) * level.wide;
      const y = level.minY + ((Math.floor(within / along) + 0.5) / up) * level.deep;
      const { id, reflects, height } = level;
      return { id, reflects, middle: [x, y, height], outward: n < along * up ? level.upward : level.downward };
    }
    const side = this.sides.findLast(holds);
    if (!side) throw new Error(`No patch ${index}.`);
    const { first, along, up } = side[which];
    const n = index - first;
    const s = (((n % along) + 0.5) / along) * side.length;
    const z = ((Math.floor(n / along) + 0.5) / up) * side.height;
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

function patchOnSide(side: Side, { first, along, up }: Cut, x: number, y: number, z: number): number {
  const { ax, ay, nx, ny, length, height } = side;
  // Along a → b, whose way is (−ny, nx) for an outward way to its right.
  const i = part((y - ay) * nx - (x - ax) * ny, length, along);
  return first + part(z, height, up) * along + i;
}

function patchOnLevel(level: Level, { first, along, up }: Cut, x: number, y: number, fromBelow: boolean): number {
  const { minX, minY, wide, deep } = level;
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

function sidesOf({ id, solids }: Occluder): Omit<Side, keyof Cuts>[] {
  return solids.flatMap((solid) => {
    if (solid.kind !== 'prism' || solid.reflects === null) return [];
    const { height, reflects, rings } = solid;
    const outline = unionOutline(rings);
    return Array.from({ length: outline.length / SEGMENT }, (_, k) => {
      const [ax, ay, bx, by] = outline.subarray(k * SEGMENT, (k + 1) * SEGMENT);
      const length = Math.hypot(bx - ax, by - ay);
      const [nx, ny] = [(by - ay) / length, (ax - bx) / length];
      const outward: SpacePoint = [nx, ny, 0];
      return { id, reflects, ax, ay, bx, by, length, height, nx, ny, outward };
    }).filter(({ length }) => length > TOUCH);
  });
}

function levelsOf({ id, solids }: Occluder): Omit<Level, keyof Cuts>[] {
  return solids.flatMap((solid) => {
    if ((solid.kind !== 'prism' && solid.kind !== 'lid') || solid.reflects === null) return [];
    const { rings, height, reflects } = solid;
    const { minX, minY, maxX, maxY } = boundsOf(rings.flat());
    const [wide, deep] = [maxX - minX, maxY - minY];
    const [upward, downward]: SpacePoint[] = [
      [0, 0, 1],
      [0, 0, -1],
    ];
    const thin = solid.kind === 'lid';
    return [{ id, reflects, rings, height, thin, upward, downward, minX, minY, wide, deep }];
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
