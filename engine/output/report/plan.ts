/** The yard from above in black ink: what was drawn, over its grades as hatching, denser where it is hotter. */

import { GRADE_WORDS } from '../../load/light/nine.ts';
import type { LoadResult } from '../../load/types.ts';
import { upBearingOf } from '../../plan/defaults.ts';
import { canopyRing } from '../../plan/geometry/cloth-shapes.ts';
import { boundsOf, openRing } from '../../plan/geometry/shapes.ts';
import type { Feature, Plan, PlanPoint } from '../../plan/types.ts';
import { METRES_PER_FOOT } from '../../plan/units/per-unit.ts';
import { formatLength } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { planDirection } from '../../scene/direction.ts';
import { GRADE_HATCH } from '../map/grade-hatch.ts';
import { crownsOf, gradeNumbersAt } from '../map/grade-numbers.ts';
import { plantLetter } from '../map/heat-map.ts';
import { escaped } from '../sheet/markup.ts';
import { scaleFor } from '../sheet/to-scale.ts';
import { coordinate, label, lineThrough, ringThrough, svgPicture } from './svg.ts';

/** The longer side of the yard, and the room round it. [drawing units] */
const LONG_SIDE = 1000;
const ROOM = 60;
const LETTER = 26;
/** The picture is as wide as the page, about 680 px at 96 dpi: what is given in px is drawn so many units long. */
const UNITS_PER_PX = 1.6;
const NUMBER = 20;

interface Frame {
  readonly scale: number;
  at(point: PlanPoint): [number, number];
}

/**
 * True to scale on paper.
 * @param load `null`: the yard without its heat  @returns the picture; `gradeKey` says what its hatching means
 */
export function planPicture(plan: Plan, load: LoadResult | null, units: Units): string {
  const { minX, minY, maxX, maxY } = boundsOf(plan.site.boundary);
  const scale = LONG_SIDE / Math.max(maxX - minX, maxY - minY);
  const frame: Frame = { scale, at: ([x, y]) => [(x - minX) * scale, (maxY - y) * scale] };
  const [width, height] = [(maxX - minX) * scale, (maxY - minY) * scale];
  const paper = scaleFor((width + 2 * ROOM) / scale, (height + 2 * ROOM) / scale, 0);
  const inside = [
    load === null ? '' : `<defs>${patterns()}</defs>${gradeAreas(load, frame)}`,
    `<path d="${ringThrough(openRing(plan.site.boundary).map(frame.at))}" fill="none" stroke="black" ` +
      `stroke-width="1.5" stroke-dasharray="14 5 3 5"/>`,
    ...plan.features.map((feature) => drawn(feature, frame)),
    load === null ? '' : gradeNumbers(plan, load, frame),
    ...(load?.plants ?? []).map(({ at }, index) => letterAt(frame.at(at), index)),
    northArrow(plan, width),
    scaleBar(scale, height, units, paper),
  ].join('');
  const size = `${formatLength(maxX - minX, units)} by ${formatLength(maxY - minY, units)}`;
  return svgPicture(
    `The yard from above, ${size}${load === null ? '' : ', hatched and numbered by grade'}`,
    [-ROOM, -ROOM, width + 2 * ROOM, height + 2 * ROOM],
    inside,
    1000 / paper / scale,
  );
}

/** A swatch of hatching for each grade, with its number and its word. */
export function gradeKey(): string {
  const swatches = GRADE_WORDS.map((word, index) => {
    const x = index * 190;
    return (
      `<rect x="${x}" y="2" width="44" height="30" fill="${fillOf(index + 1)}" stroke="black"/><text ` +
      `x="${x + 54}" y="25" font-size="22">${index + 1} ${escaped(word)}</text>`
    );
  });
  return svgPicture('Key to the hatching, 1 mild to 5 scorching', [-2, 0, 950, 36], swatches.join(''));
}

function fillOf(grade: number): string {
  return `url(#report-grade-${grade})`;
}

function patterns(): string {
  return GRADE_HATCH.map(({ gap, stroke }, index) => {
    const [apart, middle, width] = [gap, gap / 2, stroke].map((px) => coordinate(px * UNITS_PER_PX));
    return (
      `<pattern id="report-grade-${index + 1}" width="${apart}" height="${apart}" ` +
      `patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path d="M${middle} 0V${apart}" stroke="black" ` +
      `stroke-width="${width}"/></pattern>`
    );
  }).join('');
}

/** Cells of one grade next to each other in a row make one rectangle, all of a grade one path. */
function gradeAreas({ grid, cells }: LoadResult, frame: Frame): string {
  const boxes = GRADE_HATCH.map((): string[] => []);
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns;) {
      const grade = cells.grade[row * grid.columns + column];
      let end = column + 1;
      while (end < grid.columns && cells.grade[row * grid.columns + end] === grade) end++;
      if (!Number.isNaN(grade)) {
        const [x, y] = frame.at([grid.x0 + column * grid.cell, grid.y0 + (row + 1) * grid.cell]);
        const width = coordinate((end - column) * grid.cell * frame.scale);
        boxes[grade - 1].push(
          `M${coordinate(x)} ${coordinate(y)}h${width}v${coordinate(grid.cell * frame.scale)}h-${width}z`,
        );
      }
      column = end;
    }
  }
  return boxes
    .map((path, index) => (path.length === 0 ? '' : `<path d="${path.join('')}" fill="${fillOf(index + 1)}"/>`))
    .join('');
}

/** Where each grade has its number, as on the printed map. */
function gradeNumbers(plan: Plan, { grid, cells }: LoadResult, { at }: Frame): string {
  const occupied = crownsOf(plan);
  return GRADE_HATCH.flatMap((_, index) =>
    gradeNumbersAt(
      grid,
      Array.from(cells.grade, (grade) => Number(grade === index + 1)),
      occupied,
    ).map((spot) => {
      const [x, y] = at(spot);
      return label(x, y + NUMBER / 3, String(index + 1), NUMBER);
    }),
  ).join('');
}

function drawn(feature: Feature, { at, scale }: Frame): string {
  const line = (points: readonly PlanPoint[], style: string): string =>
    `<path d="${lineThrough(points.map(at))}" ${style}/>`;
  const ring = (points: readonly PlanPoint[], style: string): string =>
    `<path d="${ringThrough(points.map(at))}" ${style}/>`;
  const disc = (center: PlanPoint, radius: number, style: string) => {
    const [x, y] = at(center);
    return `<circle cx="${coordinate(x)}" cy="${coordinate(y)}" r="${coordinate(radius * scale)}" ${style}/>`;
  };
  switch (feature.kind) {
    case 'wall':
      return line(
        feature.path,
        `fill="none" stroke="black" stroke-width="${coordinate(Math.max(4, feature.thickness * scale))}"`,
      );
    case 'hedge':
      return line(
        feature.path,
        `fill="none" stroke="#777" stroke-width="${coordinate(Math.max(4, feature.thickness * scale))}"`,
      );
    case 'building':
      return ring(openRing(feature.outline), 'fill="white" stroke="black" stroke-width="4"');
    case 'tree':
      return disc(
        feature.at,
        feature.crownWidth / 2,
        'fill="none" stroke="black" stroke-width="2" stroke-dasharray="2 6" stroke-linecap="round"',
      );
    case 'canopy':
      return ring(canopyRing(feature), 'fill="none" stroke="black" stroke-width="3" stroke-dasharray="12 6"');
    case 'screen':
      return line(feature.path, 'fill="none" stroke="black" stroke-width="5" stroke-dasharray="12 6"');
    case 'bed':
      return ring(openRing(feature.outline), 'fill="none" stroke="black" stroke-width="2"');
    case 'plant':
      return disc(feature.at, feature.spread / 2, 'fill="none" stroke="black" stroke-width="2"');
    default:
      return '';
  }
}

function letterAt([x, y]: readonly [number, number], index: number): string {
  return plantLetter(index) === '' ? '' : label(x, y + LETTER / 3, plantLetter(index), LETTER);
}

/** In the corner, upper right. */
function northArrow(plan: Plan, width: number): string {
  const [dx, dy] = planDirection(0, 0, upBearingOf(plan));
  const [x, y] = [width + ROOM / 2, -ROOM / 6];
  const tip = [x + dx * 20, y - dy * 20] as const;
  return (
    `<path d="${lineThrough([[x - dx * 20, y + dy * 20], tip])}" stroke="black" ` +
    `stroke-width="3"/><circle cx="${coordinate(tip[0])}" cy="${coordinate(tip[1])}" ` +
    `r="5"/>${label(x + dx * 36, y - dy * 36 + 7, 'N', 20)}`
  );
}

/** A round length, about a fifth of the yard. */
/** So long on the ground, so long on paper. */
function scaleBar(scale: number, height: number, units: Units, paper: number): string {
  const unit = units === 'imperial' ? METRES_PER_FOOT : 1;
  const most = LONG_SIDE / 5 / scale / unit;
  const count = [100, 50, 20, 10, 5, 2].find((each) => each <= most) ?? 1;
  const long = count * unit * scale;
  const [bar, top] = [coordinate(long), coordinate(height + 30)];
  const onPaper = ((count * unit * 1000) / paper).toFixed(1);
  const words = `${count} ${units === 'imperial' ? 'ft' : 'm'}, ${onPaper} mm on paper`;
  return (
    `<path d="M0 ${top}v10h${bar}v-10" fill="none" stroke="black" stroke-width="2"/>` +
    `<text x="${coordinate(long + 12)}" y="${coordinate(height + 42)}" font-size="20">${words}: 1 : ${paper}</text>`
  );
}
