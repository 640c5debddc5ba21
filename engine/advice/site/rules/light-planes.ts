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

/** Lays the light of all plants out on one turn of the lattice. */
export function lightPlanes(
  guard: LightGuard,
  lattice: TurnedLattice,
): (height: number, density: number) => LightPlane {
  const width = lattice.columns + 1;
  const cells = width * (lattice.rows + 1);
  return (height, density) => {
    const planes = guard.plants.map((plant) => {
      const sums = new Float64Array(cells);
      addTaken(plant, lattice, height, density, sums);
      sumUp(sums, 0, width, lattice.rows);
      return { sums, may: mayTake(plant, density) };
    });
    return {
      broken(i, j, a, b) {
        for (const { sums, may } of planes) {
          const taken = sumOver(sums, 0, width, i, j, a, b) * (1 - ROUNDING);
          if (taken > may.density) return 'density';
          if (taken > may.light + ROUNDING) return 'light';
        }
        return null;
      },
    };
  };
}

/** What the roof's cloth takes of each ray, added to the cell in which the ray crosses its plane. */
function addTaken(
  { rays }: Guarded,
  lattice: TurnedLattice,
  height: number,
  density: number,
  into: Float64Array,
): void {
  const { columns, rows, step, u0, v0 } = lattice;
  const width = columns + 1;
  for (const { point, x, y, z, brings } of rays) {
    const rise = height - point[2];
    if (rise <= 0) continue;
    const u = (alongU(lattice, point[0], point[1]) - u0) / step;
    const v = (alongV(lattice, point[0], point[1]) - v0) / step;
    for (let k = 0; k < brings.length; k++) {
      const reach = rise / z[k] / step;
      const i = Math.floor(u + reach * alongU(lattice, x[k], y[k]));
      const j = Math.floor(v + reach * alongV(lattice, x[k], y[k]));
      if (i < 0 || j < 0 || i >= columns || j >= rows) continue;
      into[(j + 1) * width + i + 1] += brings[k] * (1 - (1 - density) ** slantPower(z[k]));
    }
  }
}
