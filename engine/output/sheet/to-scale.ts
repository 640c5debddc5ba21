/** Pictures that come out true to scale on paper: their drawing unit is one millimetre of it. */

import type { Units } from '../../plan/units/units.ts';
import { escaped } from './markup.ts';

/** Drawn so many times smaller than it is. */
const SCALES = [50, 100, 200, 250, 500, 1000] as const;
/** What A4 and Letter both leave between their margins, with half a page for each picture. [mm] */
const PAPER = { width: 178, height: 128 } as const;
/** How wide a letter is for its height, of a wide plain face. */
export const LETTER_WIDTH = 0.53;
/** Room for the bar under a picture. [mm] */
const BAR_ROOM = 9;

/** The largest of the usual scales at which something fits on the page. @param room All round it. [mm] */
export function scaleFor(width: number, height: number, room: number): number {
  const fits = (scale: number): boolean =>
    (width * 1000) / scale + 2 * room <= PAPER.width && (height * 1000) / scale + 2 * room + BAR_ROOM <= PAPER.height;
  return SCALES.find(fits) ?? SCALES[SCALES.length - 1];
}

/**
 * A picture with its scale and a bar to measure it by.
 * @param box What it shows: x, y, width, height. [mm of paper]  @param letters Their size. [mm]
 */
export function scaledPicture(
  title: string,
  [x, y, width, height]: readonly [number, number, number, number],
  inside: string,
  { scale, letters, units }: { readonly scale: number; readonly letters: number; readonly units: Units },
): string {
  const { metres, words } = barOf(scale, units);
  const wide = Math.max(width, 6 + (metres * 1000) / scale + LETTER_WIDTH * letters * words.length);
  const high = height + BAR_ROOM;
  return (
    `<svg role="img" aria-label="${escaped(title)}" width="${millimetres(wide)}mm" height="${millimetres(high)}mm" ` +
    `viewBox="${[x - (wide - width) / 2, y, wide, high].map(millimetres).join(' ')}" font-family="sans-serif" ` +
    `font-size="${letters}" xmlns="http://www.w3.org/2000/svg">${inside}` +
    `${bar(x - (wide - width) / 2 + 2, y + height + 3, scale, letters, units)}</svg>`
  );
}

/** One metre (or five feet) and what it must measure on paper. */
function barOf(scale: number, units: Units): { readonly metres: number; readonly words: string } {
  const [metres, name] = units === 'metric' ? [1, '1 m'] : [1.524, '5 ft'];
  return { metres, words: `${name}, ${((metres * 1000) / scale).toFixed(1)} mm on paper: 1 : ${scale}` };
}

function bar(x: number, y: number, scale: number, letters: number, units: Units): string {
  const { metres, words } = barOf(scale, units);
  const long = (metres * 1000) / scale;
  const [left, right, middle] = [x, x + long, y].map(millimetres);
  const ends = `M${left} ${millimetres(y - 1.2)}v2.4M${right} ${millimetres(y - 1.2)}v2.4`;
  return (
    `<g class="on-paper"><path d="M${left} ${middle}H${right}${ends}" fill="none" stroke="black" stroke-width="0.3"/>` +
    `<text x="${millimetres(x + long + 2)}" y="${millimetres(y + letters / 3)}">${words}</text></g>`
  );
}

/** To a hundredth of a millimetre. */
export function millimetres(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** A line that must measure ten centimetres on paper, four inches beside it, so that a shrunk print is found out. */
export function measureMe(): string {
  const tick = (x: number, y: number): string => `<path d="M${x} ${y - 1.5}v3" stroke="black" stroke-width="0.3"/>`;
  const bar = (width: number, y: number, words: string): string =>
    `<path d="M0 ${y}h${width}" stroke="black" stroke-width="0.3"/>${tick(0, y)}${tick(width, y)}<text ` +
    `x="${width / 2}" y="${y - 1}" text-anchor="middle" font-size="3">${words}</text>`;
  return (
    `<svg role="img" aria-label="Measure me" width="104mm" height="16mm" viewBox="-1 -1 104 16" ` +
    `xmlns="http://www.w3.org/2000/svg">${bar(100, 5, 'measure me: 10 cm')}${bar(101.6, 12, 'measure me: 4 in')}</svg>`
  );
}
