/** Bits of SVG that every drawing of the report shares. */

import { escaped } from '../sheet/markup.ts';
import { millimetres } from '../sheet/to-scale.ts';

/** To a tenth of a drawing unit. */
export function coordinate(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** An SVG path through points. */
export function lineThrough(points: readonly (readonly [number, number])[]): string {
  return `M${points.map(([x, y]) => `${coordinate(x)} ${coordinate(y)}`).join('L')}`;
}

/** The same back to the first. */
export function ringThrough(points: readonly (readonly [number, number])[]): string {
  return `${lineThrough(points)}Z`;
}

/** Words with a white rim, readable over hatching. */
export function label(x: number, y: number, text: string, size: number): string {
  return (
    `<text x="${coordinate(x)}" y="${coordinate(y)}" font-size="${coordinate(size)}" text-anchor="middle" ` +
    `fill="black" stroke="white" stroke-width="${coordinate(size / 4)}" paint-order="stroke">${escaped(text)}</text>`
  );
}

/**
 * @param box x, y, width and height  @param inside SVG
 * @param unit How long a drawing unit is on paper [mm]; absent: the page decides how large the picture is.
 */
export function svgPicture(
  title: string,
  box: readonly [number, number, number, number],
  inside: string,
  unit?: number,
): string {
  const [, , width, height] = box;
  const size =
    unit === undefined ? '' : `width="${millimetres(width * unit)}mm" height="${millimetres(height * unit)}mm" `;
  return (
    `<svg role="img" aria-label="${escaped(title)}" ${size}viewBox="${box.map(coordinate).join(' ')}" ` +
    `font-family="sans-serif" xmlns="http://www.w3.org/2000/svg">${inside}</svg>`
  );
}
