import { LEAST_COSINE } from '../../scene/cloth-sheet.ts';
import type { ClothSheet } from '../../scene/solids.ts';
import { TOUCH, UPRIGHT } from '../../scene/ties.ts';
import { decay } from '../decay.ts';

/** Beams by their ways, unit vectors. */
export interface Ways {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
}

/** A sheet as seen from one point: asked of many beams, each a few products. */
export class ClothFrame {
  private readonly nx: number;
  private readonly ny: number;
  private readonly nz: number;
  private readonly sx: number;
  private readonly sy: number;
  private readonly sz: number;
  private readonly tx: number;
  private readonly ty: number;
  private readonly tz: number;
  private readonly away: number;
  private readonly s0: number;
  private readonly t0: number;
  private readonly edgeOn: number;
  private readonly size: number;
  /** −ln of what passes where a beam meets the sheet square on. */
  private readonly thickness: number;

  constructor({ corner, u, v, share }: ClothSheet, x: number, y: number, z: number) {
    const nx = u[1] * v[2] - u[2] * v[1];
    const ny = u[2] * v[0] - u[0] * v[2];
    const nz = u[0] * v[1] - u[1] * v[0];
    const squared = nx * nx + ny * ny + nz * nz;
    // Where the beam meets the plane, s and t are its products with v × n / n² and n × u / n².
    this.sx = (v[1] * nz - v[2] * ny) / squared;
    this.sy = (v[2] * nx - v[0] * nz) / squared;
    this.sz = (v[0] * ny - v[1] * nx) / squared;
    this.tx = (ny * u[2] - nz * u[1]) / squared;
    this.ty = (nz * u[0] - nx * u[2]) / squared;
    this.tz = (nx * u[1] - ny * u[0]) / squared;
    const cx = corner[0] - x;
    const cy = corner[1] - y;
    const cz = corner[2] - z;
    this.nx = nx;
    this.ny = ny;
    this.nz = nz;
    this.away = nx * cx + ny * cy + nz * cz;
    this.s0 = this.sx * cx + this.sy * cy + this.sz * cz;
    this.t0 = this.tx * cx + this.ty * cy + this.tz * cz;
    this.size = Math.sqrt(squared);
    this.edgeOn = UPRIGHT * this.size;
    this.thickness = -Math.log(share);
  }

  /** Whether a beam from the point meets the sheet, edges included. */
  meets(dx: number, dy: number, dz: number): boolean {
    return this.reachAlong(dx, dy, dz) < Infinity;
  }

  /** How far along a ray of length 1 from the point the sheet is met; Infinity: it is not. [m] */
  reachAlong(dx: number, dy: number, dz: number): number {
    const facing = this.nx * dx + this.ny * dy + this.nz * dz;
    if (Math.abs(facing) <= this.edgeOn) return Infinity;
    const reach = this.away / facing;
    if (reach <= TOUCH) return Infinity;
    const s = reach * (this.sx * dx + this.sy * dy + this.sz * dz) - this.s0;
    const t = reach * (this.tx * dx + this.ty * dy + this.tz * dz) - this.t0;
    return s >= 0 && s <= 1 && t >= 0 && t <= 1 ? reach : Infinity;
  }

  /** Share of a beam from the point that the sheet transmits: 1 where it does not meet it. */
  transmittance(dx: number, dy: number, dz: number): number {
    if (this.reachAlong(dx, dy, dz) === Infinity) return 1;
    const cosine = Math.abs(this.nx * dx + this.ny * dy + this.nz * dz) / this.size;
    return decay(this.thickness / (cosine > LEAST_COSINE ? cosine : LEAST_COSINE));
  }

  /**
   * The same for many beams: multiplies what is left of each.
   * @param ways of all beams @param places those asked about, from `first` up to `end`: indices among the ways
   * @param left of each of these, from 0 on
   */
  dim({ x, y, z }: Ways, places: Int32Array, first: number, end: number, left: Float64Array): void {
    for (let k = first; k < end; k++) {
      const n = places[k];
      left[k - first] *= this.transmittance(x[n], y[n], z[n]);
    }
  }
}
