/** The sides and tops of walls and buildings: what shines and glows on the plants before it. */
import { pointInRing } from '../plan/geometry/shapes.ts';
import { SEGMENT, unionOutline } from './outline.ts';
import type { Occluder, Ring } from './solids.ts';
import { TOUCH } from './ties.ts';

/** Upright faces, outward to the right of a → b. */
interface Side {
  readonly id: string;
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
  readonly reflects: number;
}

/** Level faces: a top is met from above alone, an eaves' sheet from below as well. */
interface Level {
  readonly id: string;
  readonly rings: readonly Ring[];
  readonly height: number;
  readonly thin: boolean;
  readonly reflects: number;
}

/** A place where a ray meets a face. */
export interface FaceMeeting {
  readonly id: string;
  /** The same for all that meets one patch of a face, at most `patch` wide and high. */
  readonly key: string;
  /** How far along the ray. [m] */
  readonly reach: number;
  readonly reflects: number;
  /** Middle of the patch, and the way out of the face. */
  readonly middle: readonly [x: number, y: number, z: number];
  readonly outward: readonly [x: number, y: number, z: number];
}

/** The faces of a yard, to be met by rays. */
export class Faces {
  readonly none: boolean;
  private readonly sides: readonly Side[];
  private readonly levels: readonly Level[];
  private readonly patch: number;

  /** @param patch widest and highest of the patches that faces are cut into [m] */
  constructor(occluders: readonly Occluder[], patch: number) {
    this.sides = occluders.flatMap(sidesOf);
    this.levels = occluders.flatMap(levelsOf);
    this.patch = patch;
    this.none = this.sides.length === 0;
  }

  /**
   * The first face that a ray meets before the ground.
   * @param dx, dy, dz Unit vector of the ray, up or down, never level.
   */
  meet(x: number, y: number, z: number, dx: number, dy: number, dz: number): FaceMeeting | null {
    let reach = dz < 0 ? -z / dz : Infinity;
    let side: Side | null = null;
    for (const each of this.sides) {
      const t = reachOf(each, x, y, z, dx, dy, dz);
      if (t > TOUCH && t < reach) {
        reach = t;
        side = each;
      }
    }
    let level: Level | null = null;
    for (const each of this.levels) {
      if (dz > 0 && !each.thin) continue;
      const t = (each.height - z) / dz;
      if (t <= TOUCH || t >= reach) continue;
      if (!each.rings.some((ring) => pointInRing([x + t * dx, y + t * dy], ring, each.thin ? TOUCH : 0))) continue;
      reach = t;
      level = each;
    }
    if (level !== null) return this.onLevel(level, reach, x + reach * dx, y + reach * dy, dz < 0 ? 1 : -1);
    if (side === null) return null;
    return this.onSide(side, reach, x + reach * dx, y + reach * dy, z + reach * dz);
  }

  private onSide(side: Side, reach: number, x: number, y: number, z: number): FaceMeeting {
    const { ax, ay, length, height, nx, ny, id, reflects } = side;
    // Along a → b, whose way is (−ny, nx) for an outward way to its right.
    const along = (y - ay) * nx - (x - ax) * ny;
    const [i, s] = this.cut(along, length);
    const [j, up] = this.cut(z, height);
    return {
      id,
      key: `${this.sides.indexOf(side)} ${i} ${j}`,
      reach,
      reflects,
      middle: [ax - ny * s, ay + nx * s, up],
      outward: [nx, ny, 0],
    };
  }

  private onLevel(level: Level, reach: number, x: number, y: number, up: 1 | -1): FaceMeeting {
    const i = Math.floor(x / this.patch);
    const j = Math.floor(y / this.patch);
    return {
      id: level.id,
      key: `l${this.levels.indexOf(level)} ${i} ${j} ${up}`,
      reach,
      reflects: level.reflects,
      middle: [x, y, level.height],
      outward: [0, 0, up],
    };
  }

  /** Number and middle of the part of a stretch that a place lies in: as many equal parts as the patch asks for. */
  private cut(at: number, length: number): [part: number, middle: number] {
    const parts = Math.max(1, Math.ceil(length / this.patch - TOUCH));
    const part = Math.min(parts - 1, Math.max(0, Math.floor((at / length) * parts)));
    return [part, ((part + 0.5) * length) / parts];
  }
}

/** Shares of sunlight that the faces of a yard throw back, each once. */
export function faceColours(occluders: readonly Occluder[]): number[] {
  const all = occluders.flatMap(({ solids }) =>
    solids.flatMap((solid) => (solid.kind === 'prism' && solid.reflects !== null ? [solid.reflects] : [])),
  );
  return [...new Set(all)];
}

function sidesOf({ id, solids }: Occluder): Side[] {
  return solids.flatMap((solid): Side[] => {
    if (solid.kind !== 'prism' || solid.reflects === null) return [];
    const outline = unionOutline(solid.rings);
    return Array.from({ length: outline.length / SEGMENT }, (_, k): Side => {
      const [ax, ay, bx, by] = outline.subarray(k * SEGMENT, (k + 1) * SEGMENT);
      const length = Math.hypot(bx - ax, by - ay);
      return {
        id,
        ax,
        ay,
        bx,
        by,
        length,
        height: solid.height,
        nx: (by - ay) / length,
        ny: (ax - bx) / length,
        reflects: solid.reflects ?? 0,
      };
    }).filter(({ length }) => length > TOUCH);
  });
}

function levelsOf({ id, solids }: Occluder): Level[] {
  return solids.flatMap((solid): Level[] =>
    (solid.kind === 'prism' || solid.kind === 'lid') && solid.reflects !== null
      ? [{ id, rings: solid.rings, height: solid.height, thin: solid.kind === 'lid', reflects: solid.reflects }]
      : [],
  );
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
