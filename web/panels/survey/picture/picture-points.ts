import { lieOf, turned } from '../../../../engine/index.ts';
import type { PlanPoint, Underlay } from '../../../../engine/index.ts';

/** Of a picture in its own pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * Which pixel of the picture under the drawing lies at a point of the plan, from its upper left, whole; `null` beside
 * the picture.
 */
export function pixelAt(underlay: Underlay, size: Size, at: PlanPoint): readonly [number, number] | null {
  const [x, y] = turned(at, underlay.at, -lieOf(underlay).turn);
  const pixels = size.width / underlay.width;
  // A hair beside the edge rounds to −0, which is 0.
  const across = Math.round((x - underlay.at[0]) * pixels) + 0;
  const down = Math.round(size.height - (y - underlay.at[1]) * pixels) + 0;
  return across < 0 || down < 0 || across > size.width || down > size.height ? null : [across, down];
}
