import type { Fan, PointRays } from '../../../cast/points/point-rays.ts';
import { ROUNDING } from '../../../plan/numbers/tolerances.ts';
import { slantPower } from '../../../scene/cloth-sheet.ts';
import { hidesOf, sumOver, sumUp } from '../search/plane-sums.ts';
import { alongU, alongV, type TurnedLattice } from '../search/turned-lattice.ts';
import { type Guarded, type LightGuard, type LightRule, mayTake } from './light-left.ts';

/** What roofs of one height and density take of the plants' light, as sums over the ground that they cover. */
export interface LightPlane {
  /** The first rule that a roof of a × b cells from node (i, j) breaks for sure; `null`: it may break none. */
  broken(i: number, j: number, a: number, b: number): LightRule | null;
}

/** A plant that a roof of a density could harm at all. */
interface Endangered {
  readonly plant: Guarded;
  readonly may: Readonly<Record<LightRule, number>>;
}

/** What a roof of a density takes, wherever it hangs: worked out once for all turns and heights. */
export interface LightTakers {
  endangered(density: number): readonly Endangered[];
  /** Share of each direction of a fan. */
  hides(fan: Fan, density: number): Float64Array;
}

export function lightTakers(guard: LightGuard): LightTakers {
  const known = new Map<number, { endangered: readonly Endangered[]; hides: Map<Fan, Float64Array> }>();
  const under = (density: number) => {
    let taken = known.get(density);
    if (taken === undefined) {
      const hides = new Map<Fan, Float64Array>();
      for (const { fan } of guard.plants.flatMap(({ rays }) => rays))
        if (!hides.has(fan)) hides.set(fan, hidesOf(fan.z.map(slantPower), density));
      const endangered = guard.plants
        .map((plant): Endangered => ({ plant, may: mayTake(plant, density) }))
        .filter((one) => isEndangered(one, hides));
      known.set(density, (taken = { endangered, hides }));
    }
    return taken;
  };
  return {
    endangered: (density) => under(density).endangered,
    hides: (fan, density) => under(density).hides.get(fan) ?? NOTHING,
  };
}

const NOTHING = new Float64Array(0);

/** Whether a roof over all the sky would take too much. */
function isEndangered({ plant, may }: Endangered, hides: ReadonlyMap<Fan, Float64Array>): boolean {
  let most = 0;
  for (const { fan, places, brings } of plant.rays) {
    const shares = hides.get(fan) ?? NOTHING;
    for (let k = 0; k < places.length; k++) most += brings[k] * shares[places[k]];
  }
  most *= 1 + ROUNDING;
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
        takers.endangered(density).map(({ plant: { rays }, may }) => {
          const sums = new Float64Array(size);
          for (const each of rays) addTaken(cellsOf(each), each, takers.hides(each.fan, density), sums);
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
function crossedCells({ point, fan, places }: PointRays, lattice: TurnedLattice, height: number): Int32Array {
  const { columns, rows, step, u0, v0, sin, cos } = lattice;
  const { x, y, z } = fan;
  const cells = new Int32Array(places.length);
  const rise = (height - point[2]) / step;
  if (rise <= 0) return cells;
  const u = (alongU(lattice, point[0], point[1]) - u0) / step;
  const v = (alongV(lattice, point[0], point[1]) - v0) / step;
  for (let k = 0; k < cells.length; k++) {
    const n = places[k];
    const reach = rise / z[n];
    const i = Math.floor(u + reach * (x[n] * cos - y[n] * sin));
    const j = Math.floor(v + reach * (x[n] * sin + y[n] * cos));
    if (i >= 0 && j >= 0 && i < columns && j < rows) cells[k] = (j + 1) * (columns + 1) + i + 1;
  }
  return cells;
}

/** Adds what is taken of each ray to the cell that it crosses. */
function addTaken(cells: Int32Array, { places, brings }: PointRays, hides: Float64Array, into: Float64Array): void {
  for (let k = 0; k < cells.length; k++) into[cells[k]] += brings[k] * hides[places[k]];
  into[0] = 0;
}
