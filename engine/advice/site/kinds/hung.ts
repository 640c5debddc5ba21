import { canopyGrid } from '../../../frame/layout/canopy-grid.ts';
import { screenPosts } from '../../../frame/layout/screen-frame.ts';
import { bottomOf, turnOf } from '../../../plan/defaults.ts';
import { headingOf } from '../../../plan/geometry/angles.ts';
import { canopyCorners, canopyEdge, canopyRing } from '../../../plan/geometry/cloth-shapes.ts';
import { cleanPath, distance } from '../../../plan/geometry/shapes.ts';
import type { SpacePoint } from '../../../plan/geometry/vectors.ts';
import type { Canopy, Cloth, Drop, DropSide, PlanPoint, Screen } from '../../../plan/types.ts';
import type { ClothKind, SiteOption } from '../types.ts';

/** Cloth that hangs upright over a line, from its top down to its foot. [m] */
export interface Upright {
  readonly line: readonly [PlanPoint, PlanPoint];
  readonly foot: number;
  readonly top: number;
}

/** What rules, prices and words ask of cloth, whatever its kind. */
export interface HungCloth {
  readonly word: 'roof' | 'screen';
  /** As a sentence begins. */
  readonly name: string;
  /** The ring that cloth hangs level over; `null`: it only hangs upright. */
  overhead(): PlanPoint[] | null;
  uprights(): Upright[];
  /** @param maxBay longest bay of its frame [m] */
  posts(maxBay: number): PlanPoint[];
  /** Its middle, size, turn and height. */
  place(): Pick<SiteOption, 'center' | 'length' | 'width' | 'turn' | 'height' | 'density' | 'drops'>;
  /** The same for all that cost the same. */
  form(): string;
}

export function hungOf(cloth: Cloth): HungCloth {
  return cloth.kind === 'canopy' ? hungRoof(cloth) : hungScreen(cloth);
}

export function kindOf(cloth: Cloth): ClothKind {
  return cloth.kind === 'screen' ? 'screen' : cloth.drops?.length ? 'roof with drops' : 'roof';
}

function hungRoof(roof: Canopy): HungCloth {
  const { center, length, width, height, density, drops = [] } = roof;
  return {
    word: 'roof',
    name: drops.length > 0 ? 'A roof with drops' : roof.onWall === true ? 'A roof from a wall' : 'A roof',
    overhead: () => canopyRing(roof),
    uprights: () =>
      drops.map(({ side, depth }) => {
        const [a, b] = canopyEdge(roof, side);
        return { line: [flat(a), flat(b)], foot: Math.min(a[2], b[2]) - depth, top: height };
      }),
    posts: (maxBay) => roofPosts(roof, maxBay),
    place: () => ({
      center,
      length,
      width,
      turn: turnOf(roof),
      height,
      density,
      drops: drops.map(({ side, depth }) => ({ side, depth })),
    }),
    form: () =>
      [
        'canopy',
        height,
        length,
        width,
        density,
        ...(roof.onWall === true ? ['wall'] : []),
        ...dropsHalfTurned(roof).flatMap((drop) => [drop.side, drop.depth, drop.density]),
      ].join(' '),
  };
}

/** A roof's drops; of a roof that costs the same the other way round, as it stands with the first of them in front. */
function dropsHalfTurned({ drops = [], onWall }: Canopy): readonly Drop[] {
  const [first] = drops;
  if (onWall === true || first === undefined || first.side === 'front' || first.side === 'left') return drops;
  return drops.map((drop) => ({ ...drop, side: OPPOSITE[drop.side] }));
}

const OPPOSITE: Readonly<Record<DropSide, DropSide>> = { front: 'back', back: 'front', left: 'right', right: 'left' };

function hungScreen(screen: Screen): HungCloth {
  const { path, height, density } = screen;
  const bottom = bottomOf(screen);
  const [a, b] = [path[0], path[path.length - 1]];
  const corners = (): PlanPoint[] => cleanPath(path);
  const legs = legsOf(screen);
  const length = legs.reduce((sum, leg) => sum + leg, 0);
  return {
    word: 'screen',
    name: legs.length > 1 ? 'A screen with a corner' : 'A screen',
    overhead: () => null,
    uprights: () =>
      corners()
        .slice(1)
        .map((end, k): Upright => ({ line: [corners()[k], end], foot: bottom, top: height })),
    posts: (maxBay) => screenPosts(screen, maxBay).map(({ at }) => at),
    place: () => ({
      center: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2],
      length,
      width: 0,
      turn: (headingOf(a, b) + 360) % 180,
      height,
      density,
      drops: [],
    }),
    form: () => ['screen', height, ...legs, density].join(' '),
  };
}

/** Lengths between a screen's corners, to the millimetre. [m] */
export function legsOf({ path }: Screen): number[] {
  const corners = cleanPath(path);
  return corners.slice(1).map((end, k) => Math.round(distance(corners[k], end) * 1000) / 1000);
}

function flat([x, y]: SpacePoint): PlanPoint {
  return [x, y];
}

function roofPosts(roof: Canopy, maxBay: number): PlanPoint[] {
  const { across, along } = canopyGrid(roof, maxBay);
  const [frontLeft, backLeft, backRight] = canopyCorners(roof);
  const posts: PlanPoint[] = [];
  // The first row is the back one: on a wall it needs no posts.
  for (let j = roof.onWall === true ? 1 : 0; j <= along; j++) {
    for (let i = 0; i <= across; i++) {
      const at = (axis: 0 | 1) =>
        backLeft[axis] +
        ((backRight[axis] - backLeft[axis]) * i) / across +
        ((frontLeft[axis] - backLeft[axis]) * j) / along;
      posts.push([at(0), at(1)]);
    }
  }
  return posts;
}
