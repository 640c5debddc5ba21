import { radiansOf } from '../../engine/index.ts';

/** Shape of one wedge of a rose, true bearings clockwise from straight up. */
export interface Wedge {
  /** "M…Z". */
  readonly path: string;
  /** Middle of the wedge's own ground and of the number beyond it. */
  readonly label: readonly [number, number];
}

/** A wedge spans an eighth of the circle, less a gap. [°] */
const HALF = 20;

/**
 * @param bearing of the wedge's middle [°] @param tone 0 to 1, the wedge's length
 * @param inner, outer Radii that tone 0 and tone 1 reach. @param labelAt Radius of the number.
 */
export function wedgeOf(bearing: number, tone: number, inner: number, outer: number, labelAt: number): Wedge {
  const at = (degrees: number, radius: number): readonly [number, number] => {
    const angle = radiansOf(degrees);
    return [radius * Math.sin(angle), -radius * Math.cos(angle)];
  };
  const said = (point: readonly [number, number]): string => point.map((value) => value.toFixed(2)).join(' ');
  const reach = inner + (outer - inner) * tone;
  const path =
    `M${said(at(bearing - HALF, inner))}L${said(at(bearing - HALF, reach))}A${reach.toFixed(2)} ` +
    `${reach.toFixed(2)} 0 0 1 ${said(at(bearing + HALF, reach))}L${said(at(bearing + HALF, inner))}A${inner} ` +
    `${inner} 0 0 0 ${said(at(bearing - HALF, inner))}Z`;
  return { path, label: at(bearing, labelAt) };
}
