import { potOf } from '../../plan/defaults.ts';
import { type Bounds, boundsOf, openRing } from '../../plan/geometry/shapes.ts';
import type { MonthDay, Plan } from '../../plan/types.ts';
import { buildScene, stateOf } from '../../scene/build.ts';
import type { Crown, Occluder, Solid, Stand } from '../../scene/solids.ts';
import { JOIN } from '../../scene/ties.ts';
import { skylineAltitude } from '../../sun/sky/skyline.ts';
import { plantPoints } from '../verdict/plant-points.ts';
import { bodiesOf } from './beam-bodies.ts';
import type { Body, Face } from './beam-bodies.ts';
import { beamFrame, seenAt } from './beam-frame.ts';
import type { BeamFrame, Seen } from './beam-frame.ts';

/** How a thing is drawn. */
type PaintKind = 'built' | 'tree' | 'cloth' | 'pot' | 'plant' | 'bed';

/** One thing of the picture. The list of them is in painter's order: what comes later lies nearer to the sun. */
interface Painted {
  readonly id: string;
  readonly kind: PaintKind;
  readonly faces: readonly Face[];
  /** Share of the light that it lets through, 0 to 1. */
  readonly transmittance: number;
}

export interface SunEye {
  /** The property's ground. */
  readonly ground: readonly Seen[];
  readonly painted: readonly Painted[];
  /** Share of the light that reaches what the sun would see of each plant and bed if nothing stood in the way. */
  readonly lit: readonly { readonly id: string; readonly share: number }[];
}

interface Thing {
  readonly id: string;
  readonly kind: PaintKind;
  readonly body: Body;
  /** What it puts in the way of the sun. */
  readonly veils: readonly Body[];
}

/** Points across, where two things are compared, and where a plant is looked at. */
const COMPARED = 12;
const LOOKED_AT = 40;

/** Straight overhead there is no up across the beam. [°] */
const HIGHEST = 89.9;

/**
 * The yard as the sun sees it at some moments of one day, one picture each; `null` while it does not see it: down, or
 * behind the land.
 * @param suns true azimuth and apparent altitude [°]
 */
export function sunEyes(
  plan: Plan,
  suns: readonly { readonly azimuth: number; readonly altitude: number }[],
  monthDay: MonthDay,
): (SunEye | null)[] {
  return suns.map(({ azimuth, altitude }) =>
    altitude <= Math.max(0, skylineAltitude(plan.site.skyline, azimuth))
      ? null
      : sunEye(plan, azimuth, Math.min(altitude, HIGHEST), monthDay),
  );
}

/** A yard seen along the beam: no shadow shows, and what shows is lit. */
export function sunEye(plan: Plan, azimuth: number, altitude: number, monthDay: MonthDay): SunEye {
  const scene = buildScene(plan);
  const frame = beamFrame(azimuth, altitude, scene.upBearing);
  const occluders = scene.states[stateOf(scene, monthDay)];
  const plants = plantsOf(plan, frame, occluders);
  const grown = new Set(plants.map(({ id }) => id));
  const standing = occluders
    .filter(({ id }) => !grown.has(id))
    .flatMap(({ id, solids }) =>
      solids.flatMap((solid) =>
        bodiesOf(solid, frame).map((body): Thing => ({ id, kind: paintOf(solid), body, veils: [body] })),
      ),
    );
  const things = inPaintersOrder([...standing, ...plants]);
  return {
    ground: openRing(plan.site.boundary).map(([x, y]) => seenAt(frame, [x, y, 0])),
    painted: things.map(({ id, kind, body }) => ({
      id,
      kind,
      faces: body.faces,
      transmittance: meanTransmittance(body),
    })),
    lit: things.flatMap(({ id, kind, body }, k) =>
      kind === 'plant' || kind === 'bed'
        ? [
            {
              id,
              share: litShare(
                body,
                things.slice(k + 1).flatMap((thing) => (thing.id === id ? [] : thing.veils)),
              ),
            },
          ]
        : [],
    ),
  };
}

function paintOf(solid: Solid): PaintKind {
  if (solid.kind === 'cloth') return 'cloth';
  return solid.kind === 'prism' || solid.kind === 'lid' ? 'built' : 'tree';
}

/** Plants and beds as they are seen, with what they put in each other's way. */
function plantsOf(plan: Plan, frame: BeamFrame, occluders: readonly Occluder[]): Thing[] {
  return plan.features.flatMap((feature): Thing[] => {
    const { id } = feature;
    const solids = occluders.find((occluder) => occluder.id === id)?.solids ?? [];
    const veils = solids.flatMap((solid) => bodiesOf(solid, frame));
    if (feature.kind === 'bed')
      return bodiesOf(
        { kind: 'lid', rings: [openRing(feature.outline)], height: feature.plantHeight, reflects: null },
        frame,
      ).map((body) => ({ id, kind: 'bed', body, veils }));
    if (feature.kind !== 'plant') return [];
    const { own } = plantPoints(plan, feature);
    const crown = own ? bodiesOf(own, frame).map((body): Thing => ({ id, kind: 'plant', body, veils })) : [];
    if (!feature.container) return crown;
    const { width, height } = potOf(feature);
    const pot = bodiesOf(
      { kind: 'column', x: feature.at[0], y: feature.at[1], radius: width / 2, base: 0, top: height, openness: 0 },
      frame,
    );
    return [...pot.map((body): Thing => ({ id, kind: 'pot', body, veils: [] })), ...crown];
  });
}

/**
 * Farthest from the sun first. Of things that lie behind one another in a ring, the one with the farthest middle is
 * taken first.
 */
function inPaintersOrder(things: readonly Thing[]): Thing[] {
  const boxes = things.map(({ body }) => boundsOf(body.faces.flatMap(({ ring }) => ring)));
  const behind = things.map(() => new Set<number>());
  for (let a = 0; a < things.length; a++) {
    for (let b = a + 1; b < things.length; b++) {
      const front = frontOf(things[a].body, things[b].body, boxes[a], boxes[b]);
      if (front > 0) behind[a].add(b);
      if (front < 0) behind[b].add(a);
    }
  }
  const left = new Set(things.keys());
  const order: Thing[] = [];
  while (left.size > 0) {
    const free = [...left].filter((k) => behind[k].size === 0);
    const next = free[0] ?? [...left].toSorted((a, b) => behind[a].size - behind[b].size)[0];
    left.delete(next);
    for (const waiting of behind) waiting.delete(next);
    order.push(things[next]);
  }
  return order;
}

/**
 * Above 0 where the first lies nearer to the sun than the second, below 0 where behind it, 0 where neither covers the
 * other.
 */
function frontOf(a: Body, b: Body, boxA: Bounds, boxB: Bounds): number {
  const box = {
    minX: Math.max(boxA.minX, boxB.minX),
    minY: Math.max(boxA.minY, boxB.minY),
    maxX: Math.min(boxA.maxX, boxB.maxX),
    maxY: Math.min(boxA.maxY, boxB.maxY),
  };
  if (box.minX >= box.maxX || box.minY >= box.maxY) return 0;
  let front = 0;
  for (const seen of pointsIn(box, COMPARED)) {
    const [first] = a.stretches(seen);
    const [second] = b.stretches(seen);
    if (first && second) front += Math.sign(first[0] + first[1] - second[0] - second[1]);
  }
  return front;
}

function pointsIn({ minX, minY, maxX, maxY }: Bounds, across: number): Seen[] {
  return Array.from({ length: across * across }, (_, k): Seen => [
    minX + (((k % across) + 0.5) / across) * (maxX - minX),
    minY + ((Math.floor(k / across) + 0.5) / across) * (maxY - minY),
  ]);
}

function litShare(plant: Body, inFront: readonly Body[]): number {
  let sum = 0;
  let count = 0;
  for (const seen of pointsIn(boundsOf(plant.faces.flatMap(({ ring }) => ring)), LOOKED_AT)) {
    if (plant.stretches(seen).length === 0) continue;
    count += 1;
    sum += passedAt(seen, inFront);
  }
  return count === 0 ? 0 : sum / count;
}

/** What all of the bodies together let through of one beam. */
function passedAt(seen: Seen, bodies: readonly Body[]): number {
  let share = 1;
  const prisms = new Map<Solid, [number, number][]>();
  for (const { solid, stretches: stretchesAt } of bodies) {
    const stretches = stretchesAt(seen);
    if (stretches.length === 0) continue;
    if (solid.kind === 'prism')
      prisms.set(solid, [...(prisms.get(solid) ?? []), ...stretches.map(([from, to]): [number, number] => [from, to])]);
    else if (solid.kind === 'cloth') share *= solid.share;
    else if (solid.kind === 'lid') share = 0;
    else share *= veilShare(solid, stretches);
  }
  for (const [solid, stretches] of prisms)
    if (solid.kind === 'prism') share *= solid.openness ** crossingsOf(stretches);
  return share;
}

/** What leaves let through of a beam that runs these stretches inside them. */
function veilShare(solid: Crown | Stand, stretches: readonly (readonly [number, number])[]): number {
  const inside = stretches.reduce((sum, [from, to]) => sum + to - from, 0);
  return solid.openness ** (inside / (solid.kind === 'stand' ? solid.height : solid.top - solid.base));
}

function crossingsOf(stretches: readonly (readonly [number, number])[]): number {
  let crossings = 0;
  let end = -Infinity;
  for (const [from, to] of stretches.toSorted((a, b) => a[0] - b[0])) {
    if (from > end + JOIN) crossings += 1;
    end = Math.max(end, to);
  }
  return crossings;
}

function meanTransmittance({ solid, faces, stretches }: Body): number {
  switch (solid.kind) {
    case 'prism':
      return solid.openness;
    case 'cloth':
      return solid.share;
    case 'lid':
      return 0;
    default: {
      const within = pointsIn(boundsOf(faces.flatMap(({ ring }) => ring)), COMPARED).map((seen) => stretches(seen));
      const each = within.filter(({ length }) => length > 0).map((inside) => veilShare(solid, inside));
      return each.length === 0 ? 0 : each.reduce((total, one) => total + one, 0) / each.length;
    }
  }
}
