/**
 * Makes web/panels/parts/world/land.json: the outline of the land, coarse, to tap one's place on.
 * Source: Natural Earth (public domain), 1 : 110 million, as the npm package world-atlas 2.0.2 packs it in TopoJSON.
 * Run: node --import tsx tests/make/land.ts PATH-OF/land-110m.json
 */

import { readFileSync, writeFileSync } from 'node:fs';

/** Corners are rounded to this; farther south and north nobody gardens under a burning sun. [°] */
const STEP = 1;
const NORTH = 72;
const SOUTH = -56;
/**
 * Islands smaller than this either way are left out, and bends that stand off a straight line by less than `BEND`. [°]
 */
const LEAST = 2;
const BEND = 0.8;

type Pair = readonly [number, number];

interface Topology {
  readonly transform: { readonly scale: Pair; readonly translate: Pair };
  readonly arcs: readonly (readonly Pair[])[];
  readonly objects: {
    readonly land: { readonly geometries: readonly { readonly arcs: readonly (readonly (readonly number[])[])[] }[] };
  };
}

const { transform, arcs, objects } = JSON.parse(readFileSync(process.argv[2], 'utf8')) as Topology;

/** TopoJSON keeps each point as its difference from the one before, in whole steps. */
const lines = arcs.map((arc) => {
  let [x, y] = [0, 0];
  return arc.map(([dx, dy]): Pair => {
    x += dx;
    y += dy;
    return [x * transform.scale[0] + transform.translate[0], y * transform.scale[1] + transform.translate[1]];
  });
});

const rings = objects.land.geometries
  .flatMap((geometry) => geometry.arcs.flat())
  .map((indices) => indices.flatMap((index) => (index < 0 ? lines[~index].toReversed() : lines[index])));

/** The bends that matter (Douglas & Peucker 1973). */
function bends(line: readonly Pair[]): Pair[] {
  const [first, last] = [line[0], line[line.length - 1]];
  const [dx, dy] = [last[0] - first[0], last[1] - first[1]];
  const length = Math.hypot(dx, dy);
  const off = line.map(([x, y]) =>
    length === 0
      ? Math.hypot(x - first[0], y - first[1])
      : Math.abs((x - first[0]) * dy - (y - first[1]) * dx) / length,
  );
  const farthest = off.indexOf(Math.max(...off));
  return off[farthest] < BEND
    ? [first, last]
    : [...bends(line.slice(0, farthest + 1)).slice(0, -1), ...bends(line.slice(farthest))];
}

function steps(ring: readonly Pair[]): Pair[] {
  const rounded = bends(ring).map(([longitude, latitude]): Pair => [
    Math.round((longitude + 180) / STEP),
    Math.round((NORTH - Math.min(NORTH, Math.max(SOUTH, latitude))) / STEP),
  ]);
  return rounded.filter(([x, y], index) => index === 0 || x !== rounded[index - 1][0] || y !== rounded[index - 1][1]);
}

const path = rings
  .filter((ring) =>
    [0, 1].every(
      (axis) => Math.max(...ring.map((point) => point[axis])) - Math.min(...ring.map((point) => point[axis])) >= LEAST,
    ),
  )
  .filter((ring) => ring.some(([, latitude]) => latitude > SOUTH))
  .map(steps)
  .map(([first, ...rest]) => {
    let [x, y] = first;
    const moves = rest.map(([nextX, nextY]) => {
      const move = `${nextX - x} ${nextY - y}`;
      [x, y] = [nextX, nextY];
      return move;
    });
    return `M${first.join(' ')}l${moves.join(' ')}z`;
  })
  .join('')
  .replaceAll(' -', '-');

const about =
  `Outline of the land in steps of ${STEP} degrees from 180 degrees west and ${NORTH} north. From ` +
  `Natural Earth (public domain), made by tests/make/land.ts.`;
writeFileSync(
  new URL('../../web/panels/parts/world/land.json', import.meta.url),
  `${JSON.stringify({ about, step: STEP, north: NORTH, south: SOUTH, path }, null, 1)}\n`,
);
