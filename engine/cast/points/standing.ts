/** Solids in the way of many directions from single points, and what each lets through. */

import type { SpacePoint } from '../../plan/geometry/vectors.ts';
import { lengthInCrown } from '../../scene/crown.ts';
import { fadingIn, shareInside } from '../../scene/fading.ts';
import { isConvex, SEGMENT, unionOutline } from '../../scene/outline.ts';
import type { Crown, Lid, Prism, Scene, ClothSheet, Solid, Stand } from '../../scene/solids.ts';
import { lengthInStand } from '../../scene/stand.ts';
import { TOUCH, UPRIGHT } from '../../scene/ties.ts';
import { decay } from '../decay.ts';
import type { Directions } from '../passes.ts';
import { ClothFrame } from './cloth-frame.ts';
import { passesToward, type View, viewOfDisc, viewOfOutline, windingOf } from './view.ts';

/**
 * A solid, the passes in which it stands (1 or 0 each; null: all) and its outline on the plan (empty for round ones).
 */
export interface Standing {
  /** Of the feature that it belongs to. */
  readonly id: string;
  readonly solid: Solid;
  readonly stands: Uint8Array | null;
  readonly outline: Float64Array;
}

const NO_OUTLINE = new Float64Array(0);

/**
 * What stands in a scene. What lets nothing through comes first: what it hides is then asked of nothing else, and the
 * shares are the same to the bit.
 */
export function standingSolids(scene: Scene, { state }: Directions): Standing[] {
  const states = new Map<Solid, { readonly id: string; readonly inStates: Set<number> }>();
  const cast = new Set(state);
  scene.states.forEach((occluders, index) => {
    if (!cast.has(index)) return;
    for (const { id, solids } of occluders) {
      for (const solid of solids) {
        const known = states.get(solid) ?? { id, inStates: new Set() };
        known.inStates.add(index);
        states.set(solid, known);
      }
    }
  });
  const all = [...states].map(([solid, { id, inStates }]) =>
    standingOf(
      id,
      solid,
      inStates.size === cast.size ? null : Uint8Array.from(state, (index) => (inStates.has(index) ? 1 : 0)),
    ),
  );
  return [...all.filter(({ solid }) => isOpaque(solid)), ...all.filter(({ solid }) => !isOpaque(solid))];
}

/** @param stands 1 for the passes in which it stands, 0 for the others; `null`: in all */
export function standingOf(id: string, solid: Solid, stands: Uint8Array | null): Standing {
  return { id, solid, stands, outline: outlineOf(solid) };
}

function isOpaque(solid: Solid): boolean {
  return solid.kind === 'lid' || (solid.kind !== 'cloth' && solid.openness === 0);
}

function outlineOf(solid: Solid): Float64Array {
  if (solid.kind === 'prism') return unionOutline(solid.rings);
  // What a bent outline covers beyond its eaves' rectangles, the building below stops as well.
  if (solid.kind === 'lid') return unionOutline(solid.rings.filter(isConvex));
  if (solid.kind === 'stand') return unionOutline([solid.ring]);
  if (solid.kind !== 'cloth') return NO_OUTLINE;
  const {
    corner: [x, y],
    u,
    v,
  } = solid;
  return Float64Array.of(
    x,
    y,
    x + u[0],
    y + u[1],
    x + u[0],
    y + u[1],
    x + u[0] + v[0],
    y + u[1] + v[1],
    x + u[0] + v[0],
    y + u[1] + v[1],
    x + v[0],
    y + v[1],
    x + v[0],
    y + v[1],
    x,
    y,
  );
}

/** The directions from a point in which a solid may be met, and the shares to be multiplied by what it lets through. */
interface Met {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly directions: Directions;
  /** Their numbers, `found` of them. */
  readonly list: Int32Array;
  readonly found: number;
  readonly shares: Float64Array;
}

/** Multiplies the shares of a point by what a solid lets through. @param list room for as many numbers as passes */
export function dim(
  standing: Standing,
  point: SpacePoint,
  directions: Directions,
  list: Int32Array,
  shares: Float64Array,
): void {
  const found = passesToward(viewOf(standing, point), directions, standing.stands, shares, list);
  if (found === 0) return;
  const { solid, outline } = standing;
  const [x, y, z] = point;
  const met = { x, y, z, directions, list, found, shares };
  switch (solid.kind) {
    case 'prism':
      return dimByPrism(solid, outline, met);
    case 'lid':
      return dimByLid(solid, outline, met);
    case 'cloth':
      return dimByCloth(solid, met);
    case 'stand':
      return dimByStand(solid, met);
    default:
      return dimByCrown(solid, met);
  }
}

/** Whether a solid may take anything of some shares at a point: `false` is certain. @param list as of `dim` */
export function mayDim(
  standing: Standing,
  point: SpacePoint,
  directions: Directions,
  list: Int32Array,
  shares: Float64Array,
): boolean {
  return passesToward(viewOf(standing, point), directions, standing.stands, shares, list) > 0;
}

function viewOf({ solid, outline }: Standing, [x, y, z]: SpacePoint): View {
  switch (solid.kind) {
    case 'prism':
    case 'stand':
      return viewOfOutline(outline, x, y, -z, solid.height - z);
    case 'lid':
      return viewOfOutline(outline, x, y, solid.height - z, solid.height - z);
    case 'cloth': {
      const foot = Math.min(0, solid.u[2]) + Math.min(0, solid.v[2]) + solid.corner[2] - z;
      const top = Math.max(0, solid.u[2]) + Math.max(0, solid.v[2]) + solid.corner[2] - z;
      return viewOfOutline(outline, x, y, foot, top);
    }
    default:
      return viewOfDisc(solid.x - x, solid.y - y, solid.radius, solid.base - z, solid.top - z);
  }
}

/** A beam's crossings: one if it starts inside, and one for each edge of the outline by which it enters. */
function dimByPrism({ height, openness }: Prism, outline: Float64Array, met: Met): void {
  const { x, y, z, directions, list, found, shares } = met;
  for (let n = 0; n < found; n++) {
    const k = list[n];
    const dx = directions.x[k];
    const dy = directions.y[k];
    const dz = directions.z[k];
    // Both ends pulled in by what does not count, so that a face through the point itself is no matter of rounding.
    const from = Math.max(0, -z / dz) + TOUCH;
    const to = (height - z) / dz - TOUCH;
    if (to <= from) continue;
    const px = x + from * dx;
    const py = y + from * dy;
    const farthest = directions.level[k] < UPRIGHT ? 0 : (to - from) * (dx * dx + dy * dy);
    let winding = 0;
    let crossings = 0;
    for (let e = 0; e < outline.length; e += SEGMENT) {
      const ax = outline[e] - px;
      const ay = outline[e + 1] - py;
      const bx = outline[e + 2] - px;
      const by = outline[e + 3] - py;
      winding += windingOf(ax, ay, bx, by);
      // Entered from right to left: a on the beam's left, b on its right.
      const aside = dx * ay - dy * ax;
      const bside = dx * by - dy * bx;
      if (aside <= 0 || bside > 0) continue;
      const along = aside / (aside - bside);
      const reach = dx * (ax + along * (bx - ax)) + dy * (ay + along * (by - ay));
      if (reach > 0 && reach < farthest) crossings++;
    }
    if (winding !== 0) crossings++;
    if (crossings > 0) shares[k] *= openness ** crossings;
  }
}

function dimByCloth(sheet: ClothSheet, met: Met): void {
  const { x, y, z, directions, list, found, shares } = met;
  const frame = new ClothFrame(sheet, x, y, z);
  for (let n = 0; n < found; n++) {
    const k = list[n];
    shares[k] *= frame.transmittance(directions.x[k], directions.y[k], directions.z[k]);
  }
}

function dimByStand(stand: Stand, met: Met): void {
  const { openness, height } = stand;
  const { x, y, z, directions, list, found, shares } = met;
  for (let n = 0; n < found; n++) {
    const k = list[n];
    const length = lengthInStand(stand, x, y, z, directions.x[k], directions.y[k], directions.z[k]);
    shares[k] *= shareInside(openness, height, length);
  }
}

function dimByLid({ height }: Lid, outline: Float64Array, met: Met): void {
  const { x, y, z, directions, list, found, shares } = met;
  for (let n = 0; n < found; n++) {
    const k = list[n];
    const reach = (height - z) / directions.z[k];
    if (reach <= TOUCH) continue;
    const px = x + reach * directions.x[k];
    const py = y + reach * directions.y[k];
    let winding = 0;
    for (let e = 0; e < outline.length; e += SEGMENT) {
      winding += windingOf(outline[e] - px, outline[e + 1] - py, outline[e + 2] - px, outline[e + 3] - py);
    }
    if (winding !== 0) shares[k] = 0;
  }
}

function dimByCrown(crown: Crown, met: Met): void {
  const { x, y, z, directions, list, found, shares } = met;
  const fading = fadingIn(crown.openness, crown.top - crown.base);
  for (let n = 0; n < found; n++) {
    const k = list[n];
    const length = lengthInCrown(crown, x, y, z, directions.x[k], directions.y[k], directions.z[k]);
    if (length > TOUCH) shares[k] *= decay(fading * length);
  }
}
