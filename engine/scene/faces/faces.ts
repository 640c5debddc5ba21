/** The sides and tops of walls and buildings: what shines and glows on the plants before it. */

import type { Occluder } from '../solids.ts';
import { type Face, type Level, levelsOf, type Side, sidesOf } from './face.ts';
import { type Cut, type Cuts, type FacePatch, partsOf, patchOnLevel, patchOnSide } from './patches.ts';
import { type Met, meetLevel, meetSide, type RayFan } from './ray-fan.ts';

/** A leaf against a wall sees most of its light from one coarse patch, half of it perhaps in the leaf's own shadow. */
const FINER = 5;
/** Nearer than so many coarse patches the fine ones are met. */
const NEAR = 2;

/** The faces of a yard, to be met by rays. */
export class Faces {
  readonly none: boolean;
  private readonly sides: readonly (Side & Cuts)[];
  private readonly levels: readonly (Level & Cuts)[];
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
    const holds = (face: Face & Cuts) => face[which].first <= index;
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
