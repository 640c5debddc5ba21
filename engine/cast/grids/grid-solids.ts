import { hullOf } from '../../plan/geometry/hull.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { clothCosine, slantShare } from '../../scene/cloth-sheet.ts';
import { isConvex, SEGMENT, unionOutline } from '../../scene/outline.ts';
import type { Crown, Lid, Occluder, Prism, Ring, ClothSheet, Stand } from '../../scene/solids.ts';
import { TOUCH } from '../../scene/ties.ts';
import type { GridSpec } from './grid-spec.ts';

/** Shares below this count as opaque: a sweep divides by them again, and nobody can tell 1e-12 from none. */
const OPAQUE = 1e-12;

/** What stands above a grid's plane, in cell coordinates (u, v), heights above the plane in metres. */
export interface GridSolids {
  readonly prisms: readonly GridPrism[];
  readonly lids: readonly GridLid[];
  readonly sheets: readonly GridCloth[];
  readonly crowns: readonly GridCrown[];
  readonly stands: readonly GridStand[];
}

interface Box {
  readonly minU: number;
  readonly minV: number;
  readonly maxU: number;
  readonly maxV: number;
}

export interface GridPrism extends Box {
  /** True outline, `SEGMENT` numbers an edge: au, av, bu, bv. */
  readonly outline: Float64Array;
  /** For each edge the one that ends where it starts, and the one that starts where it ends; −1: none. */
  readonly before: Int32Array;
  readonly after: Int32Array;
  readonly top: number;
  /** Share a crossing lets through; 0: opaque. */
  readonly share: number;
}

/** Opaque and level. */
export interface GridLid extends Box {
  readonly outline: Float64Array;
  readonly top: number;
}

export interface GridCloth {
  /** Corners of what is above the plane, 3 numbers each: u, v, height. */
  readonly corners: Float64Array;
  readonly top: number;
  readonly sheet: ClothSheet;
}

export interface GridCrown {
  readonly crown: Crown;
  readonly u: number;
  readonly v: number;
  /** [cells] */
  readonly radius: number;
  /** Heights of its lowest and highest part above the plane. [m] */
  readonly foot: number;
  readonly top: number;
}

export interface GridStand extends Box {
  readonly stand: Stand;
  /** Convex hull of its outline, 2 numbers a corner, counter-clockwise. */
  readonly hull: Float64Array;
  /** Height above the plane. [m] */
  readonly top: number;
}

/** Leaves out what cannot dim a cell: solids below the plane, and those that let everything through. */
export function gridSolids(occluders: readonly Occluder[], grid: GridSpec): GridSolids {
  const prisms: GridPrism[] = [];
  const lids: GridLid[] = [];
  const sheets: GridCloth[] = [];
  const crowns: GridCrown[] = [];
  const stands: GridStand[] = [];
  for (const solid of occluders.flatMap((occluder) => occluder.solids)) {
    switch (solid.kind) {
      case 'prism':
        if (solid.openness < 1 && solid.height - grid.height > TOUCH) prisms.push(gridPrism(solid, grid));
        break;
      case 'lid':
        if (solid.height - grid.height > TOUCH) lids.push(gridLid(solid, grid));
        break;
      case 'cloth': {
        const sheet = gridCloth(solid, grid);
        if (solid.share < 1 && sheet.corners.length > 0) sheets.push(sheet);
        break;
      }
      case 'stand':
        if (solid.openness < 1 && solid.height - grid.height > TOUCH) stands.push(gridStand(solid, grid));
        break;
      default:
        if (solid.openness < 1 && solid.top - Math.max(solid.base, grid.height) > TOUCH)
          crowns.push(gridCrown(solid, grid));
    }
  }
  return { prisms, lids, sheets, crowns, stands };
}

function gridPrism({ rings, height, openness }: Prism, grid: GridSpec): GridPrism {
  const outline = gridOutline(rings, grid);
  const edges = outline.length / SEGMENT;
  const before = new Int32Array(edges).fill(-1);
  const after = new Int32Array(edges).fill(-1);
  for (let e = 0; e < edges; e++) {
    for (let f = 0; f < edges; f++) {
      const joined =
        outline[e * SEGMENT + 2] === outline[f * SEGMENT] && outline[e * SEGMENT + 3] === outline[f * SEGMENT + 1];
      if (joined && after[e] < 0 && before[f] < 0) {
        after[e] = f;
        before[f] = e;
      }
    }
  }
  return { outline, before, after, top: height - grid.height, share: shareOrOpaque(openness), ...boxOf(outline) };
}

function gridLid({ rings, height }: Lid, grid: GridSpec): GridLid {
  // What a bent outline covers beyond its eaves' rectangles, the building below stops as well.
  const outline = gridOutline(rings.filter(isConvex), grid);
  return { outline, top: height - grid.height, ...boxOf(outline) };
}

function gridOutline(rings: readonly Ring[], grid: GridSpec): Float64Array {
  return unionOutline(rings).map((value, index) => (index % 2 === 0 ? cellU(grid, value) : cellV(grid, value)));
}

function boxOf(outline: Float64Array): Box {
  const us = outline.filter((_, index) => index % 2 === 0);
  const vs = outline.filter((_, index) => index % 2 === 1);
  return { minU: Math.min(...us), minV: Math.min(...vs), maxU: Math.max(...us), maxV: Math.max(...vs) };
}

/** A sheet above the plane; no corners if nothing of it is. */
export function gridCloth(sheet: ClothSheet, grid: GridSpec): GridCloth {
  const { corner, u, v } = sheet;
  const corners: SpacePoint[] = [
    corner,
    [corner[0] + u[0], corner[1] + u[1], corner[2] + u[2]],
    [corner[0] + u[0] + v[0], corner[1] + u[1] + v[1], corner[2] + u[2] + v[2]],
    [corner[0] + v[0], corner[1] + v[1], corner[2] + v[2]],
  ];
  const above = cutAbove(corners, grid.height);
  return {
    corners: Float64Array.from(above.flatMap(([x, y, z]) => [cellU(grid, x), cellV(grid, y), z - grid.height])),
    top: Math.max(0, ...above.map(([, , z]) => z - grid.height)),
    sheet,
  };
}

/** Share of a beam from the unit vector dx, dy, dz that a sheet lets through. */
export function gridClothShare({ sheet }: GridCloth, dx: number, dy: number, dz: number): number {
  return shareOrOpaque(slantShare(sheet.share, clothCosine(sheet, [dx, dy, dz])));
}

/** The part of a flat convex polygon above a height; nothing if it only touches it. */
function cutAbove(corners: readonly SpacePoint[], height: number): SpacePoint[] {
  if (corners.every(([, , z]) => z - height <= TOUCH)) return [];
  return corners.flatMap((a, k) => {
    const b = corners[(k + 1) % corners.length];
    const kept: SpacePoint[] = a[2] >= height ? [a] : [];
    if (a[2] >= height === b[2] >= height) return kept;
    const along = (height - a[2]) / (b[2] - a[2]);
    return [...kept, [a[0] + along * (b[0] - a[0]), a[1] + along * (b[1] - a[1]), height]];
  });
}

function gridCrown(crown: Crown, grid: GridSpec): GridCrown {
  return {
    crown,
    u: cellU(grid, crown.x),
    v: cellV(grid, crown.y),
    radius: crown.radius / grid.cell,
    foot: Math.max(0, crown.base - grid.height),
    top: crown.top - grid.height,
  };
}

function gridStand(stand: Stand, grid: GridSpec): GridStand {
  const hull = Float64Array.from(hullOf(stand.ring).flatMap(([x, y]) => [cellU(grid, x), cellV(grid, y)]));
  return { stand, hull, ...boxOf(hull), top: stand.height - grid.height };
}

function cellU(grid: GridSpec, x: number): number {
  return (x - grid.x0) / grid.cell - 0.5;
}

function cellV(grid: GridSpec, y: number): number {
  return (y - grid.y0) / grid.cell - 0.5;
}

function shareOrOpaque(share: number): number {
  return share < OPAQUE ? 0 : share;
}
