import { type SkyPoint, radiansOf } from '../../engine/index.ts';

/** As the plan lies under it, east on the right; or as one sees it looking up, east on the left. */
export type DomeSide = 'map' | 'sky';

/** Radius of the horizon on the picture. */
export const HORIZON = 100;

/** Equidistant dome: the zenith in the middle, true north up, y down. */
export function domePoint([azimuth, altitude]: SkyPoint, side: DomeSide): readonly [x: number, y: number] {
  const radius = HORIZON * (1 - altitude / 90);
  const angle = radiansOf(azimuth);
  const east = radius * Math.sin(angle);
  return [side === 'map' ? east : -east, -radius * Math.cos(angle)];
}

/** "M…Z" of closed outlines. */
export function loopsPath(loops: readonly (readonly SkyPoint[])[], side: DomeSide): string {
  return loops.map((loop) => `M${pathData(loop, side)}Z`).join('');
}

/** "M…" of an open line. */
export function linePath(points: readonly SkyPoint[], side: DomeSide): string {
  return points.length < 2 ? '' : `M${pathData(points, side)}`;
}

function pathData(points: readonly SkyPoint[], side: DomeSide): string {
  return points
    .map((point) =>
      domePoint(point, side)
        .map((value) => value.toFixed(1))
        .join(' '),
    )
    .join('L');
}
