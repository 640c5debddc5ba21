import { slantPower } from '../../../scene/cloth-sheet.ts';
import type { HarmPairs } from './harm-pairs.ts';
import type { Targets } from './targets.ts';
import { alongU, alongV, type TurnedLattice } from './turned-lattice.ts';

/** The yard's harmful rays in the axes of one turn of the lattice. */
export interface TurnedRays {
  readonly lattice: TurnedLattice;
  /** Of each view's point, in cells from node (0, 0); its height. [m] */
  readonly pointU: Float64Array;
  readonly pointV: Float64Array;
  readonly pointZ: Float64Array;
  /** Of each pair's way to the sun. [cells], [cells], [m] a metre of beam */
  readonly du: Float64Array;
  readonly dv: Float64Array;
  readonly dz: Float64Array;
  /** Each pair's way to the sun across curtains along u, and across those along v. [1] */
  readonly across: { readonly u: Float64Array; readonly v: Float64Array };
  /** Of each ray of the sky. */
  readonly skyU: Float64Array;
  readonly skyV: Float64Array;
  readonly skyZ: Float64Array;
  /** How many times as thick a roof, curtains along u and curtains along v are along each ray of the sky. */
  readonly skyPowers: { readonly roof: Float64Array; readonly u: Float64Array; readonly v: Float64Array };
  readonly fan: SkyFan;
}

/**
 * The rays of the sky by their bearing, straight up left out, twice round: what lies between two bearings follows each
 * other.
 */
interface SkyFan {
  /** Counter-clockwise from u, rising. [rad] from −π up to 3π */
  readonly bearing: Float64Array;
  /** Index of the ray among the sky's. */
  readonly ray: Int32Array;
  readonly u: Float64Array;
  readonly v: Float64Array;
  readonly z: Float64Array;
}

export function turnedRays(targets: Targets, pairs: HarmPairs, lattice: TurnedLattice): TurnedRays {
  const { step, u0, v0 } = lattice;
  const points = pairs.views.map(({ point }) => targets.points[point].at);
  const du = new Float64Array(pairs.count);
  const dv = new Float64Array(pairs.count);
  for (let p = 0; p < pairs.count; p++) {
    du[p] = alongU(lattice, pairs.dx[p], pairs.dy[p]) / step;
    dv[p] = alongV(lattice, pairs.dx[p], pairs.dy[p]) / step;
  }
  const { skyDirections: sky } = targets;
  const rays = Array.from({ length: sky.length / 3 }, (_, k) => 3 * k);
  const skyU = Float64Array.from(rays, (k) => alongU(lattice, sky[k], sky[k + 1]) / step);
  const skyV = Float64Array.from(rays, (k) => alongV(lattice, sky[k], sky[k + 1]) / step);
  const skyZ = Float64Array.from(rays, (k) => sky[k + 2]);
  return {
    lattice,
    pointU: Float64Array.from(points, ([x, y]) => (alongU(lattice, x, y) - u0) / step),
    pointV: Float64Array.from(points, ([x, y]) => (alongV(lattice, x, y) - v0) / step),
    pointZ: Float64Array.from(points, ([, , z]) => z),
    du,
    dv,
    dz: pairs.dz,
    across: { u: dv.map((way) => way * step), v: du.map((way) => way * step) },
    skyU,
    skyV,
    skyZ,
    skyPowers: {
      roof: skyZ.map(slantPower),
      u: skyV.map((way) => slantPower(way * step)),
      v: skyU.map((way) => slantPower(way * step)),
    },
    fan: fanOf(skyU, skyV, skyZ),
  };
}

function fanOf(u: Float64Array, v: Float64Array, z: Float64Array): SkyFan {
  const once = Array.from({ length: z.length - 1 }, (_, k) => ({ bearing: Math.atan2(v[k], u[k]), ray: k })).sort(
    (a, b) => a.bearing - b.bearing,
  );
  const twice = [...once, ...once.map(({ bearing, ray }) => ({ bearing: bearing + 2 * Math.PI, ray }))];
  const ray = Int32Array.from(twice, (each) => each.ray);
  const turned = (of: Float64Array) => Float64Array.from(ray, (k) => of[k]);
  return { bearing: Float64Array.from(twice, ({ bearing }) => bearing), ray, u: turned(u), v: turned(v), z: turned(z) };
}
