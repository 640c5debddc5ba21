/** Outlines out of a drawing, put into a plan as walls, buildings or beds. */

import { addFeature, freshId } from '../../edit/edit-feature.ts';
import { boundsOf, closedRing, distance } from '../../geometry/shapes.ts';
import { toMillimetre } from '../../numbers/rounding.ts';
import { refusal } from '../../problems.ts';
import type { Feature, Plan, PlanPoint, Problem } from '../../types.ts';
import { parsePlan } from '../parse.ts';
import { planText } from '../serialize.ts';
import { dxfOutlines } from './dxf.ts';
import { geoJsonOutlines } from './geo-json.ts';
import type { Outline, OutlineKind } from './types.ts';

/** A drawing that lies farther from the yard than this has an origin of its own. [m] */
const FAR = 1000;
/** No drawing tells how high things are: these are guesses, marked as such. [m] */
const GUESS = { wall: 2, building: 3, bed: 0.5, thickness: 0.2 } as const;
const MOST_OUTLINES = 500;

export type PutIn =
  | { readonly ok: true; readonly plan: Plan; readonly ids: readonly string[]; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * @param text Of a DXF or GeoJSON file.
 * @param corner Where the lower left corner of the drawing goes; absent: it keeps its coordinates, unless they lie far
 *   from the yard.
 */
export function withOutlines(plan: Plan, text: string, kind: OutlineKind, corner?: PlanPoint): PutIn {
  const read = /^\s*[{[]/.test(text) ? geoJsonOutlines(text, plan) : dxfOutlines(text);
  if (!read.ok) return refusal('', read.message);
  const fits = read.outlines.map(clean).filter((outline) => kind === 'wall' || outline.closed);
  if (fits.length === 0)
    return refusal(
      '',
      kind === 'wall'
        ? 'There is no line in the drawing.'
        : `There is no closed outline in the drawing to be a ${kind}.`,
    );
  if (fits.length > MOST_OUTLINES)
    return refusal('', `The drawing has ${fits.length} outlines; up to ${MOST_OUTLINES} can be put in at once.`);
  const { moved, far } = placed(plan, fits, corner);
  let next = plan;
  const ids: string[] = [];
  for (const outline of moved) {
    const feature = featureOf(next, outline, kind);
    ids.push(feature.id);
    next = addFeature(next, feature);
  }
  // The plan's own reader has the last word on what may stand in it.
  const checked = parsePlan(planText(next));
  if (!checked.ok) return { ok: false, problems: checked.problems };
  const out = read.outlines.length - fits.length + read.left;
  return {
    ok: true,
    plan: next,
    ids,
    notes: [
      `Heights are guesses (${GUESS[kind]} m): put in your own.`,
      ...(far ? ['The drawing lay far from the yard: its lower left corner is put on the yard’s.'] : []),
      ...(out > 0
        ? [`${out} ${out === 1 ? 'thing' : 'things'} of the drawing could not be a ${kind} and stayed out.`]
        : []),
    ],
  };
}

function placed(
  plan: Plan,
  outlines: readonly Outline[],
  corner: PlanPoint | undefined,
): { readonly moved: readonly Outline[]; readonly far: boolean } {
  const drawn = boundsOf(outlines.flatMap(({ points }) => points));
  const yard = boundsOf(plan.site.boundary);
  const far = corner === undefined && distance([drawn.minX, drawn.minY], [yard.minX, yard.minY]) > FAR;
  const to: PlanPoint | null = corner ?? (far ? [yard.minX, yard.minY] : null);
  if (to === null) return { moved: outlines, far };
  const [dx, dy] = [to[0] - drawn.minX, to[1] - drawn.minY];
  const move = ([x, y]: PlanPoint): PlanPoint => [toMillimetre(x + dx), toMillimetre(y + dy)];
  return { moved: outlines.map((outline) => ({ ...outline, points: outline.points.map(move) })), far };
}

/** To the millimetre, without corners said twice; a line that ends where it began is closed. */
function clean({ name, points, closed }: Outline): Outline {
  const rounded = points.map(([x, y]): PlanPoint => [toMillimetre(x), toMillimetre(y)]);
  const once = rounded.filter((point, k) => k === 0 || distance(point, rounded[k - 1]) > 0);
  const meets = once.length > 3 && distance(once[0], once[once.length - 1]) === 0;
  return { name, points: meets ? once.slice(0, -1) : once, closed: (closed || meets) && once.length > 2 };
}

function featureOf(plan: Plan, { name, points, closed }: Outline, kind: OutlineKind): Feature {
  const id = freshId(plan, kind);
  const called = name === null ? {} : { name };
  const how = { by: 'guess' } as const;
  switch (kind) {
    case 'wall': {
      const path = closed ? closedRing(points) : points;
      return { id, kind, ...called, path, height: GUESS.wall, thickness: GUESS.thickness, how: { height: how } };
    }
    case 'building':
      return { id, kind, ...called, outline: points, height: GUESS.building, how: { height: how } };
    case 'bed':
      return { id, kind, ...called, outline: points, plantHeight: GUESS.bed, how: { plantHeight: how } };
  }
}
