/** A cut through a canopy and a plant, towards the low sun that slips under: heights true, to scale on paper. */

import type { Section, SectionPoint } from '../../advice/sight/section.ts';
import { formatLength } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { scaleFor } from '../sheet/to-scale.ts';
import { coordinate, label, lineThrough, svgPicture } from './svg.ts';

const PER_METRE = 100;
const MARGIN = 50;
/** Room over the uppermost thing, for the clock time. [drawing units] */
const HEAD = 110;
/** Letters on paper. [mm] */
const LETTERS = 3;
/** The report has two pages: a person's height is two centimetres of it. */
const LEAST_SCALE = 100;

export function sectionPicture(title: string, { cloth, plant, slip }: Section, units: Units): string {
  const at = ({ along, height }: SectionPoint): [number, number] => [along * PER_METRE, -height * PER_METRE];
  const sheets = cloth.map((ends) => ends.map(at));
  const reach = plant.halfWidth * PER_METRE;
  const left = Math.min(-reach, ...sheets.flat().map(([x]) => x)) - MARGIN;
  const right = Math.max(reach, ...sheets.flat().map(([x]) => x)) + 2 * MARGIN;
  const top = Math.min(-plant.top * PER_METRE, ...sheets.flat().map(([, y]) => y)) - HEAD;
  const [foot, crown] = [plant.foliageFrom * PER_METRE, plant.top * PER_METRE];
  const scale = Math.max(LEAST_SCALE, scaleFor((right - left) / PER_METRE, -top / PER_METRE, 0));
  // A drawing unit is a centimetre.
  const paper = 10 / scale;
  const letters = LETTERS / paper;
  const height = (metres: number, x: number): string =>
    label(x, -metres * PER_METRE - letters / 2, formatLength(metres, units), letters);
  const inside = [
    `<path d="M${coordinate(left)} 0H${coordinate(right)}" stroke="black" stroke-width="3"/>`,
    plant.pot === null
      ? `<path d="M0 0V${coordinate(-foot)}" stroke="black" stroke-width="4"/>`
      : `<rect x="${coordinate(-(plant.pot.width * PER_METRE) / 2)}" ` +
        `y="${coordinate(-plant.pot.height * PER_METRE)}" width="${coordinate(plant.pot.width * PER_METRE)}" ` +
        `height="${coordinate(plant.pot.height * PER_METRE)}" fill="none" stroke="black" stroke-width="3"/>`,
    `<ellipse cx="0" cy="${coordinate(-(foot + crown) / 2)}" rx="${coordinate(reach)}" ` +
      `ry="${coordinate((crown - foot) / 2)}" fill="none" stroke="black" stroke-width="2"/>`,
    ...sheets.map((ends) => `<path d="${lineThrough(ends)}" stroke="black" stroke-width="5" stroke-dasharray="12 6"/>`),
    slip === null ? '' : ray(at(slip.ray[0]), at(slip.ray[1]), right, top, slip.when, letters),
    height(plant.top, 0),
    ...cloth.map(([end]) => height(end.height, end.along * PER_METRE + 3 * letters)),
    label(left + 5 * letters, letters * 1.3, `1 : ${scale}`, letters),
  ].join('');
  return svgPicture(title, [left, top, right - left, MARGIN - top], inside, paper);
}

/** Drawn as far as the picture goes. */
function ray(
  from: readonly [number, number],
  to: readonly [number, number],
  right: number,
  top: number,
  when: string,
  letters: number,
): string {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const share = Math.min(1, (right - MARGIN - from[0]) / dx, dy < 0 ? (top + HEAD / 2 - from[1]) / dy : 1);
  const end: [number, number] = [from[0] + share * dx, from[1] + share * dy];
  return (
    `<path d="${lineThrough([from, end])}" stroke="black" stroke-width="2" stroke-dasharray="3 ` +
    `5"/><circle cx="${coordinate(end[0])}" cy="${coordinate(end[1])}" r="9" fill="white" stroke="black" ` +
    `stroke-width="2"/>${label(end[0], end[1] - 16, when, letters)}`
  );
}
