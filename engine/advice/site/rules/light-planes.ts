import type { PointRays } from '../../../cast/points/point-rays.ts';
import { slantPower } from '../../../scene/cloth-sheet.ts';
import { alongU, alongV, type TurnedLattice } from '../search/turned-lattice.ts';
import { sumOver, sumUp } from '../search/plane-sums.ts';
import { type Guarded, type LightGuard, type LightRule, mayTake } from './light-left.ts';

/** Sums are in another order than those of `objections`. */
const ROUNDING = 1e-9;

/** What roofs of one height and density take of the plants' light, as sums over the ground that they cover. */
export interface LightPlane {
  /** The first rule that a roof of a × b cells from node (i, j) breaks for sure; `null`: it may break none. */
  broken(i: number, j: number, a: number, b: number): LightRule | null;
}

/** Plants that a roof of a density could harm at all, and what it takes of each of their rays. */
interface Endangered {
  readonly plant: Guarded;
  readonly may: Readonly<Record<LightRule, number>>;
  /** As the plant's rays. [mol/m² a day] */
  readonly takes: readonly Float64Array[];
}

/** The plants that a roof of a density endangers, whatever its place: worked out once for all turns and heights. */
export type LightTakers = (density: number) => readonly Endangered[];

export function lightTakers(guard: LightGuard): LightTakers {
  const known = new Map<number, readonly Endangered[]>();
  return (density) => {
    let endangered = known.get(density);
    if (endangered === undefined) {
      endangered = guard.plants.map((plant) => endangeredBy(plant, density)).filter(isEndangered);
      known.set(density, endangered);
    }
    return endangered;
  };
}

function endangeredBy(plant: Guarded, density: number): Endangered {
  const takes = plant.rays.map(({ z, brings }) =>
    brings.map((each, k) => each * (1 - (1 - density) ** slantPower(z[k]))),
  );
  return { plant, may: mayTake(plant, density), takes };
}

/** Whether a roof over all the sky would take too much. */
function isEndangered({ may, takes }: Endangered): boolean {
  const most = takes.reduce((all, of) => of.reduce((sum, each) => sum + each, all), 0) * (1 + ROUNDING);
  return most > may.light || most > may.density;
}

/** Lays the light of the plants out on one turn of the lattice and one height after the other. */
export function lightPlanes(
  takers: LightTakers,
  lattice: TurnedLattice,
): (height: number) => (density: number) => LightPlane {
  const width = lattice.columns + 1;
  const size = width * (lattice.rows + 1);
  return (height) => {
    const cells = new Map<PointRays, Int32Array>();
    const cellsOf = (rays: PointRays): Int32Array => {
      let known = cells.get(rays);
      if (known === undefined) cells.set(rays, (known = crossedCells(rays, lattice, height)));
      return known;
    };
    return (density) => {
      const laidOut = (): Plane[] =>
        takers(density).map(({ plant: { rays }, may, takes }) => {
          const sums = new Float64Array(size);
          for (const [r, each] of rays.entries()) addTaken(cellsOf(each), takes[r], sums);
          sumUp(sums, 0, width, lattice.rows);
          return { sums, may };
        });
      // Of most heights no roof comes so far that its light is asked about.
      let planes: readonly Plane[] | null = null;
      return {
        broken(i, j, a, b) {
          planes ??= laidOut();
          for (const { sums, may } of planes) {
            const taken = sumOver(sums, 0, width, i, j, a, b) * (1 - ROUNDING);
            if (taken > may.density) return 'density';
            if (taken > may.light + ROUNDING) return 'light';
          }
          return null;
        },
      };
    };
  };
}

/** Summed-area table of what is taken of one plant's light. */
interface Plane {
  readonly sums: Float64Array;
  readonly may: Endangered['may'];
}

/** Place in a table of sums of the cell in which each ray crosses the plane at a height; 0 counts for nothing. */
function crossedCells({ point, x, y, z }: PointRays, lattice: TurnedLattice, height: number): Int32Array {
  const { columns, rows, step, u0, v0, sin, cos } = lattice;
  const cells = new Int32Array(z.length);
  const rise = (height - point[2]) / step;
  if (rise <= 0) return cells;
  const u = (alongU(lattice, point[0], point[1]) - u0) / step;
  const v = (alongV(lattice, point[0], point[1]) - v0) / step;
  for (let k = 0; k < cells.length; k++) {
    const reach = rise / z[k];
    const i = Math.floor(u + reach * (x[k] * cos - y[k] * sin));
    const j = Math.floor(v + reach * (x[k] * sin + y[k] * cos));
    if (i >= 0 && j >= 0 && i < columns && j < rows) cells[k] = (j + 1) * (columns + 1) + i + 1;
  }
  return cells;
}

/** Adds what is taken of each ray to the cell that it crosses. */
function addTaken(cells: Int32Array, takes: Float64Array, into: Float64Array): void {
  for (let k = 0; k < cells.length; k++) into[cells[k]] += takes[k];
  into[0] = 0;
}
