/** The frame from above and from the side, to scale, as SVG in black only. */

import { formatTape } from '../../frame/layout/lengths.ts';
import type { DimensionKind } from '../../frame/layout/types.ts';
import type { BuildSheet } from '../../frame/types.ts';
import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { formatCut } from '../../plan/units/shown.ts';
import type { Units } from '../../plan/units/units.ts';
import { escaped } from './markup.ts';
import { LETTER_WIDTH, millimetres, scaledPicture, scaleFor } from './to-scale.ts';

/** Letters on paper, and room for four of them all round. [mm] */
const LETTERS = 3.2;
const MARGIN = 4;

/** A point of a picture. */
type Flat = readonly [x: number, y: number];
/** From where a frame is seen, and which way its front then lies: to the head, or to the foot. */
type Side = 'above' | 'above, turned' | 'side';
type Way = 1 | -1;
/** Where a point of the frame lies in a picture. [m] */
type View = (point: SpacePoint) => Flat;

/** From above: posts with their names, rails, the lengths between post middles and both diagonals. */
export function planDrawing(sheet: BuildSheet, units: Units): string {
  const turned = frontIsBelow(sheet);
  const fromAbove: View = ([x, y]) => (turned ? [-x, y] : [x, -y]);
  const flat = sheet.drawing.dimensions.filter((dimension) => dimension.from[2] === dimension.to[2]);
  return drawing(`${sheet.name} from above`, sheet, fromAbove, flat, units, turned ? 'above, turned' : 'above');
}

/** Whether a roof's front lies to the plan's foot, where the map has it: else it is drawn at the head. */
function frontIsBelow({ drawing: { posts, dimensions }, settingOut }: BuildSheet): boolean {
  const length = dimensions.find(({ kind }) => kind === 'length');
  const upOf = (foot: SpacePoint | undefined): number => {
    const post = posts.find((one) => one.foot[0] === foot?.[0] && one.foot[1] === foot?.[1]);
    return settingOut.posts.find(({ id }) => id === post?.id)?.at[1] ?? 0;
  };
  return upOf(length?.to) < upOf(length?.from);
}

/** From the side, heights true: looking along the frame's length. */
export function sideDrawing(sheet: BuildSheet, units: Units): string {
  const long = sheet.kind === 'screen' ? longestAxis(sheet) : 1;
  const fromSide: View = (point) => [point[long], -point[2]];
  const upright = sheet.drawing.dimensions.filter((dimension) => dimension.from[2] !== dimension.to[2]);
  return drawing(`${sheet.name} from the side`, sheet, fromSide, upright, units, 'side');
}

function drawing(
  title: string,
  sheet: BuildSheet,
  seen: View,
  dimensions: BuildSheet['drawing']['dimensions'],
  units: Units,
  from: Side,
): string {
  const above = from !== 'side';
  const way = from === 'above, turned' ? -1 : 1;
  const { tubes, cloths, posts } = sheet.drawing;
  const all = [...tubes.flatMap((tube) => [tube.from, tube.to]), ...cloths.flatMap((cloth) => cloth.corners)].map(seen);
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const size = LETTERS;
  const room = MARGIN * size;
  const scale = scaleFor(right - left, bottom - top, room);
  const perMetre = 1000 / scale;
  const view: View = (point) => {
    const [x, y] = seen(point);
    return [x * perMetre, y * perMetre];
  };
  const box = [
    left * perMetre - room,
    top * perMetre - room,
    (right - left) * perMetre + 2 * room,
    (bottom - top) * perMetre + 2 * room,
  ] as const;
  const middle = [((left + right) / 2) * perMetre, ((top + bottom) / 2) * perMetre] as const;
  const cloth = cloths.map(
    (sheetOfCloth) =>
      `<polygon points="${sheetOfCloth.corners.map((corner) => view(corner).map(millimetres).join(',')).join(' ')}" ` +
      `fill="none" stroke="black" stroke-width="0.2" stroke-dasharray="1.4 1"/>`,
  );
  const lines = tubes.map((tube) => line(view(tube.from), view(tube.to), 'stroke-width="0.6"'));
  const ground = above ? '' : line([box[0], 0], [box[0] + box[2], 0], 'stroke-width="0.2"');
  const names = above ? posts.map((post) => postMark(post.id, view(post.foot), middle, size)) : [];
  const whole = dimensions.find(({ kind }) => kind === 'length');
  const bay = dimensions.find(({ kind }) => kind === 'bay lengthwise');
  // In the middle of the front row's bays, where no rail runs and no other number stands.
  const along = whole === undefined || bay === undefined ? 0.7 : 1 - (0.5 * bay.length) / whole.length;
  const wall = wallBehind(sheet, view, above, middle);
  // Where a wall stands at the back, the height is written beyond it.
  const beyond = (kind: DimensionKind, [x, y]: Flat): Flat => [
    kind === 'height' && wall !== '' ? x - WALL.thick : x,
    y,
  ];
  const measures = dimensions.flatMap(({ kind, from, to, length }) =>
    kind === 'diagonal'
      ? []
      : [measure(formatCut(length, units), kind, beyond(kind, view(from)), beyond(kind, view(to)), size, way)],
  );
  const diagonals = dimensions.filter(({ kind }) => kind === 'diagonal');
  const crossed = crossedWords(
    diagonals.map(({ from, to, length }) => ({ a: view(from), b: view(to), text: formatTape(length, units) })),
    size,
    along,
  );
  const sides = above && sheet.kind === 'canopy' ? sideNames(whole, view, size, way) : '';
  const inside = [ground, wall, ...cloth, ...lines, ...names, ...measures, crossed, sides].join('');
  return scaledPicture(title, box, inside, { scale, letters: size, units });
}

/**
 * Both diagonals with their lengths, off the middle where they cross; one length for both where two have no room side
 * by side.
 * @param along How far along a diagonal its length stands.
 */
function crossedWords(
  diagonals: readonly { readonly a: Flat; readonly b: Flat; readonly text: string }[],
  size: number,
  along: number,
): string {
  const dashes = diagonals.map(({ a, b }) => line(a, b, 'stroke-width="0.15" stroke-dasharray="0.6 1.4"'));
  const places = diagonals.map(({ a, b }) => [a[0] + (b[0] - a[0]) * along, a[1] + (b[1] - a[1]) * along] as const);
  const tight =
    places.length === 2 &&
    places[0][1] === places[1][1] &&
    Math.abs(places[0][0] - places[1][0]) < LETTER_WIDTH * size * (diagonals[0].text.length + 1);
  const told = tight
    ? [words(`both ${diagonals[0].text}`, [(places[0][0] + places[1][0]) / 2, places[0][1] + 0.4 * size], size)]
    : diagonals.map(({ text }, k) => words(text, [places[k][0], places[k][1] + 0.4 * size], size));
  return [...dashes, ...told].join('');
}

/** Of the wall that a frame hangs from, so far over its rail and so thick on paper. [m], [mm] */
const WALL = { over: 0.3, thick: 3 } as const;

/** The wall that a frame hangs from; empty where it stands free. @param middle Of the picture. */
function wallBehind(sheet: BuildSheet, view: View, above: boolean, middle: Flat): string {
  const onWall = sheet.settingOut.posts.filter((post) => post.onWall).map(({ id }) => id);
  const posts = sheet.drawing.posts.filter(({ id }) => onWall.includes(id));
  if (posts.length === 0) return '';
  const [first, last] = [posts[0], posts[posts.length - 1]];
  const [p, q] = above
    ? [view(first.foot), view(last.foot)]
    : [view(first.foot), view([first.top[0], first.top[1], first.top[2] + WALL.over])];
  const long = Math.hypot(q[0] - p[0], q[1] - p[1]);
  const side = [(q[1] - p[1]) / long, (p[0] - q[0]) / long] as const;
  const away = Math.sign((p[0] - middle[0]) * side[0] + (p[1] - middle[1]) * side[1]) * WALL.thick;
  const out = ([x, y]: Flat): Flat => [x + away * side[0], y + away * side[1]];
  const corners = [p, q, out(q), out(p)].map((corner) => corner.map(millimetres).join(',')).join(' ');
  return `<polygon class="wall" points="${corners}" fill="#ccc" stroke="black" stroke-width="0.2"/>`;
}

/** Which edge is called back and which front, written outside of them. */
function sideNames(
  length: BuildSheet['drawing']['dimensions'][number] | undefined,
  view: View,
  size: number,
  way: Way,
): string {
  if (length === undefined) return '';
  const [back, front] = [view(length.from), view(length.to)];
  const anchor = way > 0 ? 'start' : 'end';
  return (
    words('back', [back[0] + way * 0.6 * size, back[1] + (way > 0 ? 3.6 : -2.9) * size], size, anchor) +
    words('front', [front[0] + way * 0.6 * size, front[1] + (way > 0 ? -1.2 : 1.9) * size], size, anchor)
  );
}

/** A post from above with its name, written away from a point. */
export function postMark(
  id: string,
  [x, y]: readonly [number, number],
  [awayX, awayY]: readonly [number, number],
  size: number,
): string {
  const right = x > awayX + 0.01;
  const place = [x + (right ? 0.6 : -0.6) * size, y + (y > awayY ? 1.2 : -0.5) * size] as const;
  return (
    `<circle cx="${millimetres(x)}" cy="${millimetres(y)}" r="${millimetres(0.35 * size)}" fill="black"/>` +
    words(id, place, size, right ? 'start' : 'end')
  );
}

/**
 * A length beside what it measures: whole sides and heights outside the frame, bays inside it.
 */
function measure(
  text: string,
  kind: Exclude<DimensionKind, 'diagonal'>,
  a: readonly [number, number],
  b: readonly [number, number],
  size: number,
  way: Way,
): string {
  const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const turned = way < 0;
  switch (kind) {
    case 'width':
      return words(text, [x, y + (turned ? -1.9 : 2.6) * size], size);
    case 'length':
      return upright(text, [x + (turned ? 2.9 : -2.2) * size, y], size);
    case 'bay lengthwise':
      return upright(text, [x + (turned ? -0.6 : 1.3) * size, y], size);
    case 'height in front':
      return upright(text, [x + 1.5 * size, y], size);
    case 'height':
      return upright(text, [x - 0.8 * size, y], size);
    case 'bay':
      // Beside an upright line, not across it.
      return Math.abs(b[1] - a[1]) > Math.abs(b[0] - a[0])
        ? upright(text, [x - 0.8 * size, y], size)
        : words(text, [x, y - 0.5 * size], size);
    case 'bay crosswise':
      return words(text, [x, y + (turned ? 1.2 : -0.5) * size], size);
  }
}

export function words(text: string, [x, y]: readonly [number, number], size: number, anchor = 'middle'): string {
  return (
    `<text x="${millimetres(x)}" y="${millimetres(y)}" text-anchor="${anchor}" stroke="white" ` +
    `stroke-width="${millimetres(0.3 * size)}" paint-order="stroke">${escaped(text)}</text>`
  );
}

/** Words that read from below upwards. */
function upright(text: string, [x, y]: readonly [number, number], size: number): string {
  return `<g transform="rotate(-90 ${millimetres(x)} ${millimetres(y)})">${words(text, [x, y], size)}</g>`;
}

function longestAxis(sheet: BuildSheet): 0 | 1 {
  const feet = sheet.drawing.posts.map((post) => post.foot);
  const reach = (axis: 0 | 1): number =>
    Math.max(...feet.map((foot) => foot[axis])) - Math.min(...feet.map((foot) => foot[axis]));
  return reach(0) > reach(1) ? 0 : 1;
}

export function line(a: readonly [number, number], b: readonly [number, number], style: string): string {
  return (
    `<path d="M${millimetres(a[0])} ${millimetres(a[1])}L${millimetres(b[0])} ${millimetres(b[1])}" fill="none" ` +
    `stroke="black" ${style}/>`
  );
}
