/** The sides and tops of walls and buildings: what shines and glows on the plants before it. */
import { boundsOf, pointInRing } from '../plan/geometry/shapes.ts';
import type { SpacePoint } from '../plan/geometry/vectors.ts';
import type { Bearings } from './bearings.ts';
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

/** Rays from one point, each upwards and mirrored downwards. */
export interface RayFan {
  /** How many go upwards; as many go downwards. */
  readonly count: number;
  /** Unit vectors of those upwards, 3 numbers each. */
  readonly directions: Float64Array;
  readonly bearings: Bearings;
}

/** What the rays of a fan meet: two numbers a ray, upwards and downwards. */
export interface Met {
  readonly patch: Int32Array;
  /** [m] */
  readonly reach: Float64Array;
}

/** The faces of a yard, to be met by rays. */
export class Faces {
  readonly none: boolean;
  private readonly sides: readonly Side[];
  private readonly levels: readonly Level[];
  /** How many of them are coarse; the fine ones follow. */
  private readonly coarseCount: number;
  /** Nearer faces are met by their fine patches. [m] */
  private readonly near: number;
  /** The patches that were met, and the number of each by its place among all. */
  private readonly patches: FacePatch[] = [];
  private readonly numbers = new Map<number, number>();

  /** How many patches were met so far. */
  get metCount(): number {
    return this.patches.length;
  }

  get sideCount(): number {
    return this.sides.length;
  }

  /**
   * @param least widest and highest of the patches that faces are cut into [m]
   * @param most of the coarse patches, four a side at least: where there would be more they are made larger
   */
  constructor(occluders: readonly Occluder[], least: number, most: number) {
    const sides = occluders.flatMap(sidesOf);
    const levels = occluders.flatMap(levelsOf);
    const countAt = (patch: number): number =>
      sides.reduce((sum, { length, height }) => sum + partsOf(length, patch) * partsOf(height, patch), 0) +
      levels.reduce((sum, { wide, deep }) => sum + 2 * partsOf(wide, patch) * partsOf(deep, patch), 0);
    let size = least;
    while (countAt(size) > Math.max(most, 4 * sides.length)) size *= 2;
    this.near = NEAR * size;
    let first = 0;
    const cut = (wide: number, high: number, faces: number, patch: number): Cut => {
      const of = { first, along: partsOf(wide, patch), up: partsOf(high, patch) };
      first += faces * of.along * of.up;
      return of;
    };
    const cutAll = (patch: number) => ({
      sides: sides.map(({ length, height }) => cut(length, height, 1, patch)),
      levels: levels.map(({ wide, deep }) => cut(wide, deep, 2, patch)),
    });
    const coarse = cutAll(size);
    this.coarseCount = first;
    const fine = cutAll(size / FINER);
    this.sides = sides.map((side, n) => ({ ...side, coarse: coarse.sides[n], fine: fine.sides[n] }));
    this.levels = levels.map((level, n) => ({ ...level, coarse: coarse.levels[n], fine: fine.levels[n] }));
    this.none = this.sides.length === 0;
  }

  /**
   * Finds for every ray of a fan the patch of the first face that it meets before the ground: `met.patch`, −1 where
   * there is none, and how far off, `met.reach`; first the rays upwards, then the same downwards. Patches are numbered
   * as they are met: of all that a yard's walls have few are ever looked at.
   */
  meet(x: number, y: number, z: number, fan: RayFan, met: Met): void {
    const { count, directions } = fan;
    const { reach, patch } = met;
    for (let k = 0; k < count; k++) {
      reach[k] = Infinity;
      reach[count + k] = z / directions[3 * k + 2];
    }
    patch.fill(-1);
    for (let n = 0; n < this.sides.length; n++) meetSide(this.sides[n], n, x, y, z, fan, met);
    for (let n = 0; n < this.levels.length; n++) meetLevel(this.levels[n], this.sides.length + n, x, y, z, fan, met);
    for (let r = 0; r < patch.length; r++) {
      if (patch[r] < 0) continue;
      const k = 3 * (r % count);
      const px = x + reach[r] * directions[k];
      const py = y + reach[r] * directions[k + 1];
      const pz = z + (r < count ? reach[r] : -reach[r]) * directions[k + 2];
      patch[r] = this.numberOf(this.patchAt(patch[r], px, py, pz, r < count, reach[r] < this.near ? 'fine' : 'coarse'));
    }
  }

  /** @param face number of a side, or of a level beyond the sides */
  private patchAt(face: number, x: number, y: number, z: number, fromBelow: boolean, cut: keyof Cuts): number {
    const { sides, levels } = this;
    if (face < sides.length) return patchOnSide(sides[face], sides[face][cut], x, y, z);
    const level = levels[face - sides.length];
    return patchOnLevel(level, level[cut], x, y, fromBelow);
  }

  /** A patch that was met. */
  patch(number: number): FacePatch {
    return this.patches[number];
  }

  private numberOf(index: number): number {
    let number = this.numbers.get(index);
    if (number === undefined) {
      number = this.patches.push(this.made(index)) - 1;
      this.numbers.set(index, number);
    }
    return number;
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

/** Nearer than all before, the side is what these rays meet. */
function meetSide(side: Side, face: number, x: number, y: number, z: number, fan: RayFan, met: Met): void {
  const { ax, ay, bx, by, nx, ny, height } = side;
  const off = (ax - x) * nx + (ay - y) * ny;
  // Seen from behind, or from its edge.
  if (off >= 0) return;
  const { reach, patch } = met;
  const { count, directions, bearings } = fan;
  const { order } = bearings;
  bearings.find(Math.atan2(by - y, bx - x), Math.atan2(ay - y, ax - x));
  for (let n = bearings.first; n < bearings.end; n++) {
    const k = order[n];
    const dx = directions[3 * k];
    const dy = directions[3 * k + 1];
    const against = dx * nx + dy * ny;
    if (against >= 0) continue;
    const t = off / against;
    const aside = dx * (ay - y) - dy * (ax - x);
    const bside = dx * (by - y) - dy * (bx - x);
    if (t <= TOUCH || aside > 0 === bside > 0) continue;
    const rise = t * directions[3 * k + 2];
    const up = z + rise;
    const down = z - rise;
    if (up >= 0 && up <= height && t < reach[k]) {
      reach[k] = t;
      patch[k] = face;
    }
    if (down >= 0 && down <= height && t < reach[count + k]) {
      reach[count + k] = t;
      patch[count + k] = face;
    }
  }
}

/** The same of a level face: by rays downwards where it lies lower, upwards where it is an underside over the point. */
function meetLevel(level: Level, face: number, x: number, y: number, z: number, fan: RayFan, met: Met): void {
  const { rings, height, thin, minX, minY, wide, deep } = level;
  if (height === z || (height > z && !thin)) return;
  const { reach, patch } = met;
  const { count, directions } = fan;
  const first = height > z ? 0 : count;
  for (let k = 0; k < count; k++) {
    const t = Math.abs(height - z) / directions[3 * k + 2];
    if (t <= TOUCH || t >= reach[first + k]) continue;
    const px = x + t * directions[3 * k];
    const py = y + t * directions[3 * k + 1];
    if (px < minX || py < minY || px > minX + wide || py > minY + deep) continue;
    if (!rings.some((ring) => pointInRing([px, py], ring, thin ? TOUCH : 0))) continue;
    reach[first + k] = t;
    patch[first + k] = face;
  }
}
