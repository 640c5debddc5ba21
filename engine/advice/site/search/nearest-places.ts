import type { PlanPoint } from '../../../plan/types.ts';
import { alongU, alongV, type TurnedLattice } from './turned-lattice.ts';

/** Tells which place is nearest to each half node of a turned lattice. */
export class NearestPlaces {
  private readonly across: number;
  private readonly nearest: Uint8Array;

  constructor(turned: TurnedLattice, places: readonly PlanPoint[]) {
    const { columns, rows, step, u0, v0 } = turned;
    this.across = 2 * columns + 1;
    this.nearest = new Uint8Array(this.across * (2 * rows + 1));
    const placeI = places.map(([x, y]) => (alongU(turned, x, y) - u0) / (step / 2));
    const placeJ = places.map(([x, y]) => (alongV(turned, x, y) - v0) / (step / 2));
    for (let j = 0, index = 0; j <= 2 * rows; j++) {
      for (let i = 0; i < this.across; i++, index++) {
        let least = Infinity;
        for (let p = 0; p < places.length; p++) {
          const squared = (i - placeI[p]) ** 2 + (j - placeJ[p]) ** 2;
          if (squared >= least) continue;
          least = squared;
          this.nearest[index] = p;
        }
      }
    }
  }

  /** Of the middle of a × b cells from node (i, j). */
  of(i: number, j: number, a: number, b: number): number {
    return this.nearest[(2 * j + b) * this.across + 2 * i + a];
  }
}
