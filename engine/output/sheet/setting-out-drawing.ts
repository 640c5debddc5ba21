/** Where the posts go: the frame among house and walls, with A, B and north, to scale. */

import { formatTape } from '../../frame/layout/lengths.ts';
import type { Surrounding } from '../../frame/layout/types.ts';
import type { BuildSheet } from '../../frame/types.ts';
import { boundsOf, meanPoint } from '../../plan/geometry/shapes.ts';
import type { PlanPoint } from '../../plan/types.ts';
import type { Units } from '../../plan/units/units.ts';
import { line, postMark, words } from './drawing.ts';
import { millimetres, scaledPicture, scaleFor } from './to-scale.ts';

/** [mm] */
const LETTERS = 3;
const ROOM = 12;
/** From the middle of the north arrow to the far edge of its letter. [mm] */
const ARROW = 10;

type At = (point: PlanPoint) => readonly [x: number, y: number];

/** Empty where the plan has no two fixed corners to measure from. */
export function settingOutDrawing(sheet: BuildSheet, units: Units): string {
  const { fixed, posts, around, upBearing } = sheet.settingOut;
  if (fixed.length < 2) return '';
  const { minX, maxX, minY, maxY } = boundsOf([...fixed, ...posts].map(({ at }) => at));
  const scale = scaleFor(maxX - minX, maxY - minY, ROOM);
  const perMetre = 1000 / scale;
  const at: At = ([x, y]) => [(x - minX) * perMetre, (maxY - y) * perMetre];
  const [width, height] = [(maxX - minX) * perMetre, (maxY - minY) * perMetre];
  const box = [-ROOM, -ROOM, width + 2 * ROOM, height + 2 * ROOM] as const;
  const [a, b] = fixed.map((point) => at(point.at));
  const tapes = posts.flatMap((post) =>
    [a, b].map((end) => line(end, at(post.at), 'stroke-width="0.12" stroke-dasharray="0.5 1"')),
  );
  const inside = [
    // Walls run on beyond the picture's edge.
    `<clipPath id="setting-out-edge"><rect x="${-ROOM}" y="${-ROOM}" width="${millimetres(box[2])}" ` +
      `height="${millimetres(box[3])}"/></clipPath>`,
    `<g clip-path="url(#setting-out-edge)">${around.map((thing) => drawn(thing, at, box)).join('')}</g>`,
    ...tapes,
    frameEdge(sheet, at),
    ...posts.map((post) => postMark(post.id, at(post.at), meanPoint(posts.map((one) => at(one.at))), LETTERS)),
    ...fixed.map(({ label, at: place }) => fixedMark(label, at(place))),
    words(
      `A to B ${formatTape(Math.hypot(fixed[0].at[0] - fixed[1].at[0], fixed[0].at[1] - fixed[1].at[1]), units)}`,
      [a[0] + 0.6 * (b[0] - a[0]), a[1] + 0.6 * (b[1] - a[1])],
      LETTERS,
    ),
    north(freeCorner(width, height, [a, b, ...posts.map((post) => at(post.at))]), upBearing),
  ].join('');
  return scaledPicture(`${sheet.name}: where the posts stand`, box, inside, { scale, letters: LETTERS, units });
}

type Box = readonly [x: number, y: number, width: number, height: number];

function drawn({ kind, name, path, closed }: Surrounding, at: At, box: Box): string {
  const corners = path.map(at);
  const d = `M${corners.map((corner) => corner.map(millimetres).join(' ')).join('L')}${closed ? 'Z' : ''}`;
  const style = {
    building: 'fill="#ddd" stroke="black" stroke-width="0.5"',
    wall: 'fill="none" stroke="black" stroke-width="0.9"',
    'property line': 'fill="none" stroke="black" stroke-width="0.2" stroke-dasharray="3 1 0.6 1"',
  }[kind];
  return `<path d="${d}" ${style}/>${name === null || kind !== 'building' ? '' : named(name, corners, box)}`;
}

/** In the middle of what the picture shows of it, upwards where that is narrow; left out where there is no room. */
function named(name: string, corners: readonly (readonly [number, number])[], [x, y, width, height]: Box): string {
  const seen = (axis: 0 | 1, from: number, long: number): readonly [number, number] => {
    const all = corners.map((corner) => Math.min(from + long, Math.max(from, corner[axis])));
    return [Math.min(...all), Math.max(...all)];
  };
  const [[left, right], [top, bottom]] = [seen(0, x, width), seen(1, y, height)];
  const upright = bottom - top > right - left;
  const [long, wide] = upright ? [bottom - top, right - left] : [right - left, bottom - top];
  const letters = Math.floor(long / (0.55 * LETTERS));
  if (wide < 1.5 * LETTERS || letters < 3) return '';
  const shown = name.length <= letters ? name : `${name.slice(0, letters - 1)}…`;
  const middle = [(left + right) / 2, (top + bottom) / 2] as const;
  return upright
    ? `<g transform="rotate(-90 ${middle.map(millimetres).join(' ')})">${words(shown, middle, LETTERS)}</g>`
    : words(shown, [middle[0], middle[1] + LETTERS / 3], LETTERS);
}

/** The outer posts joined, with back and front beside their edges. */
function frameEdge({ kind, settingOut: { posts, diagonals } }: BuildSheet, at: At): string {
  if (kind === 'screen')
    return posts
      .slice(1)
      .map((post, k) => edge(at(posts[k].at), at(post.at)))
      .join('');
  const corner = (id: string): readonly [number, number] => {
    const post = posts.find((one) => one.id === id) ?? posts[0];
    return at(post.at);
  };
  const [[backLeft, frontRight], [backRight, frontLeft]] = diagonals.map(({ from, to }) => [corner(from), corner(to)]);
  const ring = [backLeft, backRight, frontRight, frontLeft];
  const middle = [(backLeft[0] + frontRight[0]) / 2, (backLeft[1] + frontRight[1]) / 2] as const;
  const side = (text: string, p: readonly [number, number], q: readonly [number, number]): string => {
    const [x, y] = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
    return words(text, [x + 0.2 * (middle[0] - x), y + 0.2 * (middle[1] - y) + LETTERS / 3], LETTERS);
  };
  return (
    ring.map((point, k) => edge(point, ring[(k + 1) % ring.length])).join('') +
    side('back', backLeft, backRight) +
    side('front', frontLeft, frontRight)
  );
}

function edge(from: readonly [number, number], to: readonly [number, number]): string {
  return line(from, to, 'stroke-width="0.5"');
}

function fixedMark(label: string, [x, y]: readonly [number, number]): string {
  return (
    `<circle cx="${millimetres(x)}" cy="${millimetres(y)}" r="1.6" fill="white" stroke="black" stroke-width="0.5"/>` +
    `<circle cx="${millimetres(x)}" cy="${millimetres(y)}" r="0.4" fill="black"/>` +
    words(label, [x + 3.4, y - 1.6], 1.4 * LETTERS)
  );
}

/** For the arrow: the corner of the picture that is farthest from every mark, at the top where that will do. */
function freeCorner(
  width: number,
  height: number,
  marks: readonly (readonly [number, number])[],
): readonly [number, number] {
  const [left, right, top, bottom] = [ARROW - ROOM, width + ROOM - ARROW, ARROW - ROOM, height + ROOM - ARROW];
  const corners = [
    [right, top],
    [left, top],
    [right, bottom],
    [left, bottom],
  ] as const;
  const room = ([x, y]: readonly [number, number]): number =>
    Math.min(...marks.map((mark) => Math.hypot(mark[0] - x, mark[1] - y)));
  return corners.find((corner) => room(corner) > 1.5 * ARROW) ?? corners.toSorted((p, q) => room(q) - room(p))[0];
}

/** Clear of the picture's edge, however it is turned. @param upBearing True bearing of the picture's top. [°] */
function north([x, y]: readonly [number, number], upBearing: number): string {
  return (
    `<g transform="translate(${millimetres(x)} ${millimetres(y)}) rotate(${millimetres(-upBearing)})">` +
    '<path d="M0 5V-4M-1.6 -1.2L0 -5L1.6 -1.2Z" fill="black" stroke="black" stroke-width="0.4"/>' +
    `${words('N', [0, -6], LETTERS)}</g>`
  );
}
